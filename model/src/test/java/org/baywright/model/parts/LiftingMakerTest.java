package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.definition.DefinitionReader;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.junit.jupiter.api.Test;

/** Worked by hand from the lines of the frame: span 12000, columns SHS 100, eave 4200, pitch 10 degrees. */
class LiftingMakerTest {
    private static final double TAN = Math.tan(Math.toRadians(10));
    private static final double COS = Math.cos(Math.toRadians(10));

    private static Shed shed(String beam) {
        String yaml = "span: 12000\nbays: 4\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
                + "column: SHS 100x100x5\nrafter: RHS 200x100x5\nliftingBeam: " + beam + "\n";
        return Shed.of(DefinitionReader.read("hoist.yaml", yaml, List.of(), Catalogue.shipped())
                .definition()
                .orElseThrow());
    }

    private static Part only(Shed shed, PartKind kind) {
        assertEquals(1, shed.parts(kind).size(), kind + " marks");
        return shed.parts(kind).get(0);
    }

    @Test
    void acrossItReachesFromFaceToFaceLessTheGapsOnABracketAtEachColumn() {
        Shed shed = shed("{section: 250UB31.4, fromFrame: 3, underside: 3400}");
        Part beam = only(shed, PartKind.LIFTING_BEAM);
        assertEquals(1, beam.quantity());
        assertEquals(12_000 - 2 * 100 - 2 * 10, beam.stockLength(), 0.05);
        Vec3 start = beam.places().get(0).placement().origin();
        assertEquals(110, start.x(), 1e-6);
        assertEquals(12_000, start.y(), 1e-6);
        assertEquals(3400, start.z() - beam.solid().profile().depth() / 2, 1e-6);
        Part bracket = only(shed, PartKind.LIFTING_BRACKET);
        assertEquals(2, bracket.quantity());
        assertEquals(160, bracket.stockLength(), 0.05);
        for (Place place : bracket.places()) {
            assertEquals(3400 - 12, place.placement().origin().z() + 75.0 / 2, 1e-6);
        }
        assertEquals(2, only(shed, PartKind.LIFTING_PLATE).quantity());
    }

    @Test
    void alongItHangsFromEveryRafterOfItsFrames() {
        Shed shed = shed("{section: 250UB31.4, run: along, fromFrame: 2, toFrame: 4, offset: 3000, underside: 3900}");
        Part bracket = only(shed, PartKind.LIFTING_BRACKET);
        assertEquals(3, bracket.quantity());
        double top = 4200 + 3000 * TAN - 200 / COS;
        double depth = only(shed, PartKind.LIFTING_BEAM).solid().profile().depth();
        assertEquals(top - (3900 + depth + 12), bracket.solid().endStation(new Vec2(0, 0)), 1e-6);
        assertEquals(10, bracket.solid().endAngleDeg(), 1e-6);
        Part beam = only(shed, PartKind.LIFTING_BEAM);
        assertEquals(12_000 + 75, beam.stockLength(), 0.05);
    }

    @Test
    void underTheRidgeTwoBracketsOfOneMarkStandBesideItsPlates() {
        Shed shed = shed("{section: 250UB31.4, run: along, fromFrame: 2, underside: 4200}");
        Part bracket = only(shed, PartKind.LIFTING_BRACKET);
        assertEquals(4, bracket.quantity());
        List<Double> off = bracket.places().stream()
                .map(p -> Math.abs(p.placement().origin().x() - 6000))
                .distinct()
                .toList();
        assertEquals(List.of(12 + 12 + 75.0 / 2), off);
        assertEquals(2, only(shed, PartKind.LIFTING_PLATE).quantity());
    }

    @Test
    void aBeamLongerThanAnyBarIsMadeOfLengthsThatMeetAtBrackets() {
        String yaml = "span: 12000\nbays: 8\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
                + "liftingBeam: {run: along, fromFrame: 1, toFrame: 9, offset: 6000, underside: 4200}\n";
        Shed shed = Shed.of(DefinitionReader.read("hoist.yaml", yaml, List.of(), Catalogue.shipped())
                .definition()
                .orElseThrow());
        List<double[]> runs = shed.parts(PartKind.LIFTING_BEAM).stream()
                .flatMap(part -> part.places().stream().map(p -> new double[] {
                    p.placement().origin().y(),
                    p.placement().origin().y() + part.solid().axisLength()
                }))
                .sorted((a, b) -> Double.compare(a[0], b[0]))
                .toList();
        assertTrue(runs.size() > 1);
        for (int i = 1; i < runs.size(); i++) {
            assertEquals(runs.get(i - 1)[1], runs.get(i)[0], 1e-6);
            assertEquals(0, runs.get(i)[0] % 6000, 1e-6);
        }
        assertTrue(runs.stream().allMatch(r -> r[1] - r[0] <= 18_000));
    }

    @Test
    void aBareFrameHasNoBeam() {
        Shed shed = Shed.of(DefinitionReader.read(
                        "bare.yaml",
                        "span: 12000\nbays: 4\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\nenvelope: none\n"
                                + "liftingBeam: {fromFrame: 2, underside: 3400}\n",
                        List.of(),
                        Catalogue.shipped())
                .definition()
                .orElseThrow());
        assertEquals(0, shed.count(PartKind.LIFTING_BEAM));
    }
}
