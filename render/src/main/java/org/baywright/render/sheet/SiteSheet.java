package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Site;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.SitePlan;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;
import org.baywright.render.dimension.TablePart;
import org.locationtech.jts.geom.Envelope;

/** The site plan: land, boundaries, the shed and its neighbours, setbacks, areas, and what the owner must add. */
final class SiteSheet {
    private static final String TITLE = "Site plan";

    /** The column of tables on the right. */
    private static final double COLUMN = 126;

    private static final double GAP = 7;

    /** Room that the other table and the notes take under the boundary table. */
    private static final double UNDER = 128;

    /** Paper in height that the shed close up needs. */
    private static final double LEAST_CLOSE = 60;

    private static final List<String> BY_OWNER = List.of(
            "Vehicle access",
            "Stormwater outfall",
            "Easements",
            "Ground levels, cut and fill",
            "Services, overhead and buried",
            "Datum and source of boundary");

    private final Definition definition;
    private final SitePlan plan;

    private SiteSheet(Definition definition, SitePlan plan) {
        this.definition = definition;
        this.plan = plan;
    }

    /** No sheet when no site was given. */
    static List<Draft> of(Shed shed) {
        return shed.definition()
                .ground()
                .site()
                .map(site -> new SiteSheet(shed.definition(), plan(shed, site)).drafts())
                .orElse(List.of());
    }

    private static SitePlan plan(Shed shed, Site site) {
        return SitePlan.of(shed.definition(), shed.setOut(), site);
    }

    private List<Draft> drafts() {
        Envelope room = SheetFrame.room();
        double right = room.getMaxX() - COLUMN;
        double top = room.getMaxY();
        SheetBuilder sheet = new SheetBuilder("S1", TITLE);
        List<TablePart> boundary = legs().pages(room.getHeight() - UNDER, room.getHeight());
        top = put(sheet, boundary.get(0), right, top);
        top = put(sheet, areas().pages(top - room.getMinY()).get(0), right, top);
        top = put(sheet, owner().pages(top - room.getMinY()).get(0), right, top);
        Notes notes = Notes.of(notes(), COLUMN);
        sheet.draw(notes.draw(new Vec2(right, top)));
        Envelope cell = new Envelope(room.getMinX(), right - GAP, room.getMinY(), room.getMaxY());
        SiteView view = new SiteView(plan, definition.project().name());
        view.draw(sheet, cell);
        double under = top - notes.height() - GAP;
        if (view.isSmall(cell) && under - room.getMinY() > LEAST_CLOSE) {
            view.close(sheet, new Envelope(right, room.getMaxX(), room.getMinY(), under));
        }
        List<Draft> drafts = new ArrayList<>(List.of(sheet.build()));
        for (TablePart part : boundary.subList(1, boundary.size())) {
            SheetBuilder more = new SheetBuilder("S1." + (drafts.size() + 1), TITLE + ", boundary");
            put(more, part, room.getMinX(), room.getMaxY());
            drafts.add(more.build());
        }
        return drafts;
    }

    private static double put(SheetBuilder sheet, TablePart part, double x, double top) {
        sheet.draw(part.draw(new Vec2(x, top)));
        return top - part.height() - GAP;
    }

    /** Every leg, with the least setback where it faces the shed; then the least distance to each neighbour. */
    private Table legs() {
        List<Row> rows = new ArrayList<>();
        for (SitePlan.Leg leg : plan.legs()) {
            List<SitePlan.Distance> facing = plan.setbacks().stream()
                    .filter(s -> s.number() == leg.number())
                    .toList();
            rows.add(Row.of(
                    String.valueOf(leg.number()),
                    bearing(leg.bearingDeg()),
                    metres(leg.length()),
                    facing.isEmpty() ? "" : Figure.length(facing.get(0).length()),
                    facing.isEmpty() ? "not faced" : from(facing.get(0))));
        }
        for (SitePlan.Distance gap : plan.gaps()) {
            rows.add(Row.of("E" + gap.number(), "existing building", "", Figure.length(gap.length()), from(gap)));
        }
        return new Table(
                        List.of(
                                Column.words("Leg"),
                                Column.words("Bearing"),
                                Column.numbers("Length, m"),
                                Column.numbers("Setback, mm"),
                                Column.words("From")),
                        rows,
                        COLUMN)
                .filling();
    }

    /** Degrees and minutes, as on a survey: {@code 90°00'}. */
    static String bearing(double deg) {
        long minutes = Math.round(deg * 60) % (360 * 60);
        return String.format(Locale.ROOT, "%d°%02d'", minutes / 60, minutes % 60);
    }

    static String metres(double mm) {
        return String.format(Locale.ROOT, "%.2f", mm / 1000);
    }

    private static String from(SitePlan.Distance way) {
        String walls = way.walls().stream().map(SiteSheet::word).distinct().collect(Collectors.joining("/"));
        return walls + (way.walls().size() > 1 ? " corner" : " side");
    }

    private static String word(Wall wall) {
        return wall.name().toLowerCase(Locale.ROOT);
    }

    private Table areas() {
        SitePlan.Areas areas = plan.areas();
        List<Row> rows = new ArrayList<>();
        rows.add(Row.of("Land inside the boundary", squareMetres(areas.land())));
        rows.add(Row.of("This building, " + outlineWords(), squareMetres(areas.building())));
        if (!plan.site().neighbours().isEmpty()) {
            rows.add(Row.of("Existing buildings on the land", squareMetres(areas.others())));
        }
        rows.add(Row.total("Site coverage, all buildings", percent(areas.coveragePercent())));
        return new Table(List.of(Column.words("Areas"), Column.numbers("")), rows, COLUMN).filling();
    }

    private String outlineWords() {
        return definition.envelope().isFull() ? "over wall sheeting" : "over string lines";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, share < 1 ? "%.3f %%" : "%.1f %%", share);
    }

    private static String squareMetres(double mm2) {
        return String.format(Locale.ROOT, "%.1f m²", mm2 / 1e6);
    }

    private static Table owner() {
        List<Row> rows = BY_OWNER.stream().map(what -> Row.of(what, "")).toList();
        return new Table(List.of(Column.words("By owner"), Column.words("To be filled in")), rows, COLUMN).filling();
    }

    private List<Paragraph> notes() {
        List<Paragraph> notes = new ArrayList<>(List.of(Paragraph.heading("Notes")));
        notes.add(Paragraph.bullet("Boundary and existing buildings as the owner gave them, not surveyed by us. Peg and"
                + " check them before setting out."));
        notes.add(Paragraph.bullet(
                definition.envelope().isFull()
                        ? "Setbacks are the least distances to the outermost edge of roof and gutters, past the walls drawn."
                                + " The council says what it counts to."
                        : "Setbacks are the least distances to the outline over string lines; roof, sheets, gutters"
                                + " stand out beyond it. The council says what it counts to."));
        plan.overhang()
                .ifPresent(way -> notes.add(Paragraph.bullet("ROOF OR GUTTER REACHES " + Figure.length(way.length())
                        + " OVER LEG " + way.number() + " OF THE BOUNDARY GIVEN.")));
        return notes;
    }
}
