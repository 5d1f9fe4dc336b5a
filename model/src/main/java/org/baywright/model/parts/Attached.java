package org.baywright.model.parts;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;

/**
 * A plate or bracket that is welded to a member, in the member's own axes.
 *
 * @param plate the plate
 * @param at how it lies on the member
 * @param seat the plate that it is welded to and that is itself on the member; empty when it is on the member
 */
public record Attached(Part plate, Placement at, Optional<Part> seat) {
    /** Plates that a member stands or ends on. */
    private static final Set<PartKind> ON_AN_END = EnumSet.of(
            PartKind.BASE_PLATE,
            PartKind.CAP_PLATE,
            PartKind.KNEE_PLATE,
            PartKind.APEX_PLATE,
            PartKind.LEAN_TO_PLATE,
            PartKind.BRIDGING_CLEAT);

    /** A direction that runs along another more than this does so wholly: rafters slope less. */
    private static final double SQUARE = 0.99;

    /** Leg of the fillet on both sides of a cleat, mm. Common practice, no source; or as the engineer says. */
    private static final double CLEAT_LEG = 5;

    /** Whether it closes an end of the member. */
    public boolean isOnAnEnd() {
        return ON_AN_END.contains(plate.kind());
    }

    /** Whether it is welded all round: where a cut end meets a plate or a side; any other on its two sides. */
    public boolean isWeldedRound() {
        return isOnAnEnd() || plate.kind() == PartKind.LIFTING_BRACKET || isOnABracket() && isHung();
    }

    /**
     * Whether it is, or lies on, a bracket that hangs from a rafter rather than stands out from a column. The plate is
     * level either way: square to a column, along a rafter.
     */
    public boolean isHung() {
        return isOnABracket()
                ? Math.abs(at.along().x()) < SQUARE
                : plate.places().get(0).placement().along().z() > SQUARE;
    }

    /** Whether it lies on a bracket that is welded to the member, not on the member itself. */
    public boolean isOnABracket() {
        return plate.kind() == PartKind.LIFTING_PLATE;
    }

    /** Leg of the fillet weld, mm, or as the engineer says. */
    public double weldLeg() {
        boolean lifting = plate.kind().group() == PartKind.Group.LIFTING;
        boolean end = isOnAnEnd() && plate.kind() != PartKind.BRIDGING_CLEAT;
        return end || lifting ? PlateRoom.WELD_LEG : CLEAT_LEG;
    }

    /** The middle of the plate, in the member's own axes. */
    public Vec3 middle() {
        return at.toWorld(plate.solid().axisLength() / 2, 0, 0);
    }

    /** The nearest that the plate comes to the start of the member's axis, along it; of a bracket the end that meets it. */
    public double nearStation() {
        return reach(false);
    }

    /** The furthest that the plate reaches along the member's axis. */
    public double farStation() {
        return reach(true);
    }

    private double reach(boolean far) {
        Solid solid = plate.solid();
        boolean bracket = plate.kind() == PartKind.LIFTING_BRACKET;
        double most = Double.NEGATIVE_INFINITY;
        int sign = far ? 1 : -1;
        for (Vec2 corner : solid.profile().outline()) {
            if (!bracket || !isHung()) {
                Vec3 start = at.toWorld(solid.startStation(corner), corner.x(), corner.y());
                most = Math.max(most, sign * start.x());
            }
            if (!bracket || isHung()) {
                Vec3 end = at.toWorld(solid.endStation(corner), corner.x(), corner.y());
                most = Math.max(most, sign * end.x());
            }
        }
        return sign * most;
    }
}
