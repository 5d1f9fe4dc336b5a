package org.baywright.model.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.catalogue.Section;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Heavier;
import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Seeds;
import org.baywright.model.definition.Shape;
import org.baywright.model.definition.Side;
import org.baywright.model.parts.Material;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.baywright.model.rules.ShedRules;

/** Counts follow from bays, and the bill from the solids. */
class TakeoffPropertyTest {
    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.valid()
                .filter(d -> ShedRules.check(d, Where::whole).stream().noneMatch(Problem::isError));
    }

    @Property(tries = 200, seed = Seeds.SHEDS)
    void countsFollowFromBaysAndLeanTos(@ForAll("sheds") Definition definition) {
        Summary summary = Summary.of(Shed.of(definition));
        int frames = definition.shape().bays() + 1;
        int leanToFrames = definition.leanTos().stream()
                .mapToInt(l -> l.toBay() - l.fromBay() + 2)
                .sum();
        boolean gable = definition.shape().roofShape() == RoofShape.GABLE;
        assertEquals(frames, summary.get("frames"));
        assertEquals(2 * frames, summary.get("columns"));
        assertEquals(gable ? 2 * frames : frames, summary.get("rafters"));
        assertEquals(leanToFrames, summary.get("leanToColumns"));
        assertEquals(leanToFrames, summary.get("leanToRafters"));
        assertEquals(2 * frames + leanToFrames, summary.get("basePlates"));
        assertEquals(
                2 * frames * definition.plates().base().holes()
                        + leanToFrames * definition.plates().leanToBase().holes(),
                summary.get("anchors"));
    }

    /** Mass from catalogue kg/m and length along the axis, apart from the bill's own sums. */
    @Property(tries = 200, seed = Seeds.SHEDS)
    void billMassIsTheSumOverTheSolids(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        double solids = 0;
        for (Part part : shed.parts()) {
            double each = part.material() instanceof Material.Bar bar
                    ? bar.section().massKgPerM()
                            * (part.solid().longEdge() + part.solid().shortEdge())
                            / 2000
                    : (part.solid().profile().depth() * part.solid().profile().width()
                                    - part.holes().stream()
                                            .mapToDouble(h -> Math.PI * h.diameter() * h.diameter() / 4
                                                    + h.diameter() * (h.length() - h.diameter()))
                                            .sum())
                            * part.solid().axisLength()
                            * Section.DENSITY_KG_PER_M3
                            * 1e-9;
            solids += each * part.places().size();
        }
        assertEquals(solids, Bill.of(shed).steelMassKg(), solids * 1e-6);
        assertEquals(solids, Summary.of(shed).get("steelMassKg"), 0.06);
        double painted = shed.parts().stream()
                .filter(p -> !RowOrder.isRolled(p))
                .mapToDouble(p -> p.surfaceM2() * p.quantity())
                .sum();
        assertEquals(painted, Summary.of(shed).get("paintedAreaM2"), 0.06);
    }

    @Property(tries = 100, seed = Seeds.SHEDS)
    void barsToBuyHoldThePieces(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        Bill bill = Bill.of(shed);
        Set<String> sawn = bill.lines(BillGroup.PIECES).stream()
                .flatMap(l -> l.item().marks().stream())
                .collect(Collectors.toSet());
        double axes = shed.parts().stream()
                .filter(p -> sawn.contains(p.mark()))
                .mapToDouble(p -> p.quantity() * p.solid().axisLength() / 1000)
                .sum();
        double net =
                bill.lines(BillGroup.STOCK).stream().mapToDouble(BillLine::net).sum();
        int pieces = bill.lines(BillGroup.PIECES).stream()
                .mapToInt(BillLine::quantity)
                .sum();
        assertEquals(axes, net, pieces * 0.0001, "pieces along their middles, lengths rounded to 0.1 mm");
        for (BillLine line : bill.lines(BillGroup.STOCK)) {
            assertTrue(line.allowance() > 0, () -> "a bar is longer than its pieces: " + line);
            assertEquals(line.quantity() * line.item().lengthMm() / 1000, line.order(), 1e-6);
        }
    }

    @Property(tries = 100, seed = Seeds.SHEDS)
    void mirrorImageOfAGableGivesTheSameList(@ForAll("sheds") Definition definition) {
        if (definition.shape().roofShape() == RoofShape.GABLE) {
            assertEquals(list(Shed.of(definition)), list(Shed.of(mirrored(definition))));
        }
    }

    private static List<String> list(Shed shed) {
        return shed.parts().stream()
                .map(p -> p.quantity() + " " + p.kind() + " " + p.material().designation() + " " + p.stockLength() + " "
                        + p.longEdge() + " " + p.shortEdge() + " " + p.cutForm() + " "
                        + Math.round(p.cutADeg() * 1000) + " " + Math.round(p.cutBDeg() * 1000) + " " + p.longPoint()
                        + " "
                        + p.holes().size())
                .sorted()
                .collect(Collectors.toList());
    }

    private static Definition mirrored(Definition d) {
        List<LeanTo> leanTos = d.leanTos().stream()
                .map(l -> new LeanTo(l.side().other(), l.width(), l.pitchDeg(), l.drop(), l.fromBay(), l.toBay()))
                .toList();
        var heavier = d.heavier().stream()
                .map(h -> new Heavier(
                        h.frames(),
                        h.sides().stream().map(Side::other).collect(Collectors.toSet()),
                        h.column(),
                        h.rafter(),
                        h.leanToColumn(),
                        h.leanToRafter()))
                .toList();
        Shape shape = d.shape();
        return new Definition(
                d.project(),
                shape,
                leanTos,
                d.steel(),
                heavier,
                d.plates(),
                d.anchor(),
                d.envelope(),
                d.ground(),
                d.sawing());
    }
}
