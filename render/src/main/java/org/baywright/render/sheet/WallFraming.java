package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.Silhouette;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.Window;
import org.locationtech.jts.geom.Envelope;

/** The steel and openings of one wall on a framing elevation, with their marks and the heights of its girts. */
final class WallFraming {
    /** Members that are thinner than this on paper are drawn as one line, mm. */
    private static final double LEAST_BREADTH = 0.9;

    /** Always one line: round or slender, and crossing others. */
    private static final Set<PartKind> LINES = EnumSet.of(PartKind.BRACE, PartKind.BRIDGING);

    private static final Set<PartKind> FRAMES =
            EnumSet.of(PartKind.COLUMN, PartKind.LEAN_TO_COLUMN, PartKind.RAFTER, PartKind.LEAN_TO_RAFTER);

    private WallFraming() {}

    /** Draws as much of a wall as a window shows. */
    static void draw(PlacedView view, Shed shed, WallView wall, Envelope window) {
        view.line(new Vec2(window.getMinX(), 0), new Vec2(window.getMaxX(), 0), Pen.CUT, Layer.GROUND);
        for (MemberAxis member : wall.members()) {
            member(view, wall, member, window);
        }
        wall.openings().forEach(o -> opening(view, wall, o, window));
        Map<Boolean, List<MemberAxis>> named = wall.members().stream()
                .filter(m -> m.part().kind().isMember())
                .collect(Collectors.partitioningBy(m -> m.part().kind() == PartKind.BRIDGING));
        MarkNames.place(view, named.get(false), wall.projection(), window);
        MarkNames.placeShort(view, named.get(true), wall.projection(), window);
        for (List<Double> heights : wall.girtHeights(shed, window)) {
            List<Double> rows = new ArrayList<>(heights);
            rows.add(0, 0.0);
            view.annotate().chainLeft(rows, window.getMinX());
        }
    }

    private static void member(PlacedView view, WallView wall, MemberAxis member, Envelope window) {
        PartKind kind = member.part().kind();
        ViewLine axis = member.line(wall.projection());
        Envelope reach = new Envelope(
                axis.from().x(), axis.to().x(), axis.from().y(), axis.to().y());
        if (!reach.intersects(window)) {
            return;
        }
        if (LINES.contains(kind)) {
            Pen pen = kind == PartKind.BRACE ? Pen.OUTLINE : Pen.DIMENSION;
            view.draw(Window.cut(List.of(axis), window), pen, Layer.STEEL);
            return;
        }
        for (List<Vec2> ring : Silhouette.outline(member.item(), wall.projection())) {
            if (kind == PartKind.GIRT && breadth(ring) / view.port().scale().n() < LEAST_BREADTH) {
                view.draw(Window.cut(List.of(axis), window), Pen.VISIBLE, Layer.STEEL);
            } else {
                outline(view, ring, member, window);
            }
        }
    }

    private static double breadth(List<Vec2> ring) {
        var heights = ring.stream().mapToDouble(Vec2::y).summaryStatistics();
        return heights.getMax() - heights.getMin();
    }

    /** White over what is behind, and its edge. */
    private static void outline(PlacedView view, List<Vec2> ring, MemberAxis member, Envelope window) {
        String mark = member.part().mark();
        Pen pen =
                FRAMES.contains(member.part().kind()) || member.part().kind().isMember() ? Pen.VISIBLE : Pen.DIMENSION;
        List<Vec2> inside = ring.stream()
                .map(p -> new Vec2(Math.max(window.getMinX(), Math.min(window.getMaxX(), p.x())), p.y()))
                .map(view.port()::toPaper)
                .toList();
        double grey = FRAMES.contains(member.part().kind()) ? 0.88 : 1;
        view.draw(List.of(
                new Fill(List.of(inside), grey, Layer.STEEL, mark), new Stroke(inside, true, pen, Layer.STEEL, mark)));
    }

    /** The clear opening in thin outline with its name and size. */
    private static void opening(PlacedView view, WallView wall, OpeningPlace opening, Envelope window) {
        double left = wall.x(opening.face(), opening.left());
        double right = wall.x(opening.face(), opening.right());
        Vec2 middle = new Vec2((left + right) / 2, (opening.sill() + opening.head()) / 2);
        if (!window.contains(middle.x(), middle.y())) {
            return;
        }
        if (!opening.isWholeBay()) {
            List<Vec2> ring = List.of(
                    new Vec2(left, opening.sill()),
                    new Vec2(right, opening.sill()),
                    new Vec2(right, opening.head()),
                    new Vec2(left, opening.head()));
            List<Vec2> paper = ring.stream().map(view.port()::toPaper).toList();
            view.draw(List.of(new Stroke(paper, true, Pen.DIMENSION, Layer.LABEL, "")));
        }
        view.annotate()
                .place(Label.of(view.port().toPaper(middle), Label.Pointer.BESIDE, words(opening))
                        .preferring(Spot.ABOVE, Spot.BELOW, Spot.RIGHT)
                        .bold());
    }

    private static String[] words(OpeningPlace opening) {
        String type = opening.opening().type().label();
        String name = opening.tag() + " " + type.toLowerCase(Locale.ROOT);
        if (opening.isWholeBay()) {
            return new String[] {opening.tag() + " bay left open"};
        }
        String size = Figure.length(opening.right() - opening.left()) + " × "
                + Figure.length(opening.head() - opening.sill()) + " clear";
        return opening.sill() > 0
                ? new String[] {name, size, "sill at " + Figure.level(opening.sill())}
                : new String[] {name, size};
    }
}
