package org.baywright.render.sheet;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.RoofWater;
import org.baywright.model.definition.Sheeting;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/**
 * Says what the parts of the envelope that elevations name are made of, and how large the openings are.
 *
 * @param building whose envelope
 * @param through whether doors or windows of the wall behind are seen through open bays
 */
record FinishesKey(Building building, boolean through) {
    /** From the foot of a view's title to the key. */
    private static final double GAP = 14;

    private static final double LOW = 2;

    /** Height of the room kept for a key. */
    static final double MOST = 17;

    private static final double NARROWEST = 90;

    private static final String BEHIND = "Drawn thin: the wall behind open bays, from inside.";

    private static final String SCHEDULE = "Clear sizes of openings: see the door and window schedule.";

    /** Draws the key beside the title of a view, in words short enough for the room there. */
    void draw(SheetBuilder sheet, PlacedView view, Envelope cell, Predicate<OpeningPlace> shown) {
        double left = view.footEnd() + GAP;
        drawIn(
                new Envelope(left, Math.max(left, cell.getMaxX()), cell.getMinY(), cell.getMinY() + MOST),
                sheet,
                view,
                shown);
    }

    /** Draws the key at the foot of a strip of paper that is kept for it. */
    void drawIn(Envelope room, SheetBuilder sheet, PlacedView view, Predicate<OpeningPlace> shown) {
        double width = room.getWidth() - 2 * LOW;
        if (!building.shed().definition().envelope().isFull() || width < NARROWEST) {
            return;
        }
        String openings = openings(shown);
        String elsewhere = openings.isEmpty() ? "" : SCHEDULE;
        String materials = materials(view.port().scale()) + (through ? " " + BEHIND : "");
        Stream.of(
                        List.of(materials, openings),
                        List.of(materials, elsewhere),
                        List.of(materials + " " + elsewhere),
                        List.of(profiles() + " " + elsewhere))
                .map(words -> notes(words, width))
                .filter(notes -> view.isFree(foot(room, notes)))
                .findFirst()
                .ifPresent(notes -> {
                    Envelope paper = foot(room, notes);
                    sheet.draw(notes.draw(new Vec2(paper.getMinX(), paper.getMaxY())));
                });
    }

    /** The paper that notes take at the foot of their room, less the last one's gap to a next. */
    private static Envelope foot(Envelope room, Notes notes) {
        double left = room.getMinX() + LOW;
        double low = room.getMinY() + LOW;
        return new Envelope(left, left + notes.width(), low, low + notes.height());
    }

    private static Notes notes(List<String> paragraphs, double width) {
        return Notes.of(
                paragraphs.stream()
                        .map(String::strip)
                        .filter(words -> !words.isEmpty())
                        .map(Paragraph::of)
                        .toList(),
                width);
    }

    private String materials(Scale scale) {
        Sheeting sheeting = building.shed().definition().envelope().sheeting();
        RoofWater water = building.shed().definition().envelope().roofWater();
        String roof = sheets(sheeting.roof().profile(), sheeting.roof().colour(), scale);
        String walls = sheets(sheeting.walls().profile(), sheeting.walls().colour(), scale);
        return roofAndWalls(roof, walls) + " Roof water: " + water.gutter().name() + ", "
                + water.downpipe().name() + ".";
    }

    private String profiles() {
        Sheeting sheeting = building.shed().definition().envelope().sheeting();
        return roofAndWalls(
                sheeting.roof().profile().name() + ".",
                sheeting.walls().profile().name() + ".");
    }

    private static String roofAndWalls(String roof, String walls) {
        return roof.equals(walls) ? "Roof and walls: " + roof : "Roof: " + roof + " Walls: " + walls;
    }

    private static String sheets(SheetProfile profile, String colour, Scale scale) {
        int every = Envelopes.every(profile, scale.n());
        return profile.name() + (colour.isEmpty() ? "" : ", " + colour) + ", ribs at "
                + Figure.length(profile.ribPitch()) + (every == 1 ? "." : ", one in " + every + " drawn.");
    }

    private String openings(Predicate<OpeningPlace> shown) {
        String all = building.shed().openings().stream()
                .filter(o -> !o.isWholeBay())
                .filter(shown)
                .map(FinishesKey::opening)
                .collect(Collectors.joining("; "));
        return all.isEmpty() ? "" : "Openings, clear: " + all + ".";
    }

    /** An opening by its tag, what closes it and its clear size. */
    private static String opening(OpeningPlace o) {
        return o.tag() + " " + o.opening().type().label().toLowerCase(Locale.ROOT) + " " + size(o);
    }

    /** Clear width and height. */
    static String size(OpeningPlace o) {
        return Figure.length(o.width()) + " x " + Figure.length(o.head() - o.sill());
    }
}
