package org.baywright.render.view;

import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec3;

/**
 * Views of the whole frame from above a corner of frame 1, so that its gable and one long side are seen. Uprights stand
 * upright on the sheet. Lengths are foreshortened: not for measuring.
 */
public final class Pictorial {
    private Pictorial() {}

    /**
     * The three axes at equal angles and equally foreshortened.
     *
     * <p>@source ISO 5456-3 isometric axonometry (from memory): axes 30 degrees from the level
     *
     * @param side the long side that is seen, the lean-to's when there is one
     */
    public static Projection isometric(Side side) {
        return from(side, 1, 1, 1);
    }

    /**
     * The gable nearly square on; lengths along the building appear half as long as those across and up.
     *
     * <p>@source ISO 5456-3 dimetric axonometry (from memory): ratios 1 : 1 : 1/2, axes at 7 and 42 degrees. Exactly,
     * an axis is foreshortened by √(1 − t²), t its share of the direction to the eye; 1 : 1 : 1/2 gives t² = 1/9, 1/9
     * and 7/9, angles 7.2 and 41.4 degrees.
     */
    public static Projection dimetric(Side side) {
        return from(side, 1, Math.sqrt(7), 1);
    }

    private static Projection from(Side side, double aside, double before, double above) {
        Vec3 towards = new Vec3(side == Side.LEFT ? -aside : aside, -before, above).unit();
        Vec3 right = Vec3.UP.cross(towards).unit();
        return Projection.of(right, towards.cross(right));
    }
}
