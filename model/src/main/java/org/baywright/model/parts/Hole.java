package org.baywright.model.parts;

import java.util.List;
import org.baywright.model.geometry.Vec2;

/**
 * A hole through a plate.
 *
 * @param at its middle, in (depth, width) from the plate's middle
 * @param diameter of a round hole, or the width of a slot
 * @param slide how far a bolt can slide in it along the plate's depth; 0 when it is round
 */
public record Hole(Vec2 at, double diameter, double slide) {
    /** A round hole. */
    public Hole(Vec2 at, double diameter) {
        this(at, diameter, 0);
    }

    /** Whether it is longer than wide. */
    public boolean isSlot() {
        return slide > 0;
    }

    /** Over its round ends, along the plate's depth. */
    public double length() {
        return diameter + slide;
    }

    /** The middles of its two round ends; one and the same when it is round. */
    public List<Vec2> ends() {
        Vec2 half = new Vec2(slide / 2, 0);
        return List.of(at.minus(half), at.plus(half));
    }

    /** Clear metal between this and another hole; less than nothing when they run into each other. */
    public double clearOf(Hole other) {
        double along = Math.max(0, Math.abs(at.x() - other.at.x()) - (slide + other.slide) / 2);
        return Math.hypot(along, at.y() - other.at.y()) - (diameter + other.diameter) / 2;
    }

    /** What it takes out of the plate's face, mm². */
    public double area() {
        return Math.PI * diameter * diameter / 4 + diameter * slide;
    }
}
