package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.baywright.model.cutting.Bar;
import org.baywright.model.cutting.CuttingPlan;
import org.baywright.model.cutting.Layout;
import org.baywright.model.cutting.SectionPlan;
import org.baywright.model.cutting.Stock;
import org.baywright.model.cutting.Verdict;
import org.baywright.model.definition.Project;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.nesting.LaidBar;
import org.baywright.model.nesting.SectionCuts;
import org.baywright.model.nesting.ShedCutting;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
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
    private static final double NOTES_WIDTH = 290;

    /** Down to below the two lines left of a strip. */
    private static final double LEFT_WORDS = 11.4;

    /** Left of the strips, for how many bars are cut so. */
    private static final double LEFT = 34;

    /** Between a strip's words and the next strip. */
    private static final double GAP = 2.2;

    private final Envelope room = SheetFrame.room();
    private final List<List<Mark>> sheets = new ArrayList<>();
    private double top;

    private CuttingSheets() {}

    /** What the sheets show of one section, of a shed or of a list. */
    private record Shown(String name, List<LaidBar> bars, Set<LaidBar> special, Sums sums, Map<Stock, Integer> unused) {
        static Shown of(SectionPlan section) {
            CuttingPlan plan = section.plan();
            List<LaidBar> bars = new ArrayList<>();
            Layout last = null;
            for (Bar bar : plan.bars()) {
                if (bar.layout() != last) {
                    bars.add(LaidBar.of(bar));
                }
                last = bar.layout();
            }
            Sums sums = new Sums(
                    plan.purchasedMm(),
                    plan.usedMm(),
                    plan.kerfMm(),
                    plan.offcutMm(),
                    plan.wastePercent(),
                    plan.longestOffcutMm(),
                    bound(plan.isByLength(), plan.purchasedBoundMm(), plan.lowerBound(), plan.cost()),
                    plan.verdict());
            return new Shown(section.section(), bars, Set.of(), sums, plan.unusedYard());
        }

        static Shown of(SectionCuts cuts) {
            Sums sums = new Sums(
                    cuts.purchasedMm(),
                    cuts.usedMm(),
                    cuts.kerfMm(),
                    cuts.offcutMm(),
                    cuts.wastePercent(),
                    cuts.longestOffcutMm(),
                    bound(cuts.isByLength(), cuts.boundMm(), cuts.boundCost(), cuts.cost()),
                    cuts.verdict());
            Set<LaidBar> special = cuts.bars().stream().filter(cuts::isSpecial).collect(Collectors.toSet());
            return new Shown(cuts.section().designation(), cuts.bars(), special, sums, cuts.unusedYard());
        }

        /** The bound of what was made least. */
        private static String bound(boolean byLength, double boundMm, double boundCost, double cost) {
            return byLength
                    ? metres(boundMm) + " m"
                    : String.format(Locale.ROOT, "cost %.2f; this plan %.2f", boundCost, cost);
        }
    }

    private record Sums(
            double purchasedMm,
            double usedMm,
            double kerfMm,
            double offcutMm,
            double wastePercent,
            double longestOffcutMm,
            String bound,
            Verdict verdict) {}

    /** The plans of all sections of a list. */
    public static SheetSet of(Project project, List<SectionPlan> plans) {
        return set(project, drafts(plans));
    }

    /** The plan of a shed's members. */
    public static SheetSet of(Project project, ShedCutting cutting) {
        return set(project, drafts(cutting));
    }

    private static SheetSet set(Project project, List<Draft> drafts) {
        return new SheetSet(
                project.name() + ": cutting plan",
                project.drawnBy(),
                "Cutting plan; measure before you cut",
                Framing.framed(project, drafts));
    }

    static List<Draft> drafts(List<SectionPlan> plans) {
        return drafts(plans.stream().map(Shown::of).toList(), List.of());
    }

    static List<Draft> drafts(ShedCutting cutting) {
        List<String> notes = new ArrayList<>(Cautions.CUTTING);
        notes.add(String.format(
                Locale.ROOT,
                "Saw cut %s, end trim %s a bar. A blade of another width needs a plan of its own.",
                Figure.length(cutting.saw().kerfMm()),
                Figure.length(cutting.saw().endTrimMm())));
        return drafts(cutting.sections().stream().map(Shown::of).toList(), notes);
    }

    private static List<Draft> drafts(List<Shown> sections, List<String> notes) {
        SheetFlow bars = new SheetFlow();
        bars.table("Bars to take, section by section; lengths in millimetres", summary(sections));
        if (!notes.isEmpty()) {
            List<Paragraph> paragraphs = new ArrayList<>(List.of(Paragraph.heading("Notes")));
            notes.forEach(words -> paragraphs.add(Paragraph.bullet(words)));
            bars.notes(Notes.of(paragraphs, NOTES_WIDTH));
        }
        List<Draft> drafts = new ArrayList<>(bars.drafts("K1.", "Bars to take"));
        CuttingSheets strips = new CuttingSheets();
        sections.forEach(strips::section);
        for (int i = 0; i < strips.sheets.size(); i++) {
            drafts.add(
                    new Draft("K2." + (i + 1), "Cutting plan", "along the bar only", strips.sheets.get(i), List.of()));
        }
        return drafts;
    }

    private static Table summary(List<Shown> sections) {
        List<Row> rows = new ArrayList<>();
        for (Shown section : sections) {
            Sums sums = section.sums;
            rows.add(Row.of(
                    section.name,
                    bars(section),
                    metres(sums.purchasedMm),
                    metres(sums.usedMm),
                    metres(sums.kerfMm),
                    metres(sums.offcutMm),
                    String.format(Locale.ROOT, "%.1f", sums.wastePercent),
                    Figure.length(Math.floor(sums.longestOffcutMm)),
                    String.valueOf(section.bars.size()),
                    sums.bound,
                    sums.verdict.label()));
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
                                Column.numbers("Longest off-cut"),
                                Column.numbers("Layouts"),
                                Column.words("No plan under"),
                                Column.words("Proven best")),
                        rows,
                        SheetFrame.room().getWidth())
                .filling();
    }

    /** {@code 3 × 12000, 1 × 8000, from the yard 1 × 2500}. */
    private static String bars(Shown section) {
        Map<Stock, Integer> counts =
                new TreeMap<>(Comparator.comparing(Stock::isOffcut).thenComparing(s -> -s.lengthMm()));
        section.bars.forEach(b -> counts.merge(b.stock(), b.times(), Integer::sum));
        List<String> words = new ArrayList<>();
        counts.forEach((stock, n) ->
                words.add((stock.isOffcut() ? "from the yard " : "") + n + " × " + Figure.length(stock.lengthMm())));
        section.unused.forEach(
                (stock, n) -> words.add("left in the yard " + n + " × " + Figure.length(stock.lengthMm())));
        return words.isEmpty() ? "none" : String.join(", ", words);
    }

    private static String metres(double mm) {
        return String.format(Locale.ROOT, "%.2f", mm / 1000);
    }

    private void section(Shown section) {
        double longest = section.bars.stream()
                .mapToDouble(b -> b.stock().lengthMm())
                .max()
                .orElse(1);
        double perMm = (room.getWidth() - LEFT) / longest;
        boolean first = true;
        int number = 0;
        for (LaidBar bar : section.bars) {
            BarStrip strip = new BarStrip(bar, perMm);
            String special = section.special.contains(bar) ? "ordered at this length: " : "";
            Notes words = Notes.of(
                    List.of(Paragraph.of(Figure.length(bar.stock().lengthMm()) + ": " + special + strip.words())),
                    room.getWidth() - LEFT);
            double height = Math.max(BarStrip.HEIGHT + words.height(), LEFT_WORDS) + GAP;
            if (sheets.isEmpty() || top - height - (first ? HEADING_ROOM : 0) < room.getMinY()) {
                sheets.add(new ArrayList<>());
                top = room.getMaxY();
                first = true;
            }
            if (first) {
                String name = section.name.isEmpty() ? "Bars" : section.name;
                heading(number == 0 ? name : name + ", continued");
                first = false;
            }
            number++;
            String times = bar.times() + (bar.times() == 1 ? " bar" : " bars");
            label("Layout " + number, room.getMinX(), top - 5.8, Face.BOLD);
            label(times + (bar.stock().isOffcut() ? ", yard" : ""), room.getMinX(), top - 10.2, Face.REGULAR);
            marks().addAll(strip.draw(new Vec2(room.getMinX() + LEFT, top)));
            marks().addAll(words.draw(new Vec2(room.getMinX() + LEFT, top - BarStrip.HEIGHT)));
            top -= height;
        }
    }

    private void heading(String words) {
        top -= HEADING_ROOM;
        marks().add(new Text(
                words, new Vec2(room.getMinX(), top + 2.5), HEADING, Text.Align.LEFT, 0, Face.BOLD, Layer.LABEL, ""));
    }

    private void label(String words, double x, double y, Face face) {
        marks().add(new Text(words, new Vec2(x, y), TEXT, Text.Align.LEFT, 0, face, Layer.LABEL, ""));
    }

    private List<Mark> marks() {
        return sheets.get(sheets.size() - 1);
    }
}
