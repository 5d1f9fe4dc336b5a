package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Anchor;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;

/** Adhesive and what it is put in with, electrodes, primer and touch-up zinc. */
final class ConsumablesOrder {
    private static final BillGroup GROUP = BillGroup.CONSUMABLES;

    /** Lost in the bucket and at the edges; what a bag mixes to; packers that get lost. Common practice, no source. */
    private static final double GROUT_LOSS = 0.2;

    private static final double GROUT_BAG_L = 10;
    private static final double PACKERS_SPARE = 0.1;

    /** Cold zinc for one metre of weld or site damage on galvanised rows: half a cubic centimetre to the centimetre. */
    private static final double ZINC_L_PER_M = 0.005;

    private static final double ZINC_TIN_L = 0.5;

    private ConsumablesOrder() {}

    static List<BillLine> lines(Shed shed) {
        List<BillLine> lines = new ArrayList<>();
        Adhesive adhesive = Adhesive.of(shed);
        if (adhesive.holes() > 0) {
            lines.addAll(adhesive(shed, adhesive));
            lines.addAll(bedding(shed));
        }
        Welds welds = Welds.of(shed);
        double kg = welds.electrodeKg();
        if (kg > 0) {
            int packs = welds.packs();
            lines.add(BillLine.measured(
                    GROUP,
                    BillItem.of(
                            "electrode " + Welds.ELECTRODE,
                            "low hydrogen, AS/NZS 4855, or as engineer",
                            kinds(shed, false),
                            "packs of 5 kg, sealed; " + tenth(welds.metres(6)) + " m of 6 mm and "
                                    + tenth(welds.metres(5)) + " m of 5 mm fillet"),
                    packs,
                    BillLine.Unit.KILOGRAMS,
                    kg,
                    packs * Welds.PACK_KG));
        }
        lines.addAll(coatings(shed, welds));
        return lines;
    }

    private static List<BillLine> adhesive(Shed shed, Adhesive adhesive) {
        List<String> plates =
                shed.parts(PartKind.BASE_PLATE).stream().map(Part::mark).toList();
        int used = adhesive.cartridgesUsed();
        Anchor anchor = adhesive.anchor();
        String fill = adhesive.holes() + " holes " + Math.round(anchor.holeDiameter()) + " x "
                + Math.round(anchor.embedment()) + ", two thirds full; check the expiry";
        return List.of(
                BillLine.counted(
                        GROUP,
                        BillItem.of(
                                "adhesive cartridge "
                                        + Math.round(anchor.cartridge().volumeMl()) + " mL",
                                "anchor adhesive, product as engineer",
                                plates,
                                fill),
                        used,
                        adhesive.cartridges()),
                BillLine.counted(
                        GROUP,
                        BillItem.of("mixing nozzle", "to suit the cartridge", plates, "one a cartridge, two spare"),
                        used,
                        adhesive.nozzles()),
                BillLine.counted(
                        GROUP,
                        BillItem.of(
                                "cleaning brush " + Math.round(anchor.holeDiameter()) + " mm",
                                "steel wire",
                                plates,
                                "one to 50 holes and one spare"),
                        adhesive.brushesUsed(),
                        adhesive.brushes()),
                BillLine.counted(
                        GROUP,
                        BillItem.of(
                                "blow-out pump, long nozzle",
                                "or oil-free compressed air; none with a hollow bit",
                                plates,
                                "reaches the bottom of a hole " + Math.round(anchor.embedment()) + " deep"),
                        1,
                        1),
                BillLine.counted(
                        GROUP,
                        BillItem.of(
                                "drill bit " + Math.round(anchor.holeDiameter()) + " mm",
                                "carbide, for concrete; hollow for a vacuum, or with a shroud",
                                plates,
                                "works " + Math.round(anchor.embedment()) + " deep below the plate; one spare"),
                        adhesive.bitsUsed(),
                        adhesive.bitsUsed() + 1));
    }

    /** Steel under the plates at each anchor, and the bed of grout round it. */
    private static List<BillLine> bedding(Shed shed) {
        double gap = shed.definition().plates().groutGap();
        if (gap <= 0) {
            return List.of();
        }
        List<Part> plates = shed.parts(PartKind.BASE_PLATE);
        List<String> marks = plates.stream().map(Part::mark).toList();
        double litres = plates.stream()
                .mapToDouble(p -> p.quantity()
                        * p.solid().profile().depth()
                        * p.solid().profile().width()
                        * gap
                        / 1e6)
                .sum();
        int bags = Packs.holding(litres * (1 + GROUT_LOSS), GROUT_BAG_L);
        int stacks = shed.anchorHoles().size();
        String high = Math.round(gap) + " high";
        return List.of(
                BillLine.counted(
                        GROUP,
                        BillItem.of(
                                "steel packers 40x40",
                                "2 to 10 mm thick",
                                marks,
                                "a stack at each anchor, about " + high + "; after the level of the concrete"),
                        stacks,
                        Packs.holding(stacks * (1 + PACKERS_SPARE), 1)),
                BillLine.measured(
                        GROUP,
                        BillItem.of(
                                "non-shrink grout, 20 kg bag",
                                "cementitious, or as engineer",
                                marks,
                                "a bag mixes to about 10 L; whole bed " + high),
                        bags,
                        BillLine.Unit.LITRES,
                        litres,
                        bags * GROUT_BAG_L));
    }

    private static List<BillLine> coatings(Shed shed, Welds welds) {
        Paint paint = Paint.of(shed);
        double zinc = welds.metres() * ZINC_L_PER_M;
        int tins = paint.tins();
        int zincTins = Math.max(1, Packs.holding(zinc, ZINC_TIN_L));
        List<BillLine> lines = new ArrayList<>();
        if (tins > 0) {
            lines.add(BillLine.measured(
                    GROUP,
                    BillItem.of(
                            "zinc phosphate primer",
                            "75 micron dry, one coat by brush",
                            kinds(shed, true),
                            "tins of 4 L; " + tenth(paint.areaM2()) + " m2; none when it is galvanised after welding"),
                    tins,
                    BillLine.Unit.LITRES,
                    paint.litres(),
                    tins * Paint.TIN_L));
        }
        if (shed.parts().stream().anyMatch(RowOrder::isRolled)) {
            lines.add(BillLine.measured(
                    GROUP,
                    BillItem.of(
                            "cold zinc paint",
                            "92 % zinc in the dry film",
                            kinds(shed, false),
                            "tins of 0.5 L; welds and cut or scratched zinc"),
                    zincTins,
                    BillLine.Unit.LITRES,
                    zinc,
                    zincTins * ZINC_TIN_L));
        }
        return lines;
    }

    /** The kinds of part that are painted, or that are plates welded on. */
    private static List<String> kinds(Shed shed, boolean painted) {
        return shed.parts().stream()
                .filter(p -> painted ? Paint.covers(p) : !p.kind().isMember())
                .map(p -> p.kind().label())
                .distinct()
                .toList();
    }

    private static String tenth(double value) {
        return String.valueOf(Math.round(value * 10) / 10.0);
    }
}
