package org.baywright.model.cladding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.parts.Shed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Downpipes are as few as carry the water where doors and open bays leave room, and stay clear of sliding leaves. */
class DownpipesTest {
    private static final List<Double> COLUMNS =
            IntStream.rangeClosed(0, 6).mapToObj(i -> i * 6000.0).toList();

    /**
     * Six bays of 6 m with a 4 m door in the middle of five of them; 4000 of gutter to a pipe. Worked by hand: pipes
     * stand in 2300 at most beside each column line, so between two doors' middles two are needed, or three.
     */
    @Test
    void aGutterOverDoorsHasNoMorePipesThanItNeeds() {
        List<double[]> doors = IntStream.range(0, 5)
                .mapToObj(i -> new double[] {i * 6000 + 1000, i * 6000 + 5000})
                .toList();
        List<Double> at = new Downpipes(-129, 36_129, 4000, 4000, COLUMNS, doors, List.of()).places();
        assertLimits(at, -129, 36_129, 4000, 4000);
        assertTrue(at.size() <= 12, at::toString);
        for (double[] door : doors) {
            assertTrue(at.stream().noneMatch(p -> p > door[0] - 150 && p < door[1] + 150), at::toString);
        }
    }

    /** Where there are no more places than too few columns, each takes one pipe, not one of several. */
    @Test
    void allOpenBaysHaveAPipeAtEachColumnWhenThatIsNotEnough() {
        List<double[]> open = IntStream.range(0, 6)
                .mapToObj(i -> new double[] {i * 6000, (i + 1) * 6000})
                .toList();
        assertEquals(COLUMNS, new Downpipes(0, 36_000, 4100, 12_000, COLUMNS, List.of(), open).places());
    }

    /**
     * All bays open but the third, columns too few: the pipes that help there hang in that bay, not right beside the pipe
     * at a column.
     */
    @Test
    void pipesInAClosedBayHangApart() {
        List<double[]> open = IntStream.of(0, 1, 3, 4, 5)
                .mapToObj(i -> new double[] {i * 6000, (i + 1) * 6000})
                .toList();
        List<Double> at = new Downpipes(0, 36_000, 3100, 12_000, COLUMNS, List.of(), open).places();
        assertTrue(at.size() > COLUMNS.size(), at::toString);
        for (int i = 1; i < at.size(); i++) {
            assertTrue(at.get(i) - at.get(i - 1) >= 1000, at::toString);
        }
    }

    /** Against every choice of places: none with fewer pipes carries the water. */
    @Property(tries = 200, seed = Seeds.SHEDS)
    void noFewerPipesDo(
            @ForAll @Size(min = 3, max = 10) List<@DoubleRange(min = 0, max = 20_000) Double> anywhere,
            @ForAll @DoubleRange(min = 2500, max = 12_000) double most,
            @ForAll @DoubleRange(min = 2500, max = 12_000) double oneWay) {
        List<Double> places = anywhere.stream().sorted().distinct().toList();
        List<Double> found = new PipeSearch(0, 20_000, most, oneWay, 200, places).within();
        int fewest = IntStream.range(1, 1 << places.size())
                .filter(set -> carries(chosen(places, set), 0, 20_000, most, oneWay))
                .map(Integer::bitCount)
                .min()
                .orElse(0);
        assertEquals(fewest, found.size());
    }

    private static List<Double> chosen(List<Double> places, int set) {
        return IntStream.range(0, places.size())
                .filter(i -> (set >> i & 1) == 1)
                .mapToObj(places::get)
                .toList();
    }

    private static boolean carries(List<Double> at, double from, double to, double most, double oneWay) {
        List<Double> high = new ArrayList<>(List.of(from));
        for (int i = 1; i < at.size(); i++) {
            if (at.get(i) - at.get(i - 1) < 200) {
                return false;
            }
            high.add((at.get(i - 1) + at.get(i)) / 2);
        }
        high.add(to);
        return IntStream.range(0, at.size())
                .allMatch(i -> high.get(i + 1) - high.get(i) <= most
                        && Math.max(high.get(i + 1) - at.get(i), at.get(i) - high.get(i)) <= oneWay);
    }

    private static void assertLimits(List<Double> at, double from, double to, double most, double oneWay) {
        assertTrue(carries(at, from, to, most + 1e-6, oneWay + 1e-6), at::toString);
    }

    private static final String SHED =
            "span: 12000\nbays: 4\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\nenvelope: full\n";

    private static GutterRun left(String more) {
        return Cladding.gutters(Shed.of(Definitions.of(SHED + more))).get(0);
    }

    /**
     * A 4.8 m leaf in the middle of bay 3, from 12 600 to 17 400 with 100 of lap, slides to the right as seen from
     * outside the left wall, towards frame 1: its track ends 5000 further on, at 7500.
     */
    @ParameterizedTest
    @ValueSource(ints = {150, 190, 250})
    void noPipeStandsInTheWayOfASlidingLeaf(int rainfall) {
        String door = "openings:\n  - {type: %s, wall: left, bay: 3, width: 4800, height: 3300}\n";
        String rain = "roofWater: {rainfall: " + rainfall + "}\n";
        GutterRun run = left(rain + door.formatted("slidingDoor"));
        assertTrue(
                run.downpipes().stream().noneMatch(p -> p.y() > 7500 - 150 + 1 && p.y() < 17_500 + 150 - 1),
                () -> run.downpipes().toString());
        assertTrue(
                left(rain + door.formatted("rollerDoor")).downpipes().stream()
                        .anyMatch(p -> p.y() > 7500 && p.y() < 17_500),
                "without a leaf one stands there");
    }

    /** A window over a lean-to's roof, in the wall between, is in the way of the upper gutter's pipes. */
    @Test
    void noPipeHangsBeforeAWindowOverALeanTo() {
        String tall = SHED.replace("4200", "6000") + "roofWater: {rainfall: 250}\n"
                + "leanTos: [{side: left, width: 3000, pitch: 5, drop: 2500}]\nopenings:\n";
        StringBuilder windows = new StringBuilder(tall);
        for (int bay = 1; bay <= 4; bay++) {
            windows.append("  - {type: window, wall: left, bay: ")
                    .append(bay)
                    .append(", width: 4400, height: 800, sill: 4300}\n");
        }
        GutterRun run =
                Cladding.gutters(Shed.of(Definitions.of(windows.toString()))).get(0);
        assertFalse(run.slope().line().leanTo(), "the upper gutter");
        assertFalse(run.downpipes().isEmpty());
        for (int bay = 0; bay < 4; bay++) {
            double low = bay * 6000 + 800;
            double high = bay * 6000 + 5200;
            assertTrue(
                    run.downpipes().stream().noneMatch(p -> p.y() > low && p.y() < high),
                    () -> run.downpipes().toString());
        }
    }

    /** Over a lean-to's roof a pipe hangs above what opens in the wall, and is told with the roof it spills on to. */
    @Test
    void pipesOverALeanToEndOnItsRoof() {
        Shed shed = Shed.of(Definitions.of(SHED + "leanTos:\n  - {side: left, width: 4000, pitch: 5, drop: 600}\n"));
        List<GutterRun> runs = Cladding.gutters(shed);
        GutterRun main = runs.get(0);
        assertEquals(main.falls(), main.ontoLeanTos(shed));
        assertTrue(runs.stream()
                .filter(r -> r != main)
                .allMatch(r -> r.ontoLeanTos(shed).isEmpty()));
        assertTrue(Stream.of(main).flatMap(r -> r.falls().stream()).allMatch(f -> f.catchmentM2() <= 45));
    }
}
