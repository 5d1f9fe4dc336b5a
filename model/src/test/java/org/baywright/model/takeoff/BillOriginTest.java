package org.baywright.model.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.baywright.model.rules.ShedRules;

/** Every line of a bill comes from something in the model, and its sums are the model's. */
class BillOriginTest {
    @Provide
    Arbitrary<Building> buildings() {
        return Definitions.texts()
                .map(text -> Definitions.of(text + "envelope: full\n"))
                .filter(BillOriginTest::passes)
                .map(Building::of);
    }

    private static boolean passes(Definition definition) {
        return ShedRules.check(definition, Where::whole).stream().noneMatch(Problem::isError);
    }

    private static Set<String> origins(Building building) {
        Set<String> all = new HashSet<>(Set.of("slab"));
        building.shed().parts().forEach(p -> {
            all.add(p.mark());
            all.add(p.kind().label());
        });
        for (Surface surface : building.cladding().surfaces()) {
            all.add(surface.name());
            surface.sheets().forEach(s -> all.add(s.mark()));
        }
        building.cladding().flashings().forEach(f -> all.add(f.mark()));
        building.cladding()
                .gutters()
                .forEach(g -> all.add("gutter line " + g.slope().line().letter()));
        building.shed().openings().forEach(o -> all.add(o.tag()));
        return all;
    }

    @Property(tries = 25, seed = Seeds.SHEDS)
    void everyLineTracesToTheModel(@ForAll("buildings") Building building) {
        Set<String> origins = origins(building);
        int anchors = building.shed().anchorHoles().size();
        for (BillLine line : Bill.of(building).lines()) {
            if (line.group() == BillGroup.ANCHORS) {
                assertEquals(anchors, line.net());
            } else {
                assertFalse(line.item().marks().isEmpty(), line::toString);
                assertTrue(origins.containsAll(line.item().marks()), line::toString);
            }
            assertTrue(line.net() > 0 && line.quantity() > 0 && line.allowance() >= -1e-9, line::toString);
        }
    }

    @Property(tries = 25, seed = Seeds.SHEDS)
    void sumsAreTheModels(@ForAll("buildings") Building building) {
        Bill bill = Bill.of(building);
        Summary summary = Summary.of(building);
        int sheets = building.cladding().surfaces().stream()
                .mapToInt(s -> s.sheets().size())
                .sum();
        assertEquals(sheets, quantity(bill, BillGroup.SHEETS));
        assertEquals(sheets, summary.get("roofSheets") + summary.get("wallSheets"));
        double rows = building.shed().parts().stream()
                .filter(p -> p.kind() == PartKind.PURLIN || p.kind() == PartKind.GIRT)
                .mapToDouble(p -> p.quantity() * p.stockLength() / 1000)
                .sum();
        assertEquals(rows, summary.get("purlinM") + summary.get("girtM"), 0.01);
        double steel =
                building.shed().parts().stream().mapToDouble(Part::totalMassKg).sum();
        assertEquals(steel, bill.steelMassKg(), 1e-6 * steel);
        assertTrue(summary.get("roofSheetAreaM2") >= summary.get("roofAreaM2") - 1e-3);
    }

    private static int quantity(Bill bill, BillGroup group) {
        return bill.lines(group).stream().mapToInt(BillLine::quantity).sum();
    }
}
