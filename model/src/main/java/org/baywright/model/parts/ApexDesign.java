package org.baywright.model.parts;

import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.setout.RoofLine;

/**
 * The plate at the ridge, one size for both rafters so that the two bolt together.
 *
 * <p>Common practice, no source: M16 bolts in 18 holes, or as engineer, between the flanges of an upright beam and
 * beside any other section, clear of weld and washer.
 *
 * @param height of the plate, its top flush with the rafters
 * @param width of the plate
 * @param holes from the plate's middle
 */
record ApexDesign(double height, double width, List<Hole> holes) {
    private static final double HOLE = 18;
    private static final double EDGE = 35;

    /** From the top and foot of the plate to the first bolts: past flange, weld and washer. */
    private static final double ROW = EDGE + 20;

    /** Rows closer than this become one. */
    private static final double LEAST_ROWS = 50;

    /** From a section's side to the bolts beside it. */
    private static final double BESIDE = 30;

    /** The narrowest flange that holds two bolt lines, and their gauge. */
    private static final double LEAST_FLANGE = 120;

    private static final double FLANGE_GAUGE = 90;

    /** Copies the list. */
    ApexDesign {
        holes = List.copyOf(holes);
    }

    static ApexDesign of(Member left, Member right, RoofLine roof) {
        double depth = Math.max(left.depth(), right.depth());
        double height = PlateRoom.upTo5(roof.plumb(depth) + PlateRoom.WELD);
        double widest = Math.max(left.width(), right.width());
        boolean inFlanges = Stream.of(left, right).allMatch(ApexDesign::holdsBolts);
        double gauge = inFlanges ? FLANGE_GAUGE : PlateRoom.upTo5(widest + 2 * BESIDE);
        double width = PlateRoom.upTo5(Math.max(widest + 2 * PlateRoom.WELD, gauge + 2 * EDGE));
        return new ApexDesign(height, width, holes(height - 2 * ROW, gauge / 2));
    }

    private static boolean holdsBolts(Member member) {
        return member.section() instanceof BeamSection && !member.turned() && member.width() >= LEAST_FLANGE;
    }

    private static List<Hole> holes(double rows, double w) {
        double d = rows / 2;
        Stream<Vec2> at = rows < LEAST_ROWS
                ? Stream.of(new Vec2(0, -w), new Vec2(0, w))
                : Stream.of(new Vec2(-d, -w), new Vec2(d, -w), new Vec2(d, w), new Vec2(-d, w));
        return at.map(p -> new Hole(p, HOLE)).toList();
    }
}
