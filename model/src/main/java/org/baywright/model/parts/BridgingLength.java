package org.baywright.model.parts;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.Stream;
import org.baywright.model.catalogue.BarSection;
import org.baywright.model.catalogue.Section;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;

/**
 * One length of bridging between the webs of two rows with a plate on each end, held by a bolt through one of the pair of
 * holes that the web is punched with there. Where bridging goes on past the row, both its ends share the bolt.
 *
 * <pre>
 *   web |[]=============[]| web        end: _______
 *       |[]    angle    []|                | |     |
 *       |[]             []|                | |   o |  bolt inside the angle
 *                                          | |_____|
 * </pre>
 *
 * <p>Common practice, no source: a 6 mm plate, one M12; the engineer decides.
 *
 * @param angle its section
 * @param rowDepth of the rows between which it stands
 */
record BridgingLength(Section angle, double rowDepth) {
    static final double PLATE = 6;

    /** From a leg of the angle to the middle of a bolt beside it: room for its nut. Common practice, no source. */
    private static final double BESIDE_LEG = 15;

    /** From the hole to the edge of the plate. @source 1.75 d to a flame-cut edge: AS 4100 9.5.2 (from memory) */
    private static final double EDGE = 21;

    private static final double HOLE = CleatPlate.HOLE;

    /**
     * The length and its plates.
     *
     * @param web where the webs' punching lies at half the rows' depth: on the lower web's face; along to the upper web,
     *     depth out of the building
     * @param length from web to web
     */
    Stream<Piece> pieces(Placement web, double length, Function<Placement, Place> place) {
        // The angle's middle is put where its bolt is on the line of the punching.
        Vec3 middle = web.toWorld(0, CleatPlate.gauge(rowDepth) / 2 - bolt().x(), -bolt().y());
        Placement start = new Placement(middle, web.along(), web.depth(), web.width());
        Piece bar = new Piece(
                PartKind.BRIDGING,
                new Material.Bar(angle, false),
                Solid.square(angle.profile(), 0, length - 2 * PLATE),
                List.of(),
                place.apply(along(start, PLATE)));
        return Stream.of(bar, plate(start, place), plate(along(start, length - PLATE), place));
    }

    private static Placement along(Placement at, double by) {
        return new Placement(at.toWorld(by, 0, 0), at.along(), at.depth(), at.width());
    }

    private double least(DoubleUnaryOperator sign, Function<Vec2, Double> of) {
        return angle.profile().outline().stream()
                .mapToDouble(p -> sign.applyAsDouble(of.apply(p)))
                .min()
                .orElseThrow();
    }

    private double low(Function<Vec2, Double> of) {
        return least(d -> d, of);
    }

    private double high(Function<Vec2, Double> of) {
        return -least(d -> -d, of);
    }

    /** From the angle's middle to the bolt. */
    private Vec2 bolt() {
        double leg = angle instanceof BarSection bar ? bar.thickness() : 0;
        double half = CleatPlate.gauge(rowDepth) / 2;
        return new Vec2(Math.max(half, low(Vec2::x) + leg + BESIDE_LEG), low(Vec2::y) + leg + BESIDE_LEG);
    }

    /** Closes the end of the angle and reaches round the bolt. */
    private Piece plate(Placement end, Function<Placement, Place> place) {
        double lowDepth = low(Vec2::x);
        double lowWidth = low(Vec2::y);
        double depth = PlateRoom.upTo1(Math.max(high(Vec2::x), bolt().x() + EDGE) - lowDepth);
        double width = PlateRoom.upTo1(Math.max(high(Vec2::y), bolt().y() + EDGE) - lowWidth);
        Vec2 middle = new Vec2(lowDepth + depth / 2, lowWidth + width / 2);
        Placement at = new Placement(end.toWorld(0, middle.x(), middle.y()), end.along(), end.depth(), end.width());
        Hole hole = new Hole(bolt().minus(middle), HOLE);
        return PlateMaker.plate(PartKind.BRIDGING_CLEAT, depth, width, PLATE, List.of(hole), place.apply(at));
    }
}
