package org.baywright.render.view;

import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;

/** A solid where it stands, with the mark of its part. */
public record Item(String part, Solid solid, Placement place) {}
