package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RoofSlope;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Side;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.Projection;
import org.baywright.render.view.Silhouette;
import org.locationtech.jts.geom.Envelope;

/**
 * The slopes seen square to their fall, each laid level: purlins cut on their rafter and the spacing between them true.
 * Slopes whose rows are alike share one view.
 */
final class SlopeViews {
    /** Of a row of views on paper, mm. */
    static final double HEIGHT = 50;

    private static final Margins MARGINS = new Margins(8, 10, 22, 7);
    private static final int PER_SHEET = 4;

    private final Shed shed;
    private final List<List<RoofRows>> alike;
    private final List<MemberAxis> purlins;
    private final List<MemberAxis> rafters;

    SlopeViews(Shed shed) {
        this.shed = shed;
        Map<String, List<RoofRows>> groups = new LinkedHashMap<>();
        for (RoofRows rows : RoofRows.of(shed.definition(), shed.setOut())) {
            groups.computeIfAbsent(likeness(rows), k -> new ArrayList<>()).add(rows);
        }
        this.alike = List.copyOf(groups.values());
        this.purlins = MemberAxis.of(shed, EnumSet.of(PartKind.PURLIN));
        this.rafters = MemberAxis.of(shed, EnumSet.of(PartKind.RAFTER, PartKind.LEAN_TO_RAFTER));
    }

    private static String likeness(RoofRows rows) {
        String at = Stream.concat(rows.at().stream(), Stream.of(rows.sheetLow(), rows.sheetHigh()))
                .map(d -> String.valueOf(Math.round(d * 10)))
                .collect(Collectors.joining(" "));
        return rows.slope().line().leanTo()
                + at
                + Math.round(rows.slope().run() * 10)
                + rows.slope().top();
    }

    /** Whether they are few enough to stand beside each other at the foot of a sheet and still be read. */
    boolean areFew() {
        return alike.size() <= 2;
    }

    /** All of them beside each other in a room. */
    void draw(SheetBuilder sheet, Envelope room) {
        for (int i = 0; i < alike.size(); i++) {
            draw(sheet, Cells.column(room, i, alike.size()), alike.get(i));
        }
    }

    /** All of them on a sheet of their own. */
    Draft sheet() {
        SheetBuilder sheet = new SheetBuilder("S6", "Purlin spacings");
        int rows = Math.max(2, alike.size());
        for (int i = 0; i < alike.size(); i++) {
            draw(sheet, Cells.row(SheetFrame.room(), i, Math.min(rows, PER_SHEET)), alike.get(i));
        }
        return sheet.build();
    }

    private void draw(SheetBuilder sheet, Envelope cell, List<RoofRows> same) {
        RoofRows rows = same.get(0);
        RoofSlope slope = rows.slope();
        Projection view = Projection.of(rows.up(), slope.roof().outward());
        Vec2 zero = view.flat(rows.place(0, 0, 0));
        double top = slope.run() / slope.roof().cosine();
        double deep = slope.line().rafter(shed.definition(), slope.firstFrame()).depth();
        Envelope bounds = new Envelope(
                zero.x() + Math.min(rows.sheetLow(), 0),
                zero.x() + Math.max(rows.sheetHigh(), top),
                zero.y() - deep,
                zero.y() + rows.sheetPlane());
        PlacedView placed = sheet.view(title(same), cell, bounds, MARGINS);
        steel(placed, view, rows);
        Vec2 sheets = zero.plus(new Vec2(0, rows.sheetPlane()));
        placed.line(at(sheets, rows.sheetLow()), at(sheets, rows.sheetHigh()), Pen.OUTLINE, Layer.STEEL);
        List<Vec2> chain = new ArrayList<>();
        chain.add(at(sheets, rows.sheetLow()));
        rows.at().forEach(r -> chain.add(at(zero, r)));
        chain.add(at(sheets, rows.sheetHigh()));
        placed.annotate().chainWithOverall(Side.BELOW, chain);
        name(placed, at(zero, 0), "Outside face of column");
    }

    private static void name(PlacedView placed, Vec2 at, String words) {
        placed.annotate()
                .place(Label.of(placed.port().toPaper(at), Label.Pointer.ARROW, words)
                        .preferring(Spot.BELOW_RIGHT, Spot.ABOVE_RIGHT, Spot.RIGHT));
    }

    private static Vec2 at(Vec2 zero, double up) {
        return zero.plus(new Vec2(up, 0));
    }

    /** The purlins of the first bay, cut, over the first rafter in thin outline. */
    private void steel(PlacedView placed, Projection view, RoofRows rows) {
        RoofSlope slope = rows.slope();
        for (MemberAxis rafter : rafters) {
            if (rafter.place().frame() == slope.firstFrame() && carries(rafter, rows.slope())) {
                Silhouette.outline(rafter.item(), view)
                        .forEach(ring -> placed.draw(List.of(new Stroke(
                                paper(placed, ring),
                                true,
                                Pen.DIMENSION,
                                Layer.STEEL,
                                rafter.part().mark()))));
            }
        }
        double y = (shed.setOut().frameLine(slope.firstFrame()) + shed.setOut().frameLine(slope.firstFrame() + 1)) / 2;
        Plane cut = Plane.through(new Vec3(0, y, 0), Vec3.ALONG);
        for (MemberAxis purlin : purlins) {
            boolean crosses = Math.min(purlin.from().y(), purlin.to().y()) < y
                    && Math.max(purlin.from().y(), purlin.to().y()) > y;
            if (crosses && isOn(purlin, rows)) {
                List<List<Vec2>> rings = Silhouette.cut(purlin.item(), cut, view).stream()
                        .map(ring -> paper(placed, ring))
                        .toList();
                String mark = purlin.part().mark();
                placed.draw(List.of(new Fill(rings, 0, Layer.STEEL, mark)));
                placed.draw(rings.stream()
                        .map(r -> new Stroke(r, true, Pen.DIMENSION, Layer.STEEL, mark))
                        .toList());
            }
        }
    }

    /** Whether a rafter carries a slope. */
    private static boolean carries(MemberAxis rafter, RoofSlope slope) {
        boolean leanTo = rafter.part().kind() == PartKind.LEAN_TO_RAFTER;
        double x = rafter.middle().x();
        boolean under = (x - slope.eave()) * (x - slope.upper()) < 0;
        return leanTo == slope.line().leanTo() && under;
    }

    /** Whether a purlin lies on the line of one of the rows. */
    private static boolean isOn(MemberAxis purlin, RoofRows rows) {
        Vec3 step = purlin.middle().minus(rows.place(0, purlin.middle().y(), 0));
        double above = step.dot(rows.slope().roof().outward());
        double up = step.dot(rows.up());
        return above > 0
                && above < rows.sheetPlane()
                && rows.at().stream()
                        .anyMatch(r -> Math.abs(r - up)
                                < purlin.part().solid().profile().width());
    }

    private static List<Vec2> paper(PlacedView placed, List<Vec2> ring) {
        return ring.stream().map(placed.port()::toPaper).toList();
    }

    private static String title(List<RoofRows> same) {
        String lines =
                same.stream().map(r -> r.slope().line().letter()).distinct().collect(Collectors.joining(", "));
        return "ALONG SLOPE AT " + lines;
    }
}
