package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.baywright.model.catalogue.Section;
import org.baywright.model.cutting.Stock;
import org.baywright.model.nesting.LaidBar;
import org.baywright.model.nesting.SectionCuts;
import org.baywright.model.nesting.ShedCutting;

/** The bars to buy for the members, section by section: those of the cutting plan, and no others. */
final class SteelOrder {
    private static final String MILL_LENGTH = "mill length, black";
    private static final String SPECIAL =
            "longer than the stock lengths: ask for this length; a splice is the engineer's decision";

    private SteelOrder() {}

    static List<BillLine> lines(ShedCutting cutting) {
        List<BillLine> lines = new ArrayList<>();
        cutting.sections().forEach(cuts -> lines.addAll(lines(cuts)));
        return lines;
    }

    /** A line a length, longest first; bars longer than any stock length after the others. */
    private static List<BillLine> lines(SectionCuts cuts) {
        Map<Stock, List<LaidBar>> usual = new TreeMap<>(Comparator.comparingDouble((Stock s) -> -s.lengthMm()));
        List<BillLine> special = new ArrayList<>();
        for (LaidBar bar : cuts.bars()) {
            if (cuts.isSpecial(bar)) {
                special.add(line(cuts.section(), List.of(bar), SPECIAL));
            } else if (!bar.stock().isOffcut()) {
                usual.computeIfAbsent(bar.stock(), s -> new ArrayList<>()).add(bar);
            }
        }
        List<BillLine> lines = new ArrayList<>();
        usual.values().forEach(bars -> lines.add(line(cuts.section(), bars, MILL_LENGTH)));
        lines.addAll(special);
        return lines;
    }

    private static BillLine line(Section section, List<LaidBar> bars, String note) {
        int count = bars.stream().mapToInt(LaidBar::times).sum();
        double length = bars.get(0).stock().lengthMm();
        double net = bars.stream().mapToDouble(b -> b.piecesMm() * b.times()).sum() / 1000;
        double order = count * length / 1000;
        List<String> marks = bars.stream()
                .flatMap(b -> b.pieces().stream())
                .map(p -> p.blank().mark())
                .distinct()
                .sorted(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
                .toList();
        BillItem item = new BillItem(section.designation(), section.grade(), length, marks, note);
        return new BillLine(
                BillGroup.STOCK, item, count, BillLine.Unit.METRES, net, order - net, order * section.massKgPerM());
    }
}
