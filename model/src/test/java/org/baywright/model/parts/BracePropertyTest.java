package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec3;
import org.junit.jupiter.api.Test;

/** Bracing can be made and put up: its ends are bolted to cleats, and its rods come from bars that are sold. */
class BracePropertyTest {
    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad().filter(d -> d.shape().bays() <= 5);
    }

    private static List<Standing> standing(Shed shed, PartKind... kinds) {
        return Stream.of(kinds)
                .flatMap(kind -> shed.parts(kind).stream())
                .flatMap(part -> part.places().stream().map(place -> Standing.of(part, place)))
                .toList();
    }

    /** The middles of a plate's holes, in the middle of its thickness. */
    private static List<Vec3> holes(Standing plate) {
        double middle = plate.part().solid().axisLength() / 2;
        return plate.part().holes().stream()
                .map(h -> plate.place().placement().toWorld(middle, h.at().x(), h.at().y()))
                .toList();
    }

    @Property(tries = 6, seed = Seeds.SHEDS)
    void everyRodHasALugAndEveryLugACleat(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        List<Standing> lugs = standing(shed, PartKind.BRACE_LUG);
        List<Standing> cleats = standing(shed, PartKind.BRACE_CLEAT);
        List<Standing> rods = standing(shed, PartKind.BRACE).stream()
                .filter(r -> r.part().isRod())
                .toList();
        assertEquals(rods.size(), lugs.size());
        for (Standing rod : rods) {
            assertTrue(lugs.stream().anyMatch(l -> Math.abs(l.gap(rod)) < Standing.TOUCH), () -> "no lug: " + rod);
        }
        for (Standing lug : lugs) {
            Vec3 bolt = holes(lug).get(0);
            assertTrue(
                    cleats.stream()
                            .filter(c -> c.gap(lug) < 0.01)
                            .anyMatch(c ->
                                    holes(c).stream().anyMatch(h -> Math.abs(h.distance(bolt) - BraceLine.LUG) < 0.01)),
                    () -> "no bolt through " + lug.part().mark() + " at " + bolt);
        }
    }

    /** A strut goes in between rafters that stand: it has a gap at both ends and a bolt through a cleat over each. */
    @Property(tries = 6, seed = Seeds.SHEDS)
    void strutsAreBoltedUnderCleatsAndHaveRoomToGoIn(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        JointHoles holes = JointHoles.of(shed);
        List<Standing> rafters = standing(shed, PartKind.RAFTER, PartKind.LEAN_TO_RAFTER);
        for (Part strut : shed.parts(PartKind.STRUT)) {
            double length = strut.solid().axisLength();
            List<JointHole> bolts = holes.of(strut);
            assertEquals(2, bolts.size(), strut.mark());
            assertTrue(bolts.get(0).at().x() >= 25 && bolts.get(0).at().x() < length / 2);
            assertTrue(bolts.get(1).at().x() <= length - 25 && bolts.get(1).at().x() > length / 2);
            for (Place place : strut.places()) {
                for (double end : new double[] {0, length}) {
                    Placement at = place.placement();
                    Vec3 beyond = at.toWorld(end + (end > 0 ? 9 : -9), 0, 0);
                    assertTrue(
                            rafters.stream()
                                    .flatMap(r -> r.lumps().stream())
                                    .noneMatch(l -> l.faces().stream().allMatch(f -> f.distance(beyond) < 0)),
                            () -> strut.mark() + " reaches a rafter at " + beyond);
                }
            }
        }
    }

    /** A fly brace is bolted to a lug that it lies against and that is welded to the rafter. */
    @Property(tries = 8, seed = Seeds.SHEDS)
    void everyFlyBraceLiesOnALugOfItsRafter(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        Assemblies assemblies = Assemblies.of(shed);
        JointHoles holes = JointHoles.of(shed);
        List<Standing> lugs = standing(shed, PartKind.FLY_BRACE_LUG);
        List<Standing> rafters = standing(shed, PartKind.RAFTER, PartKind.LEAN_TO_RAFTER);
        for (Standing brace : standing(shed, PartKind.FLY_BRACE)) {
            Standing lug = lugs.stream()
                    .filter(l -> Math.abs(l.gap(brace)) < 0.01)
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no lug: " + brace.place()));
            assertTrue(rafters.stream().anyMatch(r -> Math.abs(lug.gap(r)) < 0.01), () -> "hangs: " + lug.place());
            assertEquals(1, holes.of(brace.part()).size());
            assertEquals(25, holes.of(brace.part()).get(0).at().x(), 0.1);
        }
        shed.parts(PartKind.FLY_BRACE_LUG).forEach(l -> assertEquals(0, assemblies.loose(l), l.mark()));
    }

    /** Bays of 8 m on an ordinary span: the longest braces that sheds of the trade have. */
    @Test
    void rodsComeFromBarsThatAreSold() {
        double bar =
                Catalogue.shipped()
                        .stockLengths(Catalogue.shipped().section("ROD 16").orElseThrow())
                        .lengthsMm()
                        .stream()
                        .max(Double::compare)
                        .orElseThrow();
        Shed shed = Shed.of(Definitions.of("span: 14000\nbays: 3\nbaySpacing: 8000\neaveHeight: 5000\nroofPitch: 10\n"
                + "envelope: full\nbracing: {section: ROD 16}\n"));
        for (Part rod : shed.parts(PartKind.BRACE)) {
            assertTrue(rod.stockLength() <= bar - 20, () -> rod.mark() + " is " + rod.stockLength());
        }
    }
}
