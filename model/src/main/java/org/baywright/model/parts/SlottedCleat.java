package org.baywright.model.parts;

import java.util.List;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Vec2;

/**
 * The plate that holds an upright's top under a rafter and lets the rafter come down on it by the slip gap, and go up as
 * far: its bolts stand in the middle of slots.
 *
 * <pre>
 *   ===== rafter
 *   |   |  ^ slip gap, then the upright starts
 *   | 0 |  slot: hole and the slip gap up and down
 *   |___|
 * </pre>
 *
 * <p>@source from memory, AS 4100 clause 9.5: bolts no nearer than 2.5 d to each other and 1.75 d to a flame-cut edge,
 * 1.25 d to a rolled one, of a slot from the middle of its rounded end; clause 14.3.5: holes d + 2 to M24. Slots past
 * 2.5 d (40 for M16) are longer than that clause's long slots: drawings leave them to the engineer.
 *
 * @param upright the mullion or jamb
 * @param slip the gap over it
 * @param onSide how far the plate goes up beside the rafter
 */
record SlottedCleat(Member upright, double slip, double onSide) {
    static final double THICKNESS = 8;

    /** Room for a bolt's plate washer over the end of its slot, and above that to the rafter. Common practice. */
    private static final double WASHER = 8 + 3;

    /** Flanges narrower than this take M12. Common practice, no source. */
    private static final double NARROW = 48;

    private boolean isBeam() {
        return upright.section() instanceof BeamSection && !upright.turned();
    }

    /** From the middle to bolts that clear a beam's web, its fillet and half a washer of 2 d; M12 where M16 cannot. */
    private double besideWeb(double bolt) {
        BeamSection beam = (BeamSection) upright.section();
        return Math.max(1.25 * bolt, beam.webThickness() / 2 + beam.rootRadius() + bolt);
    }

    private double bolt() {
        boolean large = isBeam() ? besideWeb(16) + 1.25 * 16 <= upright.width() / 2 : upright.width() >= NARROW;
        return large ? 16 : 12;
    }

    private double edge() {
        return 1.75 * bolt();
    }

    /** One bolt in the middle where two do not fit; a beam has its web there. */
    private List<Double> across() {
        double beside = isBeam() ? besideWeb(bolt()) : upright.width() / 2 - edge();
        return beside < 1.25 * bolt() ? List.of(0.0) : List.of(-beside, beside);
    }

    /** As wide as the upright, wider where its bolts ask for an edge. */
    double width() {
        double furthest = across().get(across().size() - 1);
        return Math.max(upright.width(), PlateRoom.upTo5(2 * (furthest + edge())));
    }

    /** From the rafter down to the bolts: past the upright's end, and so that a washer clears the rafter come down. */
    private double down() {
        double hole = bolt() + 2;
        return Math.max(slip + edge(), 2 * slip + hole / 2 + WASHER);
    }

    double height() {
        return PlateRoom.upTo5(onSide + down() + slip + edge());
    }

    List<Hole> holes() {
        double hole = bolt() + 2;
        double up = height() / 2 - onSide - down();
        return across().stream()
                .map(w -> Hole.slot(new Vec2(up, w), hole, hole + 2 * slip, new Vec2(1, 0)))
                .toList();
    }
}
