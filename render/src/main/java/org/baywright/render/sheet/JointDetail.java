package org.baywright.render.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.baywright.model.definition.Anchor;
import org.baywright.model.definition.Slab;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.RoofLine;
import org.baywright.render.dimension.Figure;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.baywright.render.view.Projection;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.Window;
import org.locationtech.jts.geom.Envelope;

/** One joint close up in its cell: the frame's own lines, cut off by a thin border, with its parts named. */
final class JointDetail {
    private static final Margins MARGINS = new Margins(5, 5, 3, 4);
    private static final Margins BASE_MARGINS = new Margins(15, 17, 12, 4);

    private final Shed shed;
    private final FrameView frame;
    private final Joint joint;

    private JointDetail(Shed shed, FrameView frame, Joint joint) {
        this.shed = shed;
        this.frame = frame;
        this.joint = joint;
    }

    /** Draws a joint; words on its sheet say whose the sizes of welds are. */
    static void draw(SheetBuilder sheet, FrameView frame, Joint joint, Envelope cell) {
        new JointDetail(frame.shed(), frame.bare(), joint).draw(sheet, cell);
    }

    private void draw(SheetBuilder sheet, Envelope cell) {
        Margins margins = joint.isBase() ? BASE_MARGINS : MARGINS;
        Envelope paper = margins.within(cell);
        double width = paper.getWidth();
        double height = paper.getHeight() - PlacedView.FOOT;
        Scale scale = Scale.fitting(2 * joint.reach().x(), 2 * joint.reach().y(), width, height);
        Envelope window = new Envelope(
                joint.centre().x() - width * scale.n() / 2,
                joint.centre().x() + width * scale.n() / 2,
                joint.centre().y() - height * scale.n() / 2,
                joint.centre().y() + height * scale.n() / 2);
        PlacedView view = sheet.view(joint.title(), cell, window, margins, scale);
        view.border();
        view.draw(Window.cut(frame.lines(), window), Pen.OUTLINE, Layer.STEEL);
        if (joint.isBase()) {
            base(view, window);
        } else {
            figures(new DetailFigures(view, Projection.front(), window));
        }
        names(view, window);
        welds(new JointWelds(view, frame.lines(), window));
    }

    /** After the names, which need their paper more. */
    private void welds(JointWelds welds) {
        Assemblies assemblies = Assemblies.of(shed);
        joint.kinds().stream()
                .filter(kind -> !kind.isMember())
                .flatMap(kind -> frame.distinct(kind).stream())
                .forEach(plate -> welds.draw(assemblies, plate.part()));
    }

    /** Depths of column and rafter, and upright end plates with their holes and the rafter on them. */
    private void figures(DetailFigures figures) {
        ColumnLine line = joint.line();
        Vec2 out = new Vec2(-line.inward(), 0);
        boolean leanTo = joint.kinds().contains(PartKind.LEAN_TO_PLATE);
        ColumnLine columns = leanTo ? shed.setOut().main(line.side()) : line;
        if (!joint.kinds().contains(PartKind.APEX_PLATE)) {
            double column = columns.column(shed.definition(), frame.frame()).depth();
            figures.upright(columns.x(), columns.x() + columns.inward() * column);
        }
        double rafter = line.rafter(shed.definition(), frame.frame()).depth();
        boolean atRight = leanTo == (line.inward() < 0);
        figures.rafter(line.roof(), rafter, joint.kinds().contains(PartKind.APEX_PLATE) ? false : atRight);
        Stream.of(PartKind.APEX_PLATE, PartKind.KNEE_PLATE, PartKind.LEAN_TO_PLATE)
                .filter(joint.kinds()::contains)
                .flatMap(kind -> frame.standing(kind).stream())
                .filter(s -> Math.abs(s.middle().x() - joint.centre().x())
                        < joint.reach().x())
                .min(Comparator.comparingDouble(s -> Math.abs(s.middle().x() - line.x())))
                .ifPresent(s -> plate(figures, s, line, rafter, out));
    }

    /** A plate's sizes, and the rafter's top and underside where its end lies against the plate. */
    private static void plate(
            DetailFigures figures, FrameView.Standing plate, ColumnLine line, double rafter, Vec2 out) {
        boolean inwards = plate.part().kind() == PartKind.KNEE_PLATE;
        double face = (inwards ? 1 : -1) * line.inward() * plate.part().solid().axisLength() / 2;
        double x = plate.middle().x() + face;
        RoofLine roof = line.roof();
        double top = roof.heightAt(x);
        Vec3 upper = new Vec3(x, plate.place().placement().origin().y(), top);
        figures.plate(
                plate.part(), plate.place().placement(), out, upper, upper.minus(new Vec3(0, 0, roof.plumb(rafter))));
    }

    /** Names each mark of the joint once, at the middle of what is seen of it. */
    private void names(PlacedView view, Envelope window) {
        joint.kinds().stream()
                .flatMap(kind -> frame.distinct(kind).stream())
                .map(FrameView.Standing::part)
                .forEach(part -> middle(part, window).ifPresent(at -> name(view, part, at)));
    }

    private void name(PlacedView view, Part part, Vec2 at) {
        if (part.kind().isMember()) {
            view.annotate().mark(at, FrameView.words(part));
        } else {
            view.annotate().note(at, FrameView.words(part));
        }
    }

    /** At the ridge both rafters may have one mark; the left one is named. */
    private Envelope named(Part part, Envelope window) {
        boolean ridge = joint.kinds().contains(PartKind.APEX_PLATE) && part.kind() == PartKind.RAFTER;
        double right = ridge ? joint.centre().x() : window.getMaxX();
        return new Envelope(window.getMinX(), right, window.getMinY(), window.getMaxY());
    }

    private Optional<Vec2> middle(Part part, Envelope window) {
        List<ViewLine> own =
                frame.lines().stream().filter(l -> l.part().equals(part.mark())).toList();
        Envelope seen = new Envelope();
        for (ViewLine line : Window.cut(own, named(part, window))) {
            seen.expandToInclude(line.from().x(), line.from().y());
            seen.expandToInclude(line.to().x(), line.to().y());
        }
        return seen.isNull() ? Optional.empty() : Optional.of(new Vec2(seen.centre().x, seen.centre().y));
    }

    /** The floor, the string line, the anchors, and the sizes that set the plate. */
    private void base(PlacedView view, Envelope window) {
        SlabSection concrete = new SlabSection(shed, frame.frame());
        view.draw(Window.cut(concrete.lines(), window), Pen.CUT, Layer.CONCRETE);
        double x = joint.line().x();
        view.line(new Vec2(x, window.getMinY()), new Vec2(x, window.getMaxY()), Pen.STRING, Layer.GRID);
        Anchor anchor = shed.definition().anchor();
        FrameView.Standing plate = frame.standing(PartKind.BASE_PLATE).stream()
                .min(Comparator.comparingDouble(s -> Math.abs(s.middle().x() - x)))
                .orElseThrow();
        double grout = shed.definition().plates().groutGap();
        double top = grout + plate.part().solid().axisLength();
        double half = plate.part().solid().profile().depth() / 2;
        double centre = plate.middle().x();
        List<Double> holes = plate.part().holes().stream()
                .map(h -> centre + h.at().x())
                .distinct()
                .toList();
        grout(view, new Envelope(centre - half, centre + half, 0, grout));
        holes.forEach(at -> AnchorFigure.of(shed, top).draw(view, at));
        Stream<Double> edge = Stream.of(concrete.bounds().getMinX()).filter(at -> at > window.getMinX());
        List<Double> across = Stream.of(Stream.of(centre - half, centre + half, x), holes.stream(), edge)
                .flatMap(all -> all)
                .distinct()
                .sorted()
                .toList();
        view.annotate().chainBelow(across, 0);
        depths(view, concrete.bounds(), window);
        view.annotate()
                .chainRight(
                        Stream.of(-anchor.embedment(), 0.0, grout, top)
                                .distinct()
                                .toList(),
                        centre + half);
        view.annotate().note(new Vec2(centre - half + 35, -anchor.embedment() / 2), anchorWords(anchor));
    }

    private static void grout(PlacedView view, Envelope bed) {
        if (bed.getHeight() > 0) {
            List<Vec2> corners = Profile.box(bed.getMinX(), bed.getMinY(), bed.getMaxX(), bed.getMaxY());
            view.draw(List.of(
                    new Fill(List.of(corners.stream().map(view.port()::toPaper).toList()), 0.8, Layer.CONCRETE, "")));
            view.annotate().mark(new Vec2(bed.getMaxX() - 8, bed.centre().y), "Grout");
        }
    }

    /** How deep the concrete is here, and the slab beside it. */
    private void depths(PlacedView view, Envelope concrete, Envelope window) {
        Slab slab = shed.definition().ground().slab();
        view.annotate()
                .chainLeft(
                        Stream.of(concrete.getMinY(), -slab.flat(), 0.0)
                                .distinct()
                                .sorted()
                                .toList(),
                        Math.max(concrete.getMinX(), window.getMinX()));
    }

    private static String[] anchorWords(Anchor anchor) {
        return new String[] {
            anchor.size() + " chemical anchor",
            "hole \u2300" + Figure.length(anchor.holeDiameter()) + " x " + Figure.length(anchor.embedment()),
            "plate washer, nut"
        };
    }
}
