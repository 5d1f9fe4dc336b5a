package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cleats that once hung in the air meet what carries them. */
class CarriedPlatesTest {
    private static String shed(double span, double pitch, String more) {
        return "span: " + span + "\nbays: 2\nbaySpacing: 5000\neaveHeight: 3600\nroofPitch: " + pitch
                + "\nenvelope: full\n" + more.replace("; ", "\n") + "\n";
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // one mullion, under the ridge: on the foot of the apex plates, or under steep rafters beside them
                "6000 | 10 | MULLION_CLEAT | ''",
                "8000 | 22 | MULLION_CLEAT | ''",
                "8000 | 30 | MULLION_CLEAT | ''",
                // girts that end under the rake: beside a rafter narrower than its column, on the web of one, below a
                // wide one
                "9000 | 10 | GIRT_CLEAT | column: SHS 125x125x6; rafter: RHS 125x75x4",
                "9000 | 10 | GIRT_CLEAT | column: 150UC23.4; rafter: 200UB25.4",
                "14000 | 12 | GIRT_CLEAT | column: 200UB25.4; rafter: 310UB40.4",
                "14000 | 12 | GIRT_CLEAT | column: 200UB25.4; rafter: 310UB40.4; girts: {place: flush, section: C100-12}",
                // on the ends of beam rafters over a lean-to
                "14000 | 12 | GIRT_CLEAT | column: 200UB25.4; rafter: 310UB40.4; leanTos: [{side: right, width: 5000, pitch: 5, drop: 300}]",
                // beside a lean-to's column narrower than the main one, and a main column wider than the lean-to's
                "9000 | 10 | GIRT_CLEAT | column: SHS 100x100x5; leanToColumn: SHS 75x75x4; leanTos: [{side: right, width: 4000, fromBay: 2}]; wallSheets: {leanToWalls: true}",
                "9000 | 10 | GIRT_CLEAT | column: SHS 150x150x6; leanToColumn: SHS 100x100x4; leanTos: [{side: right, width: 4000, fromBay: 2}]; wallSheets: {leanToWalls: true}; girts: {section: C100-12}",
                // mullions deeper than the rafter is wide, in line with its inside, and clear of it on either side
                "9000 | 10 | MULLION_CLEAT | column: SHS 150x150x6; mullions: {section: SHS 150x150x6}; rafter: RHS 200x100x5",
                "9000 | 10 | MULLION_CLEAT | mullions: {section: 150UB18.0}; rafter: RHS 200x100x5",
                "6000 | 40 | MULLION_CLEAT | mullions: {section: 150UB18.0}; rafter: RHS 150x50x5",
                "6000 | 10 | MULLION_CLEAT | mullions: {section: 150UB18.0}; column: SHS 89x89x5; apexPlate: {thickness: 0}",
                "9000 | 10 | MULLION_CLEAT | mullions: {section: C150-19}; heavier: [{frames: ends, side: right, column: SHS 150x150x9, rafter: RHS 250x150x8}]",
                "9000 | 10 | MULLION_CLEAT | column: SHS 150x150x6; mullions: {section: SHS 75x75x4}; rafter: RHS 150x50x5",
                // girts deeper than half a beam column's width stop short of its flange at the corner
                "9000 | 8 | GIRT_CLEAT | column: 250UB31.4; girts: {place: flush, section: C150-15}",
                // braces inside shallow columns that flush girts fill, and inside columns of two depths
                "9000 | 10 | BRACE_CLEAT | column: SHS 100x100x5; girts: {place: flush, section: C100-12}; bracing: {section: ROD 16}",
                "9000 | 10 | BRACE_CLEAT | column: SHS 150x150x6; girts: {place: flush, section: C150-15}; bracing: {section: FL 75x8}",
                "9000 | 10 | BRACE_CLEAT | column: 150UC23.4; girts: {place: flush, section: C150-15}; bracing: {section: EA 50x50x5}",
                "9000 | 10 | BRACE_CLEAT | column: SHS 89x89x5; girts: {place: flush, section: TH64-10}; heavier: [{frames: ends, column: SHS 100x100x5}]",
                "9000 | 10 | BRACE_CLEAT | leanTos: [{side: right, width: 4000}]; leanToColumn: SHS 100x100x4; wallSheets: {leanToWalls: true}; girts: {place: flush, section: C100-12}",
                // eave purlins over columns that rafters butt against
                "9000 | 10 | PURLIN_CLEAT | kneeJoint: butted; column: 200UB25.4; rafter: RHS 200x100x5",
                "9000 | 10 | PURLIN_CLEAT | kneeJoint: butted; column: 200UB25.4; rafter: RHS 200x100x5; purlins: {section: Z200-19, fromEave: 150}",
                "9000 | 10 | PURLIN_CLEAT | kneeJoint: butted; column: 150UC23.4; capPlate: {thickness: 0}",
                "9000 | 4 | PURLIN_CLEAT | kneeJoint: butted; column: SHS 150x150x6; roofShape: skillion",
                // the end wall of a lean-to beside the rows of the main wall
                "9000 | 10 | GIRT_CLEAT | leanTos: [{side: right, width: 4000}]; wallSheets: {leanToWalls: true}",
            })
    void everyOneIsCarried(double span, double pitch, PartKind kind, String more) {
        Shed shed = Shed.of(Definitions.of(shed(span, pitch, more)));
        Assemblies assemblies = Assemblies.of(shed);
        assertTrue(shed.count(kind) > 0, "none of " + kind);
        List<String> loose = shed.parts(kind).stream()
                .filter(part -> assemblies.loose(part) > 0)
                .map(part -> assemblies.loose(part) + " " + part.mark())
                .toList();
        assertEquals(List.of(), loose);
    }

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad().filter(d -> d.shape().bays() <= 4);
    }

    /** Girt cleats beside a main wall's row of Zs may be left, and are told; no others are. */
    @Property(tries = 10, seed = Seeds.SHEDS)
    void cleatsOfBracesMullionsAndPurlinsAreCarriedInAnyShed(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        Assemblies assemblies = Assemblies.of(shed);
        for (Part part : shed.parts()) {
            if (part.kind() != PartKind.GIRT_CLEAT) {
                assertEquals(0, assemblies.loose(part), part.mark());
            }
        }
    }

    /** A plate that the maker works out is cut to whole millimetres; a face that was traced is so to a fiftieth. */
    @Property(tries = 10, seed = Seeds.SHEDS)
    void cleatsHaveWholeSizes(@ForAll("sheds") Definition definition) {
        for (Part part : Shed.of(definition).parts()) {
            if (part.kind().group() == PartKind.Group.CLEATS) {
                for (double size : List.of(
                        part.solid().profile().depth(), part.solid().profile().width())) {
                    assertEquals(Math.rint(size), size, 0.02, part.mark());
                }
            }
        }
    }

    /** A cleat that stands off its column is welded to the seat between them, and said to be. */
    @Test
    void cleatsOnSeatsAreWeldedToTheSeats() {
        Shed shed = Shed.of(
                Definitions.of(
                        shed(
                                9000,
                                10,
                                "column: SHS 89x89x5; girts: {place: flush, section: TH64-10}; heavier: [{frames: ends, column: SHS 100x100x5}]")));
        Assemblies assemblies = Assemblies.of(shed);
        List<String> on = shed.parts(PartKind.COLUMN).stream()
                .flatMap(column -> assemblies.of(column).stream())
                .flatMap(assembly -> assembly.welded().stream())
                .filter(w -> w.plate().kind() == PartKind.BRACE_CLEAT)
                .map(w -> (w.plate().isSeat() ? "seat" : "cleat")
                        + w.seat()
                                .map(seat -> " on " + (seat.isSeat() ? "seat" : "cleat"))
                                .orElse(""))
                .distinct()
                .toList();
        assertTrue(on.contains("seat") && on.contains("cleat on seat") && !on.contains("seat on cleat"), on.toString());
    }

    @Test
    void everyPlateOfTheStartersIsCarried() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "templates"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                Shed shed = Shed.of(Definitions.of(Files.readString(file)));
                Assemblies assemblies = Assemblies.of(shed);
                shed.parts().forEach(part -> assertEquals(0, assemblies.loose(part), file + " " + part.mark()));
            }
        }
    }
}
