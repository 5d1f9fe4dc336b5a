package org.baywright.model.parts;

import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec3;

/**
 * A hole that a member needs because a cleat it lies on has one there.
 *
 * @param at its middle, in the member's own axes
 * @param diameter of the cleat's hole
 * @param throughDepth whether it goes through the depth rather than the width
 * @param cleat mark of the cleat
 */
public record JointHole(Vec3 at, double diameter, boolean throughDepth, String cleat) {
    /** How far it lies off the member's middle line: up, or to the near side when it goes through the depth. */
    public double off() {
        return Tolerance.fabricated(throughDepth ? at.z() : at.y());
    }
}
