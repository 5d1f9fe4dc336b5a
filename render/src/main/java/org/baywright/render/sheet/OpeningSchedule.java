package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.baywright.model.definition.Opening;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** Doors, windows and open bays: clear sizes, the steel about them, and the room a leaf or curtain finds. */
final class OpeningSchedule {
    /** A jamb stands no further from the edge of its opening than this. */
    private static final double BESIDE = 200;

    /** A header lies no further over the head. */
    private static final double OVER = 400;

    private static final List<Column> COLUMNS = List.of(
            Column.words("Tag"),
            Column.words("Type"),
            Column.words("Wall and bay"),
            Column.numbers("Clear width, mm"),
            Column.numbers("Clear height, mm"),
            Column.numbers("Sill, mm"),
            Column.numbers("Head, mm"),
            Column.words("Jambs"),
            Column.words("Header"),
            Column.words("Sill member"),
            Column.numbers("Room over, mm"),
            Column.words("Offset left / right, mm"),
            Column.words("Needs"));

    /** @source wind locks, head and side room by door: common practice for roller and sectional doors */
    private static final List<String> NOTES = List.of(
            "Sizes are clear, between jambs and under the header; leaf and curtain are larger. Order doors from"
                    + " measured openings.",
            "Roller doors: usual room beside 150 each side, motor end 250, over the head 450 (common practice); the door"
                    + " maker's figures govern. Sliding leaves need a clear wall as wide as the leaf beside the opening.",
            "Doors and windows are to be rated for the site's wind by their maker; roller doors with wind locks where"
                    + " rated so. An open front or a failed door is a dominant opening: the engineer must know which"
                    + " openings count as open.",
            "Room over is from the head to the top of rafter steel where that is lowest; rafter, header and track take"
                    + " their share of it: check it on the section.",
            "Offset: from the frame line or corner of the bay to the clear edge, left and right as seen from outside; it is also the room beside.");

    private final Shed shed;

    private OpeningSchedule(Shed shed) {
        this.shed = shed;
    }

    /** No sheet without openings, nor for a bare frame, which has no walls for them. */
    static List<Draft> of(Shed shed, int firstNumber) {
        if (shed.openings().isEmpty() || !shed.definition().envelope().isFull()) {
            return List.of();
        }
        SheetFlow flow = new SheetFlow();
        flow.table("Doors, windows and open bays", table(shed));
        List<Paragraph> notes = new ArrayList<>(List.of(Paragraph.heading("Notes")));
        Stream.concat(NOTES.stream(), JambHeadNotes.of(shed).stream())
                .forEach(words -> notes.add(Paragraph.bullet(words)));
        flow.notes(Notes.of(notes, SheetFrame.room().getWidth() / 2));
        return flow.drafts("S8.", firstNumber, "Door and window schedule");
    }

    /** One row an opening. */
    static Table table(Shed shed) {
        OpeningSchedule schedule = new OpeningSchedule(shed);
        List<Row> rows = shed.openings().stream().map(schedule::row).toList();
        return new Table(COLUMNS, rows, SheetFrame.room().getWidth()).filling();
    }

    private Row row(OpeningPlace place) {
        return Row.of(
                place.tag(),
                place.opening().type().label(),
                where(place),
                place.isWholeBay() ? "whole bay" : Figure.length(place.width()),
                place.isWholeBay() ? "" : Figure.length(place.head() - place.sill()),
                place.isWholeBay() ? "" : Figure.length(place.sill()),
                place.isWholeBay() ? "" : Figure.length(place.head()),
                member(place, PartKind.JAMB),
                member(place, PartKind.HEADER),
                place.sill() > 0 ? member(place, PartKind.SILL) : "",
                place.isWholeBay() ? "" : Figure.length(overHead(place)),
                place.isWholeBay()
                        ? ""
                        : Figure.length(place.left() - place.bay().from()) + " / "
                                + Figure.length(place.bay().to() - place.right()),
                needs(place.opening().type()));
    }

    private static String where(OpeningPlace place) {
        Wall wall = place.opening().wall();
        String lean = place.face()
                .leanTo()
                .map(ColumnLine::side)
                .map(side -> word(side) + " lean-to, ")
                .orElse("");
        String bay = wall.isEnd() ? "" : ", bay " + place.bay().bay();
        return lean + wall.name().toLowerCase(Locale.ROOT) + bay;
    }

    private static String word(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    /** The least height of roof steel over the opening, less its head. */
    private static double overHead(OpeningPlace place) {
        double low = Math.min(place.face().heightAt(place.left()), place.face().heightAt(place.right()));
        return low - place.head();
    }

    private static String needs(Opening.Type type) {
        return switch (type) {
            case ROLLER_DOOR -> "wind-rated curtain and guides; room beside and over";
            case SLIDING_DOOR -> "wind-rated leaf, track and guides; wall beside as wide as the leaf";
            case DOOR -> "frame + 40 wide, + 50 high over the leaf; opens outward";
            case WINDOW -> "10 all round; rated glass";
            case OPEN -> "counts as open in wind";
        };
    }

    /** The members of one kind about an opening: their marks and section, as they stand in the model. */
    private String member(OpeningPlace place, PartKind kind) {
        List<Part> found = shed.parts(kind).stream()
                .filter(part -> part.places().stream().anyMatch(p -> isAbout(place, part, p)))
                .sorted(Comparator.comparing(Part::mark))
                .toList();
        Optional<String> marks = found.stream().map(Part::mark).reduce((a, b) -> a + ", " + b);
        Stream<String> sections =
                found.stream().map(p -> p.material().designation()).distinct();
        return marks.map(m -> m + "  " + sections.reduce((a, b) -> a + ", " + b).orElse(""))
                .orElse("none");
    }

    private static boolean isAbout(OpeningPlace place, Part part, Place p) {
        Vec3 middle =
                place.face().axes().toLocal(p.placement().toWorld(part.solid().centreOfGravity()));
        boolean inWall = Math.abs(middle.z()) < BESIDE;
        boolean across = middle.x() > place.left() - BESIDE && middle.x() < place.right() + BESIDE;
        boolean beside = Math.abs(middle.x() - place.left()) < BESIDE || Math.abs(middle.x() - place.right()) < BESIDE;
        return inWall
                && switch (part.kind()) {
                    case JAMB -> beside;
                    case HEADER -> across && middle.y() > place.head() - 1 && middle.y() < place.head() + OVER;
                    default -> across && middle.y() < place.sill() + 1 && middle.y() > place.sill() - OVER;
                };
    }
}
