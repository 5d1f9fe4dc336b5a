package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.definition.Definitions;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.takeoff.BoltUse;
import org.baywright.model.takeoff.Weld;
import org.baywright.model.takeoff.Welds;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bridging has something to fix it by: a plate on each end, bolted through the webs' own holes. */
class BridgingEndsTest {
    private static Shed shed(String rows, String flyBraces) {
        return Shed.of(Definitions.of("span: 12000\nbays: 3\nbaySpacing: 6500\neaveHeight: 4200\nroofPitch: 10\n"
                + "envelope: full\npurlins: {section: " + rows + "}\ngirts: {section: " + rows + "}\n"
                + "bracing: {flyBraces: " + flyBraces + "}\n"));
    }

    private static Stream<Standing> standing(Shed shed, PartKind... kinds) {
        return Stream.of(kinds)
                .flatMap(k -> shed.parts(k).stream())
                .flatMap(p -> p.places().stream().map(at -> Standing.of(p, at)));
    }

    @ParameterizedTest
    @CsvSource({
        "C100-12, EA 50x50x5",
        "C150-15, EA 50x50x5",
        "Z150-15, EA 50x50x5",
        "Z200-19, EA 40x40x5",
        "C200-19, FL 50x6"
    })
    void eachLengthHasAPlateAtEitherEndOnAWebAtItsHoles(String rows, String flyBraces) {
        Shed shed = shed(rows, flyBraces);
        Assemblies assemblies = Assemblies.of(shed);
        assertTrue(shed.count(PartKind.BRIDGING) > 0);
        shed.parts(PartKind.BRIDGING)
                .forEach(b ->
                        assemblies.of(b).forEach(a -> assertEquals(2, a.welded().size(), b.mark())));
        shed.parts(PartKind.BRIDGING_CLEAT).forEach(p -> assertEquals(0, assemblies.loose(p)));
        List<Standing> members = standing(shed, PartKind.PURLIN, PartKind.GIRT).toList();
        standing(shed, PartKind.BRIDGING_CLEAT).forEach(plate -> {
            Vec3 hole = hole(plate);
            long bolted = members.stream()
                    .filter(m -> m.plan().intersects(plate.plan()) && Math.abs(m.gap(plate)) < 0.1)
                    .filter(m -> isPunched(m, hole))
                    .count();
            assertEquals(1, bolted, () -> plate.part().mark() + " at " + hole);
        });
    }

    private static Vec3 hole(Standing plate) {
        var at = plate.part().holes().get(0).at();
        return plate.place().placement().toWorld(plate.part().solid().axisLength() / 2, at.x(), at.y());
    }

    /** One of the pair of holes of a place lies there: their gauges are those of cleats. */
    private static boolean isPunched(Standing row, Vec3 hole) {
        Vec3 at = row.place().placement().toLocal(hole);
        double half = CleatPlate.gauge(row.part().solid().profile().depth()) / 2;
        double middle = row.part().solid().profile().outline().stream()
                        .mapToDouble(p -> p.x())
                        .summaryStatistics()
                        .getMin()
                + row.part().solid().profile().depth() / 2;
        return row.part().punched().stream().anyMatch(p -> Math.abs(p - at.x()) < 0.1)
                && Math.abs(Math.abs(at.y() - middle) - half) < 0.1;
    }

    /** Two holes to a length; where lengths meet at a web both ends share the bolt, which is as much longer. */
    @ParameterizedTest
    @CsvSource({"C150-15, EA 50x50x5", "Z150-15, EA 50x50x5"})
    void oneBoltHoldsTheEndsThatMeetAtAWeb(String rows, String flyBraces) {
        Shed shed = shed(rows, flyBraces);
        List<Vec3> holes = standing(shed, PartKind.BRIDGING_CLEAT)
                .map(BridgingEndsTest::hole)
                .toList();
        long facing = holes.stream()
                .filter(h -> holes.stream().anyMatch(o -> o != h && o.distance(h) < 15))
                .count();
        List<BoltUse> uses = BoltUse.of(shed).stream()
                .filter(u -> u.joint() == PartKind.BRIDGING_CLEAT)
                .toList();
        assertEquals(2, uses.size());
        assertEquals(2L * shed.count(PartKind.BRIDGING), holes.size());
        for (BoltUse use : uses) {
            boolean shared = use.grip() > 12;
            assertEquals(shared ? 13.5 : 7.5, use.grip(), 1e-9);
            assertEquals(shared ? facing / 2 : holes.size() - facing, use.count());
        }
        double welds = Welds.of(shed).list().stream()
                .filter(w -> w.joint() == PartKind.BRIDGING_CLEAT)
                .mapToInt(Weld::count)
                .sum();
        assertEquals(holes.size(), welds);
    }
}
