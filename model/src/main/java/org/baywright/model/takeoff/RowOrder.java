package org.baywright.model.takeoff;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Family;
import org.baywright.model.parts.Material;
import org.baywright.model.parts.Part;

/** Purlins, girts and other cold-formed lengths: rolled, punched and bundled by the mill, so nothing is cut off. */
final class RowOrder {
    private RowOrder() {}

    /** Whether a part is rolled to length rather than cut from a stock bar. */
    static boolean isRolled(Part part) {
        return part.material() instanceof Material.Bar bar && Family.of(bar.section()) == Family.PURLIN;
    }

    /** One line a mark, section by section, longest first. */
    static List<BillLine> lines(List<Part> parts) {
        return parts.stream()
                .filter(RowOrder::isRolled)
                .sorted(Comparator.comparing((Part p) -> p.material().designation())
                        .thenComparing(
                                Comparator.comparingDouble(Part::stockLength).reversed()))
                .map(RowOrder::line)
                .toList();
    }

    private static BillLine line(Part part) {
        double metres = part.quantity() * part.stockLength() / 1000;
        BillItem item = new BillItem(
                part.material().designation(),
                part.material().grade(),
                part.stockLength(),
                List.of(part.mark()),
                part.kind().label() + ", " + punching(part) + tooLong(part));
        return new BillLine(BillGroup.ROWS, item, part.quantity(), BillLine.Unit.METRES, metres, 0, part.totalMassKg());
    }

    private static String punching(Part part) {
        return part.punched().isEmpty()
                ? "unpunched"
                : "punched in pairs at "
                        + part.punched().stream().map(RowOrder::tenths).collect(Collectors.joining(", "))
                        + " from the marked end";
    }

    private static String tenths(double mm) {
        double rounded = Math.round(mm * 10) / 10.0;
        return rounded == Math.rint(rounded)
                ? String.valueOf((long) rounded)
                : String.format(Locale.ROOT, "%.1f", rounded);
    }

    private static String tooLong(Part part) {
        Material.Bar bar = (Material.Bar) part.material();
        double longest =
                Collections.max(Catalogue.shipped().stockLengths(bar.section()).lengthsMm());
        return part.stockLength() > longest ? "; longer than usual: ask whether it can be rolled and carried" : "";
    }
}
