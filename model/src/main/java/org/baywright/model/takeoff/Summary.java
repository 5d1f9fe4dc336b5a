package org.baywright.model.takeoff;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.Shape;
import org.baywright.model.definition.Side;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;

/**
 * The headline figures of a shed, by name, in reading order. Names carry their unit.
 *
 * @param figures name to number
 */
public record Summary(Map<String, Number> figures) {
    /** Keeps the order. */
    public Summary {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }

    /** The figures of a building. */
    public static Summary of(Building building) {
        Map<String, Number> figures = new LinkedHashMap<>(of(building.shed()).figures);
        Map<String, Number> more = new LinkedHashMap<>();
        if (building.shed().definition().envelope().isFull()) {
            more.putAll(EnvelopeFigures.of(building));
        }
        more.putAll(EnvelopeFigures.ofGround(building.shed()));
        more.forEach(
                (name, value) -> figures.put(name, value instanceof Integer ? value : rounded(value.doubleValue(), 3)));
        return new Summary(figures);
    }

    /**
     * The same figures with what the building costs, and how many lines of its bill have no price. While any has none
     * there is no total, but what the priced lines cost.
     */
    public Summary with(Costs costs) {
        Map<String, Number> all = new LinkedHashMap<>(figures);
        all.put(costs.unpricedLines() == 0 ? "totalCost" : "costOfPricedLines", costs.total());
        all.put("unpricedLines", costs.unpricedLines());
        return new Summary(all);
    }

    /** The figures of a shed. */
    public static Summary of(Shed shed) {
        Map<String, Number> figures = new LinkedHashMap<>();
        sizes(shed, figures);
        heights(shed, figures);
        counts(shed, figures);
        masses(shed, figures);
        return new Summary(figures);
    }

    /** One figure. */
    public double get(String name) {
        return figures.get(name).doubleValue();
    }

    private static void sizes(Shed shed, Map<String, Number> to) {
        SetOut setOut = shed.setOut();
        double main = setOut.span() * setOut.length() / 1e6;
        double leanTos = shed.definition().leanTos().stream()
                .mapToDouble(l -> area(l, setOut))
                .sum();
        to.put("spanMm", setOut.span());
        to.put("lengthMm", setOut.length());
        to.put("centreToCentreMm", setOut.span() - columns(shed) / 2);
        to.put("clearBetweenColumnsMm", setOut.span() - columns(shed));
        to.put("floorAreaM2", rounded(main + leanTos, 3));
        to.put("mainFloorAreaM2", rounded(main, 3));
        to.put("leanToFloorAreaM2", rounded(leanTos, 3));
    }

    /** The most that the two main columns of any frame take of the span. */
    private static double columns(Shed shed) {
        return IntStream.rangeClosed(1, shed.setOut().frames())
                .mapToDouble(frame -> Stream.of(Side.values())
                        .mapToDouble(side -> shed.setOut()
                                .main(side)
                                .column(shed.definition(), frame)
                                .depth())
                        .sum())
                .max()
                .orElseThrow();
    }

    /** Between the lines of its first and last frame. */
    private static double area(LeanTo leanTo, SetOut setOut) {
        double length = setOut.frameLine(leanTo.lastFrame()) - setOut.frameLine(leanTo.firstFrame());
        return leanTo.width() * length / 1e6;
    }

    private static void heights(Shed shed, Map<String, Number> to) {
        Definition definition = shed.definition();
        Shape shape = definition.shape();
        SetOut setOut = shed.setOut();
        to.put("roofPitchDeg", shape.roofPitchDeg());
        to.put("eaveHeightMm", rounded(setOut.main(Side.LEFT).eaveHeight(), 1));
        to.put("rightEaveHeightMm", rounded(setOut.main(Side.RIGHT).eaveHeight(), 1));
        to.put("apexHeightMm", rounded(setOut.apexHeight(), 1));
        to.put("clearUnderRafterMm", rounded(clearUnderRafter(shed), 1));
        for (ColumnLine line : setOut.leanTos()) {
            String side = line.side() == Side.LEFT ? "left" : "right";
            to.merge(side + "LeanToEaveHeightMm", rounded(line.eaveHeight(), 1), Summary::lower);
        }
    }

    private static Number lower(Number a, Number b) {
        return Math.min(a.doubleValue(), b.doubleValue());
    }

    /** The lowest underside of a main rafter, projected to the column's outside face as the eave height is. */
    private static double clearUnderRafter(Shed shed) {
        return IntStream.rangeClosed(1, shed.setOut().frames())
                .boxed()
                .flatMap(frame -> Stream.of(Side.values()).map(side -> clearUnderRafter(shed, frame, side)))
                .min(Double::compare)
                .orElseThrow();
    }

    private static double clearUnderRafter(Shed shed, int frame, Side side) {
        ColumnLine line = shed.setOut().main(side);
        return line.heightBelowRoof(line.rafter(shed.definition(), frame).depth());
    }

    private static void counts(Shed shed, Map<String, Number> to) {
        to.put("bays", shed.definition().shape().bays());
        to.put("frames", shed.setOut().frames());
        to.put("columns", shed.count(PartKind.COLUMN));
        to.put("rafters", shed.count(PartKind.RAFTER));
        to.put("leanToColumns", shed.count(PartKind.LEAN_TO_COLUMN));
        to.put("leanToRafters", shed.count(PartKind.LEAN_TO_RAFTER));
        to.put("basePlates", shed.count(PartKind.BASE_PLATE));
        int anchors = shed.anchorHoles().size();
        to.put("anchors", anchors);
        to.put("anchorDrillingM", rounded(Adhesive.of(shed).drillingM(), 3));
    }

    private static void masses(Shed shed, Map<String, Number> to) {
        to.put("steelMassKg", rounded(mass(shed, true) + mass(shed, false), 1));
        to.put("memberMassKg", rounded(mass(shed, true), 1));
        to.put("plateMassKg", rounded(mass(shed, false), 1));
        to.put("paintedAreaM2", rounded(Paint.of(shed).areaM2(), 1));
    }

    private static double mass(Shed shed, boolean members) {
        return shed.parts().stream()
                .filter(p -> p.kind().isMember() == members)
                .mapToDouble(Part::totalMassKg)
                .sum();
    }

    private static double rounded(double value, int places) {
        double scale = Math.pow(10, places);
        return Math.round(value * scale) / scale;
    }
}
