package org.baywright.model.parts;

import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.setout.RowStand;

/**
 * The plate that a purlin or girt is bolted to: it reaches from the face that the row rests on past the row's upper
 * hole, and stays inside the row.
 *
 * <p>Common practice, no source: 8 mm plate, M12 bolts in 18 holes. From memory: two holes of a pair lie 40 apart in a
 * section about 100 deep, 60 in one of 150, 110 in one of 200.
 *
 * @param stand the row
 */
record CleatPlate(RowStand stand) {
    static final double THICKNESS = 8;
    static final double HOLE = 18;

    /** From a hole's middle to the plate's edge. Common practice, no source. */
    static final double EDGE = 25;

    private double rowDepth() {
        return stand.member().depth();
    }

    private double gauge() {
        return gauge(rowDepth());
    }

    /** Between the two holes of a pair in a row so deep; nothing where there is only one. */
    static double gauge(double depth) {
        return depth < 90 ? 0 : depth < 125 ? 40 : depth < 175 ? 60 : depth < 225 ? 110 : 160;
    }

    /** Past the upper hole, and under the upper flange. */
    double height() {
        double past = PlateRoom.upTo5((rowDepth() + gauge()) / 2 + EDGE);
        return Math.min(past, Math.floor(rowDepth() - Math.max(stand.web(), 1)));
    }

    /** At half the depth of the row, wherever the middle of the plate is. */
    List<Hole> holes(List<Double> across) {
        return holes(across, (rowDepth() - height()) / 2);
    }

    /** The same of a plate from the row's outer face: a top hat's reaches its feet, which stand out beside its crown. */
    double heightFromOutside() {
        return stand.isHat() ? rowDepth() : height();
    }

    /** The same in a plate that reaches in from the row's outer face, as between columns with flanges. */
    List<Hole> holesFromOutside(List<Double> across) {
        return holes(across, (heightFromOutside() - rowDepth()) / 2);
    }

    private List<Hole> holes(List<Double> across, double middle) {
        double half = gauge() / 2;
        Stream<Double> heights = half > 0 ? Stream.of(middle - half, middle + half) : Stream.of(middle);
        return heights.flatMap(h -> across.stream().map(w -> new Hole(new Vec2(h, w), HOLE)))
                .toList();
    }
}
