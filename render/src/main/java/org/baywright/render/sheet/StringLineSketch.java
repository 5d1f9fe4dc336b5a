package org.baywright.render.sheet;

import java.util.List;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/** The string lines on their hurdles with the triangle of the right angle, each line named with its step. */
final class StringLineSketch {
    private static final Margins MARGINS = new Margins(36, 36, 12, 12);

    /** A smaller picture shows nothing. */
    private static final Scale SMALLEST = new Scale(500);

    /** How wide a hurdle stands, mm. */
    private static final double HURDLE = 900;

    private final SetOut setOut;
    private final PlanAxes axes;
    private final double out;

    StringLineSketch(Shed shed, double hurdlesOut) {
        this.setOut = shed.setOut();
        this.axes = PlanAxes.of(setOut);
        this.out = hurdlesOut;
    }

    /** Draws in a cell when that is large enough. */
    void draw(SheetBuilder sheet, Envelope cell) {
        Envelope bounds = bounds();
        Envelope room = MARGINS.within(cell);
        boolean roomy = room.getHeight() > PlacedView.FOOT + 20;
        if (!roomy || PlacedView.fitting(cell, bounds, MARGINS).n() > SMALLEST.n()) {
            return;
        }
        PlacedView view = sheet.view("STRING LINES AND HURDLES", cell, bounds, MARGINS);
        setOut.columnLines().forEach(line -> along(view, line));
        across(view, 0, "Line 1: step 3");
        across(view, setOut.length(), "Line " + setOut.frames() + ": step 5");
        triangle(view);
        Datum.draw(view, axes.at(0, 0));
    }

    private Envelope bounds() {
        Envelope bounds = new Envelope();
        for (ColumnLine line : setOut.columnLines()) {
            for (double y : new double[] {-out, setOut.length() + out}) {
                for (double x : new double[] {line.x() - out, line.x() + out}) {
                    Vec2 at = axes.at(x, y);
                    bounds.expandToInclude(at.x(), at.y());
                }
            }
        }
        return bounds;
    }

    private void along(PlacedView view, ColumnLine line) {
        double from = setOut.frameLine(line.firstFrame()) - out;
        double to = setOut.frameLine(line.lastFrame()) + out;
        view.line(axes.at(line.x(), from), axes.at(line.x(), to), Pen.STRING, Layer.GRID);
        for (double y : new double[] {from, to}) {
            view.line(axes.at(line.x() - HURDLE / 2, y), axes.at(line.x() + HURDLE / 2, y), Pen.CUT, Layer.GROUND);
        }
        String step = line.leanTo() ? "after step 6" : line.x() == 0 ? "step 2" : "step 4";
        name(view, axes.at(line.x(), to), "Line " + line.letter() + ": " + step);
    }

    private void across(PlacedView view, double y, String name) {
        double from = setOut.main(Side.LEFT).x() - out;
        double to = setOut.main(Side.RIGHT).x() + out;
        view.line(axes.at(from, y), axes.at(to, y), Pen.STRING, Layer.GRID);
        for (double x : new double[] {from, to}) {
            view.line(axes.at(x, y - HURDLE / 2), axes.at(x, y + HURDLE / 2), Pen.CUT, Layer.GROUND);
        }
        name(view, axes.at(from, y), name);
    }

    private static void name(PlacedView view, Vec2 at, String words) {
        view.annotate().place(Label.of(view.port().toPaper(at), Label.Pointer.BESIDE, words));
    }

    private void triangle(PlacedView view) {
        RightAngle angle = RightAngle.of(setOut);
        Vec2 onA = axes.at(0, angle.onA());
        Vec2 onOne = axes.at(angle.onOne(), 0);
        view.annotate().diagonal("", onA, onOne);
        for (Vec2 at : List.of(onA, onOne)) {
            view.draw(List.of(Arc.circle(view.port().toPaper(at), 1, Pen.VISIBLE, Layer.LABEL, "")));
        }
        view.annotate().label(onA, Figure.length(angle.onA()) + " from A/1");
        view.annotate().label(onOne, Figure.length(angle.onOne()) + " from A/1");
    }
}
