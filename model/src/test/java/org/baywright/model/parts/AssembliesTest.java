package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.junit.jupiter.api.Test;

/** What is welded to what. */
class AssembliesTest {
    private static final String SHED = "span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
            + "column: SHS 100x100x5\nrafter: RHS 200x100x5\ncapPlate: {thickness: 12}\ngroutGap: 20\n";

    private static Part part(Shed shed, String mark) {
        return shed.parts().stream()
                .filter(p -> p.mark().equals(mark))
                .findFirst()
                .orElseThrow();
    }

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad();
    }

    /** A bare frame by hand: each column one base plate under it and one cap on it, each rafter its apex plate. */
    @Test
    void barePartsOfAFrameGoTogether() {
        Shed shed = Shed.of(Definitions.of(SHED + "envelope: none\n"));
        Assemblies all = Assemblies.of(shed);
        List<Assembly> columns = all.of(part(shed, "C1"));
        assertEquals(1, columns.size(), "left and right columns are one piece turned about");
        assertEquals("C1-A", columns.get(0).mark());
        assertEquals(8, columns.get(0).quantity());
        assertEquals(Map.of("BP1", 1, "CP1", 1), columns.get(0).counts());
        assertEquals(-16, columns.get(0).welded().get(0).nearStation(), 1e-6, "the plate ends where the column begins");
        assertEquals(Map.of("AP1", 1), all.of(part(shed, "R1")).get(0).counts());
        assertEquals(
                part(shed, "C1").massKg()
                        + part(shed, "BP1").massKg()
                        + part(shed, "CP1").massKg(),
                columns.get(0).massKg(),
                1e-9);
    }

    /** In a braced bay the left column's brace cleats are on the other hand than the right column's. */
    @Test
    void leftAndRightHandAreTwoAssemblies() {
        Shed shed = Shed.of(Definitions.of(SHED + "envelope: full\n"));
        List<Assembly> ends = Assemblies.of(shed).of(part(shed, "C1")).stream()
                .filter(a -> a.places().stream().anyMatch(p -> p.frame() == 1))
                .toList();
        assertEquals(2, ends.size());
        assertNotEquals(
                ends.get(0).welded().stream().mapToDouble(w -> w.middle().z()).sum(),
                ends.get(1).welded().stream().mapToDouble(w -> w.middle().z()).sum(),
                1);
    }

    /** The trimmer over a door and under a window ends on both jambs alike: nothing is welded to header or sill. */
    @Test
    void cleatsOfTrimmersStandOnJambs() {
        Shed shed = Shed.of(Definitions.of(SHED + "openings: [{type: rollerDoor, wall: left, bay: 2, width: 3000},"
                + " {type: window, wall: right, bay: 1}, {type: door, wall: front}]\n"));
        Assemblies all = Assemblies.of(shed);
        for (PartKind trim : List.of(PartKind.HEADER, PartKind.SILL)) {
            for (Part part : shed.parts(trim)) {
                all.of(part).forEach(a -> assertEquals(List.of(), a.welded(), a.mark()));
            }
        }
        assertTrue(shed.count(PartKind.SILL) > 0);
    }

    /** A girt moved 30 along lies on its cleats with other holes than the rest of its mark: that is told. */
    @Test
    void piecesOfAMarkThatWantOtherHolesAreCounted() {
        Shed shed = Shed.of(Definitions.of(SHED));
        Part girt = shed.parts(PartKind.GIRT).stream()
                .filter(p -> p.quantity() > 1)
                .findFirst()
                .orElseThrow();
        assertEquals(0, JointHoles.of(shed).unlike(girt));
        List<Place> places = new ArrayList<>(girt.places());
        Place last = places.remove(places.size() - 1);
        Placement moved = Placement.of(
                last.placement().toWorld(30, 0, 0),
                last.placement().along(),
                last.placement().depth());
        places.add(new Place(moved, last.frame(), last.side()));
        Part other =
                new Part(girt.mark(), girt.kind(), girt.material(), girt.solid(), girt.holes(), girt.punched(), places);
        List<Part> parts = shed.parts().stream().map(p -> p == girt ? other : p).toList();
        Shed changed = new Shed(shed.definition(), shed.setOut(), parts, shed.anchorHoles());
        assertEquals(1, JointHoles.of(changed).unlike(other));
    }

    private static Map<String, Integer> lifting(Assembly assembly) {
        Map<String, Integer> counts = new TreeMap<>(assembly.counts());
        counts.keySet().removeIf(mark -> !mark.startsWith("LK") && !mark.startsWith("LP"));
        return counts;
    }

    /** Both columns alike get a bracket with the plate on it; the beam gets nothing, it is welded on site. */
    @Test
    void aBeamAcrossLiesOnBracketsOfItsColumns() {
        Shed shed = Shed.of(Definitions.of(SHED + "liftingBeam: {fromFrame: 2, underside: 3400}\n"));
        Assemblies all = Assemblies.of(shed);
        assertEquals(List.of(), all.of(part(shed, "LB1")).get(0).welded());
        assertEquals(List.of(), all.of(part(shed, "LK1")), "a bracket is no piece of its own");
        List<Assembly> columns = all.holding(part(shed, "LK1"));
        assertEquals(2, columns.stream().mapToInt(Assembly::quantity).sum());
        for (Assembly column : columns) {
            assertEquals(PartKind.COLUMN, column.member().kind());
            assertEquals(Map.of("LK1", 1, "LP1", 1), lifting(column));
            Attached bracket = column.welded().stream()
                    .filter(w -> w.plate().mark().equals("LK1"))
                    .findFirst()
                    .orElseThrow();
            assertTrue(bracket.isWeldedRound() && !bracket.isHung());
            assertEquals(3400 - 12 - 75 - 36, bracket.nearStation(), 1e-6, "over the column's foot at 36");
        }
    }

    /** Under the ridge every left rafter has the plate with its bracket, every right one the bracket alone. */
    @Test
    void aBeamUnderTheRidgeIsHungAlikeAtEveryFrame() {
        Shed shed = Shed.of(Definitions.of("span: 12000\nbays: 8\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
                + "liftingBeam: {run: along, fromFrame: 2, toFrame: 8, underside: 4200}\n"));
        assertTrue(shed.count(PartKind.LIFTING_BEAM) > 1, "lengths meet at brackets");
        Assemblies all = Assemblies.of(shed);
        int left = 0;
        int right = 0;
        for (Part rafter : shed.parts(PartKind.RAFTER)) {
            for (Assembly assembly : all.of(rafter)) {
                for (Place place : assembly.places()) {
                    boolean hung = place.frame() > 1 && place.frame() < 9;
                    boolean first = place.side() == Side.LEFT;
                    Map<String, Integer> wanted =
                            !hung ? Map.of() : first ? Map.of("LK1", 1, "LP1", 1) : Map.of("LK1", 1);
                    assertEquals(wanted, lifting(assembly), "frame " + place.frame() + " " + place.side());
                    left += hung && first ? 1 : 0;
                    right += hung && !first ? 1 : 0;
                }
            }
        }
        assertEquals(7, left);
        assertEquals(7, right);
    }

    /** Every plate is on exactly one member or counted as loose, and every member in exactly one assembly. */
    @Property(tries = 15, seed = Seeds.SHEDS)
    void noPlateIsLostOrWeldedTwice(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        Assemblies all = Assemblies.of(shed);
        for (Part part : shed.parts()) {
            if (!part.kind().isWeldedOn()) {
                assertEquals(
                        part.quantity(),
                        all.of(part).stream().mapToInt(Assembly::quantity).sum(),
                        part.mark());
            } else {
                int welded = all.holding(part).stream()
                        .mapToInt(a -> a.quantity() * a.counts().get(part.mark()))
                        .sum();
                assertEquals(part.quantity(), welded + all.loose(part), part.mark());
                boolean frame = part.kind().group() == PartKind.Group.PLATES;
                assertTrue(!frame || all.loose(part) == 0, () -> part.mark() + " is on nothing");
            }
        }
    }

    /** A girt's cleat holes fall on the girt where it is punched: two ways to the same place. */
    @Property(tries = 10, seed = Seeds.SHEDS)
    void holesOfCleatsFallWhereRowsArePunched(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        JointHoles holes = JointHoles.of(shed);
        for (PartKind kind : List.of(PartKind.GIRT, PartKind.PURLIN)) {
            for (Part row : shed.parts(kind)) {
                for (JointHole hole : holes.of(row)) {
                    assertTrue(
                            row.punched().stream()
                                    .anyMatch(p -> Math.abs(p - hole.at().x()) < 0.1),
                            () -> row.mark() + " is not punched at " + hole.at().x() + ": " + row.punched());
                }
            }
        }
    }
}
