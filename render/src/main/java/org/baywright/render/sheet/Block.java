package org.baywright.render.sheet;

import java.util.List;
import org.baywright.render.mark.Mark;

/**
 * One drawing among several on a sheet, made before its place is known: its upper left corner at zero, all below it.
 *
 * @param name what it is found by
 * @param width it takes, paper mm
 * @param height it takes, paper mm
 */
record Block(String name, double width, double height, List<Mark> marks) {
    /** Copies the marks. */
    Block {
        marks = List.copyOf(marks);
    }
}
