package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;

/** The steel right under a surface that runs across its sheets, found from the parts alone. */
record SheetSupports(List<Row> rows) {
    /** Centre lines lie no deeper under the sheets than half the deepest row, on its longest cleat. */
    private static final double NEAR = 250;

    /** Rows end at the string lines; sheets go on to the corner, by the depth of a girt and the end of a column. */
    private static final double AT_CORNER = 300;

    /** A stretch of steel in the surface's axes. */
    record Row(double from, double to, double at) {}

    static SheetSupports of(Shed shed, Surface surface) {
        Set<PartKind> kinds = surface.role() == Surface.Role.ROOF
                ? EnumSet.of(PartKind.PURLIN)
                : EnumSet.of(PartKind.GIRT, PartKind.HEADER, PartKind.SILL);
        List<Row> rows = new ArrayList<>();
        for (Part part : shed.parts()) {
            if (kinds.contains(part.kind())) {
                part.places().forEach(place -> add(surface, part, place, rows));
            }
        }
        return new SheetSupports(rows);
    }

    private static void add(Surface surface, Part part, Place place, List<Row> rows) {
        Vec3 a = surface.axes().toLocal(place.placement().toWorld(0, 0, 0));
        Vec3 b = surface.axes().toLocal(place.placement().toWorld(part.solid().axisLength(), 0, 0));
        boolean across = Math.abs(a.y() - b.y()) < 1 && Math.abs(a.z() - b.z()) < 1;
        Row row = new Row(Math.min(a.x(), b.x()), Math.max(a.x(), b.x()), a.y());
        Vec3 out = surface.axes().width();
        double square = Math.max(
                Math.abs(place.placement().depth().dot(out)),
                Math.abs(place.placement().width().dot(out)));
        if (across && square > 1 - 1e-6 && a.z() < 0 && a.z() > -NEAR && isUnder(surface, row)) {
            rows.add(row);
        }
    }

    private static boolean isUnder(Surface surface, Row row) {
        List<Vec2> outline = surface.outline();
        double top = outline.stream().mapToDouble(Vec2::y).max().orElseThrow();
        return row.to() > outline.get(0).x()
                && row.from() < outline.get(1).x()
                && row.at() > outline.get(0).y()
                && row.at() < top;
    }

    /** From a place up a sheet to the nearest row under it, or within its lap at the corner of a wall. */
    double distance(Surface.Sheet sheet, double v) {
        return rows.stream()
                .filter(r -> r.from() < sheet.right() + AT_CORNER && r.to() > sheet.left() - AT_CORNER)
                .mapToDouble(r -> Math.abs(r.at() - v))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    double lowest() {
        return rows.stream().mapToDouble(Row::at).min().orElseThrow();
    }

    double highest() {
        return rows.stream().mapToDouble(Row::at).max().orElseThrow();
    }
}
