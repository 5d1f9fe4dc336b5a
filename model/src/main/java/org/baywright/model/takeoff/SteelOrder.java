package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;
import org.baywright.model.parts.Material;
import org.baywright.model.parts.Part;

/** The bars to buy for the members, section by section. */
final class SteelOrder {
    private SteelOrder() {}

    static List<BillLine> lines(List<Part> members) {
        Map<Section, List<Part>> bySection = new LinkedHashMap<>();
        for (Part part : members) {
            if (part.material() instanceof Material.Bar bar) {
                bySection.computeIfAbsent(bar.section(), s -> new ArrayList<>()).add(part);
            }
        }
        List<BillLine> lines = new ArrayList<>();
        bySection.forEach((section, parts) -> lines.addAll(lines(section, parts)));
        return lines;
    }

    /** What fits a stock length is bought so; a longer piece is ordered by itself, and never spliced here. */
    private static List<BillLine> lines(Section section, List<Part> parts) {
        List<Double> stock = Catalogue.shipped().stockLengths(section).lengthsMm();
        double longest = Collections.max(stock) - StockBars.TRIM;
        List<BillLine> lines = new ArrayList<>();
        List<Part> fitting =
                parts.stream().filter(p -> p.stockLength() <= longest).toList();
        if (!fitting.isEmpty()) {
            lines.add(bars(section, fitting, StockBars.least(stock, lengths(fitting)), "mill length, black"));
        }
        for (Part part : parts) {
            if (part.stockLength() > longest) {
                StockBars special =
                        new StockBars(Math.ceil((part.stockLength() + StockBars.TRIM) / 10) * 10, part.quantity());
                lines.add(bars(
                        section,
                        List.of(part),
                        special,
                        "longer than the stock lengths: ask for this length; a splice is the engineer's decision"));
            }
        }
        return lines;
    }

    private static List<Double> lengths(List<Part> parts) {
        List<Double> all = new ArrayList<>();
        parts.forEach(p -> all.addAll(Collections.nCopies(p.quantity(), p.stockLength())));
        return all;
    }

    private static BillLine bars(Section section, List<Part> parts, StockBars bars, String note) {
        double net = lengths(parts).stream().mapToDouble(l -> l).sum() / 1000;
        double order = bars.totalMm() / 1000;
        BillItem item = new BillItem(
                section.designation(),
                section.grade(),
                bars.lengthMm(),
                parts.stream().map(Part::mark).toList(),
                note);
        return new BillLine(
                BillGroup.STOCK,
                item,
                bars.bars(),
                BillLine.Unit.METRES,
                net,
                order - net,
                order * section.massKgPerM());
    }
}
