package org.baywright.render.sheet;

import java.util.List;
import java.util.Optional;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.RoofWater;
import org.baywright.model.definition.Sheeting;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Figure;
import org.baywright.render.view.Projection;
import org.locationtech.jts.geom.Envelope;

/**
 * Names what is seen of the envelope in an elevation: each opening with its clear size, and once each the sheets, the
 * gutter with its downpipes, and the barge.
 *
 * @param building what is seen
 * @param view from where
 * @param window what is shown of it
 */
record Finishes(Building building, Projection view, Envelope window) {
    private static final double FACING = 0.9;

    /** A roof slope that leans this much towards the eye is seen. */
    private static final double LEANING = 0.03;

    /** Where on a surface its name points, so that it keeps off openings in the middle. */
    private static final double ALONG = 0.86;

    private static final double UP = 0.62;
    private static final double GUTTER_AT = 0.3;

    void name(Annotations annotate) {
        if (!building.shed().definition().envelope().isFull()) {
            return;
        }
        building.shed().openings().stream()
                .filter(o -> !o.isWholeBay() && o.face().axes().width().dot(view.towards()) > FACING)
                .forEach(o -> opening(annotate, o));
        Sheeting sheeting = building.shed().definition().envelope().sheeting();
        Sheeting.Walls walls = sheeting.walls();
        Sheeting.Roof roof = sheeting.roof();
        surface(Surface.Role.WALL, FACING)
                .ifPresent(
                        at -> annotate.note(at, words("Walls", walls.profile().name(), walls.colour())));
        surface(Surface.Role.ROOF, LEANING)
                .ifPresent(at -> annotate.note(at, words("Roof", roof.profile().name(), roof.colour())));
        gutter().ifPresent(at -> annotate.note(at, water()));
        barge(annotate);
    }

    private void opening(Annotations annotate, OpeningPlace o) {
        Vec2 at = view.flat(o.face().toWorld((o.left() + o.right()) / 2, (o.sill() + o.head()) / 2, 0));
        if (window.contains(at.x(), at.y())) {
            String size = Figure.length(o.width()) + " x " + Figure.length(o.head() - o.sill()) + " clear";
            annotate.note(at, o.tag() + " " + o.opening().type().label(), size);
        }
    }

    private static String words(String what, String sheet, String colour) {
        return what + ": " + sheet + (colour.isEmpty() ? "" : ", " + colour);
    }

    private String water() {
        RoofWater water = building.shed().definition().envelope().roofWater();
        return water.gutter().name() + ", " + water.downpipe().name();
    }

    /** A place on the largest surface of a role that faces the eye, when it is in the window. */
    private Optional<Vec2> surface(Surface.Role role, double facing) {
        return building.cladding().surfaces(role).stream()
                .filter(s -> s.axes().width().dot(view.towards()) > facing)
                .filter(s -> Math.abs(s.axes().along().dot(view.right())) > FACING)
                .max((a, b) -> Double.compare(a.grossM2(), b.grossM2()))
                .map(this::place)
                .filter(at -> window.contains(at.x(), at.y()));
    }

    private Vec2 place(Surface surface) {
        List<Vec2> ring = surface.outline();
        Vec2 low = ring.get(0);
        double u = low.x() + ALONG * (ring.get(1).x() - low.x());
        double v = low.y() + UP * (ring.get(ring.size() - 1).y() - low.y());
        return view.flat(surface.axes().toWorld(u, v, 0));
    }

    private Optional<Vec2> gutter() {
        return building.cladding().gutters().stream()
                .filter(run -> new Vec3(-run.slope().line().inward(), 0, 0).dot(view.towards()) > FACING)
                .map(this::place)
                .filter(at -> window.contains(at.x(), at.y()))
                .findFirst();
    }

    private Vec2 place(GutterRun run) {
        return view.flat(run.from().plus(run.to().minus(run.from()).times(GUTTER_AT)));
    }

    private void barge(Annotations annotate) {
        if (Math.abs(view.towards().y()) > FACING) {
            building.cladding().flashings().stream()
                    .filter(f -> f.kind() == Flashing.Kind.BARGE)
                    .findFirst()
                    .ifPresent(f -> {
                        Flashing.Run run = f.runs().get(0);
                        Vec2 at = view.flat(run.from().plus(run.to()).times(0.5));
                        annotate.note(at, "Barge flashing " + f.mark());
                    });
        }
    }
}
