package org.baywright.render.dimension;

import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;

/**
 * Words that name a point on paper; where they stand is for the {@link LabelField} to find.
 *
 * @param lines one or more
 * @param target the point they name, paper mm
 * @param pointer how the leader ends there
 * @param preferred where they had best stand, best first; may be empty
 * @param height of a capital, mm
 * @param part the mark of the steel part they name, or empty
 */
public record Label(
        List<String> lines, Vec2 target, Pointer pointer, List<Spot> preferred, double height, Face face, String part) {
    /** How a leader ends at what it names. */
    public enum Pointer {
        /** Words stand beside the point; a leader with a dot only when there is no room. */
        BESIDE,
        /** Leader with a dot, for a surface. */
        DOT,
        /** Leader with an arrow, for an edge. */
        ARROW
    }

    /** Copies the lists and checks that something is said. */
    public Label {
        lines = List.copyOf(lines);
        preferred = List.copyOf(preferred);
        if (lines.isEmpty() || lines.stream().anyMatch(String::isBlank) || !(height > 0)) {
            throw new IllegalArgumentException("a label needs words and a height");
        }
    }

    /** Regular 2.5 mm words, right of the point when there is room. */
    public static Label of(Vec2 target, Pointer pointer, String... lines) {
        return new Label(List.of(lines), target, pointer, List.of(), Drafting.TEXT, Face.REGULAR, "");
    }

    /** The same label with other wishes. */
    public Label preferring(Spot... spots) {
        return new Label(lines, target, pointer, List.of(spots), height, face, part);
    }

    /** The same label in bold. */
    public Label bold() {
        return new Label(lines, target, pointer, preferred, height, Face.BOLD, part);
    }

    double width() {
        return lines.stream()
                .mapToDouble(l -> Lettering.width(l, height, face))
                .max()
                .orElseThrow();
    }

    double depth() {
        return (lines.size() - 1) * Drafting.LINE_PITCH * height
                + Lettering.ascent(height, face)
                + Lettering.descent(height, face);
    }
}
