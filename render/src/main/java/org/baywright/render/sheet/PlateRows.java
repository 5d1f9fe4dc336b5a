package org.baywright.render.sheet;

import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Side;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;

/** What set-out plans show of plates: their holes, and running dimensions from the datum in rows beside the walls. */
final class PlateRows {
    private final Plan plan;
    private final PlanAxes axes;
    private final SetOut setOut;
    private final List<PlateStand> stands;

    PlateRows(Plan plan, SetOut setOut, List<PlateStand> stands) {
        this.plan = plan;
        this.axes = plan.axes();
        this.setOut = setOut;
        this.stands = stands;
    }

    /** The margins of a plan, with one more row of so much paper beside each wall whose posts have plates. */
    Margins margins(Margins without, double row) {
        double front = row * (hasPosts(90) ? 1 : 0);
        double rear = row * (hasPosts(270) ? 1 : 0);
        double left = row * (hasPosts(0) ? 1 : 0);
        double right = row * (hasPosts(180) ? 1 : 0);
        return axes.turned()
                ? new Margins(
                        without.left() + front, without.right() + rear, without.below() + right, without.above() + left)
                : new Margins(
                        without.left() + left,
                        without.right() + right,
                        without.below() + front,
                        without.above() + rear);
    }

    private boolean hasPosts(double turn) {
        return stands.stream().anyMatch(s -> !s.isOfFrame() && s.turnDeg() == turn);
    }

    /** The plates that a strip shows. */
    Stream<PlateStand> in(Strip strip) {
        double from = setOut.frameLine(strip.firstFrame()) - Plan.BEYOND;
        double to = setOut.frameLine(strip.lastFrame()) + Plan.BEYOND;
        return stands.stream().filter(s -> s.middle().y() >= from && s.middle().y() <= to);
    }

    /** The holes of every plate. */
    void holes(PlacedView view, Strip strip) {
        in(strip).forEach(stand -> {
            List<Vec2> holes = stand.holes();
            for (int i = 0; i < holes.size(); i++) {
                Vec2 at = holes.get(i);
                double radius = stand.plate().holes().get(i).diameter() / 2;
                view.draw(List.of(Arc.circle(
                        view.port().toPaper(axes.at(at.x(), at.y())),
                        view.port().toPaper(radius),
                        Pen.DIMENSION,
                        Layer.ANCHOR,
                        stand.plate().mark())));
            }
        });
    }

    /** The middles of the plates under mullions and jambs, beside the wall they stand in. */
    void posts(PlacedView view, Strip strip) {
        boolean turned = axes.turned();
        Side front = turned ? Side.LEFT : Side.BELOW;
        Side rear = turned ? Side.RIGHT : Side.ABOVE;
        across(view, front, setOut.frameLine(strip.firstFrame()), places(strip, 90, Vec2::x));
        across(view, rear, setOut.frameLine(strip.lastFrame()), places(strip, 270, Vec2::x));
        along(view, axes.frameNames(), plan.left(), places(strip, 0, Vec2::y));
        along(view, axes.alongside(), plan.right(), places(strip, 180, Vec2::y));
    }

    private TreeSet<Double> places(Strip strip, double turn, ToDoubleFunction<Vec2> axis) {
        return distinct(in(strip)
                .filter(s -> !s.isOfFrame() && s.turnDeg() == turn)
                .map(s -> axis.applyAsDouble(new Vec2(s.middle().x(), s.middle().y()))));
    }

    /** A row along the building, on the side of a line. */
    void along(PlacedView view, Side on, double x, TreeSet<Double> ys) {
        view.annotate()
                .running(on, axes.at(x, 0), ys.stream().map(y -> axes.at(x, y)).toList(), axes.at(0, 1));
    }

    /** A row across the building, beyond a frame's line. */
    void across(PlacedView view, Side on, double y, TreeSet<Double> xs) {
        view.annotate()
                .running(on, axes.at(0, y), xs.stream().map(x -> axes.at(x, y)).toList(), axes.at(1, 0));
    }

    /** Places as they are printed, each once. */
    static TreeSet<Double> distinct(Stream<Double> places) {
        TreeSet<Double> all = new TreeSet<>();
        places.map(Tolerance::fabricated).forEach(all::add);
        return all;
    }
}
