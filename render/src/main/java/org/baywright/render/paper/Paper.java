package org.baywright.render.paper;

/**
 * Trimmed sheet sizes, landscape, millimetres.
 *
 * <p>@source ISO 216 (A series); ISO 5457 (frame: 20 left, 10 elsewhere; from memory)
 */
public enum Paper {
    A3(420, 297),
    A4(297, 210);

    /** Filing margin on the left. */
    public static final double LEFT_MARGIN = 20;

    /** Margin on the other three sides. */
    public static final double MARGIN = 10;

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** Across, mm. */
    public double width() {
        return width;
    }

    /** Up, mm. */
    public double height() {
        return height;
    }
}
