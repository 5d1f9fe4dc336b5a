package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec2;

/**
 * A plane of the building that is sheeted, with its sheets. Its axes lie where the sheets rest on purlins or girts: u
 * from sheet to sheet, v up along the sheets, the placement's width outward.
 *
 * @param name such as {@code left roof} or {@code front wall}
 * @param role roof or wall
 * @param profile the sheet
 * @param axes along = u, depth = v, width = outward
 * @param outline what the sheets cover as fixed, cut to the rake, in (u, v), anticlockwise
 * @param holes openings left in it, each in (u, v), anticlockwise
 * @param sheets in the order they are laid
 */
public record Surface(
        String name,
        Role role,
        SheetProfile profile,
        Placement axes,
        List<Vec2> outline,
        List<List<Vec2>> holes,
        List<Sheet> sheets) {
    /** What a surface is. */
    public enum Role {
        ROOF,
        WALL
    }

    /**
     * One sheet where it lies.
     *
     * @param mark the same for sheets of the same profile, length and light
     * @param left its first covered edge, in u
     * @param right its last covered edge, in u; the last sheet of a run may overhang the surface before it is cut
     * @param low its lower end, in v
     * @param length as ordered
     * @param translucent whether it lets light in
     */
    public record Sheet(String mark, double left, double right, double low, double length, boolean translucent) {
        private boolean isLappedBy(Sheet next) {
            return next.left() == left && next.low() > low && next.low() < high();
        }

        /** Its upper end, in v, as ordered. */
        public double high() {
            return low + length;
        }
    }

    /** Copies the lists. */
    public Surface {
        outline = List.copyOf(outline);
        holes = holes.stream().map(List::copyOf).toList();
        sheets = List.copyOf(sheets);
    }

    /** Sheets that lie end over end, each group one length from edge to edge, from its lower end up. */
    public List<List<Sheet>> lengths() {
        List<List<Sheet>> lengths = new ArrayList<>();
        for (Sheet sheet : sheets) {
            List<Sheet> last = lengths.isEmpty() ? List.of() : lengths.get(lengths.size() - 1);
            boolean laps = !last.isEmpty() && last.get(last.size() - 1).isLappedBy(sheet);
            if (!laps) {
                lengths.add(new ArrayList<>());
            }
            lengths.get(lengths.size() - 1).add(sheet);
        }
        return lengths;
    }

    /** Area as if there were no openings, m². */
    public double grossM2() {
        return area(outline) / 1e6;
    }

    /** Area of the openings, m². */
    public double deductedM2() {
        return holes.stream().mapToDouble(Surface::area).sum() / 1e6;
    }

    /** Area that is closed, m². */
    public double netM2() {
        return grossM2() - deductedM2();
    }

    /** Cover times length of every sheet ordered, m². */
    public double orderedM2() {
        return sheets.stream().mapToDouble(s -> profile.cover() * s.length()).sum() / 1e6;
    }

    /** Half the sum of the cross products round a ring. @source shoelace formula */
    private static double area(List<Vec2> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Vec2 a = ring.get(i);
            Vec2 b = ring.get((i + 1) % ring.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }
}
