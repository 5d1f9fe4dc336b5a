package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.parts.Turnbuckle;

/** Turnbuckles, one for every two rods. */
final class TurnbuckleOrder {
    private TurnbuckleOrder() {}

    static List<BillLine> lines(Shed shed) {
        Map<String, List<Part>> bySize = new LinkedHashMap<>();
        shed.parts(PartKind.BRACE).stream()
                .filter(Part::isRod)
                .forEach(p -> bySize.computeIfAbsent(Turnbuckle.on(p).size(), k -> new ArrayList<>())
                        .add(p));
        return bySize.entrySet().stream()
                .map(e -> line(e.getKey(), e.getValue()))
                .toList();
    }

    private static BillLine line(String size, List<Part> rods) {
        int net = rods.stream().mapToInt(Part::quantity).sum() / 2;
        String note = "left- and right-hand thread, with two lock nuts; rods threaded for "
                + Math.round(Turnbuckle.on(rods.get(0)).thread()) + ", left-hand on the longer of a brace";
        return BillLine.counted(
                BillGroup.FIXINGS,
                BillItem.of(
                        "turnbuckle " + size,
                        "galvanised, or as engineer",
                        rods.stream().map(Part::mark).toList(),
                        note),
                net,
                net);
    }
}
