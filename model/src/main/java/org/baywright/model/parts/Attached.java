package org.baywright.model.parts;

import java.util.EnumSet;
import java.util.Set;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;

/**
 * A plate that is welded to a member, in the member's own axes.
 *
 * @param plate the plate
 * @param at how it lies on the member
 */
public record Attached(Part plate, Placement at) {
    /** Plates that a member stands or ends on. */
    private static final Set<PartKind> ON_AN_END = EnumSet.of(
            PartKind.BASE_PLATE, PartKind.CAP_PLATE, PartKind.KNEE_PLATE, PartKind.APEX_PLATE, PartKind.LEAN_TO_PLATE);

    /** Leg of the fillet on both sides of a cleat, mm. Common practice, no source; or as the engineer says. */
    private static final double CLEAT_LEG = 5;

    /** Whether it closes an end of the member and is welded all round; any other is welded on its two sides. */
    public boolean isOnAnEnd() {
        return ON_AN_END.contains(plate.kind());
    }

    /** Leg of the fillet weld, mm, or as the engineer says. */
    public double weldLeg() {
        return isOnAnEnd() ? PlateRoom.WELD_LEG : CLEAT_LEG;
    }

    /** The middle of the plate, in the member's own axes. */
    public Vec3 middle() {
        return at.toWorld(plate.solid().axisLength() / 2, 0, 0);
    }

    /** The nearest that the plate comes to the start of the member's axis, along it. */
    public double nearStation() {
        return reach(false);
    }

    /** The furthest that the plate reaches along the member's axis. */
    public double farStation() {
        return reach(true);
    }

    private double reach(boolean far) {
        Solid solid = plate.solid();
        double most = Double.NEGATIVE_INFINITY;
        int sign = far ? 1 : -1;
        for (Vec2 corner : solid.profile().outline()) {
            most = Math.max(
                    most,
                    sign
                            * at.toWorld(solid.startStation(corner), corner.x(), corner.y())
                                    .x());
            most = Math.max(
                    most,
                    sign
                            * at.toWorld(solid.endStation(corner), corner.x(), corner.y())
                                    .x());
        }
        return sign * most;
    }
}
