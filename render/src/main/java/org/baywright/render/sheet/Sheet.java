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
 * @param contents the names of single drawings on it, each to be found by itself; empty when it is one drawing
 */
public record Sheet(Paper paper, String number, String title, List<Mark> marks, List<String> contents) {
    /** Copies the lists. */
    public Sheet {
        marks = List.copyOf(marks);
        contents = List.copyOf(contents);
    }

    /** A sheet that is one drawing. */
    public Sheet(Paper paper, String number, String title, List<Mark> marks) {
        this(paper, number, title, marks, List.of());
    }

    /** The same sheet, with the names of the drawings on it. */
    public Sheet holding(List<String> names) {
        return new Sheet(paper, number, title, marks, names);
    }
}
