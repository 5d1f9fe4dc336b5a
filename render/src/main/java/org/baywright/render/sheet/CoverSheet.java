package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Project;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Shed;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Table;
import org.baywright.render.dimension.TablePart;
import org.baywright.render.dimension.WrappedText;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/** The first sheet: what the building looks like, its figures, what is in the set, and what to heed. */
final class CoverSheet {
    private static final String NUMBER = "S0";
    private static final String TITLE = "Cover and notes";
    private static final String SCALE = "not to scale";

    /** The column on the right: figures over the sheet list. */
    private static final double COLUMN = 132;

    private static final double GAP = 10;
    private static final double NAME = 7;
    private static final double SUBTITLE = 3.5;

    private final Building building;
    private final Shed shed;
    private final Envelope room = SheetFrame.room();
    private final double right = room.getMaxX() - COLUMN;
    private final double leftEnd = right - GAP;
    private final List<Mark> marks = new ArrayList<>();

    private CoverSheet(Building building) {
        this.building = building;
        this.shed = building.shed();
    }

    /** The cover of a set whose other sheets are known. */
    static Draft of(Building building, List<Draft> rest) {
        CoverSheet cover = new CoverSheet(building);
        double top = cover.head(building.shed().definition().project());
        double foot = cover.notes();
        cover.view(new Envelope(cover.room.getMinX(), cover.leftEnd, foot, top));
        cover.column(rest);
        return new Draft(NUMBER, TITLE, SCALE, cover.marks, List.of());
    }

    /** Name and project data; returns where the space below begins. */
    private double head(Project project) {
        double width = leftEnd - room.getMinX();
        double y = room.getMaxY() - Lettering.ascent(NAME, Face.BOLD);
        text(Fitted.line(project.name(), NAME, Face.BOLD, width), y, NAME, Face.BOLD);
        y -= NAME + 1;
        String data = String.join("; ", data(project));
        if (!data.isBlank()) {
            for (String line : WrappedText.lines(data, width, SUBTITLE, Face.REGULAR)) {
                text(line, y, SUBTITLE, Face.REGULAR);
                y -= SUBTITLE * 1.7;
            }
            y += SUBTITLE * 1.7;
        }
        return y - GAP / 2;
    }

    private static List<String> data(Project project) {
        List<String> data = new ArrayList<>();
        add(data, "Owner: ", project.owner());
        add(data, "Site: ", project.site());
        add(data, "Legal description: ", project.legalDescription());
        add(data, "Drawn by: ", project.drawnBy());
        add(data, "Date: ", project.date());
        add(data, "Revision: ", project.revision());
        return data;
    }

    private static void add(List<String> data, String name, String value) {
        if (!value.isBlank()) {
            data.add(name + value);
        }
    }

    /** Notes in two even columns along the foot; returns where the space above them begins. */
    private double notes() {
        double width = (leftEnd - room.getMinX() - GAP) / 2;
        Notes.Columns parted = Notes.of(Paragraph.numbered(words()), width).inColumns(2);
        double top = room.getMinY() + parted.height();
        double x = room.getMinX();
        for (Notes column : parted.notes()) {
            marks.addAll(column.draw(new Vec2(x, top)));
            x += width + GAP;
        }
        double title = top + 3;
        text("NOTES AND CAUTIONS", title, SUBTITLE, Face.BOLD);
        return title + Lettering.ascent(SUBTITLE, Face.BOLD) + GAP;
    }

    private List<String> words() {
        List<String> words = new ArrayList<>(Cautions.COVER);
        words.add(1, Materials.words(shed.definition()));
        if (shed.definition().envelope().isFull()) {
            words.addAll(Cautions.ENVELOPE);
        }
        return words;
    }

    private void view(Envelope space) {
        CoverView view = new CoverView(building);
        String title = view.title() + "   pictorial, not to scale";
        double y = space.getMinY();
        text(title, y, SUBTITLE, Face.BOLD);
        double x = room.getMinX();
        Vec2 start = new Vec2(x, y - 1.6);
        Vec2 end = new Vec2(x + Lettering.width(title, SUBTITLE, Face.BOLD), y - 1.6);
        marks.add(Stroke.line(start, end, Pen.VISIBLE, Layer.LABEL));
        double foot = y + Lettering.ascent(SUBTITLE, Face.BOLD);
        marks.addAll(view.marks(new Envelope(space.getMinX(), space.getMaxX(), foot, space.getMaxY())));
    }

    private void column(List<Draft> rest) {
        TablePart figures = KeyFigures.of(shed, COLUMN).pages(room.getHeight()).get(0);
        marks.addAll(figures.draw(new Vec2(right, room.getMaxY())));
        double top = room.getMaxY() - figures.height() - GAP;
        double left = top - room.getMinY();
        Draft self = new Draft(NUMBER, TITLE, SCALE, List.of(), List.of());
        double x = right;
        for (Table list : SheetList.of(self, rest, COLUMN, left)) {
            TablePart whole = list.pages(left).get(0);
            marks.addAll(whole.draw(new Vec2(x, top)));
            x += whole.width() + SheetList.BETWEEN;
        }
    }

    private void text(String words, double y, double height, Face face) {
        Vec2 at = new Vec2(room.getMinX(), y);
        marks.add(new Text(words, at, height, Text.Align.LEFT, 0, face, Layer.LABEL, ""));
    }
}
