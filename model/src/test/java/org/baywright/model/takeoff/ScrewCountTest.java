package org.baywright.model.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Cladding;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Material;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.SetOut;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Screws counted by hand on a flat sheeted plane with rows laid under it. */
class ScrewCountTest {
    private static final SheetProfile CORRUGATED =
            Catalogue.shipped().sheet("corrugated 0.42").orElseThrow();
    private static final Section ROW = Catalogue.shipped().section("C150-15").orElseThrow();
    private static final Definition DEFINITION =
            Definitions.of("span: 12000\nbays: 2\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\nenvelope: full\n");

    /** The plane z = 0; u along y, v across, so that outward is up. */
    private static Surface surface(Surface.Role role, int sheets, double length) {
        List<Surface.Sheet> all = IntStream.range(0, sheets)
                .mapToObj(i -> new Surface.Sheet("S", i * 762, (i + 1) * 762, 0, length, false))
                .toList();
        Placement axes = Placement.of(Vec3.ZERO, Vec3.ALONG, Vec3.ACROSS.negated());
        List<Vec2> outline =
                List.of(new Vec2(0, 0), new Vec2(sheets * 762, 0), new Vec2(sheets * 762, length), new Vec2(0, length));
        return new Surface("plane", role, CORRUGATED, axes, outline, List.of(), all);
    }

    private static Part row(PartKind kind, Surface surface, double at, double from, double to, double below) {
        Vec3 start = surface.axes().toWorld(from, at, -below);
        Placement place =
                Placement.of(start, surface.axes().along(), surface.axes().width());
        return new Part(
                "P",
                kind,
                new Material.Bar(ROW, false),
                Solid.square(ROW.profile(), 0, to - from),
                List.of(),
                List.of(),
                List.of(new Place(place, 1, Side.LEFT)));
    }

    private static ScrewCount count(Surface surface, List<Part> rows) {
        Shed shed = new Shed(DEFINITION, SetOut.of(DEFINITION), rows, List.of());
        return ScrewCount.of(surface, new Building(shed, new Cladding(List.of(surface), List.of(), List.of())));
    }

    private static List<Part> rows(PartKind kind, Surface surface, double... at) {
        List<Part> rows = new ArrayList<>();
        for (double v : at) {
            rows.add(row(kind, surface, v, 0, 10_000, 76));
        }
        return rows;
    }

    /** Four rows: edge sheets 4 x 5 each, the others 2 x 5 + 2 x 3. Common practice, no source, for 762 cover. */
    @ParameterizedTest
    @CsvSource({"1, 20", "2, 40", "3, 56", "10, 168"})
    void roofSheetsOnFourRows(int sheets, int screws) {
        Surface roof = surface(Surface.Role.ROOF, sheets, 3600);
        assertEquals(
                screws,
                count(roof, rows(PartKind.PURLIN, roof, 75, 1225, 2375, 3525)).sheeting());
    }

    @Test
    void wallSheetsTakeFourOnEveryRow() {
        Surface wall = surface(Surface.Role.WALL, 5, 4200);
        assertEquals(
                5 * 4 * 4,
                count(wall, rows(PartKind.GIRT, wall, 150, 1500, 2850, 4100)).sheeting());
    }

    /** 3600 at 600 at most is six to a side lap. */
    @Test
    void sideLapsAreStitched() {
        Surface roof = surface(Surface.Role.ROOF, 4, 3600);
        assertEquals(3 * 6, count(roof, List.of()).stitching());
    }

    @Test
    void lappedLengthsAreOneRowAndRowsElsewhereAreNone() {
        Surface roof = surface(Surface.Role.ROOF, 1, 3600);
        List<Part> rows = new ArrayList<>(rows(PartKind.PURLIN, roof, 75, 3500));
        rows.add(row(PartKind.PURLIN, roof, 76.5, 0, 10_000, 76));
        assertEquals(10, count(roof, rows).sheeting());
        rows.add(row(PartKind.PURLIN, roof, 2000, 5000, 9000, 76));
        rows.add(row(PartKind.PURLIN, roof, 2000, 0, 9000, 400));
        rows.add(row(PartKind.GIRT, roof, 2000, 0, 9000, 76));
        rows.add(row(PartKind.PURLIN, roof, 3700, 0, 9000, 76));
        assertEquals(10, count(roof, rows).sheeting());
    }
}
