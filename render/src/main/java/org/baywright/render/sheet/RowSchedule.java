package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.WallFace;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** Purlins and girts with the places of their bolt holes, then bracing with its true lengths. */
final class RowSchedule {
    private static final List<Column> ROWS = List.of(
            Column.words("Mark"),
            Column.words("Part"),
            Column.words("Section"),
            Column.numbers("Qty"),
            Column.numbers("Length, mm"),
            Column.words("⌀18 holes for M12 from the marked left end, mm"));

    private static final List<Column> BRACES = List.of(
            Column.words("Mark"),
            Column.words("Part"),
            Column.words("Section"),
            Column.numbers("Qty"),
            Column.numbers("True length, mm"),
            Column.words("Where"));

    private static final Set<PartKind> BRACING =
            EnumSet.of(PartKind.BRACE, PartKind.STRUT, PartKind.FLY_BRACE, PartKind.BRIDGING);

    private static final String ROWS_TITLE = "Purlins and girts: holes at the gauge of the section";
    private static final String BRACES_TITLE = "Bracing, struts, fly braces and bridging";

    /** How much of a sheet's width the tables take beside each other. */
    private static final double ROWS_SHARE = 0.56;

    private static final double BRACES_SHARE = 0.41;

    private RowSchedule() {}

    /** What the sheet is called; other sheets name it so. */
    static String title(Shed shed) {
        boolean braced = shed.parts().stream().anyMatch(p -> BRACING.contains(p.kind()));
        return braced ? "Purlin, girt, brace schedule" : "Purlin and girt schedule";
    }

    static List<Draft> of(Shed shed) {
        SheetFlow flow = new SheetFlow();
        double width = SheetFrame.room().getWidth();
        List<Row> rows = rows(shed);
        List<Row> braces = braces(shed);
        Table narrow = new Table(ROWS, rows, ROWS_SHARE * width).filling();
        Table beside = new Table(BRACES, braces, BRACES_SHARE * width).filling();
        if (!rows.isEmpty() && !braces.isEmpty() && flow.fitsBeside(narrow, beside)) {
            flow.pair(ROWS_TITLE, narrow, BRACES_TITLE, beside);
        } else {
            if (!rows.isEmpty()) {
                flow.table(ROWS_TITLE, new Table(ROWS, rows, width).filling());
            }
            if (!braces.isEmpty()) {
                flow.table(BRACES_TITLE, new Table(BRACES, braces, width).filling());
            }
        }
        return rows.isEmpty() && braces.isEmpty() ? List.of() : flow.drafts("S6.", title(shed));
    }

    private static List<Row> rows(Shed shed) {
        List<Row> rows = new ArrayList<>();
        for (PartKind kind : List.of(PartKind.PURLIN, PartKind.GIRT)) {
            for (Part part : shed.parts(kind)) {
                String holes = part.punched().isEmpty()
                        ? "none"
                        : part.punched().stream().map(Figure::length).collect(Collectors.joining(", "));
                rows.add(row(part, holes));
            }
        }
        return rows;
    }

    private static List<Row> braces(Shed shed) {
        WallMembers walls = new WallMembers(shed);
        List<Row> rows = new ArrayList<>();
        for (Part part : shed.parts()) {
            if (BRACING.contains(part.kind())) {
                Set<String> where = new TreeSet<>();
                MemberAxis.of(part)
                        .forEach(m -> where.add(walls.of(m)
                                .filter(w -> part.kind() == PartKind.BRACE || part.kind() == PartKind.BRIDGING)
                                .map(RowSchedule::name)
                                .orElse("roof")));
                rows.add(row(part, String.join(", ", where)));
            }
        }
        return rows;
    }

    private static Row row(Part part, String last) {
        return Row.of(
                part.mark(),
                part.kind().label(),
                part.material().description(),
                String.valueOf(part.quantity()),
                Figure.length(part.stockLength()),
                last);
    }

    private static String name(WallFace wall) {
        String side = wall.wall().name().toLowerCase(Locale.ROOT) + " wall";
        return wall.leanTo().map(l -> side + " of lean-to " + l.letter()).orElse(side);
    }
}
