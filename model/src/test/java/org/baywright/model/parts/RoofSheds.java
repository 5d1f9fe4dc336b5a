package org.baywright.model.parts;

import java.util.List;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;
import org.baywright.model.definition.Bracing;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Envelope;
import org.baywright.model.definition.Girts;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Purlins;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.baywright.model.rules.ShedRules;

/** Random valid sheds with a roof of every kind on them. */
final class RoofSheds {
    private RoofSheds() {}

    private static Section section(String name) {
        return Catalogue.shipped().section(name).orElseThrow();
    }

    /** A shed with other purlins, bracing and girts. */
    static Definition with(Definition d, Purlins purlins, Bracing bracing, boolean flush) {
        Envelope e = d.envelope();
        Girts girts = e.walls().girts();
        Girts other = new Girts(girts.member(), girts.spacing(), girts.fromFloor(), flush);
        Envelope full = new Envelope(
                Envelope.Extent.FULL,
                purlins,
                new Envelope.WallFrame(other, e.walls().mullions()),
                bracing,
                e.sheeting(),
                e.roofWater(),
                e.openings(),
                e.liftingBeam());
        return Definitions.with(d, full);
    }

    /** Purlins of a section, all else as usual. */
    static Purlins purlins(String section) {
        return new Purlins(new Member(section(section), false), 1200, 900, 150, 75, 0.15, OptionalInt.empty());
    }

    /** Bracing of a section in the first bay. */
    static Bracing bracing(String section, int flyBraceEvery) {
        return new Bracing(section(section), List.of(1), section("EA 50x50x5"), flyBraceEvery);
    }

    /** Random sheds that break no rule. */
    static Arbitrary<Definition> any() {
        Arbitrary<Purlins> purlins = Combinators.combine(
                        Arbitraries.of("Z150-15", "Z200-19", "C100-12", "C150-15", "TH64-10", "RHS 100x50x3"),
                        Arbitraries.integers().between(60, 170),
                        Arbitraries.integers().between(6, 10),
                        Arbitraries.integers().between(100, 250),
                        Arbitraries.integers().between(50, 150),
                        Arbitraries.integers().between(-1, 2))
                .as((name, spacing, share, ridge, eave, bridging) -> new Purlins(
                        new Member(section(name), false),
                        spacing * 10,
                        spacing * share,
                        ridge,
                        eave,
                        0.15,
                        bridging < 0 ? OptionalInt.empty() : OptionalInt.of(bridging)));
        Arbitrary<Bracing> bracing = Combinators.combine(
                        Arbitraries.of("ROD 16", "ROD 20", "FL 75x8", "EA 50x50x5"), Arbitraries.of(0, 1, 2))
                .as(RoofSheds::bracing);
        return Combinators.combine(Definitions.valid(), purlins, bracing, Arbitraries.of(true, false))
                .as(RoofSheds::with)
                .filter(d -> ShedRules.check(d, Where::whole).stream().noneMatch(Problem::isError));
    }
}
