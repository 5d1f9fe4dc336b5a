package org.baywright.model.parts;

import org.baywright.model.definition.Definition;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;

/** Which slopes of a roof have room for braces. */
public final class BracedSlopes {
    private BracedSlopes() {}

    /** Whether the slope over a column line is braced in a bay: a slope too short for a panel is not. */
    public static boolean isBraced(Definition definition, SetOut setOut, ColumnLine line, int bay) {
        return RoofMaker.rows(definition, setOut).stream()
                .filter(rows -> rows.rows().slope().line().equals(line))
                .filter(rows -> bay >= rows.first() && bay < rows.last())
                .anyMatch(rows -> !new BracePanels(rows, bay).nodes().isEmpty());
    }
}
