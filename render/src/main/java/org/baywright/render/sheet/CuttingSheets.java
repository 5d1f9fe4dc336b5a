package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.baywright.model.cutting.Bar;
import org.baywright.model.cutting.CuttingPlan;
import org.baywright.model.cutting.Layout;
import org.baywright.model.cutting.SectionPlan;
import org.baywright.model.cutting.Stock;
import org.baywright.model.definition.Project;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.locationtech.jts.geom.Envelope;

/** Which bars to buy, and each way of cutting one, to scale. */
public final class CuttingSheets {
    private static final double HEADING = 3.5;
    private static final double HEADING_ROOM = 9;
    private static final double TEXT = 2.5;

    /** Left of the strips, for how many bars are cut so. */
    private static final double LEFT = 34;

    private static final double WORDS = 4.6;

    private final Envelope room = SheetFrame.room();
    private final List<List<Mark>> sheets = new ArrayList<>();
    private double top;

    private CuttingSheets() {}

    /** The plans of all sections. */
    public static SheetSet of(Project project, List<SectionPlan> plans) {
        return new SheetSet(
                project.name() + ": cutting plan",
                project.drawnBy(),
                "Cutting plan; measure before you cut",
                Framing.framed(project, drafts(plans)));
    }

    static List<Draft> drafts(List<SectionPlan> plans) {
        SheetFlow bars = new SheetFlow();
        bars.table("Bars to take, section by section; lengths in millimetres", summary(plans));
        List<Draft> drafts = new ArrayList<>(bars.drafts("W1.", "Bars to take"));
        CuttingSheets strips = new CuttingSheets();
        plans.forEach(strips::section);
        for (int i = 0; i < strips.sheets.size(); i++) {
            drafts.add(
                    new Draft("W2." + (i + 1), "Cutting plan", "along the bar only", strips.sheets.get(i), List.of()));
        }
        return drafts;
    }

    private static Table summary(List<SectionPlan> plans) {
        List<Row> rows = new ArrayList<>();
        for (SectionPlan section : plans) {
            CuttingPlan plan = section.plan();
            rows.add(Row.of(
                    section.section(),
                    bars(plan),
                    metres(plan.purchasedMm()),
                    metres(plan.usedMm()),
                    metres(plan.kerfMm()),
                    metres(plan.offcutMm()),
                    String.format(Locale.ROOT, "%.1f", plan.wastePercent()),
                    metres(plan.purchasedBoundMm()),
                    plan.proven() ? "yes" : "no, best found in the time"));
        }
        return new Table(
                        List.of(
                                Column.words("Section"),
                                Column.words("Bars"),
                                Column.numbers("Bought, m"),
                                Column.numbers("In pieces, m"),
                                Column.numbers("Saw cuts, m"),
                                Column.numbers("Off-cuts, m"),
                                Column.numbers("Waste, %"),
                                Column.numbers("No plan under, m"),
                                Column.words("Proven best")),
                        rows,
                        SheetFrame.room().getWidth())
                .filling();
    }

    /** {@code 3 × 12000, 1 × 8000, from the yard 1 × 2500}. */
    private static String bars(CuttingPlan plan) {
        Map<Stock, Integer> counts =
                new TreeMap<>(Comparator.comparing(Stock::isOffcut).thenComparing(s -> -s.lengthMm()));
        plan.layouts().forEach(l -> counts.merge(l.stock(), l.times(), Integer::sum));
        List<String> words = new ArrayList<>();
        counts.forEach((stock, n) ->
                words.add((stock.isOffcut() ? "from the yard " : "") + n + " × " + Figure.length(stock.lengthMm())));
        return words.isEmpty() ? "none" : String.join(", ", words);
    }

    private static String metres(double mm) {
        return String.format(Locale.ROOT, "%.2f", mm / 1000);
    }

    private void section(SectionPlan section) {
        CuttingPlan plan = section.plan();
        double longest = plan.layouts().stream()
                .mapToDouble(l -> l.stock().lengthMm())
                .max()
                .orElse(1);
        double perMm = (room.getWidth() - LEFT) / longest;
        boolean first = true;
        Layout last = null;
        int number = 0;
        for (Bar bar : plan.bars()) {
            if (bar.layout() == last) {
                continue;
            }
            last = bar.layout();
            double need = BarStrip.HEIGHT + WORDS + (first ? HEADING_ROOM : 0);
            if (sheets.isEmpty() || top - need < room.getMinY()) {
                sheets.add(new ArrayList<>());
                top = room.getMaxY();
                first = true;
            }
            if (first) {
                heading(section.section().isEmpty() ? "Bars" : section.section());
                first = false;
            }
            strip(new BarStrip(bar.layout(), bar.marks(), perMm), ++number);
        }
    }

    private void heading(String words) {
        top -= HEADING_ROOM;
        marks().add(new Text(
                words, new Vec2(room.getMinX(), top + 2.5), HEADING, Text.Align.LEFT, 0, Face.BOLD, Layer.LABEL, ""));
    }

    private void strip(BarStrip strip, int number) {
        double x = room.getMinX();
        Layout layout = strip.layout();
        String times = layout.times() + (layout.times() == 1 ? " bar" : " bars");
        label("Layout " + number, x, top - 5.8, Face.BOLD);
        label(times + (layout.stock().isOffcut() ? ", yard" : ""), x, top - 9.4, Face.REGULAR);
        marks().addAll(strip.draw(new Vec2(x + LEFT, top)));
        String words = Figure.length(layout.stock().lengthMm()) + ": " + strip.words();
        String fitted = Fitted.line(words, TEXT, Face.REGULAR, room.getWidth() - LEFT);
        label(fitted, x + LEFT, top - BarStrip.HEIGHT + 0.2, Face.REGULAR);
        top -= BarStrip.HEIGHT + WORDS;
    }

    private void label(String words, double x, double y, Face face) {
        marks().add(new Text(words, new Vec2(x, y), TEXT, Text.Align.LEFT, 0, face, Layer.LABEL, ""));
    }

    private List<Mark> marks() {
        return sheets.get(sheets.size() - 1);
    }
}
