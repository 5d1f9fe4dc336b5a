package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.render.view.HiddenLines;
import org.baywright.render.view.Item;
import org.baywright.render.view.Projection;
import org.baywright.render.view.Silhouette;
import org.baywright.render.view.ViewLine;
import org.locationtech.jts.geom.Envelope;

/**
 * What a detail shows of the building's steel.
 *
 * @param shed the building
 * @param detail what is shown close up
 * @param window what its border shows, view mm
 */
record DetailScene(Shed shed, Detail detail, Envelope window) {
    /** Parts further than this before or behind the middle are left out. */
    private static final double DEEP = 260;

    /** The lines of what is drawn whole. */
    List<ViewLine> whole() {
        return RoundBars.outlined(shed, HiddenLines.visible(items(detail.parts().drawn()), detail.view()));
    }

    /** The edges of what is shown only where the plane through the middle cuts it. */
    List<ViewLine> cuts() {
        Vec3 towards = detail.view().towards();
        Plane plane = new Plane(towards, detail.at().dot(towards));
        List<ViewLine> edges = new ArrayList<>();
        for (Item item : items(detail.parts().cut())) {
            for (List<Vec2> ring : Silhouette.cut(item, plane, detail.view())) {
                for (int i = 0; i < ring.size(); i++) {
                    edges.add(new ViewLine(ring.get(i), ring.get((i + 1) % ring.size()), item.part()));
                }
            }
        }
        return edges;
    }

    /** The parts of some kinds that are near enough. */
    List<Item> items(Set<PartKind> kinds) {
        Projection aside = Projection.of(detail.view().towards(), detail.view().up());
        double middle = detail.at().dot(detail.view().towards());
        Envelope deep = new Envelope(middle - DEEP, middle + DEEP, -1e9, 1e9);
        return Steelwork.items(shed, (part, place) -> kinds.contains(part.kind())).stream()
                .filter(i -> Silhouette.bounds(List.of(i), detail.view()).intersects(window))
                .filter(i -> Silhouette.bounds(List.of(i), aside).intersects(deep))
                .toList();
    }
}
