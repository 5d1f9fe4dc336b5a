package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Anchor;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Shed;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Level;
import org.baywright.render.dimension.Side;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/**
 * A cut across the building through a base: slab, grout, plate, column and anchors with their levels, the outside of the
 * building on the left. x from the middle of the column, y from finished floor.
 */
final class BaseSection {
    private static final Margins MARGINS = new Margins(30, 76, 20, 4);
    private static final double STUB = 90;
    private static final double SLAB = 60;
    private static final Scale LARGEST = new Scale(5);

    private final PlateUse use;
    private final Anchor anchor;
    private final double grout;
    private final double top;
    private final AnchorFigure figure;

    BaseSection(Shed shed, PlateUse use) {
        this.use = use;
        this.anchor = shed.definition().anchor();
        this.grout = shed.definition().plates().groutGap();
        this.top = grout + use.thickness();
        this.figure = AnchorFigure.of(shed, top);
    }

    void draw(SheetBuilder sheet, Envelope cell) {
        double side = use.width() / 2 + SLAB;
        Envelope bounds = new Envelope(-side, side, -anchor.embedment() - 10, top + STUB);
        Scale fitting = PlacedView.fitting(cell, bounds, MARGINS);
        Scale scale = fitting.n() < LARGEST.n() ? LARGEST : fitting;
        PlacedView view = sheet.view("BASE AT " + use.plate().mark(), cell, bounds, MARGINS, scale);
        view.line(new Vec2(-side, 0), new Vec2(side, 0), Pen.CUT, Layer.CONCRETE);
        grout(view);
        rectangle(view, new Envelope(-use.width() / 2, use.width() / 2, grout, top), Pen.CUT, Layer.PLATE);
        column(view);
        holeLines().forEach(x -> figure.draw(view, x));
        dimensions(view.annotate(), bounds);
        labels(view);
    }

    private void grout(PlacedView view) {
        if (grout > 0) {
            List<Vec2> bed = Profile.box(-use.width() / 2, 0, use.width() / 2, grout).stream()
                    .map(view.port()::toPaper)
                    .toList();
            view.draw(List.of(new Fill(List.of(bed), 0.8, Layer.CONCRETE, "")));
        }
    }

    private void column(PlacedView view) {
        Envelope upright = use.outline();
        for (double x : new double[] {upright.getMinX(), upright.getMaxX()}) {
            view.line(new Vec2(x, top), new Vec2(x, top + STUB), Pen.OUTLINE, Layer.STEEL);
        }
        view.line(new Vec2(face(), top + STUB), new Vec2(face(), -20), Pen.STRING, Layer.GRID);
    }

    /** The outside face of the column, on its string line. */
    private double face() {
        return use.outline().getMinX();
    }

    private List<Double> holeLines() {
        return use.holes().stream().map(h -> h.at().x()).distinct().sorted().toList();
    }

    private static void rectangle(PlacedView view, Envelope box, Pen pen, Layer layer) {
        List<Vec2> corners = Profile.box(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
        view.draw(List.of(new Stroke(corners.stream().map(view.port()::toPaper).toList(), true, pen, layer, "")));
    }

    private void dimensions(Annotations annotate, Envelope bounds) {
        List<Double> holes = holeLines();
        double first = holes.get(0);
        List<Double> below = new ArrayList<>(holes);
        below.add(face());
        annotate.chainLeft(List.of(-anchor.embedment(), 0.0), first - anchor.holeDiameter() / 2);
        annotate.chainBelow(below, bounds.getMinY());
        List<Level> levels = new ArrayList<>(List.of(new Level("FFL, finished floor", 0)));
        if (grout > 0) {
            levels.add(new Level("Underside of base plate", grout));
        }
        levels.add(new Level("Top of base plate", top));
        annotate.levels(Side.RIGHT, levels);
    }

    private void labels(PlacedView view) {
        double last = holeLines().get(holeLines().size() - 1);
        Vec2 rod = view.port().toPaper(new Vec2(last + anchor.holeDiameter() / 2, -anchor.embedment() * 0.6));
        String words = "Anchor " + anchor.size() + " in hole ⌀" + Figure.length(anchor.holeDiameter());
        view.annotate()
                .place(Label.of(rod, Label.Pointer.ARROW, words, "Slab thickened as the engineer sets")
                        .preferring(Spot.RIGHT, Spot.BELOW_RIGHT));
        Vec2 string = view.port().toPaper(new Vec2(face(), top + STUB * 0.7));
        view.annotate()
                .place(Label.of(string, Label.Pointer.ARROW, "String line").preferring(Spot.LEFT));
        if (grout > 0) {
            Vec2 bed = view.port().toPaper(new Vec2(-use.width() / 2 + 8, grout / 2));
            view.annotate().place(Label.of(bed, Label.Pointer.DOT, "Grout").preferring(Spot.LEFT, Spot.ABOVE_LEFT));
        }
    }
}
