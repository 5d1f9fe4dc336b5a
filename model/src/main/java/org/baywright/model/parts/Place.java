package org.baywright.model.parts;

import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;

/** One place where a part stands: how it lies, and the frame and side it belongs to. */
public record Place(Placement placement, int frame, Side side) {}
