package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Figure;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.ViewLine;
import org.locationtech.jts.geom.Envelope;

/**
 * What a plane across the building just inside a frame cuts besides the frame: purlins and girts, sheets, flashings and
 * gutters, and the slab. Nothing of it for a bare frame.
 *
 * @param building what is cut
 * @param frame where
 */
record SectionEnvelope(Building building, int frame) {
    /** From the frame's line to the plane, into the building, past the frame's own steel. */
    private static final double INTO = 400;

    /** How far along a sheet its name points: members have theirs in the middle. */
    private static final double NAMED_AT = 0.72;

    private boolean isFull() {
        return building.shed().definition().envelope().isFull();
    }

    private double y() {
        double line = building.shed().setOut().frameLine(frame);
        return frame == building.shed().setOut().frames() ? line - INTO : line + INTO;
    }

    /** A row that the plane cuts, by the corners of its section. */
    private record CutRow(Part part, List<Vec2> ring) {
        Vec2 middle() {
            return ring.stream().reduce(new Vec2(0, 0), Vec2::plus).times(1.0 / ring.size());
        }
    }

    private List<CutRow> rows(PartKind kind) {
        List<CutRow> rows = new ArrayList<>();
        for (Part part : building.shed().parts(kind)) {
            for (Place place : part.places()) {
                Vec3 along = place.placement().along();
                double from = place.placement().origin().y();
                double to = from + along.y() * part.solid().axisLength();
                if (Math.abs(along.y()) > 0.99 && Math.min(from, to) <= y() && y() <= Math.max(from, to)) {
                    rows.add(new CutRow(part, ring(part, place)));
                }
            }
        }
        return rows;
    }

    private static List<Vec2> ring(Part part, Place place) {
        return part.solid().profile().outline().stream()
                .map(p -> place.placement().toWorld(0, p.x(), p.y()))
                .map(p -> new Vec2(p.x(), p.z()))
                .toList();
    }

    private List<CutRow> rows() {
        return Stream.of(PartKind.PURLIN, PartKind.GIRT)
                .flatMap(kind -> rows(kind).stream())
                .toList();
    }

    private List<CladdingSection.Cut> cuts() {
        return isFull() ? new CladdingSection(building, y()).cuts() : List.of();
    }

    /** What it covers of the view. */
    Envelope bounds() {
        Envelope bounds = new Envelope();
        cuts().forEach(cut -> cut.lines().forEach(l -> {
            bounds.expandToInclude(l.from().x(), l.from().y());
            bounds.expandToInclude(l.to().x(), l.to().y());
        }));
        if (isFull()) {
            bounds.expandToInclude(concrete().bounds());
        }
        return bounds;
    }

    private SlabSection concrete() {
        return new SlabSection(building.shed(), frame);
    }

    /** Draws it all. */
    void draw(PlacedView view) {
        if (!isFull()) {
            return;
        }
        for (CutRow row : rows()) {
            List<ViewLine> lines = new ArrayList<>();
            for (int i = 0; i < row.ring.size(); i++) {
                lines.add(new ViewLine(row.ring.get(i), row.ring.get((i + 1) % row.ring.size()), row.part.mark()));
            }
            view.draw(lines, Pen.VISIBLE, Layer.STEEL);
        }
        cuts().forEach(cut -> view.draw(cut.lines(), Pen.VISIBLE, Layer.CLADDING));
        concrete().draw(view);
        hook(view);
        callouts(view);
    }

    /** The hook of a lifting beam at its highest. */
    private void hook(PlacedView view) {
        building.shed().liftingBeam(frame).ifPresent(b -> {
            double x = b.along() ? b.offset() : building.shed().setOut().span() / 2;
            view.line(
                    new Vec2(x, b.underside()), new Vec2(x, b.underside() - b.hookDrop()), Pen.DIMENSION, Layer.STEEL);
        });
    }

    /** Where details are drawn close up: a bubble outside the building and a line to the place. */
    private void callouts(PlacedView view) {
        double middle = building.shed().setOut().span() / 2;
        for (Detail detail : Details.of(building)) {
            if (detail.frames().contains(frame)) {
                Vec2 at = view.port()
                        .toPaper(new Vec2(detail.at().x(), detail.at().z()));
                boolean ridge = Math.abs(detail.at().x() - middle) < 1;
                double side = detail.at().x() < middle ? -1 : 1;
                Vec2 wished = ridge ? new Vec2(1, 0.45) : new Vec2(side * 0.2, 0.9);
                detail.callout().point(view, at, wished);
            }
        }
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** One label for each section of row and for sheets, gutters and hook. */
    void name(Annotations annotate) {
        if (!isFull()) {
            return;
        }
        Set<String> named = new HashSet<>();
        for (CutRow row : rows()) {
            String section = row.part.material().description();
            if (named.add(row.part.kind() + section)) {
                annotate.note(row.middle(), capital(row.part.kind().label()) + "s " + section);
            }
        }
        for (CladdingSection.Cut cut : cuts()) {
            boolean flashing = cut.name().startsWith("Flashing");
            if (!flashing && named.add(cut.name())) {
                ViewLine line = cut.lines().get(0);
                annotate.note(line.from().plus(line.to().minus(line.from()).times(NAMED_AT)), cut.name());
            }
        }
        building.shed()
                .liftingBeam(frame)
                .ifPresent(b -> annotate.note(
                        new Vec2(
                                b.along()
                                        ? b.offset()
                                        : building.shed().setOut().span() / 2,
                                b.underside() - b.hookDrop()),
                        "Hook at its highest +" + Figure.length(b.underside() - b.hookDrop()),
                        "All welded, the beam on site, and",
                        "what it may carry: by the engineer"));
    }
}
