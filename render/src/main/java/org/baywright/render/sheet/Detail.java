package org.baywright.render.sheet;

import java.util.List;
import java.util.Set;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.PartKind;
import org.baywright.model.setout.ColumnLine;
import org.baywright.render.view.Projection;

/**
 * A place of the building that is shown close up.
 *
 * @param callout its number and sheet
 * @param title what it is
 * @param view the direction it is looked at in
 * @param at its middle, in the building
 * @param reach half of what must be seen, mm
 * @param drawn the kinds of parts that are drawn
 * @param named those of them that are named
 * @param clad whether sheets, flashings and gutters are drawn as the plane through its middle cuts them
 * @param line that a frame has where the detail is found on it
 */
record Detail(
        Callout callout,
        String title,
        Projection view,
        Vec3 at,
        double reach,
        Set<PartKind> drawn,
        List<PartKind> named,
        boolean clad,
        ColumnLine line) {
    /** Copies the collections. */
    Detail {
        drawn = Set.copyOf(drawn);
        named = List.copyOf(named);
    }
}
