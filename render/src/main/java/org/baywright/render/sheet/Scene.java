package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.HiddenLines;
import org.baywright.render.view.Item;
import org.baywright.render.view.Projection;
import org.baywright.render.view.Silhouette;
import org.baywright.render.view.ThinLine;
import org.baywright.render.view.ViewLine;
import org.locationtech.jts.geom.Envelope;

/**
 * A building as it stands: steel and gutters with their edges, sheets and leaves that hide, and the lines on them.
 *
 * @param items solids with their edges
 * @param blinds what hides without edges of its own
 * @param lines edges of sheets, ribs, and the figures of doors
 */
record Scene(List<Item> items, List<Item> blinds, List<ThinLine> lines) {
    /** What ribs are called among the lines of a view. */
    static final String RIB = "rib";

    /** What lines of doors and windows are called. */
    static final String LEAF = "leaf";

    /** What edges of sheets, gutters and flashings are called. */
    static final String SKIN = "skin";

    /** Copies the lists. */
    Scene {
        items = List.copyOf(items);
        blinds = List.copyOf(blinds);
        lines = List.copyOf(lines);
    }

    /** The lines that are seen. */
    List<ViewLine> seen(Projection view) {
        return HiddenLines.visible(items, blinds, lines, view);
    }

    /** What it covers of a view. */
    Envelope bounds(Projection view) {
        List<Item> all = new ArrayList<>(items);
        all.addAll(blinds);
        return Silhouette.bounds(all, view);
    }

    /** Draws what is seen: sheets and steel in the pen of what is seen; ribs, leaves and what is further back thinner. */
    static void draw(PlacedView view, List<ViewLine> seen) {
        draw(view, seen.stream().filter(l -> !Foreground.isBack(l.part())).toList(), Pen.VISIBLE);
        draw(
                view,
                seen.stream()
                        .filter(l -> Foreground.isBack(l.part()))
                        .map(l -> new ViewLine(l.from(), l.to(), Foreground.plain(l.part())))
                        .toList(),
                Pen.DIMENSION);
    }

    private static void draw(PlacedView view, List<ViewLine> seen, Pen pen) {
        view.draw(of(seen, RIB), Pen.HATCH, Layer.CLADDING);
        view.draw(of(seen, LEAF), Pen.DIMENSION, Layer.CLADDING);
        view.draw(of(seen, SKIN), pen, Layer.CLADDING);
        view.draw(
                seen.stream()
                        .filter(l -> !List.of(RIB, LEAF, SKIN).contains(l.part()))
                        .toList(),
                pen,
                Layer.STEEL);
    }

    private static List<ViewLine> of(List<ViewLine> lines, String part) {
        return lines.stream()
                .filter(l -> l.part().equals(part))
                .map(l -> new ViewLine(l.from(), l.to(), ""))
                .toList();
    }
}
