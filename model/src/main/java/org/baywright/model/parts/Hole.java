package org.baywright.model.parts;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.geometry.Vec2;

/**
 * A hole through a plate, placed in (depth, width) from the plate's middle: round, or a slot that a round hole sweeps.
 *
 * <pre>
 *    ___________
 *   (  o--->o   )   diameter high; run from the middle of one end to that of the other; at in its middle
 *    -----------
 * </pre>
 *
 * @param at its middle
 * @param diameter of a round hole, or the width of a slot
 * @param run from the middle of one rounded end of a slot to that of the other; zero for a round hole
 */
public record Hole(Vec2 at, double diameter, Vec2 run) {
    private static final int ARC = 18;

    /** A round hole. */
    public Hole(Vec2 at, double diameter) {
        this(at, diameter, new Vec2(0, 0));
    }

    /** A slot so long from rounded end to rounded end; as long as wide it is a round hole. */
    static Hole slot(Vec2 at, double diameter, double length, Vec2 direction) {
        return new Hole(at, diameter, direction.unit().times(Math.max(0, length - diameter)));
    }

    /** The same hole elsewhere in a plate. */
    Hole shifted(double depth, double width) {
        return new Hole(at.plus(new Vec2(depth, width)), diameter, run);
    }

    /** Whether it is longer than wide. */
    public boolean isSlot() {
        return run.length() > 0;
    }

    /** Its longest dimension: of a slot from end to end. */
    public double length() {
        return diameter + run.length();
    }

    /** The middles of a slot's two rounded ends; twice the middle of a round hole. */
    public List<Vec2> ends() {
        return List.of(at.minus(run.times(0.5)), at.plus(run.times(0.5)));
    }

    /** What it takes out of the plate's face, mm². */
    public double area() {
        return Math.PI * diameter * diameter / 4 + diameter * run.length();
    }

    /** Its edge as a many-sided ring, counterclockwise; the corners lie on it. */
    public List<Vec2> outline() {
        double away = isSlot() ? Math.atan2(run.y(), run.x()) : 0;
        return Stream.concat(arc(ends().get(1), away - Math.PI / 2), arc(ends().get(0), away + Math.PI / 2))
                .toList();
    }

    /** Half a circle from an angle on; a round hole's other half starts where it ends. */
    private Stream<Vec2> arc(Vec2 middle, double from) {
        int last = isSlot() ? ARC : ARC - 1;
        return IntStream.rangeClosed(0, last)
                .mapToDouble(i -> from + Math.PI * i / ARC)
                .mapToObj(a -> middle.plus(new Vec2(Math.cos(a), Math.sin(a)).times(diameter / 2)));
    }
}
