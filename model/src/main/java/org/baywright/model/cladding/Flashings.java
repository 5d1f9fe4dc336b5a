package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.cladding.Flashing.Kind;
import org.baywright.model.cladding.Flashing.Run;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RoofSlope;
import org.baywright.model.setout.SetOut;

/** Finds every edge that a flashing closes, and gathers equal folds under a mark. */
final class Flashings {
    /** Length of a piece and its lap. @source stock 6 to 8 m, lap 150 sealed: common practice */
    private static final double STOCK = 6000;

    private static final double LAP = 150;

    private final Shed shed;
    private final SetOut setOut;
    private final List<RoofRows> roofs;
    private final List<Surface> surfaces;
    private final Map<Kind, Map<List<Vec2>, List<Run>>> found = new EnumMap<>(Kind.class);

    private Flashings(Shed shed, List<RoofRows> roofs, List<Surface> surfaces) {
        this.shed = shed;
        this.setOut = shed.setOut();
        this.roofs = roofs;
        this.surfaces = surfaces;
    }

    static List<Flashing> of(Shed shed, List<RoofRows> roofs, List<Surface> surfaces) {
        Flashings flashings = new Flashings(shed, roofs, surfaces);
        flashings.roofEdges();
        flashings.walls();
        shed.openings().stream().filter(o -> !o.isWholeBay()).forEach(flashings::opening);
        return flashings.marked();
    }

    private List<Flashing> marked() {
        List<Flashing> flashings = new ArrayList<>();
        found.forEach((kind, folds) -> folds.forEach((fold, runs) ->
                flashings.add(new Flashing("F" + (flashings.size() + 1), kind, fold, STOCK, LAP, runs))));
        return flashings;
    }

    private void add(Kind kind, List<Vec2> fold, Vec3 from, Vec3 to) {
        if (from.distance(to) > 1) {
            found.computeIfAbsent(kind, k -> new LinkedHashMap<>())
                    .computeIfAbsent(fold, f -> new ArrayList<>())
                    .add(new Run(from, to));
        }
    }

    private static double rise(RoofSlope slope) {
        return Math.abs(slope.roof().rise());
    }

    private void roofEdges() {
        boolean ridgeDone = false;
        for (int i = 0; i < roofs.size(); i++) {
            RoofRows rows = roofs.get(i);
            Surface surface = surfaces.get(i);
            double width = surface.outline().get(1).x();
            double height = surface.outline().get(2).y();
            barge(surface, 0, height);
            barge(surface, width, height);
            RoofSlope slope = rows.slope();
            eaveAngles(slope);
            if (slope.top() != RoofSlope.Top.RIDGE || !ridgeDone) {
                upperEdge(slope, surface, width, height);
                ridgeDone |= slope.top() == RoofSlope.Top.RIDGE;
            }
        }
    }

    private void barge(Surface surface, double u, double height) {
        add(
                Kind.BARGE,
                Folds.barge(surface.profile().ribPitch()),
                surface.axes().toWorld(u, 0, 0),
                surface.axes().toWorld(u, height, 0));
    }

    /** Between a wall's sheets and the eave purlin over them, which they do not reach. */
    private void eaveAngles(RoofSlope slope) {
        double plane = slope.line().x() - slope.line().inward() * WallSheets.plane(shed.definition());
        double level = slope.roof().heightAt(plane);
        for (Surface wall : surfaces) {
            Vec3 from = wall.axes().toWorld(wall.outline().get(0).x(), 0, 0);
            Vec3 to = wall.axes().toWorld(wall.outline().get(1).x(), 0, 0);
            boolean under = wall.role() == Surface.Role.WALL
                    && Math.abs(from.x() - plane) < 1
                    && Math.abs(to.x() - plane) < 1
                    && wall.outline().get(2).y() > level;
            if (under) {
                add(
                        Kind.EAVE_ANGLE,
                        Folds.eaveAngle(rise(slope)),
                        new Vec3(plane, from.y(), level),
                        new Vec3(plane, to.y(), level));
            }
        }
    }

    private void upperEdge(RoofSlope slope, Surface surface, double width, double height) {
        double rise = rise(slope);
        Kind kind = switch (slope.top()) {
            case RIDGE -> Kind.RIDGE;
            case HIGH_EAVE -> Kind.HIGH_EAVE;
            case WALL -> Kind.APRON;
            case MAIN_ROOF -> Kind.ROOF_STEP;
        };
        double main = rise(shed.slopes().get(0));
        List<Vec2> fold = switch (slope.top()) {
            case RIDGE -> Folds.ridge(rise, rise);
            case HIGH_EAVE -> Folds.highEave(rise);
            case WALL -> Folds.apron(rise);
            case MAIN_ROOF -> Folds.roofStep(main, rise);
        };
        boolean samePitch = slope.top() == RoofSlope.Top.MAIN_ROOF && Math.abs(main - rise) < 1e-6;
        if (!samePitch) {
            Vec3 from = surface.axes().toWorld(0, height, 0);
            Vec3 to = surface.axes().toWorld(width, height, 0);
            double gap = slope.top() == RoofSlope.Top.RIDGE ? setOut.span() / 2 - from.x() : 0;
            Vec3 up = new Vec3(gap, 0, Math.abs(gap) * rise);
            add(kind, fold, from.plus(up), to.plus(up));
        }
    }

    /** The upright edges of all walls, and the foot of every wall that stands on the slab. */
    private void walls() {
        List<Surface> walls =
                surfaces.stream().filter(s -> s.role() == Surface.Role.WALL).toList();
        walls.forEach(this::foot);
        new WallEdges(walls).closed().forEach(this::upright);
    }

    private void upright(WallEdges.Edge edge) {
        Vec3 foot = edge.foot();
        Vec3 top = new Vec3(foot.x(), foot.y(), edge.top());
        switch (edge.joint()) {
            case OUTER_CORNER -> add(Kind.CORNER, Folds.corner(), foot, top);
            case INNER_CORNER -> add(Kind.INNER_CORNER, Folds.innerCorner(), foot, top);
            case FREE -> add(Kind.JAMB, Folds.jamb(wallSheet().depth()), foot, top);
        }
    }

    private SheetProfile wallSheet() {
        return shed.definition().envelope().sheeting().walls().profile();
    }

    private void foot(Surface wall) {
        double low = wall.outline().get(0).y();
        if (low > 0) {
            return;
        }
        double from = wall.outline().get(0).x();
        List<double[]> gaps = new ArrayList<>();
        wall.holes().stream()
                .filter(h -> h.get(0).y() <= low + 1e-6)
                .map(h -> new double[] {h.get(0).x(), h.get(1).x()})
                .sorted((a, b) -> Double.compare(a[0], b[0]))
                .forEach(gaps::add);
        gaps.add(new double[] {wall.outline().get(1).x(), 0});
        for (double[] gap : gaps) {
            add(
                    Kind.BASE,
                    Folds.base(),
                    wall.axes().toWorld(from, low, 0),
                    wall.axes().toWorld(gap[0], low, 0));
            from = gap[1];
        }
    }

    private void opening(OpeningPlace opening) {
        double rib = wallSheet().depth();
        double out = WallSheets.plane(shed.definition());
        Vec3 headLeft = opening.face().toWorld(opening.left(), opening.head(), out);
        Vec3 headRight = opening.face().toWorld(opening.right(), opening.head(), out);
        Vec3 footLeft = opening.face().toWorld(opening.left(), opening.sill(), out);
        Vec3 footRight = opening.face().toWorld(opening.right(), opening.sill(), out);
        add(Kind.HEAD, Folds.head(rib), headLeft, headRight);
        add(Kind.JAMB, Folds.jamb(rib), footLeft, headLeft);
        add(Kind.JAMB, Folds.jamb(rib), footRight, headRight);
        if (opening.sill() > 0) {
            add(Kind.SILL, Folds.sill(rib), footLeft, footRight);
        }
    }
}
