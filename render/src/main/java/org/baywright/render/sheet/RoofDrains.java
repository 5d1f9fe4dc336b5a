package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.definition.RoofWater;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Shed;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.ViewLine;
import org.locationtech.jts.geom.Envelope;

/** Gutters on the sheeting plan, with their falls and the water that each downpipe takes. */
final class RoofDrains {
    private static final double PIPE = 1.2;

    /** From a gutter to its fall arrows, and the least length of an arrow, paper mm. */
    private static final double ARROW_OFF = 2.2;

    private static final double LEAST_ARROW = 4;

    /** How much of the way to the high point an arrow shows. */
    private static final double FALL_SHOWN = 0.75;

    private final Shed shed;
    private final RoofPlan roof;
    private final RoofWater water;
    private final List<GutterFalls> gutters;

    RoofDrains(Building building, RoofPlan roof) {
        this.shed = building.shed();
        this.roof = roof;
        this.water = shed.definition().envelope().roofWater();
        this.gutters = GutterFalls.of(building.cladding().gutters());
    }

    void draw(PlacedView view, Strip strip) {
        gutters.forEach(gutter -> gutter(view, strip, gutter));
    }

    private void gutter(PlacedView view, Strip strip, GutterFalls gutter) {
        Vec3 out = Vec3.ACROSS.times(-gutter.run().slope().line().inward());
        Vec3 face = out.times(water.gutter().width());
        Vec3 from = gutter.run().from();
        Vec3 to = gutter.run().to();
        List<ViewLine> lines = List.of(
                new ViewLine(roof.flat(from), roof.flat(to), ""),
                new ViewLine(roof.flat(from.plus(face)), roof.flat(to.plus(face)), ""),
                new ViewLine(roof.flat(from), roof.flat(from.plus(face)), ""),
                new ViewLine(roof.flat(to), roof.flat(to.plus(face)), ""));
        roof.draw(view, strip, lines, Pen.VISIBLE);
        falls(
                view,
                strip,
                gutter,
                face.plus(out.times(ARROW_OFF * view.port().scale().n())),
                water.fallOneIn());
        pipes(view, strip, gutter, face.times(0.5));
    }

    /** Arrows beside the gutter from each high point to the downpipe; the first tells the fall. */
    private void falls(PlacedView view, Strip strip, GutterFalls gutter, Vec3 off, double oneIn) {
        Envelope window = roof.window(strip);
        double n = view.port().scale().n();
        boolean told = false;
        for (GutterFalls.Pipe pipe : gutter.pipes()) {
            for (double high : List.of(pipe.fall().from(), pipe.fall().to())) {
                double way = Math.signum(high - pipe.fall().at().y());
                Vec2 tip = roof.flat(along(pipe.fall().at(), pipe.fall().at().y() + way * 2 * n)
                        .plus(off));
                double from = pipe.fall().at().y()
                        + FALL_SHOWN * (high - pipe.fall().at().y());
                Vec2 tail = roof.flat(along(pipe.fall().at(), from).plus(off));
                boolean seen = window.contains(tip.x(), tip.y()) && window.contains(tail.x(), tail.y());
                if (seen && tail.distance(tip) > LEAST_ARROW * n) {
                    RoofPlan.arrow(view, tail, tip);
                    if (!told) {
                        RoofPlan.label(view, tail, Face.REGULAR, "", "Fall 1:" + Figure.length(oneIn));
                        told = true;
                    }
                }
            }
        }
    }

    /** The downpipes by name; what each takes is in the notes, so that words stay beside their pipe. */
    private void pipes(PlacedView view, Strip strip, GutterFalls gutter, Vec3 toMiddle) {
        Envelope window = roof.window(strip);
        List<GutterFalls.Pipe> seen = gutter.pipes().stream()
                .filter(p -> window.contains(
                        roof.flat(p.fall().at().plus(toMiddle)).x(),
                        roof.flat(p.fall().at().plus(toMiddle)).y()))
                .toList();
        for (GutterFalls.Pipe pipe : seen) {
            Vec2 paper = view.port().toPaper(roof.flat(pipe.fall().at().plus(toMiddle)));
            view.draw(List.of(Arc.circle(paper, PIPE, Pen.OUTLINE, Layer.LABEL, "")));
        }
        for (GutterFalls.Pipe pipe : seen) {
            RoofPlan.label(view, roof.flat(pipe.fall().at().plus(toMiddle)), Face.BOLD, "", pipe.name());
        }
    }

    /** What each of its downpipes takes, equal neighbours together. */
    private static String takes(GutterFalls gutter) {
        return GutterFalls.alike(gutter.pipes()).stream()
                .map(run -> GutterFalls.names(run) + (run.size() > 1 ? " each " : " ")
                        + m2(run.get(0).fall().catchmentM2()) + ", "
                        + litres(run.get(0).fall().flowLs()))
                .collect(Collectors.joining("; "));
    }

    private static Vec3 along(Vec3 at, double y) {
        return new Vec3(at.x(), y, at.z());
    }

    private static String m2(double m2) {
        return String.format(Locale.ROOT, "%.1f m²", m2);
    }

    private static String litres(double flowLs) {
        return String.format(Locale.ROOT, "%.2f L/s", flowLs);
    }

    /** Which pipes spill on to a lean-to's roof. */
    private Optional<Paragraph> spreaders() {
        List<List<GutterFalls.Pipe>> onto = gutters.stream()
                .flatMap(g -> {
                    Set<GutterRun.Fall> falls = new HashSet<>(g.run().ontoLeanTos(shed));
                    return g.runs(pipe -> falls.contains(pipe.fall())).stream();
                })
                .toList();
        boolean single = onto.size() == 1 && onto.get(0).size() == 1;
        String words = onto.stream().map(GutterFalls::names).collect(Collectors.joining(", "))
                + (single ? " ends" : " end") + " on the lean-to's roof, each with a spreader across its"
                + " sheets; that roof's gutter counts this water again.";
        return onto.isEmpty() ? Optional.empty() : Optional.of(Paragraph.bullet(words));
    }

    /** What each gutter takes, and how it was counted. */
    List<Paragraph> notes() {
        List<Paragraph> notes = new ArrayList<>();
        notes.add(Paragraph.heading("Roof water"));
        for (GutterFalls gutter : gutters) {
            notes.add(Paragraph.bullet("Line " + gutter.run().slope().line().letter() + ": "
                    + water.gutter().name() + ", " + Figure.length(gutter.run().length()) + " long, "
                    + "falls 1:" + Figure.length(water.fallOneIn()) + " to " + gutter.names() + ", catchment "
                    + m2(gutter.run().catchmentM2()) + ", "
                    + litres(gutter.run().flowLs()) + (gutter.pipes().isEmpty() ? "." : ": " + takes(gutter) + ".")));
        }
        spreaders().ifPresent(notes::add);
        if (!gutters.isEmpty()) {
            notes.add(Paragraph.bullet("At " + Figure.length(water.rainfallMmPerH()) + " mm/h. DP: "
                    + water.downpipe().name() + ", with the roof and flow that its length of gutter brings. Catchment"
                    + " counts half the rise of the roof for driven rain, and the roof that drains onto a lean-to."));
            notes.add(Paragraph.bullet("Outfall, overflow and rainfall are to be confirmed to the local code."));
        }
        return notes;
    }
}
