package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RoofLine;
import org.baywright.model.setout.WallPosts.Post;

/**
 * The head of an upright: where it is cut, and in an end wall the slotted cleat on its inside that holds it to the rafter
 * over it. The cleat is welded under the rafter; up the rafter's side where that is in line with the upright's inside; or
 * under a seat, a plate along the rafter's underside, where the upright's inside lies clear of the rafter.
 *
 * <pre>
 *    under          beside          on a seat
 *   |rafter|      |rafter||        |rafter|
 *   |______|      |______||        |______|___
 *       |                |            ========
 *   |  ||          |    ||          |      ||
 *   upright
 * </pre>
 *
 * @param bay the bay
 * @param post the upright
 */
record PostHead(WallBay bay, Post post) {
    private static final double THICKNESS = SlottedCleat.THICKNESS;

    /** How far a cleat lies on a rafter's side, and a seat under it, at most. Common practice, no source. */
    private static final double ON_SIDE = 40;

    private static final double UNDER = 60;

    /** A cleat that stands no further than this into a rafter's side lies on it. */
    private static final double LEVEL = 0.05;

    /** What holds the cleat. */
    private enum Hold {
        UNDER,
        BESIDE,
        SEAT
    }

    /** From the string line inward. */
    private record Across(double from, double to) {}

    private Member member() {
        return bay.post();
    }

    private boolean isEnd() {
        return bay.face().wall().isEnd();
    }

    List<Piece> pieces() {
        if (!isEnd()) {
            return List.of();
        }
        List<Piece> pieces = new ArrayList<>(List.of(cleat()));
        if (hold() == Hold.SEAT) {
            pieces.add(seat());
        }
        return pieces;
    }

    private double slip() {
        return bay.definition().envelope().walls().mullions().slipGap();
    }

    /** The plane that an upright is cut to: along the rafter in an end wall unless it stands under the ridge. */
    Plane top() {
        double u = post.u();
        if (!isEnd() || isRidge()) {
            return Plane.through(new Vec3(0, 0, level()), Vec3.UP);
        }
        Vec3 middle = bay.face().toWorld(u, bay.underSteel(u) - seatPlumb() - slip(), 0);
        return Plane.through(middle, roof().outward());
    }

    /** The height that it is cut to where it is cut level. */
    double level() {
        return (isEnd() ? lowest(widest() / 2) : lowestSide()) - slip();
    }

    /** Of the upright and, where there is one, the seat over it, which hangs lower the wider it is. */
    private double widest() {
        return hold() == Hold.SEAT ? Math.max(member().width(), width()) : member().width();
    }

    private RoofLine roof() {
        return bay.roof(bay.face().toWorld(post.u(), 0, 0).x());
    }

    /** What a seat takes of the height. */
    private double seatPlumb() {
        return hold() != Hold.SEAT ? 0 : isRidge() ? THICKNESS : roof().plumb(THICKNESS);
    }

    /** The lowest of the steel over a width about the upright; at the ridge that may be the foot of the plates there. */
    private double lowest(double half) {
        double rafters = rafters(half);
        return (isRidge() ? Math.min(rafters, apexFoot()) : rafters) - seatPlumb();
    }

    private double rafters(double half) {
        return Math.min(bay.underSteel(post.u() - half), bay.underSteel(post.u() + half));
    }

    private double width() {
        return new SlottedCleat(member(), slip(), 0).width();
    }

    private Hold hold() {
        Across over = over();
        double inside = member().depth();
        double shared = Math.min(inside + THICKNESS, over.to) - Math.max(inside, over.from);
        if (shared >= THICKNESS / 2) {
            return Hold.UNDER;
        }
        double off = inside - over.to;
        return off > -LEVEL && off < Standing.TOUCH && !isRidge() ? Hold.BESIDE : Hold.SEAT;
    }

    /** Where the rafter, or the plates at the ridge, lie over the upright. */
    private Across over() {
        double middle = bay.rafterInside(post.u());
        double half = bay.rafter(post.u()).width() / 2;
        if (isRidge() && apexFoot() < rafters(width() / 2)) {
            half = apex().width() / 2;
        }
        return new Across(middle - half, middle + half);
    }

    private ApexDesign apex() {
        return ApexDesign.of(
                bay.definition().rafterAt(bay.frame(), Side.LEFT),
                bay.definition().rafterAt(bay.frame(), Side.RIGHT),
                bay.setOut().main(Side.LEFT).roof());
    }

    /** The lower edge of the plates at the ridge. */
    private double apexFoot() {
        double thickness = apexThickness();
        double top = bay.setOut().main(Side.LEFT).roof().heightAt(bay.setOut().span() / 2 - thickness);
        return thickness > 0 ? top - apex().height() : Double.POSITIVE_INFINITY;
    }

    private double apexThickness() {
        return bay.definition().plates().apexThickness();
    }

    private boolean isRidge() {
        boolean gable = bay.definition().shape().roofShape() == RoofShape.GABLE;
        double x = bay.face().toWorld(post.u(), 0, 0).x();
        double room = member().width() / 2 + apexThickness() + PlateRoom.WELD;
        return gable && bay.face().isMain() && Math.abs(x - bay.setOut().span() / 2) < room;
    }

    /** In a side wall the lowest of the roof's steel plane over the upright. */
    private double lowestSide() {
        return Math.min(bay.roofAt(post.u(), 0), bay.roofAt(post.u(), member().depth()));
    }

    /** On the inside of the upright; where it stands under the rafter its upper edge is cut to the slope. */
    private Piece cleat() {
        boolean beside = hold() == Hold.BESIDE;
        double onSide = beside ? ON_SIDE : 0;
        SlottedCleat cleat = new SlottedCleat(member(), slip(), onSide);
        double half = cleat.width() / 2;
        double over = bay.underSteel(post.u() + half) - bay.underSteel(post.u() - half);
        double rise = beside || isRidge() || Math.abs(over) < LEVEL ? 0 : over;
        double height = PlateRoom.upTo1(cleat.height() + Math.abs(rise));
        double middle = lowest(half) + onSide + Math.abs(rise) - height / 2;
        Vec3 origin = bay.face().toWorld(post.u(), middle, -member().depth());
        // A plate of the other hand is the same plate turned about.
        Placement near = Placement.of(origin, bay.out().negated(), Vec3.UP);
        boolean turned = near.width().dot(bay.u()) * rise < 0;
        Placement at = turned ? Placement.of(near.toWorld(THICKNESS, 0, 0), bay.out(), Vec3.UP) : near;
        List<Hole> holes = cleat.holes().stream()
                .map(hole -> hole.shifted((height - cleat.height()) / 2 - Math.abs(rise), 0))
                .toList();
        return PlateMaker.sloped(
                PartKind.MULLION_CLEAT, height, cleat.width(), Math.abs(rise), THICKNESS, holes, bay.place(at));
    }

    /** Along the underside of the rafter, or level under the ridge, from under the steel to the cleat's inner face. */
    private Piece seat() {
        Across over = over();
        double inside = member().depth() + THICKNESS;
        boolean beyond = inside > over.to;
        double length = PlateRoom.upTo1(
                beyond
                        ? inside - Math.max(over.from, over.to - UNDER)
                        : Math.min(over.to, over.from + UNDER) - inside + THICKNESS);
        double from = beyond ? inside - length : inside - THICKNESS;
        double to = from + length;
        Vec3 up = isRidge() ? Vec3.UP : roof().outward();
        // Its underside reaches as far down the slope as the cleat does.
        double slope = Math.hypot(up.x(), up.y());
        double width = isRidge() ? width() : PlateRoom.upTo5((width() + 2 * THICKNESS * slope) / up.z());
        double underside = isRidge() ? lowest(width / 2) + THICKNESS : bay.underSteel(post.u());
        Vec3 on = bay.face().toWorld(post.u(), underside, -(from + to) / 2);
        Placement at = Placement.of(on.minus(up.times(THICKNESS)), up, bay.out());
        return PlateMaker.plate(PartKind.MULLION_CLEAT, length, width, THICKNESS, List.of(), bay.place(at));
    }
}
