package org.baywright.model.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.junit.jupiter.api.Test;

/** Drilling, welds, vent holes and lifts: figures by hand, and sums that must meet the rest of the take-off. */
class ShopWorkTest {
    private static final String SHED =
            "span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\nenvelope: none\n";

    private static Shed shed(String more) {
        return Shed.of(Definitions.of(SHED + more));
    }

    @Provide
    Arbitrary<Definition> bare() {
        return Definitions.valid();
    }

    @Provide
    Arbitrary<Definition> clad() {
        return Definitions.clad();
    }

    @Property(tries = 10, seed = Seeds.SHEDS)
    void everyAnchorIsDrilledUnderSomePlate(@ForAll("clad") Definition definition) {
        Shed shed = Shed.of(definition);
        List<Drilling> drilling = Drilling.of(shed);
        assertEquals(
                shed.anchorHoles().size(),
                drilling.stream().mapToInt(Drilling::holes).sum());
        assertEquals(
                Adhesive.of(shed).drillingM(),
                drilling.stream().mapToDouble(Drilling::metres).sum(),
                1e-9);
    }

    /** 125 deep, a plate of 16, packed up 20. */
    @Test
    void marksOnTheBit() {
        Drilling drilling = Drilling.of(shed("")).get(0);
        assertEquals(125, drilling.depth());
        assertEquals(141, drilling.markThroughPlate(), 1e-9);
        assertEquals(161, drilling.markThroughPackedPlate(), 1e-9);
    }

    /** Every plate and every bracket is welded once in the shop; what is bought is the sum of the list. */
    @Property(tries = 3, seed = Seeds.SHEDS)
    void everyPlateIsWeldedOnce(@ForAll("clad") Definition definition) {
        Building building = Building.of(definition);
        Shed shed = building.shed();
        Welds welds = Welds.of(shed);
        for (PartKind kind : PartKind.values()) {
            if (kind.isWeldedOn()) {
                assertEquals(
                        shed.count(kind),
                        welds.list().stream()
                                .filter(w -> w.joint() == kind && !w.seam().isOnSite())
                                .mapToInt(Weld::count)
                                .sum(),
                        kind.label());
            }
        }
        Assemblies assemblies = Assemblies.of(shed);
        assertEquals(
                shed.parts().stream().mapToInt(assemblies::loose).sum(),
                welds.list().stream()
                        .filter(w -> w.member().equals(Weld.NO_MEMBER))
                        .mapToInt(Weld::count)
                        .sum());
        BillLine bought = Bill.of(building).lines(BillGroup.CONSUMABLES).stream()
                .filter(l -> l.item().description().startsWith("electrode"))
                .findFirst()
                .orElseThrow();
        assertEquals(welds.electrodeKg(), bought.net(), 1e-9);
        assertEquals(welds.packs() * Welds.PACK_KG, bought.order(), 1e-9);
        assertEquals(Summary.of(building).get("electrodeKg"), welds.electrodeKg(), 5e-4);
    }

    private static String lifting(String beam) {
        Shed shed = Shed.of(Definitions.of(SHED.replace("none", "full") + "liftingBeam: {" + beam + "}\n"));
        return Welds.of(shed).list().stream()
                .filter(w -> w.joint().group() == PartKind.Group.LIFTING)
                .map(w -> w.count() + " " + w.plate() + " to " + w.member() + " " + Math.round(w.length()) + " "
                        + w.seam().label())
                .collect(Collectors.joining("\n"));
    }

    /** A header of 100 square goes between two jambs, 400 round each end; a window has a sill too. */
    @Test
    void headersAndSillsAreWeldedToBothJambs() {
        Shed shed = Shed.of(Definitions.of(SHED.replace("none", "full")
                + "openings: [{type: door, wall: front}, {type: window, wall: left, bay: 2}]\n"));
        List<Weld> trims = Welds.of(shed).list().stream()
                .filter(w -> w.joint() == PartKind.HEADER || w.joint() == PartKind.SILL)
                .toList();
        assertEquals(6, trims.stream().mapToInt(Weld::count).sum());
        assertTrue(trims.stream()
                .allMatch(w -> w.length() == 400
                        && w.seam() == Weld.Seam.SITE_ROUND
                        && w.member().startsWith("J")));
    }

    /** Bracket 75 square, its plate 140 along it; the beam begins where the plate does, 10 off the column. */
    @Test
    void weldsOfABeamAcross() {
        assertEquals(
                "2 LK1 to C1 300 all round\n2 LP1 to LK1 280 both sides\n2 LP1 to LB1 280 both sides, on site",
                lifting("fromFrame: 2, underside: 3400"));
    }

    /** Brackets cut at 10 degrees, 150 + 150 / cos; plates 100 along the beam, which ends 12.5 inside the first and last. */
    @Test
    void weldsOfABeamAlong() {
        assertEquals(
                "2 LK1 to R1 302 all round\n2 LP1 to LK1 300 all round\n2 LP1 to LB1 175 both sides, on site",
                lifting("run: along, fromFrame: 2, offset: 3000, underside: 3800"));
        assertEquals(
                "4 LK1 to R1 302 all round\n2 LP1 to LK1 300 all round\n2 LP1 to LK1 300 all round, on site\n"
                        + "2 LP1 to LB1 175 both sides, on site",
                lifting("run: along, fromFrame: 2, underside: 4200"));
    }

    /** A bracket on a column is closed by it, one that hangs by its rafter and its plate. */
    @Test
    void ventHolesOfBrackets() {
        for (String beam : List.of("", "run: along, ")) {
            Shed shed = Shed.of(Definitions.of(
                    SHED.replace("none", "full") + "liftingBeam: {" + beam + "fromFrame: 2, underside: 3400}\n"));
            VentHoles vents = VentHoles.of(shed).stream()
                    .filter(v -> v.member().kind() == PartKind.LIFTING_BRACKET)
                    .findFirst()
                    .orElseThrow();
            assertEquals(beam.isEmpty() ? 1 : 2, vents.closedEnds());
        }
    }

    /** A quarter of the diagonal of 100 x 100 is 35.4, of 200 x 100 55.9: about 35 in the trade's own example. */
    @Test
    void ventHolesOfHollowMembers() {
        List<VentHoles> vents = VentHoles.of(shed(""));
        VentHoles column = vents.get(0);
        assertEquals(PartKind.COLUMN, column.member().kind());
        assertEquals(36, column.diameter());
        assertEquals(2, column.closedEnds());
        assertEquals(4, column.holes());
        VentHoles rafter = vents.get(vents.size() - 1);
        assertEquals(56, rafter.diameter());
        assertEquals(1, rafter.closedEnds());
        assertEquals(10, new VentHoles(column.member(), 1, 30).diameter());
    }

    /** A bare gable shed is its frames: together they weigh what all its steel does, and balance in the middle. */
    @Test
    void framesWeighWhatTheShedDoes() {
        Shed shed = shed("");
        List<Lift> frames = lifts(shed, Lift.Kind.FRAME);
        double mass = frames.stream().mapToDouble(l -> l.massKg() * l.count()).sum();
        assertEquals(Summary.of(shed).get("steelMassKg"), mass, 0.5);
        assertEquals(4, frames.stream().mapToInt(Lift::count).sum());
        frames.forEach(f -> assertEquals(6000, f.balance().along(), 0.01));
        assertEquals(
                4200 + (6000 - 12) * Math.tan(Math.toRadians(10)), frames.get(0).height(), 0.01);
    }

    /** Moments by hand: columns 3957.5 long on the middle, rafters at half their length up the slope. */
    @Test
    void aFrameBalancesWhereItsMomentsSay() {
        Shed shed = shed("capPlate: {thickness: 0}\napexPlate: {thickness: 0}\n");
        Part column = shed.parts(PartKind.COLUMN).get(0);
        Part rafter = shed.parts(PartKind.RAFTER).get(0);
        Part plate = shed.parts(PartKind.BASE_PLATE).get(0);
        double plateTop = 16;
        double columnAt = plateTop + column.centreOfGravity().x();
        double rafterAt = rafter.places()
                        .get(0)
                        .placement()
                        .toWorld(rafter.centreOfGravity())
                        .z()
                - 20;
        double moment = column.massKg() * columnAt + rafter.massKg() * rafterAt + plate.massKg() * plateTop / 2;
        double mass = column.massKg() + rafter.massKg() + plate.massKg();
        Lift frame = lifts(shed, Lift.Kind.FRAME).get(0);
        assertEquals(2 * mass, frame.massKg(), 1e-6);
        assertEquals(moment / mass, frame.balance().up(), 1);
    }

    /** Piece by piece and pack by pack nothing of the frames and walls is left out or weighed twice. */
    @Property(tries = 10, seed = Seeds.SHEDS)
    void piecesWeighWhatTheFramesDo(@ForAll("bare") Definition definition) {
        Shed shed = Shed.of(definition);
        double mass = lifts(shed, Lift.Kind.PIECE).stream()
                .mapToDouble(l -> l.massKg() * l.count())
                .sum();
        double steel = Summary.of(shed).get("steelMassKg");
        // Rows alike to the kilogram share the mass of the heaviest.
        int pieces = lifts(shed, Lift.Kind.PIECE).stream().mapToInt(Lift::count).sum();
        assertTrue(mass >= steel - 0.1 && mass <= steel + pieces, mass + " of " + steel);
    }

    /** A lean-to's purlins and an end wall's girts are bundled apart; all rows are in some pack, and in one only. */
    @Test
    void packsHoldEveryRowOnce() {
        String closed = SHED.replace("envelope: none", "envelope: full");
        Shed shed = Shed.of(Definitions.of(closed + "leanTos: [{side: left, width: 4000, drop: 400}]\n"));
        List<Lift> packs = lifts(shed, Lift.Kind.PACK);
        List<Lift> ends = lifts(shed, Lift.Kind.END_PACK);
        int slopes = packs.stream()
                .filter(l -> l.marks().endsWith("purlins"))
                .mapToInt(Lift::count)
                .sum();
        assertEquals(3 * 3, slopes);
        assertEquals(2, ends.stream().mapToInt(Lift::count).sum());
        int rows = Stream.concat(packs.stream(), ends.stream())
                .mapToInt(l -> l.count() * Integer.parseInt(l.marks().split(" ")[0]))
                .sum();
        assertEquals(shed.count(PartKind.PURLIN) + shed.count(PartKind.GIRT), rows);
    }

    @Test
    void whatOnePersonLiftsIsNotFlagged() {
        Lift.Balance middle = new Lift.Balance(1, 0);
        assertFalse(new Lift(Lift.Kind.PIECE, "C1", List.of(), 1, 23.1, middle, 1).isHeavy());
        assertTrue(new Lift(Lift.Kind.PIECE, "C1", List.of(), 1, 23.2, middle, 1).isHeavy());
        assertEquals(109, new Lift(Lift.Kind.PIECE, "C1", List.of(), 1, 100.5, middle, 1).liftedKg());
    }

    private static List<Lift> lifts(Shed shed, Lift.Kind kind) {
        return Lifts.of(shed).stream().filter(l -> l.kind() == kind).toList();
    }
}
