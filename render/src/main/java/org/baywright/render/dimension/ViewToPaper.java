package org.baywright.render.dimension;

import org.baywright.model.geometry.Vec2;
import org.baywright.render.paper.Scale;

/** Where a point of a view lands on the sheet: one scale for both directions, no turn, no mirror. */
@FunctionalInterface
public interface ViewToPaper {
    /** Paper mm of a point in view mm. */
    Vec2 toPaper(Vec2 view);

    /** A view drawn to scale with its zero point at a place on paper. */
    static ViewToPaper at(Vec2 zeroOnPaper, Scale scale) {
        return view -> zeroOnPaper.plus(new Vec2(scale.toPaper(view.x()), scale.toPaper(view.y())));
    }
}
