package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.baywright.model.definition.KneeJoint;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.GirtRows;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.WallCover;

/**
 * What the girts of a bay are cut at: the ends of the bay, the mullions, and the edges of openings.
 *
 * <p>Outside the columns girts run past the corner in end walls, to the edge of the column beside an open bay, and
 * nearly to the frame line where a neighbour goes on. Flush girts stop at the faces of what they stand between.
 *
 * @param bay the bay
 * @param besideRafters whether flush girts are as high as the rafters
 */
record GirtSupports(WallBay bay, boolean besideRafters) {
    /** Half of what is left between two lengths. Common practice, no source. */
    static final double HALF_GAP = 5;

    /** Width of a cleat outside the columns. Common practice, no source. */
    static final double CLEAT = 40;

    /** From a frame to a Z where the arms that carry a lean-to's end wall come through. Common practice, no source. */
    private static final double ARM_GAP = 15;

    /** What the cap under a rafter reaches past it. Common practice, no source. */
    private static final double CAP = PlateRoom.WELD + 5;

    /**
     * What a row is cut at.
     *
     * @param at its middle
     * @param before where the length before it ends
     * @param after where the length after it begins
     * @param gap from the steel to the face that carries its cleat
     * @param toBolt from where a length ends to the middle of what carries its cleat, or to its bolts
     */
    record Support(double at, double before, double after, double gap, double toBolt) {
        Support(double at, double before, double after, double gap) {
            this(at, before, after, gap, GirtSpan.End.TO_BOLTS);
        }

        /** The end of a length that begins here, unless the rake ends it sooner. */
        GirtSpan.End from(double u) {
            return new GirtSpan.End(u, gap, u == after ? toBolt : GirtSpan.End.TO_BOLTS, Optional.empty());
        }

        /** The end of a length that ends here, unless the rake ends it sooner. */
        GirtSpan.End to(double u) {
            return new GirtSpan.End(u, gap, u == before ? toBolt : GirtSpan.End.TO_BOLTS, Optional.empty());
        }
    }

    private Member girt() {
        return bay.definition().envelope().walls().girts().member();
    }

    private boolean flush() {
        return bay.definition().envelope().walls().girts().flush();
    }

    private boolean isEndWall() {
        return bay.face().wall().isEnd();
    }

    /** From left to right. */
    List<Support> all() {
        double post = bay.post().width();
        double past = flush() ? post / 2 + HALF_GAP : HALF_GAP;
        // Outside, lengths meet over the middle of a jamb, so that each has its cleat on it.
        double aside = flush() ? post + HALF_GAP : post / 2 + HALF_GAP;
        double inside = flush() ? HALF_GAP : HALF_GAP - post / 2;
        List<Support> at = new ArrayList<>(List.of(end(true), end(false)));
        bay.posts().posts().stream()
                .filter(p -> !p.jamb())
                .forEach(p -> at.add(new Support(p.u(), p.u() - past, p.u() + past, HALF_GAP)));
        for (OpeningPlace o : bay.openings()) {
            if (bay.openings().stream().anyMatch(o::isOver)) {
                continue;
            }
            at.add(new Support(o.left(), o.left() - aside, o.left() + inside, HALF_GAP));
            at.add(new Support(o.right(), o.right() - inside, o.right() + aside, HALF_GAP));
        }
        at.sort(Comparator.comparingDouble(Support::at));
        return at;
    }

    private Support end(boolean left) {
        double line = left ? bay.cover().bay().from() : bay.cover().bay().to();
        int into = left ? 1 : -1;
        double room = flush() ? columnRoom(line, left) : outsideRoom(left);
        double gap = flush() ? room - carrier(line, left) : beside(line, room, left);
        double at = line + into * room;
        return new Support(at, at, at, gap, pastCorner(line, left) ? cornerBolt(line, room) : GirtSpan.End.TO_BOLTS);
    }

    /** Whether a girt outside the columns runs past the corner of an end wall. */
    private boolean pastCorner(double line, boolean left) {
        return isEndWall() && !flush() && !meetsMain(left);
    }

    /** From the end of such a girt to a cleat on the inner edge of the corner's column: a flange, when it has such. */
    private double cornerBolt(double u, double room) {
        return cornerLine(u).column(bay.definition(), bay.frame()).depth() - CLEAT / 2 - room;
    }

    /** From the end of the bay into it, to where a girt outside the columns ends; negative past it. */
    private double outsideRoom(boolean left) {
        if (isEndWall()) {
            return meetsMain(left) ? girt().depth() + HALF_GAP : -girt().depth();
        }
        if (bay.isAtCorner(left)) {
            return 0;
        }
        if (isBesideEndOfLeanTo(left)) {
            return ARM_GAP;
        }
        return bay.goesOn(left) ? HALF_GAP : -column(left).width() / 2;
    }

    /** Whether the sheeted end wall of a lean-to meets a row of Zs there, which its cleats cannot lie over. */
    private boolean isBesideEndOfLeanTo(boolean left) {
        return !isEndWall()
                && bay.face().isMain()
                && GirtRows.stand(bay.definition()).isLapped()
                && bay.covers().stream()
                        .map(WallCover::face)
                        .filter(end -> end.wall().isEnd())
                        .anyMatch(end -> end.leanTo()
                                .filter(lean ->
                                        Wall.of(lean.side()) == bay.face().wall())
                                .map(lean -> end.wall() == Wall.FRONT ? lean.firstFrame() : lean.lastFrame())
                                .filter(frame -> frame == frame(left))
                                .isPresent());
    }

    /** Whether that end of a lean-to's end wall is at the main building. */
    private boolean meetsMain(boolean left) {
        return bay.face()
                .leanTo()
                .map(l -> (l.side() == Side.RIGHT) == (bay.u().x() > 0) == left)
                .orElse(false);
    }

    private int frame(boolean left) {
        return bay.cover().bay().bay() + (isLower(left) ? 0 : 1);
    }

    private boolean isLower(boolean left) {
        return left == (bay.u().y() > 0);
    }

    private ColumnLine line() {
        return bay.face().leanTo().orElseGet(() -> bay.setOut().main(bay.side()));
    }

    private Member column(boolean left) {
        return line().column(bay.definition(), frame(left));
    }

    /** The girts of a lean-to's end wall stop beside those of the main walls: cleats reach the column where it is flush. */
    private double beside(double u, double room, boolean left) {
        if (!isEndWall() || !meetsMain(left)) {
            return HALF_GAP;
        }
        Member column = nearestMain(u).column(bay.definition(), bay.frame());
        // The cleat of the main wall's row stands on the inner edge of the column.
        return isInPlane(column) ? room + Math.min(CLEAT, column.depth() - CLEAT) : HALF_GAP;
    }

    /** Whether a column of the main frame has its face in the plane of the wall's steel. */
    private boolean isInPlane(Member column) {
        double plane = bay.face().toWorld(0, 0, 0).y();
        double middle = bay.setOut().middle(bay.frame(), column.width());
        return Math.abs(middle + bay.out().y() * column.width() / 2 - plane) < 1;
    }

    /** From the end of the bay to what carries a flush girt's cleat; girts deeper than it stop further off. */
    private double carrier(double u, boolean left) {
        if (!isEndWall()) {
            return besideRafters ? carrierFace(u, left) : columnFace(u, left);
        }
        return meetsMain(left)
                ? 0
                : cornerLine(u).column(bay.definition(), bay.frame()).depth();
    }

    private ColumnLine cornerLine(double u) {
        return bay.face().leanTo().orElseGet(() -> nearestMain(u));
    }

    /** From the end of the bay to the face that looks into it of its column or rafter, and a gap. */
    private double columnRoom(double u, boolean left) {
        if (isEndWall()) {
            boolean main = meetsMain(left);
            ColumnLine line = bay.face().leanTo().filter(l -> !main).orElseGet(() -> nearestMain(u));
            double depth = line.column(bay.definition(), bay.frame()).depth();
            return (main ? 0 : Math.max(depth, girt().depth())) + HALF_GAP;
        }
        double face = columnFace(u, left);
        double furthest = besideRafters ? Math.max(face, rafterFace(u, left)) + CAP : face;
        return (bay.isAtCorner(left) ? Math.max(furthest, girt().depth()) : furthest) + HALF_GAP;
    }

    private double columnFace(double u, boolean left) {
        double width = column(left).width();
        return face(u, left, bay.setOut().middle(frame(left), width), width / 2);
    }

    /** The rafter's face, or that of a butted column beside it. */
    private double carrierFace(double u, boolean left) {
        boolean butted = bay.definition().shape().kneeJoint() == KneeJoint.BUTTED;
        return butted ? Math.max(columnFace(u, left), rafterFace(u, left)) : rafterFace(u, left);
    }

    private double rafterFace(double u, boolean left) {
        double width = line().rafter(bay.definition(), frame(left)).width();
        double middle = bay.setOut().rafterMiddle(bay.definition(), line(), frame(left));
        return face(u, left, middle, width / 2);
    }

    /** From the end of the bay to the face of something with its middle at a place along the building. */
    private double face(double u, boolean left, double middle, double half) {
        double y = middle + (isLower(left) ? half : -half);
        return Math.abs((y - bay.face().axes().origin().y()) * bay.u().y() - u);
    }

    private ColumnLine nearestMain(double u) {
        double x = bay.face().toWorld(u, 0, 0).x();
        ColumnLine left = bay.setOut().main(Side.LEFT);
        ColumnLine right = bay.setOut().main(Side.RIGHT);
        return Math.abs(x - left.x()) < Math.abs(x - right.x()) ? left : right;
    }

    /** The frame at an end of the bay that girts may lap over: one that sheets go on past. */
    OptionalInt lapFrame(boolean left) {
        boolean inner = !isEndWall() && bay.goesOn(left) && !isBesideEndOfLeanTo(left);
        return inner ? OptionalInt.of(frame(left)) : OptionalInt.empty();
    }
}
