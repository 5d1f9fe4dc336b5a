package org.baywright.model.parts;

import java.util.List;
import java.util.function.Function;
import org.baywright.model.catalogue.BarSection;
import org.baywright.model.catalogue.Section;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;

/**
 * One brace on its two cleats: a flat or an angle from end to end; or two rods, each welded on a lug, drawn together by
 * a turnbuckle past the crossing.
 *
 * <pre>
 *   [o lug ]===========rod===X=====||turnbuckle||====rod====[ lug o]
 * </pre>
 *
 * @param section of the brace
 * @param length over its ends or lugs
 */
record BraceLine(Section section, double length) {
    /** From a brace's end to its bolt. Common practice, no source. */
    static final double EDGE = 25;

    /** A lug. Common practice, no source; or as the engineer says. */
    static final double LUG = 8;

    static final double LUG_WIDTH = 50;
    private static final double HOLE = 18;

    /** From the bolt to the rod, for washer and nut, and how far the rod lies on its lug. Common practice, no source. */
    private static final double TO_ROD = 35;

    private static final double ON_LUG = 50;
    private static final double LUG_LENGTH = EDGE + TO_ROD + ON_LUG;

    /** The share of a brace that its longer rod takes, and what a rod of one stock bar of 6 m reaches to. */
    private static final double LONGER = 0.6;

    private static final double ONE_BAR = EDGE + TO_ROD + 5950;

    /** From the crossing to the turnbuckle's body, clear of the other brace. Common practice, no source. */
    private static final double PAST_CROSSING = 60;

    boolean isRod() {
        return isRod(section);
    }

    static boolean isRod(Section section) {
        return section instanceof BarSection bar && bar.form() == BarSection.Form.ROUND;
    }

    /** How far a brace stands out from the face of its cleats, a lug under it. */
    static double out(Section section) {
        return section.width() + (isRod(section) ? LUG : 0);
    }

    /** From a brace's line to its further edge, along the face of its cleats. */
    static double halfAcross(Section section) {
        return isRod(section)
                ? LUG_WIDTH / 2
                : section.profile().outline().stream()
                        .mapToDouble(p -> Math.abs(p.x()))
                        .max()
                        .orElseThrow();
    }

    /**
     * Its pieces.
     *
     * @param end where it starts on the cleat's face: along the brace, its width away from the cleat
     * @param place puts a placement in its bay
     */
    List<Piece> pieces(Placement end, Function<Placement, Place> place) {
        if (!isRod()) {
            double foot = -section.profile().outline().stream()
                    .mapToDouble(Vec2::y)
                    .min()
                    .orElseThrow();
            return List.of(bar(length, Placement.of(end.toWorld(0, 0, foot), end.along(), end.depth()), place));
        }
        Turnbuckle turnbuckle = Turnbuckle.on((BarSection) section);
        double rodStart = EDGE + TO_ROD;
        double middle = middle(turnbuckle);
        double above = LUG + section.depth() / 2;
        Placement far = Placement.of(
                end.toWorld(length, 0, 0), end.along().negated(), end.depth().negated());
        Placement rod = Placement.of(end.toWorld(rodStart, 0, above), end.along(), end.depth());
        Placement farRod = Placement.of(far.toWorld(rodStart, 0, above), far.along(), far.depth());
        return List.of(
                lug(end, place),
                bar(middle - turnbuckle.between() / 2 - rodStart, rod, place),
                bar(length - middle - turnbuckle.between() / 2 - rodStart, farRod, place),
                lug(far, place));
    }

    /** From the end to the turnbuckle's middle: so far that the longer rod still comes from one bar. */
    private double middle(Turnbuckle turnbuckle) {
        double clear = length / 2 + PAST_CROSSING + turnbuckle.length() / 2;
        return Math.max(clear, Math.min(LONGER * length, ONE_BAR + turnbuckle.between() / 2));
    }

    private Piece bar(double of, Placement at, Function<Placement, Place> place) {
        return new Piece(
                PartKind.BRACE,
                new Material.Bar(section, false),
                Solid.square(section.profile(), 0, of),
                List.of(),
                place.apply(at));
    }

    /** Flat on the cleat, its hole near the brace's end; the rod lies on its other face. */
    private static Piece lug(Placement end, Function<Placement, Place> place) {
        Placement at = Placement.of(end.toWorld(LUG_LENGTH / 2, 0, 0), end.width(), end.along());
        Hole hole = new Hole(new Vec2(EDGE - LUG_LENGTH / 2, 0), HOLE);
        return PlateMaker.plate(PartKind.BRACE_LUG, LUG_LENGTH, LUG_WIDTH, LUG, List.of(hole), place.apply(at));
    }
}
