package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.LiftingBeam;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.GridLine;
import org.baywright.render.dimension.Level;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.Projection;
import org.baywright.render.view.Silhouette;
import org.locationtech.jts.geom.Envelope;

/** A cross-section for each type of frame: member sizes, heights, clear heights and clear widths. */
final class SectionSheets {
    private static final Margins MARGINS = new Margins(8, 56, 46, 10);

    /** Share of the sheet that joints or a table take under a section. */
    private static final double UNDER = 0.42;

    private static final int MOST_UNDER_SECTION = 4;

    private static final double GROUND = 400;

    /** Paper under joints for one line of words. */
    private static final double SAID = 4;

    private final Shed shed;
    private final SetOut setOut;

    private final Building building;

    private SectionSheets(Building building) {
        this.building = building;
        this.shed = building.shed();
        this.setOut = shed.setOut();
    }

    static List<Draft> of(Building building) {
        SectionSheets sheets = new SectionSheets(building);
        return FrameType.of(building.shed()).stream()
                .flatMap(type -> sheets.sheets(type).stream())
                .toList();
    }

    /** What goes with a section stands under it when it is drawn no smaller for that. */
    private List<Draft> sheets(FrameType type) {
        FrameView frame = FrameView.of(shed, type.shown()).bare();
        SectionEnvelope envelope = new SectionEnvelope(building, type.shown());
        Envelope bounds = bounds(frame, envelope);
        Envelope room = SheetFrame.room();
        Envelope upper = Cells.up(room, UNDER, 1);
        Envelope lower = Cells.up(room, 0, UNDER);
        boolean shared = PlacedView.fitting(upper, bounds, MARGINS).n()
                <= PlacedView.fitting(room, bounds, MARGINS).n();
        boolean together = shared && Joint.of(shed, type.shown()).size() <= MOST_UNDER_SECTION;
        SheetBuilder section = new SheetBuilder("S4." + type.number(), "Section, " + type.names());
        if (shared && !together) {
            section.draw(FrameTable.of(frame, lower));
            section.draw(notes(lower.getMinX() + FrameTable.WIDTH + 20, lower));
        }
        section(section, type, frame, envelope, bounds, shared ? upper : room);
        if (together) {
            joints(section, frame, lower, 1);
            return List.of(section.build());
        }
        SheetBuilder details = new SheetBuilder("S7." + type.number(), "Joints, " + type.names());
        joints(details, frame, room, 2);
        return List.of(section.build(), details.build());
    }

    private static List<Mark> notes(double x, Envelope room) {
        double width = room.getMaxX() - x - 4;
        List<Paragraph> paragraphs = new ArrayList<>(List.of(Paragraph.heading("Notes")));
        Cautions.FRAME.forEach(words -> paragraphs.add(Paragraph.bullet(words)));
        return Notes.of(paragraphs, width).draw(new Vec2(x, room.getMaxY() - 4));
    }

    private static Envelope bounds(FrameView frame, SectionEnvelope envelope) {
        Envelope bounds = Silhouette.bounds(frame.items(), Projection.front());
        bounds.expandToInclude(envelope.bounds());
        bounds.expandToInclude(bounds.getMinX() - GROUND, -GROUND);
        bounds.expandToInclude(bounds.getMaxX() + GROUND, 0);
        return bounds;
    }

    private void joints(SheetBuilder sheet, FrameView frame, Envelope room, int rows) {
        List<Joint> joints = Joint.of(shed, frame.frame());
        int columns = (joints.size() + rows - 1) / rows;
        boolean noted = joints.size() < rows * columns;
        Envelope cells =
                noted ? room : new Envelope(room.getMinX(), room.getMaxX(), room.getMinY() + SAID, room.getMaxY());
        for (int i = 0; i < joints.size(); i++) {
            Envelope row = Cells.row(cells, i / columns, rows);
            JointDetail.draw(sheet, frame, joints.get(i), Cells.column(row, i % columns, columns));
        }
        if (noted) {
            Envelope last = Cells.column(Cells.row(room, rows - 1, rows), columns - 1, columns);
            sheet.draw(notes(last.getMinX() + 12, last));
        } else {
            sheet.draw(List.of(Text.level(
                    Cautions.FRAME.get(0),
                    new Vec2(room.getMinX() + 2, room.getMinY() + 1),
                    2.5,
                    Text.Align.LEFT,
                    Layer.LABEL)));
        }
    }

    private void section(
            SheetBuilder sheet,
            FrameType type,
            FrameView frame,
            SectionEnvelope envelope,
            Envelope bounds,
            Envelope cell) {
        PlacedView view = sheet.view("SECTION AT " + type.names().toUpperCase(Locale.ROOT), cell, bounds, MARGINS);
        view.draw(frame.lines(), Pen.OUTLINE, Layer.STEEL);
        view.draw(frame.anchors(), Pen.VISIBLE, Layer.ANCHOR);
        envelope.draw(view);
        view.line(new Vec2(bounds.getMinX(), 0), new Vec2(bounds.getMaxX(), 0), Pen.CUT, Layer.GROUND);
        widths(view.annotate(), type.shown());
        view.annotate().levels(org.baywright.render.dimension.Side.RIGHT, levels(type.shown()));
        Pitches.mark(shed, view, line -> line.has(type.shown()), x -> x);
        labels(view.annotate(), frame);
        envelope.name(view.annotate());
    }

    /** Clear widths, then centre to centre, then over the string lines, with their letters. */
    private void widths(Annotations annotate, int frame) {
        List<ColumnLine> lines =
                setOut.columnLines().stream().filter(l -> l.has(frame)).toList();
        List<Double> faces = new ArrayList<>();
        List<Double> centres = new ArrayList<>();
        for (ColumnLine line : lines) {
            double depth = line.column(shed.definition(), frame).depth();
            faces.add(line.x());
            faces.add(line.x() + line.inward() * depth);
            centres.add(line.x() + line.inward() * depth / 2);
        }
        List<Double> outside = lines.stream().map(ColumnLine::x).toList();
        annotate.chainBelow(faces.stream().sorted().toList(), 0);
        shed.liftingBeam(frame).filter(LiftingBeam::along).ifPresent(beam -> {
            double left =
                    setOut.main(Side.LEFT).column(shed.definition(), frame).depth();
            double right =
                    setOut.main(Side.RIGHT).column(shed.definition(), frame).depth();
            annotate.chainBelow(List.of(left, beam.offset(), setOut.span() - right), 0);
        });
        annotate.chainBelow(centres, 0);
        annotate.chainBelow(outside, 0);
        if (outside.size() > 2) {
            annotate.overallBelow(outside.get(0), outside.get(outside.size() - 1), 0);
        }
        double overhang = shed.definition().plates().rafterOverhang();
        if (overhang > 0) {
            List<Double> tails = new ArrayList<>(outside);
            tails.add(0, outside.get(0) - overhang);
            tails.add(outside.get(outside.size() - 1) + overhang);
            annotate.chainBelow(tails, 0);
            annotate.overallBelow(tails.get(0), tails.get(tails.size() - 1), 0);
        }
        annotate.grid(
                org.baywright.render.dimension.Side.BELOW,
                lines.stream().map(l -> new GridLine(l.letter(), l.x())).toList(),
                0);
    }

    /** Levels, and the clear height under every rafter at the outside face of its column. */
    private List<Level> levels(int frame) {
        List<Level> levels = new ArrayList<>(Levels.of(shed, l -> l.has(frame)));
        shed.liftingBeam(frame).ifPresent(beam -> {
            levels.add(new Level("Underside of lifting beam", beam.underside()));
            levels.add(new Level("Hook at its highest", beam.underside() - beam.hookDrop()));
        });
        for (ColumnLine line : setOut.columnLines()) {
            boolean shown = line.has(frame) && (line.leanTo() || line.side() == Side.LEFT || unlike(frame));
            if (shown) {
                double under = line.heightBelowRoof(
                        line.rafter(shed.definition(), frame).depth());
                levels.add(new Level("Clear under rafter at face of line " + line.letter(), under));
            }
        }
        return levels;
    }

    /** Whether the two sides of the main frame differ in height or rafter. */
    private boolean unlike(int frame) {
        double left = setOut.main(Side.LEFT).eaveHeight();
        double right = setOut.main(Side.RIGHT).eaveHeight();
        return Math.abs(left - right) > 0.05
                || shed.definition().rafterAt(frame, Side.LEFT).depth()
                        != shed.definition().rafterAt(frame, Side.RIGHT).depth();
    }

    private static void labels(Annotations annotate, FrameView frame) {
        FrameView.members()
                .filter(PartKind::isOfFrame)
                .flatMap(kind -> frame.distinct(kind).stream())
                .forEach(s -> annotate.mark(s.middle(), FrameView.words(s.part())));
        FrameView.plates()
                .flatMap(kind -> frame.distinct(kind).stream())
                .forEach(s -> annotate.note(s.middle(), FrameView.words(s.part())));
    }
}
