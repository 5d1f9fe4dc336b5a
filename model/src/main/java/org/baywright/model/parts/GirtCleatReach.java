package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes girt cleats that stand off the steel reach it, found from where the pieces stand: inward, as to a rafter that is
 * narrower than the column; along the wall, as to a column beside it or the web of a beam; or by a hanger, a plate on edge
 * from the cleat up to a rafter over it. Nothing is changed into what would run into another piece; such a cleat stays as
 * it is and is told.
 *
 * <pre>
 *   plan: wall plane --------====[cleat]        elevation:  \ rafter
 *                    rafter |===|                            |  hanger
 *                                                          ====== cleat
 * </pre>
 */
final class GirtCleatReach {
    /** How far a cleat may reach further. Common practice, no source. */
    private static final double INWARD = 150;

    private static final double ALONG = 260;

    /** So far along a cleat rather reaches than it is hung. */
    private static final double NEAR = 40;

    private static final double HANG = 250;

    /** How far a cleat lies before the face of a column, or along the web of a beam. Common practice, no source. */
    private static final double ON_FACE = 30;

    private static final double ON_WEB = 80;
    private static final double STEP = 10;

    /** A hanger lies on its cleat as far, and its cleat reaches so far past the girt's end to carry it. */
    private static final double HANGER_ON_CLEAT = 60;

    private static final double PAST_GIRT = 10;

    /** Height of an arm over its cleat, and how far inward of the wall's plane it may stand. */
    private static final double ARM = 60;

    private static final double ARM_IN = 120;

    private static final double ROUNDING = Neighbours.ROUNDING;

    /** A traced size so little short of a whole millimetre is one. */
    private static final double WHOLE = 0.02;

    /** A face lies on another when a plate moved so far runs into it. */
    private static final double PRESS = 1;

    private static final Set<PartKind> COLUMNS = Set.of(PartKind.COLUMN, PartKind.LEAN_TO_COLUMN);
    private static final Set<PartKind> HUNG_FROM = Set.of(PartKind.RAFTER, PartKind.LEAN_TO_RAFTER);

    private final Neighbours all;
    private final List<Piece> made = new ArrayList<>();

    private GirtCleatReach(List<Piece> pieces) {
        Neighbours carriers = new Neighbours(pieces.stream().filter(p -> Assemblies.CARRY_GIRTS.contains(p.kind())));
        Map<Boolean, List<Piece>> loose = pieces.stream().collect(Collectors.partitioningBy(p -> isLoose(p, carriers)));
        made.addAll(loose.get(false));
        all = new Neighbours(loose.get(true).isEmpty() ? Stream.empty() : pieces.stream());
        loose.get(true).forEach(cleat -> made.addAll(reaching(cleat)));
    }

    private static boolean isLoose(Piece piece, Neighbours carriers) {
        if (piece.kind() != PartKind.GIRT_CLEAT) {
            return false;
        }
        Standing cleat = piece.standing();
        return carriers.near(cleat).noneMatch(cleat::touches);
    }

    /** All pieces of a shed, with girt cleats that reach what carries them. */
    static List<Piece> carried(List<Piece> pieces) {
        return new GirtCleatReach(pieces).made;
    }

    private List<Piece> reaching(Piece cleat) {
        CleatBox box = CleatBox.of(cleat);
        List<Supplier<Stream<List<CleatBox>>>> ways = List.of(
                () -> inward(box),
                () -> both(side -> along(box, side, NEAR)),
                () -> both(side -> along(box.grown(ON_WEB, 0, 0), side, NEAR)),
                () -> hung(box),
                () -> both(side -> along(box, side, ALONG)),
                () -> both(side -> before(box, side)),
                () -> both(side -> over(box, side)));
        return ways.stream()
                .flatMap(Supplier::get)
                .filter(this::isClear)
                .findFirst()
                .map(boxes -> boxes.stream().map(CleatBox::piece).toList())
                .orElse(List.of(cleat));
    }

    private boolean isClear(List<CleatBox> boxes) {
        Place own = boxes.get(0).place();
        return boxes.stream().allMatch(b -> all.isClear(b.piece().standing(), own));
    }

    private Stream<List<CleatBox>> inward(CleatBox box) {
        return reach(by -> box.grown(by, 0, 0), INWARD, Assemblies.CARRY_GIRTS).stream()
                .map(List::of);
    }

    private static Stream<List<CleatBox>> both(IntFunction<Stream<List<CleatBox>>> side) {
        return Stream.of(1, -1).flatMap(side::apply);
    }

    private Stream<List<CleatBox>> along(CleatBox box, int side, double most) {
        return reach(by -> box.along(side, by), most, Assemblies.CARRY_GIRTS).stream()
                .map(List::of);
    }

    /** Over the face of a column beside it, and inward to that. */
    private Stream<List<CleatBox>> before(CleatBox box, int side) {
        return Stream.iterate(STEP, by -> by <= ALONG, by -> by + STEP)
                .filter(by -> inward(box.along(side, by)).findAny().isPresent())
                .limit(1)
                .flatMap(by -> inward(box.along(side, by + ON_FACE)));
    }

    /** On the cleat at either edge, or past the end of the girt; further in under a rafter that does not stand out. */
    private Stream<List<CleatBox>> hung(CleatBox box) {
        return Stream.of(0.0, PAST_GIRT)
                .flatMap(past -> Stream.of(1, -1)
                        .flatMap(side -> Stream.of(0.0, 40.0, 80.0, 120.0)
                                .flatMap(in -> hung(past > 0 ? box.along(side, past) : box, side, past > 0, in))));
    }

    private Stream<List<CleatBox>> hung(CleatBox cleat, int side, boolean beside, double in) {
        CleatBox foot = cleat.hanger(side, beside, in, HANGER_ON_CLEAT);
        return reach(foot::raised, HANG, HUNG_FROM).stream().map(hanger -> List.of(cleat, hanger));
    }

    /** By a plate on edge along the wall: over the row and cleat of a main wall round the corner, or between its ends. */
    private Stream<List<CleatBox>> over(CleatBox box, int side) {
        return Stream.iterate(0.0, in -> in <= ARM_IN, in -> in + STEP).flatMap(in -> {
            CleatBox cleat = box.grown(in, 0, 0);
            return reach(by -> cleat.arm(ARM).along(-side, by), ALONG, COLUMNS).stream()
                    .map(arm -> List.of(cleat, arm));
        });
    }

    private interface Growth {
        CleatBox by(double mm);
    }

    /** Grown until its face lies on a carrier; gaps are never more than what is left, so it does not grow too far. */
    private Optional<CleatBox> reach(Growth growth, double most, Set<PartKind> carriers) {
        Standing whole = growth.by(most).piece().standing();
        double by = 0;
        while (by <= most) {
            Standing grown = growth.by(by).piece().standing();
            double gap = gap(grown, whole, carriers);
            if (gap < ROUNDING / 10) {
                return isPressed(growth.by(by + PRESS).piece().standing(), carriers)
                        ? Optional.of(growth.by(by - beyondWhole(growth.by(0), growth.by(by))))
                        : Optional.empty();
            }
            by += gap;
        }
        return Optional.empty();
    }

    /** What a size that was traced has over whole millimetres; so much less still meets: a weld closes it. */
    private static double beyondWhole(CleatBox from, CleatBox grown) {
        double size = from.depth() == grown.depth() ? grown.width() : grown.depth();
        return Math.max(0, size - Math.floor(size + WHOLE));
    }

    private double gap(Standing grown, Standing most, Set<PartKind> carriers) {
        return all.near(most)
                .filter(o -> carriers.contains(o.part().kind()))
                .mapToDouble(grown::gap)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private boolean isPressed(Standing pressed, Set<PartKind> carriers) {
        return all.near(pressed)
                .filter(o -> carriers.contains(o.part().kind()))
                .anyMatch(o -> Neighbours.overlap(pressed, o) > PRESS / 2);
    }
}
