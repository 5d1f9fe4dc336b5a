package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RoofRows;

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
        List<Surface> surfaces = new ArrayList<>();
        RoofSheets roof = new RoofSheets(definition);
        roofs.forEach(rows -> surfaces.add(roof.surface(rows, RoofSheets.name(rows.slope()))));
        WallRun.of(shed.wallCovers()).forEach(run -> surfaces.add(wall(shed, run)));
        return new Cladding(
                SheetMarks.marked(surfaces),
                Flashings.of(shed, roofs, surfaces),
                new RoofDrainage(shed, roofs).gutters());
    }

    private static Surface wall(Shed shed, WallRun run) {
        List<OpeningPlace> openings = shed.openings().stream()
                .filter(o -> !o.isWholeBay() && o.face().equals(run.face()))
                .filter(o -> o.left() >= run.first().bay().from()
                        && o.right() <= run.last().bay().to())
                .toList();
        return new WallSheets(shed.definition(), shed.setOut(), run, openings).surface();
    }

    /** The surfaces of one role. */
    public List<Surface> surfaces(Surface.Role role) {
        return surfaces.stream().filter(s -> s.role() == role).toList();
    }
}
