package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.render.view.Item;

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
}
