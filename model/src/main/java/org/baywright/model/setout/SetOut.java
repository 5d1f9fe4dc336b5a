package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Shape;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Tolerance;

/**
 * Where the building stands on its string lines.
 *
 * <p>Span and length are out to out of columns. The lines of the first and last frame are the end string lines, on the
 * outside of the columns; the lines of the frames between are on the columns' middle. Common practice, no source.
 *
 * @param span out to out across
 * @param frameLines one per frame, distance from the first end string line
 * @param columnLines string lines along the building, from left to right
 * @param apexHeight highest top of rafter steel of the main roof
 */
public record SetOut(double span, List<Double> frameLines, List<ColumnLine> columnLines, double apexHeight) {
    /** Copies the lists. */
    public SetOut {
        frameLines = List.copyOf(frameLines);
        columnLines = List.copyOf(columnLines);
    }

    /** The set-out of a definition. */
    public static SetOut of(Definition definition) {
        Shape shape = definition.shape();
        List<Double> frames = new ArrayList<>(List.of(0.0));
        for (double bay : shape.baySpacings()) {
            frames.add(frames.get(frames.size() - 1) + bay);
        }
        RoofLine left = new RoofLine(0, shape.eaveHeight(), Math.tan(Math.toRadians(shape.roofPitchDeg())));
        RoofLine right = shape.roofShape() == RoofShape.GABLE
                ? new RoofLine(shape.span(), shape.eaveHeight(), -left.rise())
                : left;
        double apexAt = shape.roofShape() == RoofShape.GABLE ? shape.span() / 2 : shape.span();
        return new SetOut(shape.span(), frames, columnLines(definition, left, right), left.heightAt(apexAt));
    }

    private static List<ColumnLine> columnLines(Definition definition, RoofLine left, RoofLine right) {
        double span = definition.shape().span();
        int last = definition.shape().frames();
        ColumnLine a = new ColumnLine("A", 0, Side.LEFT, false, left, 1, last);
        ColumnLine b = new ColumnLine("B", span, Side.RIGHT, false, right, 1, last);
        List<ColumnLine> lines = new ArrayList<>(outer(definition, a));
        Collections.reverse(lines);
        lines.add(a);
        lines.add(b);
        lines.addAll(outer(definition, b));
        return lines;
    }

    /** The outer lines of a side from the inside out; lines the same distance out share a letter. */
    private static List<ColumnLine> outer(Definition definition, ColumnLine main) {
        List<String> letters = main.side() == Side.LEFT ? List.of("A0", "A00") : List.of("C", "D");
        List<ColumnLine> lines = new ArrayList<>();
        definition.leanTos().stream()
                .filter(l -> l.side() == main.side())
                .sorted(Comparator.comparingDouble(LeanTo::width))
                .forEach(l -> lines.add(outer(l, main, letters.get(distinctFrom(lines, l, main)))));
        return lines;
    }

    private static int distinctFrom(List<ColumnLine> nearer, LeanTo leanTo, ColumnLine main) {
        return (int) nearer.stream()
                .filter(n -> !Tolerance.same(Math.abs(n.x() - main.x()), leanTo.width()))
                .count();
    }

    private static ColumnLine outer(LeanTo leanTo, ColumnLine main, String letter) {
        double rise = main.inward() * Math.tan(Math.toRadians(leanTo.pitchDeg()));
        RoofLine roof = new RoofLine(main.x(), main.eaveHeight() - leanTo.drop(), rise);
        double x = main.x() - main.inward() * leanTo.width();
        return new ColumnLine(letter, x, main.side(), true, roof, leanTo.firstFrame(), leanTo.lastFrame());
    }

    /** How many frames. */
    public int frames() {
        return frameLines.size();
    }

    /** Out to out of the end columns. */
    public double length() {
        return frameLines.get(frames() - 1);
    }

    /** The line of a frame, from 1. */
    public double frameLine(int frame) {
        return frameLines.get(frame - 1);
    }

    /** Where the middle of a column of a given width stands: inside the end string lines, on the others. */
    public double middle(int frame, double columnWidth) {
        double line = frameLine(frame);
        if (frame == 1) {
            return line + columnWidth / 2;
        }
        return frame == frames() ? line - columnWidth / 2 : line;
    }

    /**
     * Where the rafter over a line lies along the building: on the middle of the narrower of the two columns that carry
     * it, so that it bears on both.
     */
    public double rafterMiddle(Definition definition, ColumnLine line, int frame) {
        ColumnLine other = main(line.leanTo() ? line.side() : line.side().other());
        double narrower = Math.min(
                line.column(definition, frame).width(),
                other.column(definition, frame).width());
        return middle(frame, narrower);
    }

    /** The leftmost string line along the building. */
    public double left() {
        return columnLines.get(0).x();
    }

    /** The rightmost string line along the building. */
    public double right() {
        return columnLines.get(columnLines.size() - 1).x();
    }

    /** The main column line of a side. */
    public ColumnLine main(Side side) {
        return columnLines.stream()
                .filter(c -> !c.leanTo() && c.side() == side)
                .findFirst()
                .orElseThrow();
    }

    /** The outer column lines of the lean-tos. */
    public List<ColumnLine> leanTos() {
        return columnLines.stream().filter(ColumnLine::leanTo).toList();
    }
}
