package org.baywright.model.parts;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.baywright.model.definition.Anchor;
import org.baywright.model.definition.BasePlate;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Vec2;

/**
 * A base plate with every dimension settled for the column that stands on it. x lies across the building, y along it,
 * both from the middle of the column.
 *
 * @param width across the building
 * @param depth along the building
 * @param thickness of the plate
 * @param holes in the plate, from its middle
 */
public record BaseDesign(double width, double depth, double thickness, List<Hole> holes) {
    /** Half of a 50 mm square plate washer. @source washer and hole sizes in base plates (trade FAQ, NZ) */
    private static final double HALF_WASHER = 25;

    /** Half washer to rod above that. Common practice, no source. */
    private static final double HALF_WASHER_PER_ROD = 1.25;

    private static final double WASHER_CLEARANCE = 3;
    private static final double EDGE = 35;

    /** Copies the list. */
    public BaseDesign {
        holes = List.copyOf(holes);
    }

    /**
     * Settles what the user left open.
     *
     * <p>Common practice, no source: gauge = column + 2(weld leg + half washer + 3), plate = gauge + 2·edge with an
     * edge of 1.75 rods and at least 35, thickness 16 to a 125 column and 20 above, all rounded up to 5. Holes beside
     * each other stand at least the product's least spacing apart.
     */
    public static BaseDesign of(BasePlate asked, Member column, Anchor anchor) {
        double edge = Math.max(EDGE, PlateRoom.upTo5(1.75 * anchor.rodDiameter()));
        double washer = halfWasher(anchor);
        double apart = anchor.minimumSpacing();
        double gaugeX = gauge(
                asked.gaugeX(),
                asked.width(),
                Math.max(round(column.depth(), washer), asked.holes() == 8 ? 2 * apart : apart),
                edge);
        double gaugeY = gauge(
                asked.gaugeY(),
                asked.depth(),
                Math.max(round(column.width(), washer), asked.holes() >= 6 ? 2 * apart : apart),
                edge);
        double thickness = asked.thickness().orElse(Math.max(column.depth(), column.width()) <= 125 ? 16 : 20);
        double hole = asked.holeDiameter().orElse(anchor.plateHole());
        List<Hole> holes = pattern(asked.holes(), gaugeX, gaugeY).stream()
                .map(at -> new Hole(at, hole))
                .toList();
        return new BaseDesign(
                asked.width().orElse(gaugeX + 2 * edge), asked.depth().orElse(gaugeY + 2 * edge), thickness, holes);
    }

    /** Half the side of the square plate washer for an anchor. */
    public static double halfWasher(Anchor anchor) {
        return Math.max(HALF_WASHER, HALF_WASHER_PER_ROD * anchor.rodDiameter());
    }

    /** Room for the weld and the washers on both sides of a column. */
    private static double round(double column, double halfWasher) {
        return column + 2 * (PlateRoom.WELD_LEG + halfWasher + WASHER_CLEARANCE);
    }

    private static double gauge(OptionalDouble asked, OptionalDouble plate, double least, double edge) {
        return asked.orElse(plate.isPresent() ? plate.getAsDouble() - 2 * edge : PlateRoom.upTo5(least));
    }

    /** Corners first, then the middles of the sides; two holes lie across the building on the middle line. */
    private static List<Vec2> pattern(int count, double gaugeX, double gaugeY) {
        double x = gaugeX / 2;
        double y = gaugeY / 2;
        Stream<Vec2> corners = Stream.of(new Vec2(-x, -y), new Vec2(x, -y), new Vec2(x, y), new Vec2(-x, y));
        Stream<Vec2> acrossMiddles = Stream.of(new Vec2(-x, 0), new Vec2(x, 0));
        Stream<Vec2> alongMiddles = Stream.of(new Vec2(0, -y), new Vec2(0, y));
        return switch (count) {
            case 2 -> acrossMiddles.toList();
            case 4 -> corners.toList();
            case 6 -> Stream.concat(corners, acrossMiddles).toList();
            case 8 ->
                Stream.concat(corners, Stream.concat(acrossMiddles, alongMiddles))
                        .toList();
            default -> throw new IllegalArgumentException("no pattern for " + count + " holes");
        };
    }
}
