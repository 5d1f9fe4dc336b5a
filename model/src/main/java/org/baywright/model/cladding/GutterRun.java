package org.baywright.model.cladding;

import java.util.List;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RoofSlope;

/**
 * A gutter along one eave with its downpipes.
 *
 * @param slope the roof that drains into it
 * @param from its end near frame 1, at the outer face of its support, top edge
 * @param to its other end
 * @param catchmentM2 of all roof that drains into it, as the drainage standard counts it
 * @param flowLs litres a second at the design rainfall
 * @param downpipes where the pipes drop from it
 */
public record GutterRun(RoofSlope slope, Vec3 from, Vec3 to, double catchmentM2, double flowLs, List<Vec3> downpipes) {
    /** Copies the list. */
    public GutterRun {
        downpipes = List.copyOf(downpipes);
    }

    /** How long it is. */
    public double length() {
        return from.distance(to);
    }
}
