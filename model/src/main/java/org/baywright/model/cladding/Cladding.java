package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RoofRows;
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
        List<Surface> surfaces = new ArrayList<>();
        RoofSheets roof = new RoofSheets(definition);
        roofs.forEach(rows -> surfaces.add(roof.surface(rows, RoofSheets.name(rows.slope()))));
        surfaces.addAll(walls(shed));
        return new Cladding(
                SheetMarks.marked(surfaces),
                Flashings.of(shed, roofs, surfaces),
                new RoofDrainage(shed, roofs).gutters());
    }

    /** Neighbouring bays that start at one height make one surface. */
    private static List<Surface> walls(Shed shed) {
        List<Surface> surfaces = new ArrayList<>();
        List<WallCover> covers = shed.wallCovers();
        int first = 0;
        for (int i = 0; i < covers.size(); i++) {
            boolean goesOn = i + 1 < covers.size() && joins(covers.get(i), covers.get(i + 1));
            if (!goesOn) {
                surfaces.add(wall(shed, covers.get(first), covers.get(i)));
                first = i + 1;
            }
        }
        return surfaces;
    }

    private static boolean joins(WallCover a, WallCover b) {
        return a.face().equals(b.face()) && a.bay().to() == b.bay().from() && a.low() == b.low();
    }

    private static Surface wall(Shed shed, WallCover first, WallCover last) {
        WallFace face = first.face();
        List<OpeningPlace> openings = shed.openings().stream()
                .filter(o -> !o.isWholeBay() && o.face().equals(face))
                .filter(o -> o.left() >= first.bay().from()
                        && o.right() <= last.bay().to())
                .toList();
        return new WallSheets(shed.definition(), shed.setOut(), face, first, last, openings).surface();
    }

    /** The surfaces of one role. */
    public List<Surface> surfaces(Surface.Role role) {
        return surfaces.stream().filter(s -> s.role() == role).toList();
    }
}
