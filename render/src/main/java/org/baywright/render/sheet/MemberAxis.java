package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.render.view.Item;
import org.baywright.render.view.Projection;
import org.baywright.render.view.ViewLine;

/**
 * A member at one of its places, by the line through its middle: light members read better so at 1:100 and smaller than
 * by their edges, which fall together there.
 */
record MemberAxis(Part part, Place place, Vec3 from, Vec3 to) {
    private static final Vec2 MIDDLE = new Vec2(0, 0);

    /** The members of some kinds, by mark and then by place. */
    static List<MemberAxis> of(Shed shed, Set<PartKind> kinds) {
        List<MemberAxis> axes = new ArrayList<>();
        shed.parts().stream().filter(p -> kinds.contains(p.kind())).forEach(p -> axes.addAll(of(p)));
        return axes;
    }

    /** All places of a part. */
    static List<MemberAxis> of(Part part) {
        return part.places().stream().map(place -> of(part, place)).toList();
    }

    /** One place of a part. */
    static MemberAxis of(Part part, Place place) {
        Placement at = place.placement();
        return new MemberAxis(
                part,
                place,
                at.toWorld(part.solid().startStation(MIDDLE), 0, 0),
                at.toWorld(part.solid().endStation(MIDDLE), 0, 0));
    }

    ViewLine line(Projection view) {
        return new ViewLine(view.flat(from), view.flat(to), part.mark());
    }

    Vec3 middle() {
        return from.plus(to).times(0.5);
    }

    Item item() {
        return new Item(part.mark(), part.solid(), place.placement());
    }
}
