package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.definition.RoofWater;
import org.baywright.model.parts.Shed;

/** Gutters in stock lengths with their ends, outlets and brackets, and downpipes with their straps. */
final class RoofWaterOrder {
    /** Lengths that gutter and downpipe are sold in. Common practice, no source. */
    private static final double GUTTER_STOCK = 6000;

    private static final double PIPE_STOCK = 1800;

    /** One gutter length over the next. Common practice, no source. */
    private static final double GUTTER_LAP = 25;

    /** Most between brackets, and between straps. Common practice, no source. */
    private static final double BRACKETS = 1000;

    private static final double STRAPS = 1500;

    /** A sloping offset from the gutter's outlet back to the wall. Common practice, no source. */
    private static final double OFFSET = 300;

    private static final BillGroup GROUP = BillGroup.ROOF_WATER;

    private RoofWaterOrder() {}

    static List<BillLine> lines(Building building) {
        List<GutterRun> runs = building.cladding().gutters();
        if (runs.isEmpty()) {
            return List.of();
        }
        RoofWater water = building.shed().definition().envelope().roofWater();
        List<String> marks = marks(runs);
        List<BillLine> lines = new ArrayList<>(gutters(runs, water, marks));
        if (pipes(runs) > 0) {
            lines.addAll(downpipes(building.shed(), runs, water, marks));
        }
        lines.addAll(spreaders(building.shed(), runs));
        return lines;
    }

    /** What bills call each gutter. */
    static List<String> marks(List<GutterRun> runs) {
        return runs.stream().map(RoofWaterOrder::mark).distinct().toList();
    }

    private static String mark(GutterRun run) {
        return "gutter line " + run.slope().line().letter();
    }

    private static int pieces(GutterRun run) {
        return Math.max(1, (int) Math.ceil((run.length() - GUTTER_LAP) / (GUTTER_STOCK - GUTTER_LAP) - 1e-9));
    }

    static int joints(List<GutterRun> runs) {
        return runs.stream().mapToInt(r -> pieces(r) - 1).sum();
    }

    static int pipes(List<GutterRun> runs) {
        return runs.stream().mapToInt(r -> r.downpipes().size()).sum();
    }

    private static List<BillLine> gutters(List<GutterRun> runs, RoofWater water, List<String> marks) {
        int pieces = runs.stream().mapToInt(RoofWaterOrder::pieces).sum();
        double net = runs.stream().mapToDouble(GutterRun::length).sum() / 1000;
        int brackets = runs.stream()
                .mapToInt(r -> (int) Math.ceil(r.length() / BRACKETS - 1e-9) + 1)
                .sum();
        BillItem gutter = new BillItem(
                water.gutter().name(), "", GUTTER_STOCK, marks, "falls 1 in " + Math.round(water.fallOneIn()));
        BillItem bracket =
                BillItem.of("gutter bracket", "to suit the gutter", marks, "at 1000 at most, set to the fall");
        return List.of(
                BillLine.measured(GROUP, gutter, pieces, BillLine.Unit.METRES, net, pieces * GUTTER_STOCK / 1000),
                BillLine.counted(GROUP, bracket, brackets, brackets),
                BillLine.counted(
                        GROUP,
                        BillItem.of("gutter stop end", "to suit the gutter", marks, "two to a run, left and right"),
                        2 * runs.size(),
                        2 * runs.size()));
    }

    /** Pipes that end on a lean-to's roof spill on to its sheets. */
    private static List<BillLine> spreaders(Shed shed, List<GutterRun> runs) {
        List<GutterRun> above =
                runs.stream().filter(r -> !r.ontoLeanTos(shed).isEmpty()).toList();
        int pipes = above.stream().mapToInt(r -> r.ontoLeanTos(shed).size()).sum();
        BillItem spreader = BillItem.of(
                "downpipe spreader", "to suit the downpipe", marks(above), "one a pipe that ends on a lean-to's roof");
        return pipes == 0 ? List.of() : List.of(BillLine.counted(GROUP, spreader, pipes, pipes));
    }

    private static List<BillLine> downpipes(Shed shed, List<GutterRun> runs, RoofWater water, List<String> marks) {
        double depth = water.gutter().depth();
        List<Double> drops = runs.stream()
                .flatMap(r -> r.downpipes().stream().map(p -> Math.max(p.z() - depth - r.foot(shed, p), 0) + OFFSET))
                .toList();
        double net = drops.stream().mapToDouble(d -> d).sum() / 1000;
        int lengths = drops.stream()
                .mapToInt(d -> Math.max(1, (int) Math.ceil(d / PIPE_STOCK - 1e-9)))
                .sum();
        int straps = drops.stream()
                .mapToInt(d -> Math.max(2, (int) Math.ceil(d / STRAPS - 1e-9) + 1))
                .sum();
        int pipes = drops.size();
        BillItem pipe = new BillItem(
                water.downpipe().name(),
                "",
                PIPE_STOCK,
                marks,
                pipes + (pipes == 1 ? " downpipe" : " downpipes")
                        + "; each from the gutter to the floor, or to a lean-to's roof below it, with an offset");
        return List.of(
                BillLine.measured(GROUP, pipe, lengths, BillLine.Unit.METRES, net, lengths * PIPE_STOCK / 1000),
                BillLine.counted(
                        GROUP, BillItem.of("gutter outlet", "to suit the downpipe", marks, "one a pipe"), pipes, pipes),
                BillLine.counted(
                        GROUP,
                        BillItem.of("downpipe strap", "galvanised", marks, "at 1500 at most, two a pipe at least"),
                        straps,
                        straps),
                BillLine.counted(
                        GROUP,
                        BillItem.of("downpipe bend", "to suit the downpipe", marks, "two a pipe, for the offset"),
                        2 * pipes,
                        2 * pipes));
    }
}
