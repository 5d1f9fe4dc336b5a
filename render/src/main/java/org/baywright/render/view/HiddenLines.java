package org.baywright.render.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.index.quadtree.Quadtree;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Which edges of a set of solids are seen.
 *
 * <ol>
 *   <li>every convex lump throws a {@link Shadow} away from the eye; shadows within other shadows are dropped
 *   <li>of edges that appear in the same place only the nearest is kept
 *   <li>each edge is clipped, exactly, by the shadows about it: what is in none of them is seen
 *   <li>{@link LineMerge} joins what is left where it falls on the same line
 * </ol>
 *
 * <p>Where steel runs through other steel no new edge is made: parts are expected to meet, not to overlap.
 */
public final class HiddenLines {
    private HiddenLines() {}

    /** The edges that are seen. */
    public static List<ViewLine> visible(List<Item> items, Projection view) {
        return split(items, List.of(), List.of(), view, false).visible();
    }

    /**
     * The edges that are seen among sheets.
     *
     * @param items solids with their edges
     * @param blinds solids that hide, but whose own edges are not drawn
     * @param lines lines that are drawn where they are seen
     */
    public static List<ViewLine> visible(List<Item> items, List<Item> blinds, List<ThinLine> lines, Projection view) {
        return split(items, blinds, lines, view, false).visible();
    }

    /** The edges that are seen and those that are not, for dashed lines. */
    public static ViewLines all(List<Item> items, Projection view) {
        return split(items, List.of(), List.of(), view, true);
    }

    private static ViewLines split(
            List<Item> items, List<Item> blinds, List<ThinLine> lines, Projection view, boolean wantHidden) {
        List<Item> opaque = new ArrayList<>(items);
        opaque.addAll(blinds);
        STRtree shadows = index(uncovered(opaque, view));
        List<Edge> seen = new ArrayList<>();
        List<Edge> unseen = new ArrayList<>();
        for (Edge edge : distinct(items, lines, view)) {
            Spans behind = behind(edge, shadows);
            behind.gaps(Span.WHOLE).forEach(gap -> seen.add(edge.stretch(gap)));
            if (wantHidden) {
                behind.all().forEach(span -> unseen.add(edge.stretch(span)));
            }
        }
        return LineMerge.of(seen, unseen);
    }

    /** The edges, less those right behind another: what hides the nearer one hides the further one too. */
    private static List<Edge> distinct(List<Item> items, List<ThinLine> lines, Projection view) {
        List<Edge> edges = new ArrayList<>();
        items.forEach(item -> edges.addAll(Edge.of(item, view)));
        lines.forEach(line -> Edge.of(line, view).ifPresent(edges::add));
        edges.sort(Edge.FRONT_TO_BACK);
        Map<List<Long>, List<Edge>> byPlace = new HashMap<>();
        List<Edge> distinct = new ArrayList<>();
        for (Edge edge : edges) {
            List<Edge> same = byPlace.computeIfAbsent(place(edge), k -> new ArrayList<>(1));
            if (same.stream().noneMatch(nearer -> nearer.covers(edge))) {
                same.add(edge);
                distinct.add(edge);
            }
        }
        return distinct;
    }

    private static List<Long> place(Edge edge) {
        return List.of(
                steps(edge.from().x()),
                steps(edge.from().y()),
                steps(edge.to().x()),
                steps(edge.to().y()));
    }

    private static long steps(double mm) {
        return Math.round(mm / Edge.FINE);
    }

    /** The shadows, less those that lie wholly within another, which hide nothing more. */
    private static List<Shadow> uncovered(List<Item> items, Projection view) {
        List<Shadow> shadows = new ArrayList<>();
        items.forEach(item -> shadows.addAll(Shadow.of(item, view)));
        shadows.sort(Comparator.comparingDouble(s -> -s.nearest()));
        Quadtree kept = new Quadtree();
        List<Shadow> uncovered = new ArrayList<>();
        for (Shadow shadow : shadows) {
            if (!isCovered(shadow, kept)) {
                kept.insert(shadow.box(), shadow);
                uncovered.add(shadow);
            }
        }
        return uncovered;
    }

    @SuppressWarnings("unchecked") // the index holds shadows only
    private static boolean isCovered(Shadow shadow, Quadtree kept) {
        List<Shadow> near = kept.query(shadow.box());
        return near.stream().anyMatch(k -> k.covers(shadow));
    }

    private static STRtree index(List<Shadow> shadows) {
        STRtree index = new STRtree();
        shadows.forEach(s -> index.insert(s.box(), s));
        index.build();
        return index;
    }

    @SuppressWarnings("unchecked") // the index holds shadows only
    private static Spans behind(Edge edge, STRtree shadows) {
        Spans behind = new Spans();
        List<Shadow> near = shadows.query(edge.box());
        for (Shadow shadow : near) {
            if (shadow.nearest() > edge.furthest()) {
                shadow.hides(edge).ifPresent(behind::add);
            }
            if (behind.covers(Span.WHOLE)) {
                break;
            }
        }
        return behind;
    }
}
