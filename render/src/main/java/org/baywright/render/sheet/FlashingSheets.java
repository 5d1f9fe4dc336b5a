package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.takeoff.FlashingLengths;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/** Every flashing's folded section to scale, for the folder: legs, angles, girth, folds, colour side, how many. */
final class FlashingSheets {
    private static final int COLUMNS = 4;

    /** Columns where they spare a sheet. */
    private static final int TIGHT_COLUMNS = 5;

    private static final int ROWS = 2;
    private static final double GAP = 4;
    private static final int LARGEST = 2;

    /** Words stand between a profile and its title. */
    private static final double WORDS = 18;

    private static final Margins MARGINS = new Margins(11, 11, WORDS + 6, 16);

    /** A lip shorter than this on paper gets its words on a leader, and its fold no arc. */
    private static final double SHORT = 7;

    private static final double ARC = 6;
    private static final double ARROW = 9;
    private static final double HEAD = 2.5;

    private FlashingSheets() {}

    /** Sheets numbered on in series S7. */
    static List<Draft> of(Building building, int firstNumber) {
        List<Flashing> flashings = building.cladding().flashings();
        int columns = sheets(flashings, TIGHT_COLUMNS) < sheets(flashings, COLUMNS) ? TIGHT_COLUMNS : COLUMNS;
        List<Draft> drafts = new ArrayList<>();
        for (int from = 0; from < flashings.size(); from += columns * ROWS) {
            List<Flashing> page = flashings.subList(from, Math.min(flashings.size(), from + columns * ROWS));
            SheetBuilder sheet = new SheetBuilder("S7." + (firstNumber + drafts.size()), "Flashing profiles");
            for (int i = 0; i < page.size(); i++) {
                profile(sheet, page.get(i), cell(i, columns));
            }
            drafts.add(sheet.build());
        }
        return drafts;
    }

    private static int sheets(List<Flashing> flashings, int columns) {
        return (flashings.size() + columns * ROWS - 1) / (columns * ROWS);
    }

    private static Envelope cell(int i, int columns) {
        Envelope cell = Cells.column(Cells.row(SheetFrame.room(), i / columns, ROWS), i % columns, columns);
        return new Envelope(cell.getMinX(), cell.getMaxX() - GAP, cell.getMinY(), cell.getMaxY());
    }

    /** Twice reduced at the largest, so that a fold is judged by its figures. */
    private static Scale scale(Envelope cell, Flashing flashing) {
        Scale fitting = PlacedView.fitting(cell, bounds(flashing), MARGINS);
        return fitting.n() < LARGEST ? new Scale(LARGEST) : fitting;
    }

    private static Envelope bounds(Flashing flashing) {
        Envelope bounds = new Envelope();
        flashing.fold().forEach(v -> bounds.expandToInclude(v.x(), v.y()));
        return bounds;
    }

    private static void profile(SheetBuilder sheet, Flashing flashing, Envelope cell) {
        String title = flashing.mark() + "  " + flashing.kind().label().toUpperCase(Locale.ROOT);
        PlacedView view = sheet.view(title, cell, bounds(flashing), MARGINS, scale(cell, flashing));
        sheet.draw(Notes.of(words(flashing), cell.getWidth() - 6)
                .draw(new Vec2(cell.getMinX() + 2, cell.getMinY() + PlacedView.FOOT + WORDS)));
        List<Vec2> fold = flashing.fold();
        view.draw(List.of(new Stroke(
                fold.stream().map(view.port()::toPaper).toList(), false, Pen.OUTLINE, Layer.STEEL, flashing.mark())));
        colour(view, fold);
        for (int i = 1; i < fold.size(); i++) {
            leg(view, fold.get(i - 1), fold.get(i));
        }
        for (int i = 1; i < fold.size() - 1; i++) {
            angle(view, fold.get(i - 1), fold.get(i), fold.get(i + 1));
        }
    }

    static List<Paragraph> words(Flashing flashing) {
        List<Paragraph> words = new ArrayList<>();
        words.add(Paragraph.of("Girth " + Figure.length(flashing.girth()) + ", " + flashing.folds()
                + (flashing.folds() == 1 ? " fold." : " folds.")));
        words.add(Paragraph.of(quantity(flashing)));
        words.add(Paragraph.of(String.format(
                Locale.ROOT,
                "%.1f m net in %d %s.",
                flashing.length() / 1000,
                flashing.runs().size(),
                flashing.runs().size() == 1 ? "run" : "runs")));
        return words;
    }

    private static String quantity(Flashing flashing) {
        return new FlashingLengths(flashing).toBuy() + " @ " + Figure.length(flashing.stockLength()) + ", laps "
                + Figure.length(flashing.lap()) + " sealed.";
    }

    private static void leg(PlacedView view, Vec2 from, Vec2 to) {
        Vec2 middle = from.plus(to).times(0.5);
        String figure = Figure.length(from.distance(to));
        if (view.port().toPaper(from.distance(to)) < SHORT) {
            view.annotate().note(middle, figure);
        } else {
            view.annotate().label(middle, figure);
        }
    }

    /** The angle between two legs, where it is not square and both can be seen. */
    private static void angle(PlacedView view, Vec2 before, Vec2 at, Vec2 after) {
        Vec2 back = before.minus(at);
        Vec2 on = after.minus(at);
        double deg = Math.toDegrees(Math.acos(back.unit().dot(on.unit())));
        boolean small = view.port().toPaper(Math.min(back.length(), on.length())) < SHORT;
        if (small) {
            view.annotate().note(at, Figure.angle(deg));
        } else if (back.cross(on) > 0) {
            view.annotate().angle(at, before, after, ARC);
        } else {
            view.annotate().angle(at, after, before, ARC);
        }
    }

    /** An arrow from outside on to the longest leg. */
    private static void colour(PlacedView view, List<Vec2> fold) {
        int longest = 1;
        for (int i = 2; i < fold.size(); i++) {
            boolean longer =
                    fold.get(i).distance(fold.get(i - 1)) > fold.get(longest).distance(fold.get(longest - 1)) + 1e-6;
            longest = longer ? i : longest;
        }
        Vec2 from = fold.get(longest - 1);
        Vec2 leg = fold.get(longest).minus(from);
        Vec2 out = leg.unit().left();
        Vec2 tip = view.port()
                .toPaper(from.plus(leg.times(longest == 1 ? 0.3 : 0.7)))
                .plus(out.times(0.6));
        Vec2 tail = tip.plus(out.times(ARROW));
        Vec2 neck = tip.plus(out.times(HEAD));
        Vec2 wing = out.left().times(HEAD / 4);
        view.draw(List.of(
                Stroke.line(tail, neck, Pen.VISIBLE, Layer.LABEL),
                new Fill(List.of(List.of(tip, neck.plus(wing), neck.minus(wing))), 0, Layer.LABEL, "")));
        view.annotate().place(Label.of(tail, Label.Pointer.BESIDE, "colour"));
    }
}
