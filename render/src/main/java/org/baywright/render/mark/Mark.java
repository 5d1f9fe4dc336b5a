package org.baywright.render.mark;

/** One mark on paper. */
public sealed interface Mark permits Stroke, Arc, Fill, Text {
    /** What the mark is about. */
    Layer layer();

    /** The mark of the steel part it shows, or empty. */
    String part();
}
