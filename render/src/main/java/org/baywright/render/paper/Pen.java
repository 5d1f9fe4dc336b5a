package org.baywright.render.paper;

import java.util.List;

/**
 * The lines of a drawing: width and dash pattern in paper millimetres.
 *
 * <p>@source ISO 128-2 widths 0.18 0.25 0.35 0.5 0.7, narrow to wide 1:2 (from memory); the choice for each use follows
 * common drawing-office practice
 */
public enum Pen {
    /** What the section plane cuts, ground line, sheet frame. */
    CUT(0.7),
    /** Outline of what is seen. */
    OUTLINE(0.5),
    /** Edges seen further off. */
    VISIBLE(0.35),
    /** Edges hidden behind steel. */
    HIDDEN(0.25, 3, 1.5),
    /** Grid and centre lines, chain dash. */
    GRID(0.25, 8, 1.5, 1, 1.5),
    /** Set-out string lines, long dash. */
    STRING(0.35, 12, 3),
    /** Dimension, extension and leader lines, thin table rules. */
    DIMENSION(0.18),
    /** Hatching and the ribs of sheets: grey, so that leaders and edges stand out among them. */
    HATCH(0.18, 0.5, new double[0]);

    private final double width;
    private final double grey;
    private final List<Double> dashes;

    Pen(double width, double... dashes) {
        this(width, 0, dashes);
    }

    Pen(double width, double grey, double[] dashes) {
        this.width = width;
        this.grey = grey;
        this.dashes = java.util.Arrays.stream(dashes).boxed().toList();
    }

    /** Line width, mm. */
    public double width() {
        return width;
    }

    /** From 0 black to 1 white. */
    public double grey() {
        return grey;
    }

    /** Lengths of dash and gap in turn, mm; empty for a full line. */
    public List<Double> dashes() {
        return dashes;
    }
}
