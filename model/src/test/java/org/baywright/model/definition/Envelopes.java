package org.baywright.model.definition;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/**
 * Random envelopes, as text, for the random frames of {@link Definitions}. What those frames leave room for is worked
 * out by hand, so that no rule of the project decides what is valid:
 *
 * <pre>
 *   side wall:  bays from 3000, columns at most 160 along at either end, jambs at most 100: clear 2480
 *   end wall:   spans from 6000, columns at most 210 deep, jambs at most 100: clear from 310 to 5690
 *   height:     eaves from 3700, less a rafter of 310 at 45 degrees (438) and a header of 100: clear 3162
 *   lean-to:    2146 under its outer rafter (see Definitions), less a header of 100: clear 2046
 * </pre>
 */
final class Envelopes {
    private static final List<String> PURLINS =
            List.of("Z150-15", "Z200-19", "Z150-24", "C150-15", "C200-19", "TH96-12", "RHS 100x50x3");
    private static final List<String> GIRTS =
            List.of("C100-12", "C150-15", "Z150-15", "Z200-19", "TH64-10", "RHS 100x50x3");
    private static final List<String> MULLIONS =
            List.of("SHS 100x100x4", "SHS 75x75x4", "RHS 125x75x4", "150UB18.0", "C150-19");
    private static final List<String> BRACES = List.of("ROD 16", "ROD 20", "FL 75x8", "EA 50x50x5");
    private static final List<String> SHEETS =
            List.of("corrugated 0.42", "corrugated 0.48", "corrugate 0.40 NZ", "corrugate 0.55 NZ", "trapezoidal 0.42");

    private Envelopes() {}

    /** A frame's text with an envelope added. */
    static Arbitrary<String> on(String frame) {
        Definition d = Definitions.of(frame);
        Arbitrary<Boolean> either = Arbitraries.of(false, true);
        return Combinators.combine(either, either)
                .flatAs((leanToWalls, behind) -> Combinators.combine(
                                rows(),
                                bracing(d),
                                sheets(leanToWalls, behind),
                                openings(d, leanToWalls, behind),
                                rest(d))
                        .as((rows, bracing, sheets, openings, rest) ->
                                frame + "envelope: full\n" + rows + bracing + sheets + openings + rest));
    }

    private static Arbitrary<String> rows() {
        return Combinators.combine(
                        Arbitraries.of(PURLINS),
                        Arbitraries.integers().between(9, 17),
                        Arbitraries.of(GIRTS),
                        Arbitraries.of("outside", "outside", "flush"),
                        Arbitraries.of(MULLIONS),
                        Arbitraries.integers().between(25, 50),
                        Arbitraries.of("asGiven", "twoThirds"))
                .as((purlin, spacing, girt, place, mullion, apart, rule) -> "purlins: {section: " + purlin
                        + ", spacing: " + spacing * 100 + ", endRule: " + rule + "}\ngirts: {section: " + girt
                        + ", place: " + place + "}\nmullions: {section: " + mullion + ", spacing: "
                        + apart * 100 + "}\n");
    }

    private static Arbitrary<String> bracing(Definition d) {
        Arbitrary<String> bays = Arbitraries.oneOf(
                Arbitraries.of("", "", ", bays: none"),
                Arbitraries.integers().between(1, d.shape().bays()).map(b -> ", bays: [" + b + "]"));
        // On a shallower rafter an angle would run through the purlins, which is an error.
        List<String> braces = shallowest(d) < 58 ? BRACES.subList(0, 3) : BRACES;
        return Combinators.combine(Arbitraries.of(braces), bays, Arbitraries.of(0, 1, 2, 3))
                .as((section, braced, every) ->
                        "bracing: {section: " + section + braced + ", flyBraceEvery: " + every + "}\n");
    }

    private static double shallowest(Definition d) {
        return IntStream.rangeClosed(1, d.shape().bays() + 1)
                .boxed()
                .flatMap(frame -> Stream.of(Side.values())
                        .flatMap(side -> Stream.of(
                                d.rafterAt(frame, side), d.steelAt(frame, side).leanToRafter())))
                .mapToDouble(Member::depth)
                .min()
                .orElseThrow();
    }

    private static Arbitrary<String> sheets(boolean leanToWalls, boolean behind) {
        return Combinators.combine(
                        Arbitraries.of(SHEETS),
                        Arbitraries.of(SHEETS),
                        Arbitraries.of(0, 4, 9),
                        Arbitraries.of("stepped", "banded"),
                        Arbitraries.of(8000, 12_000, 18_000))
                .as((roof, wall, translucent, rake, longest) -> "longestSheet: " + longest + "\nroofSheets: {profile: "
                        + roof + ", translucentEvery: " + translucent + "}\nwallSheets: {profile: " + wall
                        + ", rake: " + rake + ", leanToWalls: " + leanToWalls + ", behindLeanTos: " + behind + "}\n");
    }

    private static Arbitrary<String> openings(Definition d, boolean leanToWalls, boolean behind) {
        List<Arbitrary<String>> walls = new ArrayList<>(List.of(end("front"), end("rear")));
        for (Side side : Side.values()) {
            side(d, side, behind).forEach(walls::add);
            if (leanToWalls) {
                leanTo(d, side).forEach(walls::add);
            }
        }
        return Combinators.combine(walls).as(all -> {
            String some = String.join("", all);
            return some.isEmpty() ? "" : "openings:\n" + some;
        });
    }

    /** None, one in the middle, two side by side, or the whole wall left open. */
    private static Arbitrary<String> end(String wall) {
        String in = "wall: " + wall;
        Arbitrary<String> one = sized(in, 2000, 3000);
        Arbitrary<String> two = Combinators.combine(
                        Arbitraries.integers().between(350, 800),
                        Arbitraries.integers().between(3200, 3800))
                .flatAs((first, second) -> Combinators.combine(
                                sized(in + ", offset: " + first, 2000, 3000),
                                sized(in + ", offset: " + second, 1800, 3000))
                        .as(String::concat));
        return Arbitraries.oneOf(Arbitraries.just(""), one, two, Arbitraries.just("  - {type: open, " + in + "}\n"));
    }

    /** Mostly closed, so that bays are left to brace; a bay that a lean-to opens up has nothing to be in. */
    private static List<Arbitrary<String>> side(Definition d, Side side, boolean behind) {
        String wall = "wall: " + word(side);
        return bays(d).filter(b -> behind || d.leanTos().stream().noneMatch(l -> hides(l, side, b)))
                .mapToObj(b -> wall + ", bay: " + b)
                .map(in -> Arbitraries.frequencyOf(
                        Tuple.of(6, Arbitraries.just("")),
                        Tuple.of(2, sized(in, 2400, 3000)),
                        Tuple.of(1, Arbitraries.just("  - {type: open, " + in + "}\n"))))
                .map(a -> (Arbitrary<String>) a)
                .toList();
    }

    private static boolean hides(LeanTo leanTo, Side side, int bay) {
        return leanTo.side() == side && bay >= leanTo.fromBay() && bay <= leanTo.toBay();
    }

    /** A door or window in the outer wall of a lean-to, and one in the front of the first on that side. */
    private static List<Arbitrary<String>> leanTo(Definition d, Side side) {
        List<Arbitrary<String>> walls = new ArrayList<>();
        String in = "leanTo: " + word(side);
        for (LeanTo leanTo : d.leanTos()) {
            if (leanTo.side() == side) {
                walls.add(someOr(low(in + ", wall: " + word(side) + ", bay: " + leanTo.fromBay())));
                if (walls.size() == 1) {
                    walls.add(someOr(low(in + ", wall: front")));
                }
            }
        }
        return walls;
    }

    private static Arbitrary<String> someOr(Arbitrary<String> opening) {
        return Arbitraries.oneOf(Arbitraries.just(""), opening);
    }

    private static Arbitrary<String> low(String in) {
        return Arbitraries.of(
                "  - {type: door, " + in + ", height: 1940}\n",
                "  - {type: window, " + in + ", width: 900, height: 900}\n");
    }

    private static Arbitrary<String> sized(String in, int widest, int highest) {
        Arbitrary<Integer> width = Arbitraries.integers().between(800, widest);
        Arbitrary<String> doors = Combinators.combine(
                        Arbitraries.of("rollerDoor", "slidingDoor", "door", "open"),
                        width,
                        Arbitraries.integers().between(1900, highest))
                .as((type, w, h) -> "  - {type: " + type + ", " + in + ", width: " + w + ", height: " + h + "}\n");
        Arbitrary<String> windows = Combinators.combine(
                        width,
                        Arbitraries.integers().between(500, 1500),
                        Arbitraries.integers().between(800, 1500))
                .as((w, h, sill) ->
                        "  - {type: window, " + in + ", width: " + w + ", height: " + h + ", sill: " + sill + "}\n");
        return Arbitraries.oneOf(doors, windows);
    }

    private static Arbitrary<String> rest(Definition d) {
        // Between the end walls, where no upright stands in its way; along it reaches the next frame.
        int bays = d.shape().bays();
        Arbitrary<String> beam = bays < 2
                ? Arbitraries.just("")
                : Combinators.combine(
                                bays < 3 ? Arbitraries.just("across") : Arbitraries.of("across", "along"),
                                Arbitraries.integers().between(2, Math.max(2, bays - 1)),
                                Arbitraries.integers().between(2700, 2900))
                        .as((run, frame, under) -> "liftingBeam: {section: 250UB31.4, run: " + run + ", fromFrame: "
                                + frame + ", underside: " + under + "}\n");
        Arbitrary<String> site = Arbitraries.integers()
                .between(0, 360)
                .map(turn -> "site: {boundary: [[-300000, -200000], [250000, -250000], [300000, 250000], [-250000,"
                        + " 300000]], corner: [0, 0], turn: " + turn + "}\n");
        return Combinators.combine(someOr(beam), someOr(site)).as(String::concat);
    }

    private static IntStream bays(Definition d) {
        return IntStream.rangeClosed(1, d.shape().bays());
    }

    private static String word(Side side) {
        return side == Side.LEFT ? "left" : "right";
    }
}
