package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.render.view.ViewLine;

/** Rods are many-sided in the model; on a drawing only the two lines of their outline are wanted. */
final class RoundBars {
    private static final double NEAR = 0.5;

    private RoundBars() {}

    /** The lines of a view, those along the flanks of braces left out. */
    static List<ViewLine> outlined(Shed shed, List<ViewLine> lines) {
        Set<String> braces =
                shed.parts(PartKind.BRACE).stream().map(p -> p.mark()).collect(Collectors.toSet());
        Set<ViewLine> inner = new HashSet<>();
        for (ViewLine line : lines) {
            if (braces.contains(line.part()) && isInner(line, lines)) {
                inner.add(line);
            }
        }
        List<ViewLine> kept = new ArrayList<>(lines);
        kept.removeAll(inner);
        return kept;
    }

    /** Whether lines of the same part run alongside on both sides. */
    private static boolean isInner(ViewLine line, List<ViewLine> lines) {
        boolean left = false;
        boolean right = false;
        Vec2 along = line.to().minus(line.from()).unit();
        for (ViewLine other : lines) {
            if (other.part().equals(line.part()) && beside(line, along, other)) {
                double off = along.cross(other.from().minus(line.from()));
                left |= off > NEAR;
                right |= off < -NEAR;
            }
        }
        return left && right;
    }

    private static boolean beside(ViewLine line, Vec2 along, ViewLine other) {
        Vec2 step = other.to().minus(other.from());
        boolean parallel = Math.abs(along.cross(step)) < 1e-6 * step.length();
        Vec2 middle = line.from().plus(line.to()).times(0.5);
        double at = along.dot(middle.minus(other.from()));
        double end = along.dot(step);
        boolean near = Math.abs(along.cross(middle.minus(other.from()))) < 60;
        return parallel && near && at > Math.min(0, end) && at < Math.max(0, end);
    }
}
