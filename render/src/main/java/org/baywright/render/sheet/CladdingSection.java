package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.RoofWater;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.Projection;
import org.baywright.render.view.ViewLine;

/**
 * Sheets, flashings and gutters as an upright plane across the building cuts them, seen from the front. A sheet is cut
 * along its ribs: two lines, in the pan and on the crest.
 *
 * @param building what is cut
 * @param y where, along the building
 */
record CladdingSection(Building building, double y) {
    private static final Projection FRONT = Projection.front();

    /** One thing that is cut: its lines, and words for it. */
    record Cut(String name, Pen pen, List<ViewLine> lines) {}

    /** Everything that the plane meets. */
    List<Cut> cuts() {
        List<Cut> cuts = new ArrayList<>();
        for (Surface surface : building.cladding().surfaces()) {
            sheets(surface, cuts);
        }
        building.cladding().flashings().forEach(f -> flashing(f, cuts));
        building.cladding().gutters().forEach(g -> gutter(g, cuts));
        return cuts;
    }

    private void sheets(Surface surface, List<Cut> cuts) {
        Vec3 along = surface.axes().along();
        if (Math.abs(along.y()) < 0.99) {
            return;
        }
        double u = (y - surface.axes().origin().y()) * Math.signum(along.y());
        String name = (surface.role() == Surface.Role.ROOF ? "Roof sheet " : "Wall sheet ")
                + surface.profile().name();
        surface.sheets().stream()
                .filter(s -> s.left() <= u && u < s.right())
                .forEach(s -> cuts.add(new Cut(name, Pen.OUTLINE, sheet(surface, s, u))));
    }

    private static List<ViewLine> sheet(Surface surface, Surface.Sheet sheet, double u) {
        double crest = surface.profile().depth();
        Vec2 a = FRONT.flat(surface.axes().toWorld(u, sheet.low(), 0));
        Vec2 b = FRONT.flat(surface.axes().toWorld(u, sheet.high(), 0));
        Vec2 c = FRONT.flat(surface.axes().toWorld(u, sheet.high(), crest));
        Vec2 d = FRONT.flat(surface.axes().toWorld(u, sheet.low(), crest));
        return closed(List.of(a, b, c, d));
    }

    private void flashing(Flashing flashing, List<Cut> cuts) {
        for (Flashing.Run run : flashing.runs()) {
            boolean alongBuilding = Math.abs(run.from().x() - run.to().x()) < 1;
            double low = Math.min(run.from().y(), run.to().y());
            double high = Math.max(run.from().y(), run.to().y());
            if (alongBuilding && low <= y && y <= high) {
                cuts.add(new Cut(
                        "Flashing " + flashing.mark() + ", " + flashing.kind().label(),
                        Pen.CUT,
                        folded(flashing, run)));
            }
        }
    }

    /** A fold is given for the right side of the building; on the left it is seen from the other end. */
    private List<ViewLine> folded(Flashing flashing, Flashing.Run run) {
        boolean turned = run.from().x() < building.shed().setOut().span() / 2 - 1;
        double crest = building.shed()
                .definition()
                .envelope()
                .sheeting()
                .roof()
                .profile()
                .depth();
        double lift = onRoof(flashing.kind()) ? crest : 0;
        Vec2 at = FRONT.flat(run.from()).plus(new Vec2(0, lift));
        List<Vec2> line = flashing.fold().stream()
                .map(v -> at.plus(new Vec2(turned ? -v.x() : v.x(), v.y())))
                .toList();
        return open(line);
    }

    private static boolean onRoof(Flashing.Kind kind) {
        return switch (kind) {
            case RIDGE, APRON, HIGH_EAVE, ROOF_STEP -> true;
            default -> false;
        };
    }

    private void gutter(GutterRun run, List<Cut> cuts) {
        if (Math.min(run.from().y(), run.to().y()) > y
                || y > Math.max(run.from().y(), run.to().y())) {
            return;
        }
        RoofWater.Gutter gutter =
                building.shed().definition().envelope().roofWater().gutter();
        int out = -run.slope().line().inward();
        Vec2 top = FRONT.flat(run.from());
        Vec2 wide = new Vec2(out * gutter.width(), 0);
        Vec2 down = new Vec2(0, -gutter.depth());
        cuts.add(new Cut(
                "Gutter: " + gutter.name(),
                Pen.OUTLINE,
                open(List.of(top, top.plus(down), top.plus(down).plus(wide), top.plus(wide)))));
    }

    private static List<ViewLine> open(List<Vec2> points) {
        List<ViewLine> lines = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            lines.add(new ViewLine(points.get(i - 1), points.get(i), ""));
        }
        return lines;
    }

    private static List<ViewLine> closed(List<Vec2> points) {
        List<ViewLine> lines = new ArrayList<>(open(points));
        lines.add(new ViewLine(points.get(points.size() - 1), points.get(0), ""));
        return lines;
    }
}
