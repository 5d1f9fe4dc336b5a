package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.GirtRows;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RowStand;
import org.baywright.model.setout.TrackGirt;
import org.baywright.model.setout.WallFace;

/**
 * The girts of a bay with their cleats: each length runs from support to support and stops at openings. Lengths butt,
 * save Zs outside the columns of a side wall, which lap over its frames like purlins. A channel has its back up and its
 * cleat on it, so that nothing lies in it. Beside a sliding door a length behind its track butts at its supports, in
 * place of one of a row that it would run into.
 *
 * @param bay the bay
 * @param rows the heights of their backs
 * @param stand how they stand on their lines
 * @param tracks those of the wall's sliding doors
 */
record GirtMaker(WallBay bay, GirtRows rows, RowStand stand, List<TrackGirt> tracks) {
    private static final double TO_BOLTS = GirtSpan.End.TO_BOLTS;

    private static final double CLEAT_WIDTH = GirtSupports.CLEAT;
    private static final double CLEAT = CleatPlate.THICKNESS;

    /** A shorter length is left out. Common practice, no source. */
    private static final double LEAST = 400;

    /** A length that laps is so much longer than half its lap. Common practice, no source. */
    private static final double PAST_LAP = 100;

    /** Between a row's cleat and the rafter's top or an opening. Common practice, no source. */
    private static final double CLEAR = 10;

    /** Room round the row of another wall and its cleat. Common practice, no source. */
    private static final double APART = 5;

    /** A cleat may lie on a row's back, give or take so much. */
    private static final double LEVEL = 0.1;

    GirtMaker(WallBay bay, GirtRows rows, List<TrackGirt> tracks) {
        this(bay, rows, GirtRows.stand(bay.definition()), tracks);
    }

    private Member member() {
        return stand.member();
    }

    private boolean flush() {
        return bay.definition().envelope().walls().girts().flush();
    }

    private GirtBridging bridging() {
        return new GirtBridging(bay, stand, flush());
    }

    private RakeRoom room() {
        return new RakeRoom(bay, flush());
    }

    /** The lengths at one height, all butted, and whether they may lap over frames. */
    private record Layer(List<GirtSpan> spans, boolean laps) {
        double height() {
            return spans.get(0).height();
        }
    }

    /** All of the bay, next to the bays at its left and right where sheets go on. */
    List<Piece> pieces(List<GirtMaker> neighbours) {
        List<Piece> pieces = new ArrayList<>();
        List<Layer> layers = layers();
        List<GirtBridging.Length> bridged = IntStream.range(0, layers.size())
                .boxed()
                .flatMap(i -> layers.get(i).spans.stream()
                        .flatMap(span -> bridging().between(span, over(span, layers.subList(i + 1, layers.size())))))
                .toList();
        Map<GirtSpan, Double> backs = new HashMap<>();
        for (Layer layer : layers) {
            for (GirtSpan span : layer.spans) {
                GirtSpan laid = layer.laps ? lapped(span, neighbours) : span;
                backs.put(span, back(laid));
                girt(laid, bridging().meeting(span, bridged), pieces);
            }
        }
        if (!flush()) {
            bay.openings().forEach(opening -> trimmers(opening).forEach(span -> girt(span, List.of(), pieces)));
        }
        bridged.forEach(length -> bridging().pieces(length, backs::get).forEach(pieces::add));
        return pieces;
    }

    /** From the floor up. */
    private List<Layer> layers() {
        return Stream.concat(
                        rows.at().stream().map(r -> new Layer(row(r), true)),
                        behindTracks().stream().map(span -> new Layer(List.of(span), false)))
                .filter(layer -> !layer.spans.isEmpty())
                .sorted(Comparator.comparingDouble(Layer::height))
                .toList();
    }

    /** The lengths next over one: a row that is left out beside a track is passed. */
    private static List<GirtSpan> over(GirtSpan span, List<Layer> higher) {
        return higher.stream()
                .map(Layer::spans)
                .filter(spans -> spans.stream().anyMatch(span::isInLineWith))
                .findFirst()
                .orElse(List.of());
    }

    /** The lengths of a row at a height, save those that one behind a track takes the place of. */
    private List<GirtSpan> row(double height) {
        List<GirtSpan> behind = behindTracks();
        return spans(height).stream()
                .filter(span -> behind.stream().noneMatch(b -> b.isInLineWith(span) && isClose(b, span)))
                .toList();
    }

    /** Whether two lengths over each other are nearer than rows may be, or run into the other's cleats. */
    private boolean isClose(GirtSpan a, GirtSpan b) {
        double low = Math.min(a.height(), b.height());
        double high = Math.max(a.height(), b.height());
        return high - low < GirtRows.LEAST_SPACE || high - lowest() - (stand.isLapped() ? stand.web() : 0) < top(low);
    }

    /** Beside sliding doors, where neither a row nor the girt behind another's track holds the track. */
    private List<GirtSpan> behindTracks() {
        List<GirtSpan> behind = new ArrayList<>();
        for (TrackGirt track : tracks) {
            double height = track.height();
            boolean free = GirtRows.isFree(bay.definition(), bay.setOut(), bay.cover(), height)
                    && height - lowest() >= bay.cover().low();
            List<GirtSpan> others = Stream.concat(rows.at().stream().flatMap(r -> spans(r).stream()), behind.stream())
                    .filter(span -> track.isHeldBy(span.height()))
                    .toList();
            List<GirtSpan> before = List.copyOf(behind);
            (free ? spans(height) : List.<GirtSpan>of())
                    .stream()
                            .filter(span ->
                                    track.wants(span.from().at(), span.to().at()))
                            .filter(span -> others.stream().noneMatch(span::isInLineWith))
                            .filter(span -> before.stream().noneMatch(b -> b.isInLineWith(span) && isClose(b, span)))
                            .forEach(behind::add);
        }
        return behind;
    }

    private double lowest() {
        return stand.reachDown();
    }

    /** What a row needs above its line: for its cleat, or what stands above it of the section. */
    private double top(double height) {
        return height + Math.max(CLEAT, stand.reachUp()) + CLEAR;
    }

    /** The row at a height, every length butted: between supports, less what openings take, under the rake. */
    private List<GirtSpan> spans(double height) {
        double top = top(height);
        double bottom = height - lowest() - (stand.isLapped() ? stand.web() : 0);
        List<GirtSupports.Support> at = new GirtSupports(bay, room().isBesideRafters(top)).all();
        List<GirtSpan> spans = new ArrayList<>();
        for (int i = 1; i < at.size(); i++) {
            GirtSupports.Support left = at.get(i - 1);
            GirtSupports.Support right = at.get(i);
            if (!isTaken((left.after() + right.before()) / 2, bottom, top)) {
                room().under(left.after(), right.before(), top)
                        .filter(s -> s.to() - s.from() >= LEAST)
                        .map(s -> new GirtSpan(left.from(s.from()), right.to(s.to()), height))
                        .ifPresent(spans::add);
            }
        }
        return spans;
    }

    private boolean isTaken(double u, double bottom, double top) {
        return bay.openings().stream().anyMatch(o -> takes(o, u, bottom, top));
    }

    private boolean takes(OpeningPlace o, double u, double bottom, double top) {
        // Header and sill lie in the plane of flush girts.
        double trim = flush() ? bay.post().width() + CLEAR : 0;
        return u > o.left() && u < o.right() && top > o.sill() - trim && bottom < o.head() + trim;
    }

    /** A length of Z reaches over the frames where a neighbour has the same row. */
    private GirtSpan lapped(GirtSpan span, List<GirtMaker> neighbours) {
        return new GirtSpan(
                lapped(span, span.from(), true, neighbours), lapped(span, span.to(), false, neighbours), span.height());
    }

    private GirtSpan.End lapped(GirtSpan span, GirtSpan.End end, boolean left, List<GirtMaker> neighbours) {
        OptionalInt frame = new GirtSupports(bay, false).lapFrame(left);
        if (!stand.isLapped() || flush() || frame.isEmpty() || !isAtEnd(end, left)) {
            return end;
        }
        double half = RowBays.halfLap(bay.definition(), bay.setOut(), frame.getAsInt());
        double line = line(left);
        boolean meets = neighbours.stream()
                .filter(n -> n.line(!left) == line && n.rows.at().contains(span.height()))
                .flatMap(n -> n.row(span.height()).stream().filter(s -> n.isAtEnd(left ? s.to() : s.from(), !left)))
                .anyMatch(s -> s.length() >= half + PAST_LAP);
        return meets && span.length() >= half + PAST_LAP
                ? new GirtSpan.End(
                        line + (left ? -half : half), end.gap(), TO_BOLTS, Optional.of(new GirtSpan.Lap(line, half)))
                : end;
    }

    private double line(boolean left) {
        return left ? bay.cover().bay().from() : bay.cover().bay().to();
    }

    private boolean isAtEnd(GirtSpan.End end, boolean left) {
        return end.isAt(line(left) + (left ? 1 : -1) * GirtSupports.HALF_GAP);
    }

    /** The bearing face of a length: of lapped ones every second lies a thickness lower, beside its neighbours. */
    private double back(GirtSpan span) {
        boolean aside = span.isLapped() && bay.cover().bay().bay() % 2 == 0;
        return span.height() - (aside ? stand.web() : 0);
    }

    /** A length with its cleats, punched for those and for the bridging that meets it. */
    private void girt(GirtSpan span, List<Double> bridged, List<Piece> pieces) {
        Vec3 width = stand.turned() ? Vec3.UP.negated() : Vec3.UP;
        Vec3 along = bay.out().cross(width);
        boolean onward = along.dot(bay.u()) > 0;
        double marked = onward ? span.from().at() : span.to().at();
        Vec3 origin = bay.face().toWorld(marked, back(span) + stand.centroidUp(), outward());
        pieces.add(new Piece(
                PartKind.GIRT,
                new Material.Bar(member().section(), member().turned()),
                Solid.square(member().profile(), 0, span.length()),
                List.of(),
                bolts(span, bridged).map(b -> Math.abs(b - marked)).sorted().toList(),
                bay.place(Placement.of(origin, along, bay.out()))));
        pieces.add(cleat(span.from(), 1, span.height()));
        if (span.to().over().isEmpty()) {
            pieces.add(cleat(span.to(), -1, span.height()));
        }
    }

    /** From the string line to the section's centroid. */
    private double outward() {
        double foot = stand.centroidHeight();
        return flush() ? foot - member().depth() : foot;
    }

    private static Stream<Double> bolts(GirtSpan span, List<Double> bridged) {
        return Stream.of(bolts(span.from(), 1), bridged, bolts(span.to(), -1)).flatMap(List::stream);
    }

    private static List<Double> bolts(GirtSpan.End end, int into) {
        return end.over().map(GirtSpan.Lap::bolts).orElse(List.of(end.at() + into * end.toBolt()));
    }

    /** A plate on the support, over the row's back, square to the wall; on the side of a flush girt's it spans the gap. */
    private Piece cleat(GirtSpan.End end, int into, double height) {
        CleatPlate plate = new CleatPlate(stand);
        double depth = flush() ? plate.heightFromOutside() : plate.height();
        double bolt = end.over().map(GirtSpan.Lap::line).orElse(end.at() + into * end.toBolt());
        boolean spans = flush() || end.gap() > GirtSupports.HALF_GAP && isClearOfMain(height);
        double reach = spans ? TO_BOLTS + end.gap() : CLEAT_WIDTH / 2;
        double width = PlateRoom.upTo1(reach + (flush() ? TO_BOLTS + GirtSupports.HALF_GAP : CLEAT_WIDTH / 2));
        double middle = bolt + into * (width / 2 - reach);
        double from = flush() ? -depth : 0;
        Placement at = Placement.of(bay.face().toWorld(middle, height, from + depth / 2), Vec3.UP, bay.out());
        // Up × out points to the right seen from outside.
        List<Double> across = List.of(bolt - middle);
        List<Hole> holes = flush() ? plate.holesFromOutside(across) : plate.holes(across);
        return PlateMaker.plate(PartKind.GIRT_CLEAT, depth, width, CLEAT, holes, bay.place(at));
    }

    /** Whether a cleat over a row can pass the main walls' rows, which come round the corner: over a back it lies on it. */
    private boolean isClearOfMain(double height) {
        double below = stand.reachDown() + CLEAT + APART;
        double over = stand.reachUp() - LEVEL;
        List<WallFace> faces = WallFace.of(bay.definition(), bay.setOut());
        List<OpeningPlace> openings = OpeningPlace.of(bay.definition(), faces);
        return TrackGirt.withRows(bay.definition(), bay.setOut(), openings, WallFace::isMain)
                .noneMatch(row -> height > row - below && height < row + over);
    }

    /** Outside a header and a sill a girt each, unless a row is there already; flush girts leave that to the trims. */
    private Stream<GirtSpan> trimmers(OpeningPlace opening) {
        double head = opening.head() + lowest();
        double sill = opening.sill() - CLEAT - Math.max(0, stand.reachUp());
        boolean rowOver = freeRows(opening).anyMatch(r -> r - lowest() >= opening.head() && r - lowest() < top(head));
        boolean rowBelow =
                freeRows(opening).anyMatch(r -> top(r) <= opening.sill() && r + CLEAT > sill - lowest() - CLEAR);
        boolean fits = room().under(opening.left(), opening.right(), top(head))
                .filter(s -> s.to() == opening.right())
                .isPresent();
        boolean trimmed = bay.openings().stream().filter(opening::isOver).anyMatch(o -> isTrimmedUpTo(o, sill));
        Stream<GirtSpan> over =
                !rowOver && fits && isFree(opening, head) ? Stream.of(trimmer(opening, head)) : Stream.of();
        Stream<GirtSpan> below = !rowBelow && !trimmed && sill > lowest() && isFree(opening, sill)
                ? Stream.of(trimmer(opening, sill))
                : Stream.of();
        return Stream.concat(over, below);
    }

    /** The rows and girts behind tracks that pass over or under an opening. */
    private Stream<Double> freeRows(OpeningPlace opening) {
        double middle = (opening.left() + opening.right()) / 2;
        return layers().stream()
                .flatMap(layer -> layer.spans.stream())
                .filter(span -> span.from().at() < middle && middle < span.to().at())
                .map(GirtSpan::height);
    }

    private boolean isFree(OpeningPlace opening, double height) {
        double middle = (opening.left() + opening.right()) / 2;
        return bay.openings().stream()
                .filter(o -> o != opening)
                .noneMatch(o -> takes(o, middle, height - lowest(), top(height)));
    }

    /** Whether what stands over the head of an opening reaches up to the trimmer below the sill of one over it. */
    private boolean isTrimmedUpTo(OpeningPlace under, double sill) {
        double head = under.head() + lowest();
        return isFree(under, head) && top(head) > sill - lowest();
    }

    /** From the middle of one jamb to that of the other. */
    private GirtSpan trimmer(OpeningPlace opening, double height) {
        double onJamb = bay.post().width() / 2 - GirtSupports.HALF_GAP;
        return new GirtSpan(
                new GirtSpan.End(opening.left() - onJamb, GirtSupports.HALF_GAP),
                new GirtSpan.End(opening.right() + onJamb, GirtSupports.HALF_GAP),
                height);
    }
}
