package org.baywright.model.parts;

import org.baywright.model.geometry.Vec2;

/** A round hole through a plate, placed in (depth, width) from the plate's middle. */
public record Hole(Vec2 at, double diameter) {
    /** What it takes out of the plate's face, mm². */
    public double area() {
        return Math.PI * diameter * diameter / 4;
    }
}
