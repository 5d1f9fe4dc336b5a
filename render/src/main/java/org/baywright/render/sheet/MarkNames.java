package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Part;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Spot;
import org.baywright.render.paper.Face;
import org.baywright.render.view.Projection;
import org.locationtech.jts.geom.Envelope;

/** Names each mark once in a view, with its section, and spreads the names over the view so that they stay apart. */
final class MarkNames {
    /** Capital height of marks on a framing drawing, mm. */
    private static final double TEXT = 2.5;

    /** Of a mark that stands in many places so many are looked at. */
    private static final int LOOKED_AT = 60;

    private MarkNames() {}

    /** Labels for what lies in a window of the view, given in view mm. */
    static void place(PlacedView view, List<MemberAxis> members, Projection projection, Envelope window) {
        place(
                view,
                members,
                projection,
                window,
                p -> p.mark() + " " + p.material().description());
    }

    /** The same without their sections, for small parts of one section. */
    static void placeShort(PlacedView view, List<MemberAxis> members, Projection projection, Envelope window) {
        place(view, members, projection, window, Part::mark);
    }

    private static void place(
            PlacedView view,
            List<MemberAxis> members,
            Projection projection,
            Envelope window,
            Function<Part, String> words) {
        Map<String, List<Vec2>> places = new LinkedHashMap<>();
        Map<String, String> said = new HashMap<>();
        for (MemberAxis member : members) {
            Vec2 middle = projection.flat(member.middle());
            if (window.contains(middle.x(), middle.y())) {
                Part part = member.part();
                places.computeIfAbsent(part.mark(), m -> new ArrayList<>()).add(middle);
                said.computeIfAbsent(part.mark(), m -> words.apply(part));
            }
        }
        List<Vec2> chosen = new ArrayList<>();
        places.forEach((mark, at) -> {
            Vec2 target = furthest(at, chosen);
            chosen.add(target);
            view.annotate().place(label(view, mark, said.get(mark), target));
        });
    }

    private static Label label(PlacedView view, String mark, String words, Vec2 target) {
        return new Label(
                List.of(words),
                view.port().toPaper(target),
                Label.Pointer.BESIDE,
                List.of(Spot.ABOVE, Spot.BELOW, Spot.RIGHT, Spot.LEFT),
                TEXT,
                Face.REGULAR,
                mark);
    }

    /** The place furthest from all chosen so far; the first of the middle when there is none. */
    private static Vec2 furthest(List<Vec2> places, List<Vec2> chosen) {
        int step = Math.max(1, places.size() / LOOKED_AT);
        Vec2 best = places.get(places.size() / 2);
        double most = room(best, chosen);
        for (int i = 0; i < places.size(); i += step) {
            double room = room(places.get(i), chosen);
            if (room > most) {
                most = room;
                best = places.get(i);
            }
        }
        return best;
    }

    private static double room(Vec2 place, List<Vec2> chosen) {
        return chosen.stream().mapToDouble(place::distance).min().orElse(Double.MAX_VALUE);
    }
}
