package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Project;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.dimension.WrappedText;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/**
 * The band along the foot of a sheet: status and cautions on the left, an empty panel for the engineer, and the title
 * block of 180 mm on the right.
 *
 * <p>@source ISO 7200 (fields: legal owner, identification number, date of issue, sheet number, title, creator,
 * approval person, revision), ISO 5457 (place and width, from memory)
 */
final class TitleBlock {
    private static final double WIDTH = 180;
    private static final double PANEL = 58;
    /** Lines of notes that the band holds under its heading. */
    private static final int MOST_LINES = 6;

    private static final double LABEL = 2.5;
    private static final double VALUE = 2.5;
    private static final double PAD = 1.6;
    private static final double ROW = SheetFrame.BAND / 3;

    private final List<Mark> marks = new ArrayList<>();
    private final double foot = SheetFrame.inside().getMinY();

    private TitleBlock() {}

    /** The band of one sheet of several. */
    static List<Mark> marks(Project project, Draft draft, int page, int pages) {
        TitleBlock block = new TitleBlock();
        block.title(project, draft, page, pages);
        block.status(project);
        return block.marks;
    }

    private void title(Project project, Draft draft, int page, int pages) {
        double x = SheetFrame.inside().getMaxX() - WIDTH;
        cell(x, 2, 74, "Project", project.name(), 3.5, Face.BOLD);
        cell(x, 1, 74, "Owner", project.owner(), VALUE, Face.REGULAR);
        cell(x, 0, 74, "Site", project.site(), VALUE, Face.REGULAR);
        double middle = x + 74;
        cell(middle, 2, 66, "Drawing", draft.title(), 3.5, Face.BOLD);
        cell(middle, 1, 33, "Drawn by", project.drawnBy(), VALUE, Face.REGULAR);
        cell(middle + 33, 1, 33, "Checked", "", VALUE, Face.REGULAR);
        cell(middle, 0, 33, "Date", project.date(), VALUE, Face.REGULAR);
        cell(middle + 33, 0, 33, "Scale", draft.scale(), VALUE, Face.REGULAR);
        double right = middle + 66;
        cell(right, 2, 40, "Drawing no.", draft.number(), 3.5, Face.BOLD);
        cell(right, 1, 40, "Revision", project.revision(), VALUE, Face.REGULAR);
        cell(right, 0, 40, "Page", page + " of " + pages, VALUE, Face.REGULAR);
    }

    /** One field: its name above, its value below, inside thin lines. */
    private void cell(double x, int row, double width, String label, String value, double height, Face face) {
        Envelope box = new Envelope(x, x + width, foot + row * ROW, foot + (row + 1) * ROW);
        marks.add(SheetFrame.box(box, Pen.DIMENSION));
        double room = width - 2 * PAD;
        text(label, x + PAD, box.getMaxY() - PAD - LABEL, LABEL, Face.REGULAR);
        if (!value.isBlank()) {
            double fitting = Lettering.width(value, height, face) <= room ? height : VALUE;
            text(Fitted.line(value, fitting, face, room), x + PAD, box.getMinY() + PAD + 0.6, fitting, face);
        }
    }

    private void status(Project project) {
        Envelope in = SheetFrame.inside();
        double right = in.getMaxX() - WIDTH - PANEL;
        marks.add(SheetFrame.box(new Envelope(right, right + PANEL, foot, foot + SheetFrame.BAND), Pen.DIMENSION));
        text("Engineer: name, signature, date", right + PAD, foot + SheetFrame.BAND - PAD - LABEL, LABEL, Face.REGULAR);
        marks.add(SheetFrame.box(new Envelope(in.getMinX(), right, foot, foot + SheetFrame.BAND), Pen.DIMENSION));
        double x = in.getMinX() + 3;
        double y = foot + SheetFrame.BAND - 7;
        text("DRAFT", x, y, 3.5, Face.BOLD);
        text(
                "NOT FOR CONSTRUCTION UNTIL CERTIFIED",
                x + Lettering.width("DRAFT", 3.5, Face.BOLD) + 4,
                y,
                3.5,
                Face.BOLD);
        double step = 4.6;
        List<String> lines = new ArrayList<>(WrappedText.lines(Cautions.BAND, right - x - 3, VALUE, Face.REGULAR));
        if (!project.legalDescription().isBlank()) {
            lines.addAll(WrappedText.lines(
                    "Legal description: " + project.legalDescription(), right - x - 3, VALUE, Face.REGULAR));
        }
        for (String line : lines.subList(0, Math.min(MOST_LINES, lines.size()))) {
            y -= step;
            text(line, x, y - 0.6, VALUE, Face.REGULAR);
        }
    }

    private void text(String content, double x, double y, double height, Face face) {
        marks.add(new Text(content, new Vec2(x, y), height, Text.Align.LEFT, 0, face, Layer.FRAME, ""));
    }
}
