package org.baywright.render.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.WallFace;

/** Which members stand in which wall, told by where they are. */
final class WallMembers {
    /** A member of a wall lies with both ends no further than this from the string line, mm. */
    private static final double NEAR = 420;

    private final List<WallFace> walls;

    WallMembers(Shed shed) {
        this.walls = shed.walls();
    }

    /** The wall that a member stands in: near a corner the nearer of two. */
    Optional<WallFace> of(MemberAxis member) {
        return walls.stream().filter(w -> isIn(member, w)).min(Comparator.comparingDouble(w -> off(member, w)));
    }

    /** Whether a member lies in a wall, between its ends and under the roof. */
    static boolean isIn(MemberAxis member, WallFace wall) {
        return near(member.from(), wall) && near(member.to(), wall) && under(member, wall);
    }

    private static double off(MemberAxis member, WallFace wall) {
        Vec3 from = wall.axes().toLocal(member.from());
        Vec3 to = wall.axes().toLocal(member.to());
        return Math.max(Math.abs(from.z()), Math.abs(to.z()));
    }

    private static boolean near(Vec3 end, WallFace wall) {
        Vec3 local = wall.axes().toLocal(end);
        return Math.abs(local.z()) < NEAR && local.x() > -NEAR && local.x() < wall.length() + NEAR;
    }

    private static boolean under(MemberAxis member, WallFace wall) {
        Vec3 local = wall.axes().toLocal(member.middle());
        double u = Math.max(0, Math.min(wall.length(), local.x()));
        return local.y() < wall.heightAt(u);
    }
}
