package org.baywright.render.view;

import org.baywright.model.geometry.Vec3;

/**
 * A line in the building that is drawn where nothing stands before it: an edge of a sheet, a rib, a fold.
 *
 * @param from one end
 * @param to the other
 * @param part what it is of
 */
public record ThinLine(Vec3 from, Vec3 to, String part) {}
