package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.Sheeting;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.TurnedBox;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.ViewLine;
import org.locationtech.jts.geom.Envelope;

/**
 * The roof from above as it is sheeted and drained: every sheet in the order it is laid, flashings by mark, gutters with
 * their falls, and the water that each downpipe takes.
 */
final class RoofSheetingPlan {
    private static final Set<Flashing.Kind> ON_ROOF = EnumSet.of(
            Flashing.Kind.RIDGE,
            Flashing.Kind.BARGE,
            Flashing.Kind.APRON,
            Flashing.Kind.HIGH_EAVE,
            Flashing.Kind.ROOF_STEP);

    private static final double TRANSLUCENT_GREY = 0.85;
    private static final double WHITE = 1;
    private static final double TEXT = 2.5;

    /** Paper between the numbers of sheets, mm. */
    private static final double NUMBERS_APART = 20;

    /** Paper from the last sheet's number to one before it, for three figures. */
    private static final double CLEAR_OF_LAST = 7;

    /** How far a lay arrow runs, paper mm. */
    private static final double LAY = 18;

    private final Building building;
    private final RoofPlan roof;
    private final PlanAxes axes;
    private final List<Surface> surfaces;
    private final RoofDrains drains;

    private RoofSheetingPlan(Building building) {
        this.building = building;
        this.roof = new RoofPlan(building.shed());
        this.axes = roof.axes();
        this.surfaces = building.cladding().surfaces(Surface.Role.ROOF);
        this.drains = new RoofDrains(building, roof);
    }

    static List<Draft> of(Building building) {
        RoofSheetingPlan plan = new RoofSheetingPlan(building);
        if (plan.surfaces.isEmpty()) {
            return List.of();
        }
        RoofPlan.Subject subject = new RoofPlan.Subject("Roof sheeting and drainage", plan.notes(), plan::content);
        return plan.roof.drafts(subject, 0, (sheet, room) -> {});
    }

    private void content(PlacedView view, Strip strip) {
        Envelope window = roof.window(strip);
        for (Surface surface : surfaces) {
            translucent(view, surface, window);
            roof.draw(view, strip, edges(surface), Pen.DIMENSION);
            roof.draw(view, strip, outline(surface), Pen.VISIBLE);
            numbers(view, surface, roof.bays(strip));
            lay(view, surface, roof.bays(strip));
            names(view, surface, roof.bays(strip));
        }
        flashings(view, strip);
        drains.draw(view, strip);
    }

    private Vec2 flat(Vec3 at) {
        return axes.projection().flat(at);
    }

    private Vec2 flat(Surface surface, double u, double v) {
        return flat(surface.axes().toWorld(u, v, 0));
    }

    private static double width(Surface surface) {
        return surface.outline().stream().mapToDouble(Vec2::x).max().orElseThrow();
    }

    private static double height(Surface surface) {
        return surface.outline().stream().mapToDouble(Vec2::y).max().orElseThrow();
    }

    /** The edges between sheets, and the lower ends of those that lap over others. */
    private List<ViewLine> edges(Surface surface) {
        List<ViewLine> lines = new ArrayList<>();
        double right = width(surface);
        for (Surface.Sheet sheet : surface.sheets()) {
            if (sheet.left() > 0) {
                lines.add(line(surface, sheet.left(), sheet.low(), sheet.left(), sheet.high(), sheet.mark()));
            }
            if (sheet.low() > 0) {
                double to = Math.min(right, sheet.right());
                lines.add(line(surface, sheet.left(), sheet.low(), to, sheet.low(), sheet.mark()));
            }
        }
        return lines;
    }

    private ViewLine line(Surface surface, double u0, double v0, double u1, double v1, String mark) {
        double top = height(surface);
        return new ViewLine(flat(surface, u0, Math.min(v0, top)), flat(surface, u1, Math.min(v1, top)), mark);
    }

    private List<ViewLine> outline(Surface surface) {
        List<ViewLine> lines = new ArrayList<>();
        List<Vec2> ring = surface.outline();
        for (int i = 0; i < ring.size(); i++) {
            Vec2 a = ring.get(i);
            Vec2 b = ring.get((i + 1) % ring.size());
            lines.add(new ViewLine(flat(surface, a.x(), a.y()), flat(surface, b.x(), b.y()), ""));
        }
        return lines;
    }

    private void translucent(PlacedView view, Surface surface, Envelope window) {
        double right = width(surface);
        double top = height(surface);
        for (Surface.Sheet sheet : surface.sheets()) {
            Vec2 a = flat(surface, sheet.left(), sheet.low());
            Vec2 b = flat(surface, Math.min(right, sheet.right()), Math.min(top, sheet.high()));
            Envelope box = new Envelope(a.x(), b.x(), a.y(), b.y()).intersection(window);
            if (sheet.translucent() && !box.isNull()) {
                List<Vec2> ring = List.of(
                        view.port().toPaper(new Vec2(box.getMinX(), box.getMinY())),
                        view.port().toPaper(new Vec2(box.getMaxX(), box.getMinY())),
                        view.port().toPaper(new Vec2(box.getMaxX(), box.getMaxY())),
                        view.port().toPaper(new Vec2(box.getMinX(), box.getMaxY())));
                view.draw(List.of(new Fill(List.of(ring), TRANSLUCENT_GREY, Layer.STEEL, sheet.mark())));
            }
        }
    }

    /** The lowest of those over each other, in the order they are laid: over a lean-to they begin above the eave. */
    private static List<Surface.Sheet> lowest(Surface surface) {
        return surface.sheets().stream()
                .filter(s -> surface.sheets().stream().noneMatch(o -> o.left() == s.left() && o.low() < s.low()))
                .toList();
    }

    /** The first, the last, and round numbers between them, near the eave. */
    private void numbers(PlacedView view, Surface surface, Envelope bays) {
        List<Surface.Sheet> row = lowest(surface);
        double pitch = view.port().toPaper(surface.profile().cover());
        int every = pitch * 5 >= NUMBERS_APART ? 5 : 10;
        double up = 5.0 * view.port().scale().n();
        double last = middle(surface, row.get(row.size() - 1));
        for (int i = 0; i < row.size(); i++) {
            boolean end = i == 0 || i == row.size() - 1;
            double u = Math.min(
                    middle(surface, row.get(i)),
                    width(surface) - TEXT * view.port().scale().n());
            boolean round = (i + 1) % every == 0 && view.port().toPaper(last - u) > CLEAR_OF_LAST;
            Vec2 at = flat(surface, u, up);
            if ((end || round) && bays.contains(at.x(), at.y())) {
                Vec2 paper = view.port().toPaper(at).minus(new Vec2(0, TEXT / 2));
                Text number = Text.level(String.valueOf(i + 1), paper, TEXT, Text.Align.CENTRE, Layer.LABEL);
                // The last may be a strip narrower than its number, which then stands on the seam before it.
                view.draw(List.of(new Fill(List.of(TurnedBox.of(number).corners()), WHITE, Layer.LABEL, ""), number));
            }
        }
    }

    /** Of what is seen of a sheet: the last may run past the edge and be cut. */
    private static double middle(Surface surface, Surface.Sheet sheet) {
        return (sheet.left() + Math.min(sheet.right(), width(surface))) / 2;
    }

    /** An arrow the way the sheets are laid, from the first one on. */
    private void lay(PlacedView view, Surface surface, Envelope bays) {
        double n = view.port().scale().n();
        double v = Math.min(height(surface) * 0.7, height(surface) - 3 * n);
        double start = Math.min(surface.profile().cover() / 2, width(surface) / 4);
        Vec2 from = flat(surface, start, v);
        Vec2 to = flat(surface, Math.min(start + LAY * n, width(surface) * 0.9), v);
        if (bays.contains(from.x(), from.y()) || bays.contains(to.x(), to.y())) {
            RoofPlan.arrow(view, from, to);
            RoofPlan.label(view, to, Face.REGULAR, "", "Lay from sheet 1");
        }
    }

    /** Each mark of sheet once on a slope: how many there and how long. */
    private void names(PlacedView view, Surface surface, Envelope bays) {
        Map<String, List<Surface.Sheet>> byMark = new LinkedHashMap<>();
        surface.sheets()
                .forEach(s ->
                        byMark.computeIfAbsent(s.mark(), k -> new ArrayList<>()).add(s));
        byMark.forEach((mark, sheets) -> {
            List<Vec2> seen = sheets.stream()
                    .map(s -> flat(surface, (s.left() + s.right()) / 2, (s.low() + s.high()) / 2))
                    .filter(p -> bays.contains(p.x(), p.y()))
                    .toList();
            if (!seen.isEmpty()) {
                Surface.Sheet sheet = sheets.get(0);
                String light = sheet.translucent() ? ", translucent" : "";
                RoofPlan.label(
                        view,
                        seen.get(seen.size() / 2),
                        Face.BOLD,
                        mark,
                        mark + light,
                        sheets.size() + " at " + Figure.length(sheet.length()));
            }
        });
    }

    private void flashings(PlacedView view, Strip strip) {
        Envelope bays = roof.window(strip);
        for (Flashing flashing : building.cladding().flashings()) {
            if (ON_ROOF.contains(flashing.kind())) {
                List<ViewLine> runs = flashing.runs().stream()
                        .map(r -> new ViewLine(flat(r.from()), flat(r.to()), flashing.mark()))
                        .toList();
                roof.draw(view, strip, runs, Pen.CUT);
                runs.stream()
                        .map(r -> middle(r, bays))
                        .filter(p -> bays.contains(p.x(), p.y()))
                        .findFirst()
                        .ifPresent(at -> RoofPlan.label(
                                view,
                                at,
                                Face.REGULAR,
                                flashing.mark(),
                                flashing.mark() + " " + flashing.kind().label()));
            }
        }
    }

    /** A place on a run that a strip shows, a third along what is seen of it. */
    private static Vec2 middle(ViewLine run, Envelope window) {
        Envelope seen = new Envelope(
                        run.from().x(), run.to().x(), run.from().y(), run.to().y())
                .intersection(window);
        boolean level = Math.abs(run.to().x() - run.from().x())
                > Math.abs(run.to().y() - run.from().y());
        if (seen.isNull()) {
            return run.from();
        }
        return new Vec2(
                seen.getMinX() + (level ? 0.35 : 0.5) * seen.getWidth(),
                seen.getMinY() + (level ? 0.5 : 0.35) * seen.getHeight());
    }

    private List<Paragraph> notes() {
        Sheeting sheeting = building.shed().definition().envelope().sheeting();
        List<Paragraph> notes = new ArrayList<>();
        notes.add(Paragraph.heading("Roof sheets"));
        String colour = sheeting.roof().colour();
        notes.add(Paragraph.bullet(sheeting.roof().profile().name()
                + (colour.isBlank() ? "" : ", " + colour) + ", "
                + Figure.length(sheeting.roof().profile().cover())
                + " cover. Marks give number and ordered length on each slope; sheets are numbered as they are laid,"
                + " along the arrow."));
        if (sheeting.roof().translucentEvery() > 0) {
            notes.add(Paragraph.bullet("Grey: translucent sheets. They never carry a person."));
        }
        notes.add(Paragraph.bullet("Heavy lines: flashings by mark; their folds are on the flashing sheet."));
        notes.addAll(drains.notes());
        return notes;
    }
}
