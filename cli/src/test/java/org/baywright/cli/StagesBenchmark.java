package org.baywright.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.DefinitionReader;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.Summary;
import org.baywright.render.output.PdfWriter;
import org.baywright.render.sheet.DrawingSet;
import org.baywright.render.sheet.OrderSet;
import org.baywright.render.sheet.SheetSet;

/**
 * Prints the time of each stage for sheds from small to the largest: first run, then the best of several.
 *
 * <pre>
 * java -cp cli/target/baywright.jar:cli/target/test-classes org.baywright.cli.StagesBenchmark
 * </pre>
 */
public final class StagesBenchmark {
    private static final int RUNS = 5;

    private StagesBenchmark() {}

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        System.out.printf(
                Locale.ROOT, "%-28s %10s %10s %10s %10s %10s%n", "ms", "read", "model", "take-off", "drawing", "PDF");
        for (int bays : new int[] {1, 6, 40, 200}) {
            List<Map<String, Double>> runs = new ArrayList<>();
            for (int i = 0; i < (bays == 200 ? 3 : RUNS); i++) {
                runs.add(once(text(bays)));
            }
            print(bays + " bays, first run", runs.get(0));
            Map<String, Double> best = new LinkedHashMap<>(runs.get(0));
            runs.forEach(run -> run.forEach((stage, ms) -> best.merge(stage, ms, Math::min)));
            print(bays + " bays, best", best);
        }
    }

    private static String text(int bays) {
        return "span: 12000\nbays: " + bays + "\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
                + "leanTos: [{side: left, width: 4000}, {side: right, width: 5000}]\n";
    }

    private static Map<String, Double> once(String text) throws IOException {
        Map<String, Double> times = new LinkedHashMap<>();
        long[] clock = {System.nanoTime()};
        Definition definition = DefinitionReader.read("benchmark", text, List.of(), Catalogue.shipped())
                .definition()
                .orElseThrow();
        lap(times, "read", clock);
        Building building = Building.of(definition);
        lap(times, "model", clock);
        Bill bill = Bill.of(building);
        Summary.of(building);
        lap(times, "take-off", clock);
        SheetSet drawings = DrawingSet.of(building, bill);
        SheetSet order = OrderSet.of(building, bill);
        lap(times, "drawing", clock);
        PdfWriter.write(drawings, OutputStream.nullOutputStream());
        PdfWriter.write(order, OutputStream.nullOutputStream());
        lap(times, "PDF", clock);
        return times;
    }

    private static void lap(Map<String, Double> times, String stage, long[] clock) {
        long now = System.nanoTime();
        times.put(stage, (now - clock[0]) / 1e6);
        clock[0] = now;
    }

    private static void print(String what, Map<String, Double> times) {
        System.out.printf(Locale.ROOT, "%-28s", what);
        times.values().forEach(ms -> System.out.printf(Locale.ROOT, " %10.1f", ms));
        System.out.println();
    }
}
