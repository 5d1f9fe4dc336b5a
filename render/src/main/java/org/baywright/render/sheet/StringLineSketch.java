package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/**
 * The string lines on their hurdles with the triangle of the right angle, each line named with its step. A building too
 * long to be drawn so is broken: its ends at the scale of the view, the middle left out between two break lines.
 */
final class StringLineSketch {
    private static final Margins MARGINS = new Margins(36, 36, 12, 12);

    /** A smaller picture shows nothing. */
    private static final Scale SMALLEST = new Scale(500);

    /** How much of a broken building's length is drawn, in widths. */
    private static final double KEPT = 2.5;

    /** How wide a hurdle stands, mm. */
    private static final double HURDLE = 900;

    private final SetOut setOut;
    private final PlanAxes axes;
    private final double out;

    /** Where it is broken, along the building, and what is left out there; none when that is zero. */
    private double broken;

    private double cut;

    StringLineSketch(Shed shed, double hurdlesOut) {
        this.setOut = shed.setOut();
        this.axes = PlanAxes.of(setOut);
        this.out = hurdlesOut;
    }

    /** Draws in a cell when that is large enough; says whether it was. */
    boolean draw(SheetBuilder sheet, Envelope cell) {
        Envelope room = MARGINS.within(cell);
        boolean roomy = room.getHeight() > PlacedView.FOOT + 20;
        if (roomy && isSmall(cell)) {
            cutOut();
        }
        if (!roomy || isSmall(cell)) {
            return false;
        }
        PlacedView view = sheet.view(
                cut > 0 ? "STRING LINES AND HURDLES, MIDDLE LEFT OUT" : "STRING LINES AND HURDLES",
                cell,
                bounds(),
                MARGINS);
        setOut.columnLines().forEach(line -> along(view, line));
        across(view, 0, "Line 1: step 3");
        across(view, setOut.length(), "Line " + setOut.frames() + ": step 5");
        triangle(view);
        if (cut > 0) {
            breakLines(view);
        }
        Datum.draw(view, axes.at(0, 0));
        return true;
    }

    private boolean isSmall(Envelope cell) {
        return PlacedView.fitting(cell, bounds(), MARGINS).n() > SMALLEST.n();
    }

    /** Leaves out the middle, so that as much stays as suits the width. */
    private void cutOut() {
        double wide = wide();
        double kept = Math.max(KEPT * wide, 3 * RightAngle.of(setOut).onA());
        cut = Math.max(0, setOut.length() - kept);
        broken = kept / 2;
    }

    private double wide() {
        return setOut.right() - setOut.left();
    }

    /** Where a distance along the building is drawn. */
    private double drawn(double y) {
        return y <= broken || cut == 0 ? y : Math.max(broken, y - cut);
    }

    private Vec2 at(double x, double y) {
        return axes.at(x, drawn(y));
    }

    /** Two zigzags across all lines, nothing between them. */
    private void breakLines(PlacedView view) {
        double step = 1.5 * view.port().scale().n();
        List<Vec2> before = zigzag(view, broken - step, step);
        List<Vec2> after = zigzag(view, broken + step, step);
        List<Vec2> between = new ArrayList<>(before);
        Collections.reverse(between);
        between.addAll(after);
        view.draw(List.of(
                new Fill(List.of(between), 1, Layer.LABEL, ""),
                new Stroke(before, false, Pen.VISIBLE, Layer.LABEL, ""),
                new Stroke(after, false, Pen.VISIBLE, Layer.LABEL, "")));
    }

    private List<Vec2> zigzag(PlacedView view, double y, double step) {
        double from = setOut.left() - 3 * step;
        double to = from + wide() + 6 * step;
        double middle = (from + to) / 2;
        return Stream.of(
                        axes.at(from, y),
                        axes.at(middle - step, y),
                        axes.at(middle - step / 2, y - step),
                        axes.at(middle + step / 2, y + step),
                        axes.at(middle + step, y),
                        axes.at(to, y))
                .map(view.port()::toPaper)
                .toList();
    }

    private Envelope bounds() {
        Envelope bounds = new Envelope();
        for (ColumnLine line : setOut.columnLines()) {
            for (double y : new double[] {-out, setOut.length() + out}) {
                for (double x : new double[] {line.x() - out, line.x() + out}) {
                    Vec2 at = at(x, y);
                    bounds.expandToInclude(at.x(), at.y());
                }
            }
        }
        return bounds;
    }

    private void along(PlacedView view, ColumnLine line) {
        double from = setOut.frameLine(line.firstFrame()) - out;
        double to = setOut.frameLine(line.lastFrame()) + out;
        view.line(at(line.x(), from), at(line.x(), to), Pen.STRING, Layer.GRID);
        for (double y : new double[] {from, to}) {
            view.line(at(line.x() - HURDLE / 2, y), at(line.x() + HURDLE / 2, y), Pen.CUT, Layer.GROUND);
        }
        String step = line.leanTo() ? "after step 6" : line.x() == 0 ? "step 2" : "step 4";
        name(view, at(line.x(), to), "Line " + line.letter() + ": " + step);
    }

    private void across(PlacedView view, double y, String name) {
        double from = setOut.main(Side.LEFT).x() - out;
        double to = setOut.main(Side.RIGHT).x() + out;
        view.line(at(from, y), at(to, y), Pen.STRING, Layer.GRID);
        for (double x : new double[] {from, to}) {
            view.line(at(x, y - HURDLE / 2), at(x, y + HURDLE / 2), Pen.CUT, Layer.GROUND);
        }
        name(view, at(from, y), name);
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
