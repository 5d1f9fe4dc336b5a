package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.baywright.model.definition.Project;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.nesting.CutList;
import org.baywright.model.parts.Part;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/** The cut list for the saw: a row a mark with its drawn piece, in figures that can be read at arm's length. */
public final class CutListSheets implements Filling.Filled {
    private static final double HEADING = 5;
    private static final double HEADING_ROOM = 11;
    private static final double TEXT = 2.5;
    private static final double LARGE = 5;
    private static final double FIGURES = 3.5;
    private static final double ROW = 34;

    /** A row whose piece has no edges to tell apart. */
    private static final double SQUARE_ROW = 30.5;

    /** From the top of a row to the saw settings below the piece. */
    private static final double SAW = 31.5;

    private static final double SQUARE_SAW = 27.5;

    private static final double PIECE = 46;
    private static final double PIECE_WIDTH = 152;
    private static final double DATA = 204;
    private static final double DATA_WIDTH = 112;
    private static final double BOXES = 320;
    private static final double BOX = 6;
    private static final double BOX_STEP = 15.5;
    private static final List<String> STEPS = List.of("cut", "drilled", "welded", "painted");

    private static final String NOTE =
            "Angles are saw settings from square. Pieces are drawn with end A, the marked end,"
                    + " on the left; ends at their true angle, length cut short. Measure on site before cutting.";

    private final Envelope room = SheetFrame.room();
    private final List<List<Mark>> sheets = new ArrayList<>();
    private final double foot;
    private double top;

    private CutListSheets(CutList list, double over) {
        this.foot = room.getMinY() + over;
        turn();
        list.groups().forEach(this::group);
    }

    /** The list of a shed. */
    public static SheetSet of(Project project, CutList list) {
        return new SheetSet(
                project.name() + ": cut list",
                project.drawnBy(),
                "Cut list; measure before you cut",
                Framing.framed(project, drafts(list)));
    }

    static List<Draft> drafts(CutList list) {
        CutListSheets pages = Filling.even(SheetFrame.room().getHeight(), over -> new CutListSheets(list, over));
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < pages.sheets.size(); i++) {
            drafts.add(new Draft("K0." + (i + 1), "Cut list", "ends only", pages.sheets.get(i), List.of()));
        }
        return drafts;
    }

    @Override
    public int sheets() {
        return sheets.size();
    }

    @Override
    public double lastUsed() {
        return room.getMaxY() - top;
    }

    private void turn() {
        sheets.add(new ArrayList<>());
        top = room.getMaxY();
        label(NOTE, room.getMinX(), top - 3, TEXT, Face.REGULAR);
        top -= 6;
    }

    private void group(CutList.Group group) {
        String name = group.section().designation() + "   " + group.section().grade();
        boolean first = true;
        for (CutList.Entry entry : group.entries()) {
            double least = entry.blank().isSquare() ? SQUARE_ROW : ROW;
            double height = Math.max(least, data(entry).height() + 3);
            if (top - height - (first ? HEADING_ROOM : 0) < foot) {
                turn();
                if (!first) {
                    heading(name + ", continued");
                }
            }
            if (first) {
                heading(name);
                first = false;
            }
            row(entry);
            top -= height;
        }
    }

    private void heading(String words) {
        top -= HEADING_ROOM;
        label(words, room.getMinX(), top + 3.5, HEADING, Face.BOLD);
    }

    private void row(CutList.Entry entry) {
        marks().add(Stroke.line(
                new Vec2(room.getMinX(), top), new Vec2(room.getMaxX(), top), Pen.DIMENSION, Layer.TABLE));
        Part part = entry.part();
        label(part.mark(), room.getMinX() + 1, top - 9, LARGE + 1, Face.BOLD);
        label(part.quantity() + " off", room.getMinX() + 1, top - 19, LARGE, Face.REGULAR);
        label(part.kind().label(), room.getMinX() + 1, top - 25, TEXT + 0.5, Face.REGULAR);
        double x = room.getMinX() + PIECE;
        marks().addAll(new CutElevation(entry, PIECE_WIDTH).draw(new Vec2(x, top - 9)));
        figures(entry, x);
        marks().addAll(data(entry).draw(new Vec2(room.getMinX() + DATA, top - 2)));
        boxes();
    }

    /** Edges over and under the piece, tip to tip in the middle, saw settings below its ends. */
    private void figures(CutList.Entry entry, double x) {
        double middle = x + PIECE_WIDTH / 2;
        boolean edges = !entry.blank().isSquare();
        if (edges) {
            centred("top edge " + Figure.length(entry.topEdgeMm()), middle, top - 6.5, FIGURES, Face.REGULAR);
            centred("bottom edge " + Figure.length(entry.bottomEdgeMm()), middle, top - 25.5, FIGURES, Face.REGULAR);
        }
        String all = (edges ? "tip to tip " : "") + Figure.length(entry.part().stockLength());
        centred(all, middle, top - 9 - CutElevation.DEEP / 2 - LARGE / 2, LARGE, Face.BOLD);
        String a = saw("A", entry.part().cutADeg(), entry.startPoint(), entry.isCompound());
        String b = saw("B", entry.part().cutBDeg(), entry.endPoint(), entry.isCompound());
        double saw = edges ? SAW : SQUARE_SAW;
        label(a, x, top - saw, FIGURES, Face.BOLD);
        marks().add(new Text(
                b, new Vec2(x + PIECE_WIDTH, top - saw), FIGURES, Text.Align.RIGHT, 0, Face.BOLD, Layer.LABEL, ""));
    }

    private static String saw(String end, double angleDeg, CutList.LongPoint point, boolean compound) {
        if (compound && angleDeg > 0.005) {
            return end + ": " + Figure.angle(angleDeg) + " in two planes";
        }
        return switch (point) {
            case NONE -> end + ": square";
            case TOP -> end + ": " + Figure.angle(angleDeg) + ", long at top";
            case BOTTOM -> end + ": " + Figure.angle(angleDeg) + ", long at bottom";
        };
    }

    private Notes data(CutList.Entry entry) {
        Part part = entry.part();
        List<Paragraph> lines = new ArrayList<>();
        lines.add(Paragraph.of(
                String.format(Locale.ROOT, "%.1f kg each, %.1f kg in all", part.massKg(), part.totalMassKg())));
        if (!entry.blank().isSquare()) {
            lines.add(Paragraph.of(
                    "mitre across the " + Figure.length(entry.blank().depthMm()) + " side"
                            + (part.longPoint().isEmpty() ? "" : "; long point " + part.longPoint())));
        }
        if (entry.isCompound()) {
            lines.add(Paragraph.of("saw turned and tilted: set it from the drawing of the piece"));
        }
        if (entry.welded().isEmpty()) {
            lines.add(Paragraph.of("nothing welded to it"));
        } else {
            lines.add(Paragraph.heading("Welded to it"));
            entry.welded().forEach(words -> lines.add(Paragraph.of(words)));
        }
        return Notes.of(lines, DATA_WIDTH);
    }

    private void boxes() {
        for (int i = 0; i < STEPS.size(); i++) {
            double x = room.getMinX() + BOXES + i * BOX_STEP;
            double y = top - 16;
            marks().add(SheetFrame.box(new Envelope(x + 3, x + 3 + BOX, y, y + BOX), Pen.VISIBLE));
            centred(STEPS.get(i), x + 3 + BOX / 2, y - 4.5, TEXT, Face.REGULAR);
        }
    }

    private void centred(String words, double x, double y, double height, Face face) {
        marks().add(new Text(words, new Vec2(x, y), height, Text.Align.CENTRE, 0, face, Layer.LABEL, ""));
    }

    private void label(String words, double x, double y, double height, Face face) {
        marks().add(new Text(words, new Vec2(x, y), height, Text.Align.LEFT, 0, face, Layer.LABEL, ""));
    }

    private List<Mark> marks() {
        return sheets.get(sheets.size() - 1);
    }
}
