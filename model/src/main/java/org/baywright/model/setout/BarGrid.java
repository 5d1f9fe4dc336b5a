package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.Comparator;
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

    /**
     * The shift of the bars of one way that clears holes of them, or at least misses; of two, the one after which fewer
     * holes are hit. Empty when neither way has one.
     */
    public Optional<OneWayShift> oneWay(List<Vec2> holes) {
        List<OneWayShift> found = new ArrayList<>();
        for (boolean along : new boolean[] {true, false}) {
            oneWay(holes, along, true).or(() -> oneWay(holes, along, false)).ifPresent(found::add);
        }
        return found.stream().min(Comparator.comparingLong(OneWayShift::stillHit));
    }

    private Optional<OneWayShift> oneWay(List<Vec2> holes, boolean along, boolean clear) {
        List<Double> places = holes.stream().map(h -> along ? h.y() : h.x()).toList();
        OptionalDouble shift = (along ? along() : across()).shift(places, touching() + (clear ? bars.close() : 0));
        BarRow other = along ? across() : along();
        long hit = holes.stream()
                .filter(h -> other.distance(along ? h.x() : h.y()) < touching() - Tolerance.COINCIDENT)
                .count();
        return shift.isPresent()
                ? Optional.of(new OneWayShift(along, shift.getAsDouble(), clear, hit))
                : Optional.empty();
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
