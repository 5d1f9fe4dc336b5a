package org.baywright.render.sheet;

import java.util.List;
import org.baywright.render.dimension.Dimension;
import org.baywright.render.mark.Mark;

/**
 * What goes on one sheet, before it is framed and numbered as one of several.
 *
 * @param number drawing number
 * @param title drawing title
 * @param scale as the title block prints it
 * @param marks inside the frame
 * @param dimensions every dimension printed among them
 */
public record Draft(String number, String title, String scale, List<Mark> marks, List<Dimension> dimensions) {
    /** Copies the lists. */
    public Draft {
        marks = List.copyOf(marks);
        dimensions = List.copyOf(dimensions);
    }
}
