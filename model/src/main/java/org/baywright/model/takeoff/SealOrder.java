package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Cladding;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.RoofWater;

/** Rivets, sealant and closure strips: what makes laps and profile ends tight. */
final class SealOrder {
    /** @source lap of flashings sealed, rivets at 50: common practice */
    private static final double RIVETS = 50;

    private static final double SPARE = 0.1;
    private static final int BOX = 100;

    /** Two beads of 6 mm across each lap. Common practice, no source. */
    private static final int BEADS = 2;

    /** Sealant in a metre of a bead 6 mm round: π/4 · 6², mL. */
    private static final double BEAD_ML_PER_M = Math.PI / 4 * 6 * 6;

    private static final double TUBE_ML = 300;

    /** Flashings over the ends of sheets, and how many rows of closures are under them. */
    private static final Set<Flashing.Kind> CLOSED =
            Set.of(Flashing.Kind.RIDGE, Flashing.Kind.APRON, Flashing.Kind.HIGH_EAVE, Flashing.Kind.ROOF_STEP);

    private SealOrder() {}

    static List<BillLine> lines(Building building) {
        Cladding cladding = building.cladding();
        List<String> marks = new ArrayList<>(
                cladding.flashings().stream().map(Flashing::mark).toList());
        marks.addAll(RoofWaterOrder.marks(cladding.gutters()));
        RoofWater.Gutter gutter =
                building.shed().definition().envelope().roofWater().gutter();
        double across = gutter.width() + 2 * gutter.depth();
        int joints = RoofWaterOrder.joints(cladding.gutters());
        int ends = joints + 2 * cladding.gutters().size();
        int rivets = cladding.flashings().stream()
                        .mapToInt(f -> new FlashingLengths(f).laps() * ((int) Math.ceil(f.girth() / RIVETS) + 1))
                        .sum()
                + joints * ((int) Math.ceil(across / RIVETS) + 1);
        double beadM = BEADS
                * (cladding.flashings().stream()
                                .mapToDouble(f -> new FlashingLengths(f).laps() * f.girth())
                                .sum()
                        + ends * across)
                / 1000;
        List<BillLine> lines = new ArrayList<>();
        if (rivets > 0) {
            int order = Packs.count(rivets, SPARE, BOX);
            lines.add(BillLine.counted(
                    BillGroup.FIXINGS,
                    BillItem.of("blind rivet 4.0x10, sealed", "to suit the sheets", marks, "laps at 50; boxes of 100"),
                    rivets,
                    order));
        }
        if (beadM > 0) {
            double net = beadM * BEAD_ML_PER_M / TUBE_ML;
            int tubes = Packs.holding(net * (1 + SPARE), 1);
            lines.add(BillLine.counted(
                    BillGroup.FIXINGS,
                    BillItem.of(
                            "neutral-cure silicone sealant 300 mL",
                            "for coated steel",
                            marks,
                            "two beads of 6 across every lap, gutter joint and stop end"),
                    (int) Math.ceil(net),
                    Math.max(tubes, (int) Math.ceil(net))));
        }
        lines.addAll(closures(cladding));
        return lines;
    }

    private static List<BillLine> closures(Cladding cladding) {
        List<Flashing> closed = cladding.flashings().stream()
                .filter(f -> CLOSED.contains(f.kind()))
                .toList();
        List<Surface> roofs = cladding.surfaces(Surface.Role.ROOF);
        double run = closed.stream()
                .mapToDouble(f -> f.length() * (f.kind() == Flashing.Kind.RIDGE ? 2 : 1))
                .sum();
        if (run == 0 || roofs.isEmpty()) {
            return List.of();
        }
        double cover = roofs.get(0).profile().cover();
        int net = Packs.holding(run, cover);
        return List.of(BillLine.counted(
                BillGroup.FIXINGS,
                BillItem.of(
                        "closure strip for " + roofs.get(0).profile().name(),
                        "closed-cell foam",
                        closed.stream().map(Flashing::mark).toList(),
                        "one a sheet's cover; a ridge has two rows"),
                net,
                (int) Math.ceil(net * (1 + SPARE))));
    }
}
