package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.baywright.model.cladding.Surface;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;

/**
 * What the sheets of one surface are screwed to: every row that lies right under its plane, across the sheets.
 *
 * @param rows each with its reach along the surface and its height up it
 */
record Supports(List<Row> rows) {
    private static final Set<PartKind> ROOF = EnumSet.of(PartKind.PURLIN);
    private static final Set<PartKind> WALL = EnumSet.of(PartKind.GIRT, PartKind.HEADER, PartKind.SILL);

    /** Lapped lengths lie beside each other and take one line of screws. */
    private static final double ONE_ROW = 60;

    private static final double TOUCHING = 5;

    /** A row in the surface's axes. */
    record Row(double from, double to, double at) {}

    /** Copies the list. */
    Supports {
        rows = List.copyOf(rows);
    }

    static Supports under(Surface surface, Shed shed) {
        Set<PartKind> kinds = surface.role() == Surface.Role.ROOF ? ROOF : WALL;
        List<Row> rows = new ArrayList<>();
        for (Part part : shed.parts()) {
            if (kinds.contains(part.kind())) {
                part.places().forEach(place -> add(surface, part, place, rows));
            }
        }
        return new Supports(rows);
    }

    private static void add(Surface surface, Part part, Place place, List<Row> rows) {
        Vec3 along = surface.axes().along();
        if (Math.abs(Math.abs(place.placement().along().dot(along)) - 1) > 1e-6) {
            return;
        }
        double length = part.solid().axisLength();
        Vec3 a = surface.axes().toLocal(place.placement().toWorld(0, 0, 0));
        Vec3 b = surface.axes().toLocal(place.placement().toWorld(length, 0, 0));
        double deep =
                Math.max(part.solid().profile().depth(), part.solid().profile().width());
        if (a.z() < TOUCHING && a.z() > -deep - TOUCHING) {
            rows.add(new Row(Math.min(a.x(), b.x()), Math.max(a.x(), b.x()), a.y()));
        }
    }

    /** How many lines of screws a sheet has. */
    int lines(Surface.Sheet sheet) {
        double middle = (sheet.left() + sheet.right()) / 2;
        double[] at = rows.stream()
                .filter(r -> r.from() <= middle && middle <= r.to())
                .mapToDouble(Row::at)
                .filter(v -> v > sheet.low() && v < sheet.high())
                .sorted()
                .toArray();
        int lines = 0;
        double last = Double.NEGATIVE_INFINITY;
        for (double v : at) {
            if (v - last > ONE_ROW) {
                lines++;
                last = v;
            }
        }
        return lines;
    }
}
