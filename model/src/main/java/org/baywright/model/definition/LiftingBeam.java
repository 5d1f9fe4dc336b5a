package org.baywright.model.definition;

/**
 * A beam for a hoist under the rafters. What it may carry is the engineer's to say.
 *
 * @param member section
 * @param bracket section of the brackets that carry it
 * @param along true when it runs along the building, false when it spans one frame's columns
 * @param fromFrame first frame, or the one frame it spans at
 * @param toFrame last frame
 * @param offset across the span, from line A, of a beam along the building
 * @param underside of the beam above the floor
 * @param hookDrop from the underside to the hook at its highest
 */
public record LiftingBeam(
        Member member,
        Member bracket,
        boolean along,
        int fromFrame,
        int toFrame,
        double offset,
        double underside,
        double hookDrop) {
    /** The same beam, run elsewhere across the span. */
    public LiftingBeam at(double otherOffset) {
        return new LiftingBeam(member, bracket, along, fromFrame, toFrame, otherOffset, underside, hookDrop);
    }
}
