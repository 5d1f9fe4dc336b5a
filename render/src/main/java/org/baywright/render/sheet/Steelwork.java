package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.baywright.model.geometry.Convex;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.render.view.Item;
import org.baywright.render.view.Projection;
import org.locationtech.jts.geom.Envelope;

/** The solids of a shed as things to be drawn. */
final class Steelwork {
    private Steelwork() {}

    /** All of them. */
    static List<Item> items(Shed shed) {
        return items(shed, (part, place) -> true);
    }

    /** Those of one frame. */
    static List<Item> frame(Shed shed, int frame) {
        return items(shed, (part, place) -> place.frame() == frame);
    }

    /** Those that are wanted. */
    static List<Item> items(Shed shed, BiPredicate<Part, Place> wanted) {
        List<Item> items = new ArrayList<>();
        for (Part part : shed.parts()) {
            part.places().stream()
                    .filter(place -> wanted.test(part, place))
                    .forEach(place -> items.add(new Item(part.mark(), part.solid(), place.placement())));
        }
        return items;
    }

    /** The box that solids take in a view. */
    static Envelope bounds(List<Item> items, Projection projection) {
        Envelope box = new Envelope();
        for (Item item : items) {
            for (Convex lump : Convex.of(item.solid(), item.place())) {
                lump.corners().stream().map(projection::flat).forEach(p -> box.expandToInclude(p.x(), p.y()));
            }
        }
        return box;
    }
}
