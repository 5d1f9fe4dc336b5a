package org.baywright.render.view;

import java.util.List;

/**
 * The lines of a view. No two lie on top of each other: a line that is seen takes the place of one that is not.
 *
 * @param visible edges that are seen
 * @param hidden edges behind steel
 */
public record ViewLines(List<ViewLine> visible, List<ViewLine> hidden) {
    /** Copies the lists. */
    public ViewLines {
        visible = List.copyOf(visible);
        hidden = List.copyOf(hidden);
    }
}
