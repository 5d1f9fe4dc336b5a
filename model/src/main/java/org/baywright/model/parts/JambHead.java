package org.baywright.model.parts;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RoofLine;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RowStand;
import org.baywright.model.setout.WallPosts.Post;

/**
 * The head of a side wall's jamb, which stands under no rafter: held to the eave purlin by an angle of two plates. A leg
 * lies flat on the jamb's side, under the roof's steel plane, and reaches out to the purlin; a cleat stands on the leg,
 * along the purlin's web, up to past its upper bolt.
 *
 * <pre>
 *   from the end of the wall:             from above:
 *        Z ||[] cleat                       ===[]=== purlin
 *   _______||[]______ roof's steel             [] cleat
 *           |[]___                        _____[]______
 *           |_leg_|___|                  |_____________| leg
 *               | jamb                        |  jamb |
 * </pre>
 *
 * <p>All stand on the row's line, whichever of lapped lengths lies there: bolts draw a web's thickness up, as at frames.
 *
 * <p>Common practice, no source: 8 mm plates, and the purlin's usual pair of bolts in round holes, so that the purlin
 * rests on the jamb between its frames and is held down by it.
 *
 * @param bay the bay
 * @param post the jamb
 */
record JambHead(WallBay bay, Post post) {
    /** A leg, the cleat on it, and the middle of the bolts on the cleat's face that the row lies on. */
    record Hold(Piece leg, Piece cleat, Vec3 bolts) {
        List<Piece> pieces() {
            return List.of(leg, cleat);
        }
    }

    private static final double THICKNESS = CleatPlate.THICKNESS;

    /** From the leg to the bolts: room for a nut and its spanner. Common practice, no source. */
    private static final double TO_BOLTS = 35;

    /** How far the leg reaches down beside the jamb, and at least. Common practice, no source. */
    private static final double LAP = 80;

    private static final double LEAST_LAP = 50;

    /** From the leg to the roof's steel plane, on which the row lies. */
    private static final double CLEAR = 5;

    /** A row further off, across or in height, is not this jamb's. Common practice, no source. */
    private static final double REACH = 300;

    /** The heads of the jambs of a bay of a side wall. */
    static List<JambHead> of(WallBay bay) {
        return bay.face().wall().isEnd()
                ? List.of()
                : bay.posts().posts().stream()
                        .filter(Post::jamb)
                        .map(post -> new JambHead(bay, post))
                        .toList();
    }

    private Member member() {
        return bay.post();
    }

    /** Every way to hold it, the better ones first: to the nearest row, on the side away from the opening. */
    Stream<Hold> ways(List<RowBays> slopes) {
        return slopes.stream()
                .flatMap(slope -> Stream.iterate(0, r -> r < slope.rows().at().size(), r -> r + 1)
                        .map(row -> new Over(slope, row)))
                .filter(over -> off(over) < REACH)
                .sorted((a, b) -> Double.compare(off(a), off(b)))
                .flatMap(over -> Stream.of(away(), -away()).flatMap(side -> new Angle(over, side).hold()));
    }

    /** A row of purlins. */
    private record Over(RowBays bays, int row) {
        RoofRows rows() {
            return bays.rows();
        }

        double at() {
            return rows().at().get(row);
        }
    }

    private double off(Over over) {
        Vec3 jamb = bay.face().toWorld(post.u(), top(), -member().depth() / 2);
        Vec3 line = over.rows().place(over.at(), jamb.y(), 0);
        boolean along = over.bays.bays().anyMatch(b -> over.bays.start(b) < jamb.y() && jamb.y() < over.bays.end(b));
        return along ? jamb.distance(line) : Double.POSITIVE_INFINITY;
    }

    private double top() {
        return new PostHead(bay, post).level();
    }

    /** To the right, seen from outside, as 1, or to the left. */
    private int away() {
        return bay.openings().stream().anyMatch(o -> o.left() < post.u() && post.u() < o.right() + member().width())
                ? 1
                : -1;
    }

    /** The two plates that hold the jamb to a row, on one of its sides. */
    private final class Angle {
        private final Over over;
        private final int side;
        private final RoofLine roof;
        private final RowStand stand;
        private final double bolts;
        private final double line;
        private final double foot;

        Angle(Over over, int side) {
            this.over = over;
            this.side = side;
            this.roof = over.rows().slope().roof();
            this.stand = over.rows().standOf(over.row);
            this.bolts = post.u() + side * (member().width() / 2 + THICKNESS + TO_BOLTS);
            this.line = over.at();
            this.foot = Math.min(top(), under(line)) - LAP;
        }

        private double y() {
            return bay.face().toWorld(bolts, 0, 0).y();
        }

        private double under(double at) {
            return over.rows().place(at, 0, 0).z();
        }

        /** How far the cleat reaches below the roof's steel plane, square to it: as far down as the leg. */
        private double below() {
            return Math.floor((under(line) - foot) * roof.cosine() / 5) * 5;
        }

        Stream<Hold> hold() {
            double height = Math.floor((roofOver() - CLEAR - foot) / 5) * 5;
            return height < LEAST_LAP
                    ? Stream.empty()
                    : Stream.of(new Hold(leg(height), cleat(), over.rows().place(line, y(), bolted())));
        }

        /** Height of the bolts over the roof's steel plane. */
        private double bolted() {
            return stand.member().depth() / 2;
        }

        private double low() {
            return line - (stand.isCleatAbove() ? 0 : THICKNESS);
        }

        private Piece cleat() {
            CleatPlate plate = new CleatPlate(stand);
            double height = plate.height() + below();
            Vec3 origin = over.rows().place(low(), y(), plate.height() - height / 2);
            List<Hole> holes = plate.holes(List.of(0.0)).stream()
                    .map(h -> h.shifted(below() / 2, 0))
                    .toList();
            Placement at = Placement.of(origin, over.rows().up(), roof.outward());
            return PlateMaker.plate(PartKind.JAMB_CLEAT, height, 2 * TO_BOLTS, THICKNESS, holes, bay.place(at));
        }

        /** How far inside the string line the cleat lies below the roof's steel plane, at its corners there. */
        private DoubleStream cleatInside() {
            return DoubleStream.of(low(), low() + THICKNESS)
                    .flatMap(up -> DoubleStream.of(0, -below()).map(above -> inside(up, above)));
        }

        private double inside(double up, double above) {
            return -bay.face().axes().toLocal(over.rows().place(up, y(), above)).z();
        }

        private double from() {
            return Math.min(0, cleatInside().min().orElseThrow());
        }

        private double to() {
            return Math.max(member().depth(), cleatInside().max().orElseThrow());
        }

        /** The lowest of the roof's steel plane over the leg. */
        private double roofOver() {
            return DoubleStream.of(from(), to())
                    .map(in -> roof.heightAt(bay.face().toWorld(bolts, 0, -in).x()))
                    .min()
                    .orElseThrow();
        }

        /** From the far side of the jamb to the cleat, and a little past the jamb as plate is cut. */
        private Piece leg(double height) {
            double length = PlateRoom.upTo5(to() - from());
            double middle = from() < 0 ? from() + length / 2 : to() - length / 2;
            Vec3 origin = bay.face().toWorld(post.u() + side * member().width() / 2, foot + height / 2, -middle);
            Placement at = Placement.of(origin, bay.u().times(side), Vec3.UP);
            return PlateMaker.plate(PartKind.JAMB_CLEAT, height, length, THICKNESS, List.of(), bay.place(at));
        }
    }
}
