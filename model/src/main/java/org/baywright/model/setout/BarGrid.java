package org.baywright.model.setout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.SlabBars;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;

/**
 * The bars in the slab as the drill meets them. Bars run both ways right through, so what matters across the building
 * does not depend on what matters along it. Places are on the floor: x across the building, y along it.
 *
 * @param bars the reinforcement
 * @param drill diameter of the holes
 * @param depth of the holes
 */
public record BarGrid(SlabBars bars, double drill, double depth) {
    /** How a hole lies to the bars. */
    public enum Meeting {
        /** At least the gap that was asked for, or the hole ends above the bars. */
        CLEAR,
        /** It misses the bars, but by less. */
        CLOSE,
        /** It cuts into a bar. */
        HIT
    }

    /** The bars of a definition, when it has them. */
    public static Optional<BarGrid> of(Definition definition) {
        return definition
                .ground()
                .slab()
                .bars()
                .map(bars -> new BarGrid(
                        bars,
                        definition.anchor().holeDiameter(),
                        definition.anchor().embedment()));
    }

    /** Whether holes go down to the bars at all. */
    public boolean reached() {
        return depth > bars.cover();
    }

    private BarRow along() {
        return new BarRow(bars.along());
    }

    private BarRow across() {
        return new BarRow(bars.across());
    }

    /** From the middle of a hole to the middle of a bar when they touch. */
    private double touching() {
        return (drill + bars.diameter()) / 2;
    }

    /** Between the edge of a hole and the nearest bar in plan; below zero when they overlap. */
    public double gap(Vec2 hole) {
        return Math.min(along().distance(hole.y()), across().distance(hole.x())) - touching();
    }

    /** How a hole lies to the bars. */
    public Meeting meeting(Vec2 hole) {
        double gap = gap(hole);
        if (!reached() || gap >= bars.close() - Tolerance.COINCIDENT) {
            return Meeting.CLEAR;
        }
        return gap >= -Tolerance.COINCIDENT ? Meeting.CLOSE : Meeting.HIT;
    }

    /** The smallest shift of all bars that clears some holes, or at least misses them; empty when there is none. */
    public Optional<BarShift> shift(List<Vec2> holes) {
        return shift(holes, true).or(() -> shift(holes, false));
    }

    private Optional<BarShift> shift(List<Vec2> holes, boolean clear) {
        double away = touching() + (clear ? bars.close() : 0);
        OptionalDouble along = along().shift(holes.stream().map(Vec2::y).toList(), away);
        OptionalDouble across = across().shift(holes.stream().map(Vec2::x).toList(), away);
        return along.isPresent() && across.isPresent()
                ? Optional.of(new BarShift(along.getAsDouble(), across.getAsDouble(), clear))
                : Optional.empty();
    }
}
