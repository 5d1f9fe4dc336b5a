package org.baywright.render.sheet;

import java.util.List;
import org.baywright.model.definition.Anchor;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.BaseDesign;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.AnchorOrder;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/**
 * An anchor cut along its middle: the hole in the concrete, the rod as long as it is ordered, plate washer and nut on the
 * base plate. y from finished floor.
 *
 * @param anchor what is drawn
 * @param rod how long the rod is
 * @param top of the base plate
 */
record AnchorFigure(Anchor anchor, double rod, double top) {
    /** Of the thread, thickness and width across flats. Common practice; width from memory. */
    private static final double NUT = 0.8;

    private static final double FLATS = 1.5;

    /** The middle line past both ends. */
    private static final double PAST = 10;

    /** The anchor of a shed through a plate with its upper face so high. */
    static AnchorFigure of(Shed shed, double top) {
        return new AnchorFigure(shed.definition().anchor(), AnchorOrder.rodLength(shed), top);
    }

    private double rodTop() {
        return rod - anchor.embedment();
    }

    /** How high and how deep it reaches. */
    Envelope bounds(double x) {
        return new Envelope(x, x, -anchor.embedment() - PAST, rodTop() + PAST);
    }

    void draw(PlacedView view, double x) {
        double d = anchor.rodDiameter();
        box(view, x, anchor.holeDiameter(), -anchor.embedment(), 0);
        box(view, x, d, -anchor.embedment(), rodTop());
        double washer = top + AnchorOrder.WASHER;
        box(view, x, 2 * BaseDesign.halfWasher(anchor), top, washer);
        box(view, x, FLATS * d, washer, washer + NUT * d);
        view.line(new Vec2(x, bounds(x).getMinY()), new Vec2(x, bounds(x).getMaxY()), Pen.GRID, Layer.ANCHOR);
    }

    private static void box(PlacedView view, double x, double width, double low, double high) {
        List<Vec2> corners = Profile.box(x - width / 2, low, x + width / 2, high);
        view.draw(List.of(
                new Stroke(corners.stream().map(view.port()::toPaper).toList(), true, Pen.VISIBLE, Layer.ANCHOR, "")));
    }
}
