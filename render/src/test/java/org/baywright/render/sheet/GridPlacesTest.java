package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.render.dimension.Row;
import org.junit.jupiter.api.Test;

/** The list of welded pieces sends each to where the model has it. */
class GridPlacesTest {
    private static final int HOW_MANY = 3;
    private static final int PLACES = 5;

    @Provide
    Arbitrary<Definition> clad() {
        return Definitions.clad();
    }

    /** Every column is told the place where its base plate is set out. */
    @Property(tries = 25, seed = Seeds.SHEDS)
    void columnsGoToTheirBasePlates(@ForAll("clad") Definition definition) {
        Shed shed = Shed.of(definition);
        Assemblies assemblies = Assemblies.of(shed);
        GridPlaces places = new GridPlaces(shed.setOut());
        for (PlateStand stand : PlateStand.of(shed)) {
            if (stand.isOfFrame()) {
                Assembly column = assemblies.of(stand.upright()).stream()
                        .filter(a -> a.places().contains(stand.uprightPlace()))
                        .findFirst()
                        .orElseThrow();
                List<String> told = single(places.of(column));
                assertTrue(told.contains(stand.grid()), () -> stand.grid() + " not in " + told);
                assertEquals(column.quantity(), told.size());
            }
        }
    }

    /** By the lines and frames it is between, past the last line of an overhang too: no offsets, as it is mid-bay. */
    @Property(tries = 30, seed = Seeds.SHEDS)
    void bridgingIsToldByWhatItIsBetween(@ForAll("clad") Definition definition) {
        Shed shed = Shed.of(definition);
        Assemblies assemblies = Assemblies.of(shed);
        GridPlaces places = new GridPlaces(shed.setOut());
        shed.parts(PartKind.BRIDGING).stream()
                .flatMap(part -> assemblies.of(part).stream())
                .flatMap(assembly -> Stream.of(places.of(assembly).split("; ")))
                .forEach(word ->
                        assertTrue(word.matches("(roof )?[A-Z]+[0-9]*( to [A-Z]+[0-9]*)?/[0-9]+(-[0-9]+)?"), word));
    }

    @Test
    void bridgingOfAnEndWallIsBetweenItsLines() {
        Shed shed = Sheds.closed(Sheds.FULL).shed();
        GridPlaces places = new GridPlaces(shed.setOut());
        Set<String> told = shed.parts(PartKind.BRIDGING).stream()
                .flatMap(part -> Assemblies.of(shed).of(part).stream())
                .flatMap(assembly -> Stream.of(places.of(assembly).split("; ")))
                .collect(Collectors.toSet());
        assertTrue(
                told.containsAll(
                        Set.of("roof A to B/1-2", "roof A to B/4-5", "A to B/1", "A to B/5", "A/1-2", "B/4-5")),
                told::toString);
    }

    /** {@code A/1–3, 5; B/2} one by one. */
    private static List<String> single(String words) {
        List<String> all = new ArrayList<>();
        for (String line : words.split("; ")) {
            String[] parts = line.split("/");
            for (String run : parts[1].split(", ")) {
                String[] ends = run.split("–");
                IntStream.rangeClosed(Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1]))
                        .forEach(frame -> all.add(parts[0] + "/" + frame));
            }
        }
        return all;
    }

    @Test
    void uprightsOfOneMarkAreToldApart() {
        Shed shed = Sheds.closed(Sheds.FULL + Sheds.LEAN, Sheds.openings()).shed();
        GridPlaces places = new GridPlaces(shed.setOut());
        Assemblies assemblies = Assemblies.of(shed);
        List<String> told = shed.parts().stream()
                .filter(p -> p.kind() == PartKind.JAMB || p.kind() == PartKind.MULLION)
                .flatMap(p -> assemblies.of(p).stream())
                .map(places::of)
                .flatMap(words -> List.of(words.split("; ")).stream())
                .toList();
        assertEquals(told.size(), told.stream().distinct().count());
        // A front door 4000 wide in the middle of a span of 12000: the left jamb's middle is half its width outside it.
        assertTrue(told.stream().anyMatch(w -> w.matches("A\\+39[0-9]{2}/1")), told::toString);
        assertTrue(told.stream().anyMatch(w -> w.matches("A/2\\+[0-9]{4}")), told::toString);
    }

    @Test
    void everyWeldedPieceIsInTheList() {
        Shed shed = Sheds.closed(Sheds.FULL + Sheds.LEAN, Sheds.openings()).shed();
        Assemblies assemblies = Assemblies.of(shed);
        int welded = shed.parts().stream()
                .flatMap(p -> assemblies.of(p).stream())
                .filter(a -> !a.welded().isEmpty())
                .mapToInt(Assembly::quantity)
                .sum();
        List<Row> rows = ErectionSheet.pieces(shed);
        assertEquals(
                welded,
                rows.stream()
                        .mapToInt(row -> Integer.parseInt(row.cells().get(HOW_MANY)))
                        .sum());
        assertTrue(rows.stream().noneMatch(row -> row.cells().get(PLACES).isEmpty()));
    }
}
