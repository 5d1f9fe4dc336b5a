package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.catalogue.Section;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.GirtRows;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RowStand;

/**
 * The girts of a bay with their cleats and bridging: each length runs from support to support, butted there, and stops
 * at openings. A channel has its back up and its cleat on it, so that nothing lies in it.
 *
 * @param bay the bay
 * @param rows the heights of their backs
 * @param stand how they stand on their lines
 */
record GirtMaker(WallBay bay, GirtRows rows, RowStand stand) {
    /** Half of what is left between two lengths. Common practice, no source. */
    private static final double HALF_GAP = 5;

    /** From the end of a length to its bolts, and half a cleat. Common practice, no source. */
    private static final double TO_BOLTS = 25;

    private static final double CLEAT_WIDTH = 40;

    /** A cleat on the side of a flush girt's support reaches over the gap. */
    private static final double FLUSH_WIDTH = 2 * (TO_BOLTS + HALF_GAP);

    private static final double CLEAT = 8;
    private static final double HOLE = 18;
    private static final double EDGE = 25;

    /** A shorter length is left out. Common practice, no source. */
    private static final double LEAST = 400;

    /** Between a row's cleat and the rafter's top or an opening. Common practice, no source. */
    private static final double CLEAR = 10;

    /** What caps and apex plates take below the rafters. Common practice, no source. */
    private static final double PLATES_BELOW = 60;

    /** Bridging rows increase by one for each of these lengths. Common practice, no source. */
    private static final double BRIDGED = 3000;

    /** A length along the wall at one height. */
    private record Length(double from, double to, double height) {
        double middle() {
            return (from + to) / 2;
        }
    }

    private Member member() {
        return bay.definition().envelope().walls().girts().member();
    }

    private boolean flush() {
        return bay.definition().envelope().walls().girts().flush();
    }

    GirtMaker(WallBay bay, GirtRows rows) {
        this(bay, rows, stand(bay.definition().envelope().walls().girts().member()));
    }

    private static RowStand stand(Member member) {
        return RowStand.of(member, RowStand.of(member, false).isChannel());
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        List<List<Length>> byRow = rows.at().stream().map(this::lengths).toList();
        for (List<Length> row : byRow) {
            row.forEach(length -> girt(length, pieces));
        }
        if (!flush()) {
            bay.openings().forEach(opening -> trimmers(opening, pieces));
        }
        for (int i = 1; i < byRow.size(); i++) {
            bridging(byRow.get(i - 1), byRow.get(i), pieces);
        }
        return pieces;
    }

    private double lowest() {
        return -edge(-1);
    }

    /** The row's reach below (−1) or above (+1) its line. */
    private double edge(int up) {
        double turn = stand.turned() ? -1 : 1;
        return member().profile().outline().stream()
                        .mapToDouble(p -> stand.centroidUp() + turn * p.y())
                        .map(v -> up * v)
                        .max()
                        .orElseThrow()
                * up;
    }

    /** The row at a height: between supports, less what openings take, under the rake. */
    private List<Length> lengths(double height) {
        double top = height + CLEAT + CLEAR;
        double bottom = height - lowest();
        List<Length> lengths = new ArrayList<>();
        List<Support> at = supports();
        for (int i = 1; i < at.size(); i++) {
            double from = at.get(i - 1).after;
            double to = at.get(i).before;
            boolean taken = isTaken((from + to) / 2, bottom, top);
            double[] under = underRake(from, to, top);
            if (!taken && under[1] - under[0] >= LEAST) {
                lengths.add(new Length(under[0], under[1], height));
            }
        }
        return lengths;
    }

    /**
     * What a row is cut at.
     *
     * @param at its middle
     * @param before where the length before it ends
     * @param after where the length after it begins
     */
    private record Support(double at, double before, double after) {}

    private boolean isTaken(double u, double bottom, double top) {
        // Header and sill lie in the plane of flush girts.
        double trim = flush() ? bay.post().width() + CLEAR : 0;
        return bay.openings().stream()
                .anyMatch(o -> u > o.left() && u < o.right() && top > o.sill() - trim && bottom < o.head() + trim);
    }

    /** Where rows may end: the ends of the bay, the middles of mullions, and the edges of openings. */
    private List<Support> supports() {
        double post = bay.post().width();
        double past = flush() ? post / 2 + HALF_GAP : HALF_GAP;
        double aside = flush() ? post + HALF_GAP : 0;
        double inside = flush() ? HALF_GAP : 0;
        List<Support> at = new ArrayList<>();
        at.add(new Support(start(), start(), start()));
        at.add(new Support(end(), end(), end()));
        bay.posts().posts().stream()
                .filter(p -> !p.jamb())
                .forEach(p -> at.add(new Support(p.u(), p.u() - past, p.u() + past)));
        for (OpeningPlace o : bay.openings()) {
            at.add(new Support(o.left(), o.left() - aside, o.left() + inside));
            at.add(new Support(o.right(), o.right() - inside, o.right() + aside));
        }
        at.sort(Comparator.comparingDouble(Support::at));
        return at;
    }

    /** Outside the columns end walls run past the corner; flush girts stop at the columns' faces. */
    private double start() {
        double u = bay.cover().bay().from();
        return flush() ? u + columnRoom(u, true) : u - pastCorner(u, true) + HALF_GAP * (isInner(true) ? 1 : 0);
    }

    private double end() {
        double u = bay.cover().bay().to();
        return flush() ? u - columnRoom(u, false) : u + pastCorner(u, false) - HALF_GAP * (isInner(false) ? 1 : 0);
    }

    /** Whether that end of the bay meets a neighbouring bay or the main building's girts. */
    private boolean isInner(boolean left) {
        if (!bay.face().wall().isEnd()) {
            return left
                    ? bay.cover().bay().from() > 1
                    : bay.cover().bay().to() < bay.face().length() - 1;
        }
        return meetsMain(left);
    }

    /** Whether that end of a lean-to's end wall is at the main building. */
    private boolean meetsMain(boolean left) {
        return bay.face()
                .leanTo()
                .map(l -> (l.side() == Side.RIGHT) == (bay.u().x() > 0) == left)
                .orElse(false);
    }

    private double pastCorner(double u, boolean left) {
        if (!bay.face().wall().isEnd()) {
            return 0;
        }
        return meetsMain(left) ? -member().depth() : member().depth();
    }

    /** From the end of the bay to the face of its column that looks into the bay, and a gap. */
    private double columnRoom(double u, boolean left) {
        if (bay.face().wall().isEnd()) {
            boolean main = meetsMain(left);
            ColumnLine line = bay.face().leanTo().filter(l -> !main).orElseGet(() -> nearestMain(u));
            double depth = line.column(bay.definition(), bay.frame()).depth();
            return (main ? 0 : Math.max(depth, member().depth())) + HALF_GAP;
        }
        boolean lower = left == (bay.u().y() > 0);
        int frame = bay.cover().bay().bay() + (lower ? 0 : 1);
        ColumnLine line = bay.face().leanTo().orElseGet(() -> bay.setOut().main(bay.side()));
        double width = line.column(bay.definition(), frame).width();
        double middle = bay.setOut().middle(frame, width);
        double y = middle + (lower ? width : -width) / 2;
        double face = Math.abs((y - bay.face().axes().origin().y()) * bay.u().y() - u);
        boolean corner = left ? u < 1 : u > bay.face().length() - 1;
        return (corner ? Math.max(face, member().depth()) : face) + HALF_GAP;
    }

    private ColumnLine nearestMain(double u) {
        double x = bay.face().toWorld(u, 0, 0).x();
        ColumnLine left = bay.setOut().main(Side.LEFT);
        ColumnLine right = bay.setOut().main(Side.RIGHT);
        return Math.abs(x - left.x()) < Math.abs(x - right.x()) ? left : right;
    }

    /** The stretch of a length over which the roof's steel leaves room for it. */
    private double[] underRake(double from, double to, double top) {
        if (!bay.face().wall().isEnd()) {
            return top <= bay.sideTop(flush() ? PLATES_BELOW : 0, flush())
                    ? new double[] {from, to}
                    : new double[] {from, from};
        }
        double step = 1;
        double a = from;
        double b = to;
        if (room(a) < top) {
            a = meeting(a, b, top);
        }
        if (room(b) < top) {
            b = meeting(b, a, top);
        }
        return Math.abs(b - a) < step || room((a + b) / 2) < top ? new double[] {from, from} : new double[] {a, b};
    }

    private double room(double u) {
        double length = bay.face().length();
        double inside = Math.max(0, Math.min(length, u));
        return flush() || bay.rafterStandsOut()
                ? bay.underRafter(inside) - PLATES_BELOW
                : bay.face().heightAt(inside);
    }

    /** Where the rake reaches a height on the way from a place below it; the roof is straight, or turns once. */
    private double meeting(double low, double towards, double top) {
        double inside = low;
        double outside = towards;
        for (double u : bay.face().outline().stream().map(Vec2::x).toList()) {
            boolean between = (u - low) * (towards - u) > 0;
            if (between && room(u) > room(outside)) {
                outside = u;
            }
        }
        if (room(outside) < top) {
            return towards;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (inside + outside) / 2;
            if (room(middle) < top) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return outside;
    }

    private void girt(Length length, List<Piece> pieces) {
        Vec3 width = stand.turned() ? Vec3.UP.negated() : Vec3.UP;
        Vec3 along = bay.out().cross(width);
        boolean onward = along.dot(bay.u()) > 0;
        List<Double> bolts = bolts(length);
        double marked = onward ? length.from : length.to;
        double outward = outward();
        Vec3 origin = bay.face().toWorld(marked, length.height + stand.centroidUp(), outward);
        pieces.add(new Piece(
                PartKind.GIRT,
                new Material.Bar(member().section(), member().turned()),
                Solid.square(member().profile(), 0, length.to - length.from),
                List.of(),
                bolts.stream().map(b -> Math.abs(b - marked)).sorted().toList(),
                bay.place(Placement.of(origin, along, bay.out()))));
        pieces.add(cleat(length.from + TO_BOLTS, length.height));
        pieces.add(cleat(length.to - TO_BOLTS, length.height));
    }

    /** From the string line to the section's centroid. */
    private double outward() {
        double foot = stand.centroidHeight();
        return flush() ? foot - member().depth() : foot;
    }

    private List<Double> bolts(Length length) {
        List<Double> at = new ArrayList<>(List.of(length.from + TO_BOLTS));
        at.addAll(bridges(length));
        at.add(length.to - TO_BOLTS);
        return at;
    }

    /** A plate on the support, over the row's back, square to the wall. */
    private Piece cleat(double u, double height) {
        double depth = Math.min(member().depth() - 2, PlateRoom.upTo5(member().depth() * 0.75));
        double from = flush() ? -member().depth() : 0;
        Vec3 origin = bay.face().toWorld(u, height, from + depth / 2);
        Placement at = Placement.of(origin, Vec3.UP, bay.out());
        double gauge = member().depth() < 90 ? 0 : member().depth() < 125 ? 40 : 60;
        double middle = member().depth() / 2 - depth / 2;
        List<Hole> holes = gauge == 0
                ? List.of(new Hole(new Vec2(middle, 0), HOLE))
                : List.of(
                        new Hole(new Vec2(middle - gauge / 2, 0), HOLE),
                        new Hole(new Vec2(middle + gauge / 2, 0), HOLE));
        return PlateMaker.plate(
                PartKind.GIRT_CLEAT, depth, flush() ? FLUSH_WIDTH : CLEAT_WIDTH, CLEAT, holes, bay.place(at));
    }

    /** Outside a header and a sill a girt each, unless a row is there already; flush girts leave that to the trims. */
    private void trimmers(OpeningPlace opening, List<Piece> pieces) {
        double head = opening.head() + lowest();
        double sill = opening.sill() - CLEAT - edge(1);
        Length over = new Length(opening.left(), opening.right(), head);
        Length below = new Length(opening.left(), opening.right(), sill);
        boolean rowOver =
                rows.at().stream().anyMatch(r -> r - lowest() >= opening.head() && r - lowest() < head + CLEAT + CLEAR);
        boolean rowBelow = rows.at().stream()
                .anyMatch(r -> r + CLEAT + CLEAR <= opening.sill() && r + CLEAT > sill - lowest() - CLEAR);
        if (!rowOver && underRake(over.from, over.to, head + CLEAT + CLEAR)[1] == over.to) {
            girt(over, pieces);
        }
        if (!rowBelow && sill > lowest()) {
            girt(below, pieces);
        }
    }

    private boolean isBridged() {
        return stand.web() > 0;
    }

    /** Where a length is bridged. @source none to 3 m, one to 6 m, two to 9 m: common practice */
    private List<Double> bridges(Length length) {
        int n = isBridged() ? (int) Math.ceil((length.to - length.from) / BRIDGED - 1e-9) - 1 : 0;
        List<Double> at = new ArrayList<>();
        for (int i = 1; i <= n; i++) {
            at.add(length.from + (length.to - length.from) * i / (n + 1));
        }
        return at;
    }

    /** Between two rows whose lengths are bridged at the same places, from web to web. */
    private void bridging(List<Length> lower, List<Length> upper, List<Piece> pieces) {
        Section angle = bay.definition().envelope().bracing().flyBraceSection();
        Profile profile = angle.profile();
        for (Length length : lower) {
            for (double u : bridges(length)) {
                upper.stream()
                        .filter(o -> bridges(o).stream().anyMatch(b -> Math.abs(b - u) < 1))
                        .findFirst()
                        .ifPresent(o -> {
                            double from = length.height + (stand.isCleatAbove() ? 0 : stand.web());
                            double to = o.height - (stand.isCleatAbove() ? stand.web() : 0);
                            double outward = flush() ? -member().depth() / 2 : member().depth() / 2;
                            Placement at = Placement.of(bay.face().toWorld(u, from, outward), Vec3.UP, bay.out());
                            pieces.add(new Piece(
                                    PartKind.BRIDGING,
                                    new Material.Bar(angle, false),
                                    Solid.square(profile, 0, to - from),
                                    List.of(),
                                    bay.place(at)));
                        });
            }
        }
    }
}
