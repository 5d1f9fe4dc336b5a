package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
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
 */
record FinishesKey(Building building) {
    /** From the foot of a view's title to the key. */
    private static final double GAP = 14;

    private static final double LOW = 2;

    /** A key higher than this would reach into what stands over a view's title. */
    static final double MOST = 17;

    private static final double NARROWEST = 90;

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
        Scale scale = view.port().scale();
        Notes all = notes(scale, width, openings(shown));
        Notes notes = all.height() + LOW <= MOST
                ? all
                : notes(scale, width, "Clear sizes of openings: see the door and window schedule.");
        sheet.draw(notes.draw(new Vec2(room.getMinX() + LOW, room.getMinY() + LOW + notes.height())));
    }

    private Notes notes(Scale scale, double width, String openings) {
        Sheeting sheeting = building.shed().definition().envelope().sheeting();
        RoofWater water = building.shed().definition().envelope().roofWater();
        String roof = sheets(sheeting.roof().profile(), sheeting.roof().colour(), scale);
        String walls = sheets(sheeting.walls().profile(), sheeting.walls().colour(), scale);
        String sheets = roof.equals(walls) ? "Roof and walls: " + roof : "Roof: " + roof + " Walls: " + walls;
        List<Paragraph> words = new ArrayList<>();
        words.add(Paragraph.of(sheets + " Roof water: " + water.gutter().name() + ", "
                + water.downpipe().name() + "."));
        if (!openings.isEmpty()) {
            words.add(Paragraph.of(openings));
        }
        return Notes.of(words, width);
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
