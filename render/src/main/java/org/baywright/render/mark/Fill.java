package org.baywright.render.mark;

import java.util.List;
import org.baywright.model.geometry.Vec2;

/**
 * An area of one tone; rings inside rings are holes (even-odd).
 *
 * @param grey 0 black to 1 white
 */
public record Fill(List<List<Vec2>> rings, double grey, Layer layer, String part) implements Mark {
    /** Copies the rings. */
    public Fill {
        rings = rings.stream().map(List::copyOf).toList();
        if (rings.isEmpty() || !(grey >= 0 && grey <= 1)) {
            throw new IllegalArgumentException("a fill needs a ring and a grey from 0 to 1");
        }
    }
}
