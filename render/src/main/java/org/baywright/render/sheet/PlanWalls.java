package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.Opening;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.WallFace;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;

/**
 * Walls on a plan, cut above the floor: the two faces of their sheets, broken at openings, each opening in the usual
 * way with its tag; and the downpipes.
 *
 * @param building what is drawn
 * @param slab what it stands on
 */
record PlanWalls(Building building, SlabLine slab) {
    /** The plan is cut here; an opening whose head lies lower is only seen from above. */
    private static final double CUT = 1200;

    private static final double PIPE = 60;

    /** Edges closer than this, mm, are dimensioned as one. */
    private static final double APART = 0.5;

    /** A strip of the plan shows so much past its first and last frame. */
    private static final double PAST = 300;

    private List<Surface> walls() {
        return building.cladding().surfaces(Surface.Role.WALL).stream()
                .filter(w -> w.outline().get(0).y() < CUT)
                .toList();
    }

    /** Draws the walls of a strip, and the slab they stand on. */
    void draw(PlacedView view, PlanAxes axes, double first, double last) {
        if (building.shed().definition().envelope().isFull()) {
            slab.edge(view, first - PAST, last + PAST);
        }
        for (Surface wall : walls()) {
            double from = wall.outline().get(0).x();
            List<double[]> gaps = new ArrayList<>();
            wall.holes().stream()
                    .filter(h -> h.get(0).y() < CUT && h.get(2).y() > CUT)
                    .map(h -> new double[] {h.get(0).x(), h.get(1).x()})
                    .sorted((a, b) -> Double.compare(a[0], b[0]))
                    .forEach(gaps::add);
            gaps.add(new double[] {wall.outline().get(1).x(), 0});
            for (double[] gap : gaps) {
                stretch(view, axes, wall, new double[] {from, gap[0]}, new double[] {first, last});
                from = gap[1];
            }
        }
        openings(first, last).forEach(o -> opening(view, axes, o));
        for (GutterRun run : building.cladding().gutters()) {
            run.downpipes().stream()
                    .filter(p -> p.y() >= first - PAST && p.y() <= last + PAST)
                    .forEach(p -> pipe(view, axes, run, p));
        }
    }

    private static void stretch(PlacedView view, PlanAxes axes, Surface wall, double[] u, double[] strip) {
        double depth = wall.profile().depth();
        double a = wall.axes().toWorld(u[0], 0, 0).y();
        double b = wall.axes().toWorld(u[1], 0, 0).y();
        if (Math.min(a, b) > strip[1] + PAST || Math.max(a, b) < strip[0] - PAST) {
            return;
        }
        for (double out : new double[] {0, depth}) {
            line(
                    view,
                    axes,
                    cut(wall.axes().toWorld(u[0], 0, out), strip),
                    cut(wall.axes().toWorld(u[1], 0, out), strip));
        }
        for (double end : u) {
            Vec3 inside = wall.axes().toWorld(end, 0, 0);
            if (inside.y() >= strip[0] - 500 && inside.y() <= strip[1] + 500) {
                line(view, axes, inside, wall.axes().toWorld(end, 0, depth));
            }
        }
    }

    private static Vec3 cut(Vec3 at, double[] strip) {
        return new Vec3(at.x(), Math.max(strip[0] - PAST, Math.min(strip[1] + PAST, at.y())), at.z());
    }

    private static void line(PlacedView view, PlanAxes axes, Vec3 a, Vec3 b) {
        Vec2 from = axes.at(a.x(), a.y());
        Vec2 to = axes.at(b.x(), b.y());
        if (from.distance(to) > 1) {
            view.line(from, to, Pen.VISIBLE, Layer.CLADDING);
        }
    }

    /** What stands over another opening is seen on the elevations only. */
    private List<OpeningPlace> openings(double first, double last) {
        return building.shed().openings().stream()
                .filter(o -> !o.isWholeBay() || o.opening().type() == Opening.Type.OPEN)
                .filter(o -> building.shed().openings().stream().noneMatch(o::isOver))
                .filter(o -> middle(o).y() >= first - PAST && middle(o).y() <= last + PAST)
                .toList();
    }

    /**
     * Chains from the frame line before openings through their clear edges to the frame line after, along the inside of
     * their wall or, where that is taken, outside; each wall of a bay has its own.
     *
     * @return the openings whose chain has room on neither side
     */
    List<OpeningPlace> dimension(PlacedView view, PlanAxes axes, double first, double last) {
        Map<List<Object>, List<OpeningPlace>> walls = openings(first, last).stream()
                .filter(o -> !o.isWholeBay())
                .collect(Collectors.groupingBy(
                        o -> List.of(o.face(), o.bay()), LinkedHashMap::new, Collectors.toList()));
        List<OpeningPlace> without = new ArrayList<>();
        for (List<OpeningPlace> wall : walls.values()) {
            WallFace face = wall.get(0).face();
            List<Vec2> points = chain(wall).stream()
                    .map(u -> face.toWorld(u, 0, 0))
                    .map(at -> axes.at(at.x(), at.y()))
                    .toList();
            Vec2 outward = axes.projection().flat(face.axes().width());
            int before = view.annotate().dimensions().size();
            view.annotate().aligned(points, outward.times(-1), view.box());
            if (view.annotate().dimensions().size() == before) {
                view.annotate().aligned(points, outward, SheetFrame.room());
            }
            if (view.annotate().dimensions().size() == before) {
                without.addAll(wall);
            }
        }
        return without;
    }

    /** Where along its wall a bay begins and ends, and its openings between; what is no distance apart is one. */
    private TreeSet<Double> chain(List<OpeningPlace> openings) {
        TreeSet<Double> all = new TreeSet<>(frameLines(openings.get(0)));
        for (OpeningPlace o : openings) {
            for (double edge : new double[] {o.left(), o.right()}) {
                if (all.subSet(edge - APART, edge + APART).isEmpty()) {
                    all.add(edge);
                }
            }
        }
        return all;
    }

    /** The lines at both ends of an opening's bay; the string lines of an end wall. */
    private List<Double> frameLines(OpeningPlace o) {
        SetOut setOut = building.shed().setOut();
        return o.face().wall().isEnd()
                ? List.of(o.bay().from(), o.bay().to())
                : Stream.of(o.bay().bay(), o.bay().bay() + 1)
                        .map(frame -> Vec3.ALONG.times(setOut.frameLine(frame)))
                        .map(at -> o.face().axes().toLocal(at).x())
                        .toList();
    }

    private static Vec3 middle(OpeningPlace o) {
        return o.face().toWorld((o.left() + o.right()) / 2, 0, 0);
    }

    private static void opening(PlacedView view, PlanAxes axes, OpeningPlace o) {
        switch (o.opening().type()) {
            case ROLLER_DOOR -> across(view, axes, o, -60, Pen.HIDDEN);
            case SLIDING_DOOR -> across(view, axes, o, 170, Pen.VISIBLE);
            case WINDOW -> {
                across(view, axes, o, 0, Pen.DIMENSION);
                across(view, axes, o, 60, Pen.DIMENSION);
            }
            case DOOR -> swing(view, axes, o);
            case OPEN -> {}
        }
    }

    private static void across(PlacedView view, PlanAxes axes, OpeningPlace o, double out, Pen pen) {
        Vec3 a = o.face().toWorld(o.left(), 0, out);
        Vec3 b = o.face().toWorld(o.right(), 0, out);
        view.line(axes.at(a.x(), a.y()), axes.at(b.x(), b.y()), pen, Layer.CLADDING);
    }

    /** The leaf open at a right angle, and its way. */
    private static void swing(PlacedView view, PlanAxes axes, OpeningPlace o) {
        Vec3 hinge = o.face().toWorld(o.left(), 0, 0);
        Vec3 open = o.face().toWorld(o.left(), 0, o.width());
        Vec3 shut = o.face().toWorld(o.right(), 0, 0);
        view.line(axes.at(hinge.x(), hinge.y()), axes.at(open.x(), open.y()), Pen.VISIBLE, Layer.CLADDING);
        Vec2 c = view.port().toPaper(axes.at(hinge.x(), hinge.y()));
        Vec2 a = view.port().toPaper(axes.at(open.x(), open.y())).minus(c);
        Vec2 b = view.port().toPaper(axes.at(shut.x(), shut.y())).minus(c);
        double from = Math.toDegrees(Math.atan2(a.y(), a.x()));
        double to = Math.toDegrees(Math.atan2(b.y(), b.x()));
        boolean onward = ((to - from) % 360 + 360) % 360 < 180;
        double start = onward ? from : to;
        view.draw(List.of(new Arc(c, a.length(), start, 90, Pen.DIMENSION, Layer.CLADDING, "")));
    }

    private static void pipe(PlacedView view, PlanAxes axes, GutterRun run, Vec3 at) {
        double x = at.x() - run.slope().line().inward() * PIPE;
        Vec2 centre = view.port().toPaper(axes.at(x, at.y()));
        view.draw(List.of(Arc.circle(
                centre, Math.max(0.6, view.port().scale().toPaper(PIPE)), Pen.DIMENSION, Layer.CLADDING, "")));
    }

    /** The tags of the openings of a strip, with their clear sizes, and where to find offsets that have no chain. */
    void name(PlacedView view, PlanAxes axes, double first, double last, List<OpeningPlace> without) {
        for (OpeningPlace o : openings(first, last)) {
            Vec3 at = middle(o);
            Vec2 place = axes.at(at.x(), at.y());
            if (o.isWholeBay()) {
                view.annotate().note(place, o.tag() + " open bay");
            } else {
                String name = o.tag() + " " + o.opening().type().label().toLowerCase(Locale.ROOT);
                List<String> words = new ArrayList<>(List.of(name, FinishesKey.size(o)));
                if (without.contains(o)) {
                    words.add("offsets: see schedule");
                }
                view.annotate().note(place, words.toArray(String[]::new));
            }
        }
    }
}
