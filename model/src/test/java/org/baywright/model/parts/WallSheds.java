package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Envelope;
import org.baywright.model.definition.Girts;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Mullions;
import org.baywright.model.definition.Opening;
import org.baywright.model.definition.Opening.Type;
import org.baywright.model.definition.Sheeting;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.baywright.model.rules.ShedRules;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.WallCover;
import org.baywright.model.setout.WallFace;

/** Random valid sheds with walls of every kind and openings in them. */
final class WallSheds {
    private WallSheds() {}

    /** What differs from wall to wall. */
    record Walls(String girt, String mullion, boolean flush, boolean leanToWalls, boolean behind) {}

    static Definition with(Definition d, Walls walls, List<Opening> openings) {
        Envelope e = d.envelope();
        Girts girts = new Girts(
                new Member(Catalogue.shipped().section(walls.girt).orElseThrow(), false), 1500, 150, walls.flush);
        Mullions usual = e.walls().mullions();
        Member mullion = new Member(Catalogue.shipped().section(walls.mullion).orElseThrow(), false);
        Mullions mullions = new Mullions(mullion, usual.spacing(), usual.slipGap());
        Sheeting s = e.sheeting();
        Sheeting sheeting = new Sheeting(s.roof(), s.walls(), s.longest(), walls.leanToWalls, walls.behind);
        Envelope full = new Envelope(
                Envelope.Extent.FULL,
                e.purlins(),
                new Envelope.WallFrame(girts, mullions),
                e.bracing(),
                sheeting,
                e.roofWater(),
                openings,
                e.liftingBeam());
        return Definitions.with(d, full);
    }

    static Opening opening(Type type, Wall wall, int bay, double width, double height, double sill) {
        return new Opening(
                type,
                wall,
                Optional.empty(),
                wall.isEnd() ? OptionalInt.empty() : OptionalInt.of(bay),
                Optional.of(new Opening.Size(width, height, sill)),
                OptionalDouble.empty());
    }

    /** Random sheds that break no rule, with an opening in most bays of each sheeted wall, and one over it in some. */
    static Arbitrary<Definition> any() {
        Arbitrary<Walls> walls = Combinators.combine(
                        Arbitraries.of("C100-12", "C150-15", "Z150-15", "TH64-10", "RHS 100x50x3"),
                        Arbitraries.of("SHS 100x100x4", "SHS 75x75x4", "C150-19"),
                        Arbitraries.of(false, false, true),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false))
                .as(Walls::new);
        Arbitrary<List<Integer>> seeds =
                Arbitraries.integers().between(0, 999).list().ofSize(12);
        return Combinators.combine(Definitions.valid(), walls, seeds)
                .as((d, w, s) -> with(d, w, openings(with(d, w, List.of()), s)))
                .filter(d -> d.shape().bays() <= 4)
                .filter(WallSheds::girtsFit)
                .filter(d -> ShedRules.check(d, Where::whole).stream().noneMatch(Problem::isError));
    }

    /** Flush girts are no deeper than the steel they stand between. */
    private static boolean girtsFit(Definition d) {
        double depth = d.envelope().walls().girts().member().depth();
        return !d.envelope().walls().girts().flush()
                || Stream.of(
                                d.steel().column(),
                                d.steel().leanToColumn(),
                                d.steel().rafter(),
                                d.steel().leanToRafter())
                        .allMatch(m -> depth <= Math.min(m.width(), m.depth()));
    }

    private static List<Opening> openings(Definition d, List<Integer> seeds) {
        SetOut setOut = SetOut.of(d);
        double post = d.envelope().walls().mullions().member().width();
        List<Opening> openings = new ArrayList<>();
        int i = 0;
        for (WallCover cover : WallCover.of(d, setOut, WallFace.of(d, setOut))) {
            int seed = seeds.get(i++ % seeds.size());
            if (seed % 3 != 0) {
                opening(cover, seed)
                        .filter(o -> OpeningPlace.of(with(d, walls(d), List.of(o)), WallFace.of(d, setOut)).stream()
                                .allMatch(p -> p.face().equals(cover.face())))
                        .ifPresent(
                                o -> openings.addAll(seed % 4 == 1 ? withOneOver(o, cover, post, seed) : List.of(o)));
            }
        }
        return openings;
    }

    /** A lower door with a window over it between the same jambs, where the wall is high enough. */
    private static List<Opening> withOneOver(Opening door, WallCover cover, double post, int seed) {
        double room = cover.face().heightAt(cover.bay().from()) - 700;
        double right = cover.face().heightAt(cover.bay().to()) - 700;
        double high = Math.min(room, right);
        Opening.Size size = door.size().orElseThrow();
        double head = high * 0.55;
        double sill = head + 2 * post + seed % 7 * 40;
        double height = Math.min(500, high - sill);
        return height < 150
                ? List.of(door)
                : List.of(
                        sized(door, Type.DOOR, new Opening.Size(size.width(), head, 0)),
                        sized(door, Type.WINDOW, new Opening.Size(size.width(), height, sill)));
    }

    private static Opening sized(Opening opening, Type type, Opening.Size size) {
        return new Opening(type, opening.wall(), opening.leanTo(), opening.bay(), Optional.of(size), opening.offset());
    }

    private static Walls walls(Definition d) {
        Girts girts = d.envelope().walls().girts();
        Sheeting sheeting = d.envelope().sheeting();
        return new Walls(
                girts.member().section().designation(),
                d.envelope().walls().mullions().member().section().designation(),
                girts.flush(),
                sheeting.leanToWalls(),
                sheeting.behindLeanTos());
    }

    private static Optional<Opening> opening(WallCover cover, int seed) {
        double room = cover.bay().to() - cover.bay().from() - 800;
        double low = Math.min(
                cover.face().heightAt(cover.bay().from()),
                cover.face().heightAt(cover.bay().to()));
        double high = low - 700 - cover.low();
        if (room < 600 || high < 900 || cover.low() > 0) {
            return Optional.empty();
        }
        boolean window = seed % 2 == 0;
        double width = Math.min(room, 600 + seed * 4.3);
        double height = window ? Math.min(1000, high - 700) : high * (0.7 + seed % 10 / 33.4);
        double sill = window ? 600 : 0;
        if (height < 200) {
            return Optional.empty();
        }
        Optional<Side> lean = cover.face().leanTo().map(l -> l.side());
        double slack = room - width;
        return Optional.of(new Opening(
                window ? Type.WINDOW : seed % 5 < 3 ? Type.SLIDING_DOOR : Type.ROLLER_DOOR,
                cover.face().wall(),
                lean,
                cover.bay().bay() > 0 ? OptionalInt.of(cover.bay().bay()) : OptionalInt.empty(),
                Optional.of(new Opening.Size(width, height, sill)),
                seed % 5 == 0 ? OptionalDouble.empty() : OptionalDouble.of(400 + slack * (seed % 7) / 7)));
    }
}
