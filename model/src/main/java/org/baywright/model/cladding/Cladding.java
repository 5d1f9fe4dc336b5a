package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.WallCover;
import org.baywright.model.setout.WallFace;

/**
 * Everything that closes a shed.
 *
 * @param surfaces sheeted planes, roof first
 * @param flashings by mark
 * @param gutters one a run
 */
public record Cladding(List<Surface> surfaces, List<Flashing> flashings, List<GutterRun> gutters) {
    /** Copies the lists. */
    public Cladding {
        surfaces = List.copyOf(surfaces);
        flashings = List.copyOf(flashings);
        gutters = List.copyOf(gutters);
    }

    /** The cladding of a shed; empty for a bare frame. */
    public static Cladding of(Shed shed) {
        Definition definition = shed.definition();
        if (!definition.envelope().isFull()) {
            return new Cladding(List.of(), List.of(), List.of());
        }
        List<RoofRows> roofs = RoofRows.of(definition, shed.setOut());
        List<Surface> surfaces = surfaces(definition, shed.setOut());
        return new Cladding(SheetMarks.marked(surfaces), Flashings.of(shed, roofs, surfaces), gutters(shed));
    }

    /** The gutters of a shed alone; none on a bare frame. */
    public static List<GutterRun> gutters(Shed shed) {
        return shed.definition().envelope().isFull()
                ? new RoofDrainage(shed, RoofRows.of(shed.definition(), shed.setOut())).gutters()
                : List.of();
    }

    /** The sheeted planes of a definition, roof first, their sheets not yet marked. */
    public static List<Surface> surfaces(Definition definition, SetOut setOut) {
        List<Surface> surfaces = new ArrayList<>();
        List<RoofRows> roofs = RoofRows.of(definition, setOut);
        RoofSheets roof = new RoofSheets(definition, setOut, roofs);
        roofs.forEach(rows -> surfaces.add(roof.surface(rows, RoofSheets.name(rows.slope()))));
        List<WallFace> faces = WallFace.of(definition, setOut);
        List<OpeningPlace> openings = OpeningPlace.of(definition, faces);
        WallRun.of(WallCover.of(definition, setOut, faces))
                .forEach(run -> surfaces.add(wall(definition, setOut, run, openings)));
        return surfaces;
    }

    private static Surface wall(Definition definition, SetOut setOut, WallRun run, List<OpeningPlace> openings) {
        List<OpeningPlace> here = openings.stream()
                .filter(o -> !o.isWholeBay() && o.face().equals(run.face()))
                .filter(o -> o.left() >= run.first().bay().from()
                        && o.right() <= run.last().bay().to())
                .toList();
        return new WallSheets(definition, setOut, run, here).surface();
    }

    /** The surfaces of one role. */
    public List<Surface> surfaces(Surface.Role role) {
        return surfaces.stream().filter(s -> s.role() == role).toList();
    }
}
