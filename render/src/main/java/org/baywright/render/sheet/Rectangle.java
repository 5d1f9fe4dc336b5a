package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.definition.Side;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;

/**
 * A rectangle between string lines, whose diagonals prove its corners.
 *
 * @param name what it is
 * @param along the building
 * @param across the building
 */
record Rectangle(String name, double along, double across) {
    /** Up to this length of the longer side the smaller difference is asked. */
    private static final double SHORT = 12_000;

    /** The main floor. */
    static Rectangle main(SetOut setOut) {
        return new Rectangle("Main floor A/1 to B/" + setOut.frames(), setOut.length(), setOut.span());
    }

    /** The floor of a lean-to, from the main line to its outer line. */
    static Rectangle of(SetOut setOut, ColumnLine line) {
        ColumnLine main = setOut.main(line.side());
        String name =
                "Lean-to " + main.letter() + "/" + line.firstFrame() + " to " + line.letter() + "/" + line.lastFrame();
        double along = setOut.frameLine(line.lastFrame()) - setOut.frameLine(line.firstFrame());
        return new Rectangle(name, along, Math.abs(line.x() - main.x()));
    }

    /** The main floor, the lean-tos and the bays of each, bays that are alike together. */
    static List<Rectangle> all(SetOut setOut) {
        List<Rectangle> all = new ArrayList<>(List.of(main(setOut)));
        setOut.leanTos().forEach(line -> all.add(of(setOut, line)));
        if (setOut.frames() > 2) {
            all.addAll(bays(setOut, "Bay", setOut.main(Side.LEFT), setOut.span()));
        }
        for (ColumnLine line : setOut.leanTos()) {
            if (line.lastFrame() - line.firstFrame() > 1) {
                double width = Math.abs(line.x() - setOut.main(line.side()).x());
                all.addAll(bays(setOut, "Lean-to " + line.letter() + " bay", line, width));
            }
        }
        return all;
    }

    private static List<Rectangle> bays(SetOut setOut, String name, ColumnLine line, double across) {
        Map<Double, List<Integer>> alike = new LinkedHashMap<>();
        for (int bay = line.firstFrame(); bay < line.lastFrame(); bay++) {
            double length = setOut.frameLine(bay + 1) - setOut.frameLine(bay);
            alike.computeIfAbsent(length, k -> new ArrayList<>()).add(bay);
        }
        List<Rectangle> bays = new ArrayList<>();
        alike.forEach((length, numbers) -> bays.add(
                new Rectangle(name + (numbers.size() > 1 ? "s " : " ") + PlateUse.runs(numbers), length, across)));
        return bays;
    }

    double diagonal() {
        return Math.hypot(along, across);
    }

    /** How far the diagonals may differ. @source 5 mm to 12 m and 10 mm beyond: common practice, no source */
    double allowed() {
        return Math.max(along, across) <= SHORT ? 5 : 10;
    }

    /**
     * How far an end line is out of square, at its far end, when the diagonals differ by so much.
     *
     * <p>@source the sides are u = (L, 0) and v = (δ, B): the diagonals' squares differ by 4·u·v = 4·L·δ, so the diagonals
     * by about 2·L·δ/diagonal; derived here
     */
    double outOfSquare(double difference) {
        return difference * diagonal() / (2 * along);
    }
}
