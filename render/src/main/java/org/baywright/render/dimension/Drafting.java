package org.baywright.render.dimension;

import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;

/**
 * Sizes on paper that all annotation shares, mm.
 *
 * <p>@source ISO 129-1 and ISO 3098 from memory: gap at the object, pass at the dimension line, 45° strokes, 15° arrows,
 * first dimension line 10 off and the next 8 apart; text 2.5 as common practice on A3
 */
final class Drafting {
    /** Capital height of ordinary text. */
    static final double TEXT = 2.5;

    /** From the object to where its extension line starts. */
    static final double OFF = 1;

    /** How far an extension line passes the dimension line. */
    static final double PASS = 1.5;

    /** From a dimension line to the baseline above it; hanging letters stay clear of the line. */
    static final double BASELINE = 1.2;

    /** Room kept at both ends of a text that stands between two strokes. */
    static final double ASIDE = 0.8;

    /** From the view to the first dimension line. */
    static final double FIRST_ROW = 10;

    /** From one dimension line to the next. */
    static final double ROW = 8;

    /** Length of an arrow. */
    static final double ARROW = 2.5;

    /** From one baseline to the next, for a capital height of one: a whole line of the typeface, so lines never touch. */
    static final double LINE_PITCH = 1.62;

    private Drafting() {}

    static double width(String text) {
        return Lettering.width(text, TEXT, Face.REGULAR);
    }

    static double ascent() {
        return Lettering.ascent(TEXT, Face.REGULAR);
    }

    static double descent() {
        return Lettering.descent(TEXT, Face.REGULAR);
    }

    /** The height of the box round one line of text. */
    static double line() {
        return ascent() + descent();
    }
}
