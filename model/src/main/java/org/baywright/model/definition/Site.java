package org.baywright.model.definition;

import java.util.List;
import org.baywright.model.geometry.Vec2;

/**
 * Where the shed stands on its land. Millimetres east and north of the user's own point of reference.
 *
 * @param boundary corners in order, at least three
 * @param corner where the shed's datum corner (line A, frame 1) stands
 * @param turnDeg the bearing of the building's length, from north, clockwise
 * @param northDeg the bearing on paper of true north, clockwise from up the sheet
 * @param neighbours other buildings, each as its corners
 */
public record Site(List<Vec2> boundary, Vec2 corner, double turnDeg, double northDeg, List<List<Vec2>> neighbours) {
    /** Copies the lists. */
    public Site {
        boundary = List.copyOf(boundary);
        neighbours = neighbours.stream().map(List::copyOf).toList();
    }
}
