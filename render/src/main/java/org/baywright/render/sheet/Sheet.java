package org.baywright.render.sheet;

import java.util.List;
import org.baywright.render.mark.Mark;
import org.baywright.render.paper.Paper;

/**
 * One sheet, ready to write.
 *
 * @param paper its size
 * @param number its drawing number, such as {@code A-03}
 * @param title its title
 * @param marks everything on it, in drawing order
 */
public record Sheet(Paper paper, String number, String title, List<Mark> marks) {
    /** Copies the marks. */
    public Sheet {
        marks = List.copyOf(marks);
    }
}
