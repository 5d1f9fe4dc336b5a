package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.GridLine;
import org.baywright.render.dimension.Level;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.Projection;
import org.locationtech.jts.geom.Envelope;

/** A cross-section for each type of frame: member sizes, heights, clear heights and clear widths. */
final class SectionSheets {
    private static final Margins MARGINS = new Margins(18, 60, 48, 12);
    private static final double GROUND = 700;

    private final Shed shed;
    private final SetOut setOut;

    private SectionSheets(Shed shed) {
        this.shed = shed;
        this.setOut = shed.setOut();
    }

    static List<Draft> of(Shed shed) {
        SectionSheets sheets = new SectionSheets(shed);
        return FrameType.of(shed).stream().map(sheets::sheet).toList();
    }

    private Draft sheet(FrameType type) {
        SheetBuilder sheet = new SheetBuilder("S4." + type.number(), "Cross-section, " + type.names());
        FrameView frame = FrameView.of(shed, type.shown());
        Envelope bounds = Steelwork.bounds(frame.items(), Projection.front());
        bounds.expandToInclude(bounds.getMinX() - GROUND, 0);
        bounds.expandToInclude(bounds.getMaxX() + GROUND, 0);
        PlacedView view =
                sheet.view("SECTION AT " + type.names().toUpperCase(Locale.ROOT), SheetFrame.room(), bounds, MARGINS);
        view.draw(frame.lines(), Pen.OUTLINE, Layer.STEEL);
        view.draw(frame.anchors(), Pen.VISIBLE, Layer.ANCHOR);
        view.line(new Vec2(bounds.getMinX(), 0), new Vec2(bounds.getMaxX(), 0), Pen.CUT, Layer.GROUND);
        widths(view.annotate(), type.shown());
        view.annotate().levels(org.baywright.render.dimension.Side.RIGHT, levels(type.shown()));
        Pitches.mark(shed, view, line -> line.has(type.shown()), x -> x);
        labels(view.annotate(), frame);
        return sheet.build();
    }

    /** Clear widths, then centre to centre, then over the string lines, with their letters. */
    private void widths(Annotations annotate, int frame) {
        List<ColumnLine> lines =
                setOut.columnLines().stream().filter(l -> l.has(frame)).toList();
        List<Double> faces = new ArrayList<>();
        List<Double> centres = new ArrayList<>();
        for (ColumnLine line : lines) {
            double depth = depth(line, frame);
            faces.add(line.x());
            faces.add(line.x() + line.inward() * depth);
            centres.add(line.x() + line.inward() * depth / 2);
        }
        List<Double> outside = lines.stream().map(ColumnLine::x).toList();
        annotate.chainBelow(faces.stream().sorted().toList(), 0);
        annotate.chainBelow(centres, 0);
        annotate.chainBelow(outside, 0);
        if (outside.size() > 2) {
            annotate.overallBelow(outside.get(0), outside.get(outside.size() - 1), 0);
        }
        annotate.grid(
                org.baywright.render.dimension.Side.BELOW,
                lines.stream().map(l -> new GridLine(l.letter(), l.x())).toList(),
                0);
    }

    private double depth(ColumnLine line, int frame) {
        var steel = shed.definition().steelAt(frame, line.side());
        return (line.leanTo() ? steel.leanToColumn() : steel.column()).depth();
    }

    /** Levels, and the clear height under every rafter at the outside face of its column. */
    private List<Level> levels(int frame) {
        List<Level> levels = new ArrayList<>(Levels.of(shed, l -> l.has(frame)));
        for (ColumnLine line : setOut.columnLines()) {
            boolean shown = line.has(frame) && (line.leanTo() || line.side() == Side.LEFT || unlike(frame));
            if (shown) {
                double rafter = line.leanTo()
                        ? shed.definition()
                                .steelAt(frame, line.side())
                                .leanToRafter()
                                .depth()
                        : shed.definition().rafterAt(frame, line.side()).depth();
                double under = line.eaveHeight() - line.roof().plumb(rafter);
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
                .flatMap(kind -> frame.distinct(kind).stream())
                .forEach(s -> annotate.mark(s.middle(), FrameView.words(s.part())));
        FrameView.plates()
                .flatMap(kind -> frame.distinct(kind).stream())
                .forEach(s -> annotate.note(s.middle(), FrameView.words(s.part())));
    }
}
