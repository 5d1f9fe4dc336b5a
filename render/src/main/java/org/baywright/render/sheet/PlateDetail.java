package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.baywright.model.definition.Anchor;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Hole;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Side;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/**
 * One base plate with its holes and its column, seen from above, the outside of the building on the left. Plates on the
 * right-hand side of the building are this turned half round.
 */
final class PlateDetail {
    private static final Margins MARGINS = new Margins(34, 22, 20, 15);
    private static final List<Scale> SCALES = List.of(new Scale(5), new Scale(10), new Scale(20));

    /** The share of the cell that the drawing takes; words take the rest. */
    private static final double DRAWN = 0.64;

    /** A longer list of columns than this leaves its cell. */
    private static final int LONGEST_LIST = 160;

    private final PlateUse use;
    private final Anchor anchor;

    PlateDetail(PlateUse use, Anchor anchor) {
        this.use = use;
        this.anchor = anchor;
    }

    void draw(SheetBuilder sheet, Envelope cell) {
        Envelope bounds = new Envelope(-use.width() / 2, use.width() / 2, -use.depth() / 2, use.depth() / 2);
        Margins margins = new Margins(
                MARGINS.left(), MARGINS.right() + (1 - DRAWN) * cell.getWidth(), MARGINS.below(), MARGINS.above());
        String name = Fitted.line(
                use.plate().mark() + " UNDER " + use.section().designation(), 3.5, Face.BOLD, cell.getWidth() / 2);
        PlacedView view = sheet.view(name, cell, bounds, margins, scale(bounds, cell, margins));
        plate(view);
        column(view);
        holes(view);
        stringLine(view);
        dimensions(view.annotate());
        label(view);
        Envelope words = Cells.across(cell, DRAWN, 1);
        sheet.draw(Notes.of(words(), words.getWidth() - 4)
                .draw(new Vec2(words.getMinX() + 1, words.getMaxY() - MARGINS.above())));
    }

    private static Scale scale(Envelope bounds, Envelope room, Margins margins) {
        Scale fitting = PlacedView.fitting(room, bounds, margins);
        return SCALES.stream().filter(s -> s.n() >= fitting.n()).findFirst().orElse(fitting);
    }

    private void plate(PlacedView view) {
        List<Vec2> corners = Profile.corners(use.width(), use.depth());
        view.draw(List.of(new Stroke(
                onPaper(view, corners),
                true,
                Pen.OUTLINE,
                Layer.PLATE,
                use.plate().mark())));
        double past = 3.0 * view.port().scale().n();
        view.line(new Vec2(-use.width() / 2 - past, 0), new Vec2(use.width() / 2 + past, 0), Pen.GRID, Layer.GRID);
        view.line(new Vec2(0, -use.depth() / 2 - past), new Vec2(0, use.depth() / 2 + past), Pen.GRID, Layer.GRID);
    }

    private void column(PlacedView view) {
        List<List<Vec2>> rings = SectionShape.rings(use.section(), use.standing()).stream()
                .map(ring -> onPaper(view, ring))
                .toList();
        String part = use.footings().get(0).column().mark();
        view.draw(List.of(new Fill(rings, 0.35, Layer.STEEL, part)));
        view.draw(rings.stream()
                .map(r -> new Stroke(r, true, Pen.VISIBLE, Layer.STEEL, part))
                .toList());
    }

    private static List<Vec2> onPaper(PlacedView view, List<Vec2> ring) {
        return ring.stream().map(view.port()::toPaper).toList();
    }

    private void holes(PlacedView view) {
        for (Hole hole : use.holes()) {
            double radius = hole.diameter() / 2;
            Vec2 centre = view.port().toPaper(hole.at());
            view.draw(List.of(Arc.circle(
                    centre,
                    view.port().toPaper(radius),
                    Pen.VISIBLE,
                    Layer.ANCHOR,
                    use.plate().mark())));
            double arm = radius + 1.2 * view.port().scale().n();
            view.line(hole.at().plus(new Vec2(-arm, 0)), hole.at().plus(new Vec2(arm, 0)), Pen.DIMENSION, Layer.ANCHOR);
            view.line(hole.at().plus(new Vec2(0, -arm)), hole.at().plus(new Vec2(0, arm)), Pen.DIMENSION, Layer.ANCHOR);
        }
    }

    private double face() {
        return -use.standing().depth() / 2;
    }

    private void stringLine(PlacedView view) {
        double past = 7.0 * view.port().scale().n();
        double end = use.depth() / 2 + past;
        view.line(new Vec2(face(), -end), new Vec2(face(), end), Pen.STRING, Layer.GRID);
    }

    private void dimensions(Annotations annotate) {
        double w = use.width() / 2;
        double d = use.depth() / 2;
        double sideFace = use.standing().width() / 2;
        annotate.chainWithOverall(Side.BELOW, across(-d, -w, w))
                .chainWithOverall(Side.LEFT, upright(-w, -d, d))
                .chain(Side.ABOVE, across(d, face(), -face()))
                .chain(Side.RIGHT, upright(w, -sideFace, sideFace));
    }

    /** The hole lines across the building, and two further stations. */
    private List<Vec2> across(double y, double a, double b) {
        return stations(Vec2::x, a, b).stream().map(x -> new Vec2(x, y)).toList();
    }

    private List<Vec2> upright(double x, double a, double b) {
        return stations(Vec2::y, a, b).stream().map(y -> new Vec2(x, y)).toList();
    }

    private List<Double> stations(ToDoubleFunction<Vec2> along, double a, double b) {
        List<Double> stations = new ArrayList<>(List.of(a, b));
        use.holes().forEach(h -> stations.add(along.applyAsDouble(h.at())));
        return stations;
    }

    private void label(PlacedView view) {
        Hole hole = use.holes().stream()
                .max(Comparator.comparingDouble(h -> h.at().x() + h.at().y()))
                .orElseThrow();
        double scale = view.port().scale().n();
        Vec2 string = view.port().toPaper(new Vec2(face(), -use.depth() / 2 - 6 * scale));
        view.annotate()
                .place(Label.of(string, Label.Pointer.ARROW, "String line").preferring(Spot.BELOW_LEFT));
        double rim = hole.diameter() / 2 * Math.sqrt(0.5);
        Vec2 edge = view.port().toPaper(hole.at().plus(new Vec2(rim, rim)));
        String holes = Annotations.holeWords(use.holes().size(), hole.diameter());
        view.annotate().place(Label.of(edge, Label.Pointer.ARROW, holes).preferring(Spot.ABOVE_RIGHT, Spot.RIGHT));
    }

    private List<Paragraph> words() {
        double across = (use.gaugeX() - use.standing().depth()) / 2;
        double along = Math.max(0, (use.gaugeY() - use.standing().width()) / 2);
        List<Paragraph> words = new ArrayList<>();
        words.add(Paragraph.heading(use.plate().mark() + ": "
                + OrderTables.plate(
                        use.plate().material().designation(), use.plate().stockLength())));
        words.add(Paragraph.bullet(
                use.plate().quantity() + " off in all, " + use.footings().size() + " under "
                        + use.section().designation() + " (" + use.columns() + ") at " + places() + "."));
        words.add(Paragraph.bullet("Middle of plate "
                + Figure.length(use.standing().depth() / 2) + " inside the string line of its row."));
        words.add(Paragraph.bullet("Grade " + use.plate().material().grade() + "."));
        words.add(Paragraph.bullet(edge("product minimum", anchor.minimumEdge(), across, along)));
        words.add(Paragraph.bullet(edge("1.5 × embedment", 1.5 * anchor.embedment(), across, along)));
        return words;
    }

    private String places() {
        String places = use.places();
        return places.length() <= LONGEST_LIST ? places : "the columns that the floor plan marks so";
    }

    /**
     * What a distance from hole to slab edge asks from the column's face.
     *
     * <p>@source hole to edge = face to edge − (gauge − column)/2, derived here
     */
    private static String edge(String what, double toHole, double across, double along) {
        String sideways = Figure.length(toHole + across);
        String endways = Figure.length(toHole + along);
        String least = sideways.equals(endways) ? sideways : sideways + " across, " + endways + " along";
        return "Column face to slab edge for " + what + " (" + Figure.length(toHole) + " from hole): " + least + ".";
    }
}
