package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Purlins;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.SetOut;

/**
 * Where the lengths of a slope's rows start, end and are bolted, bay by bay along the building.
 *
 * @param definition what was asked for
 * @param setOut lines of the building
 * @param rows the rows of the slope
 */
record RowBays(Definition definition, SetOut setOut, RoofRows rows) {
    /** Both sides of a lap together are no shorter. From memory. */
    private static final double LEAST_LAP = 600;

    /** From the end of a length to its last bolts. Common practice, no source. */
    static final double TO_BOLTS = 50;

    /** Half of what is left between two lengths that butt on a cleat. Common practice, no source. */
    private static final double HALF_GAP = 5;

    /** From the joint of two butted lengths to the bolts of each. Common practice, no source. */
    static final double BUTT_BOLTS = 45;

    /** Bridging rows increase by one for each of these lengths of bay. Common practice, no source. */
    private static final double BRIDGED = 3000;

    private boolean lapped() {
        return rows.stand().isLapped();
    }

    int first() {
        return rows.slope().firstFrame();
    }

    int last() {
        return rows.slope().lastFrame();
    }

    /** The bays under the slope, each by its first frame. */
    IntStream bays() {
        return IntStream.range(first(), last());
    }

    boolean isEnd(int frame) {
        return frame == first() || frame == last();
    }

    private double bay(int bay) {
        return setOut.frameLine(bay + 1) - setOut.frameLine(bay);
    }

    /** The middle of the rafters at a frame, along the building. */
    double middle(int frame) {
        return setOut.rafterMiddle(definition, rows.slope().line(), frame);
    }

    /**
     * How far lapped lengths reach past a frame to either side: half of the lap. Two laps never meet in one bay.
     *
     * @source a lap of 15 % of the bay: common practice; the longer bay counts
     */
    double halfLap(int frame) {
        return halfLap(definition, setOut, frame);
    }

    /** The same for girts, which lap as purlins do. */
    static double halfLap(Definition definition, SetOut setOut, int frame) {
        double before = setOut.frameLine(frame) - setOut.frameLine(frame - 1);
        double after = setOut.frameLine(frame + 1) - setOut.frameLine(frame);
        double shorter = Math.min(before, after);
        double usual = definition.envelope().purlins().lapShare() * Math.max(before, after) / 2;
        return Math.min(Math.max(LEAST_LAP / 2, usual), shorter / 2 - TO_BOLTS);
    }

    /** Where the length of a bay starts along the building. */
    double start(int bay) {
        if (bay == first()) {
            return rows.from();
        }
        return setOut.frameLine(bay) + (lapped() ? -halfLap(bay) : HALF_GAP);
    }

    /** Where the length of a bay ends along the building. */
    double end(int bay) {
        int frame = bay + 1;
        if (frame == last()) {
            return rows.to();
        }
        return setOut.frameLine(frame) + (lapped() ? halfLap(frame) : -HALF_GAP);
    }

    /** Every second length of lapped rows lies a thickness lower, beside its neighbours. */
    double aside(int bay) {
        return lapped() && (bay - first()) % 2 == 1 ? rows.stand().web() : 0;
    }

    /** Where the bridging of a bay stands along the building. */
    DoubleStream bridging(int bay) {
        int n = bridgingRows(bay);
        double from = setOut.frameLine(bay);
        return IntStream.rangeClosed(1, n).mapToDouble(i -> from + bay(bay) * i / (n + 1));
    }

    /** @source none to 3 m, one to 6 m, two to 9 m: common practice; only sections with a web are bridged */
    private int bridgingRows(int bay) {
        Purlins purlins = definition.envelope().purlins();
        OptionalInt asked = purlins.bridging();
        if (!(rows.stand().web() > 0)) {
            return 0;
        }
        return asked.orElse((int) Math.ceil(bay(bay) / BRIDGED - 1e-9) - 1);
    }

    /** Where the length of a bay has a pair of bolt holes, along the building, in order. */
    List<Double> bolts(int bay) {
        List<Double> at = new ArrayList<>(supportBolts(bay, bay, 1));
        bridging(bay).forEach(at::add);
        at.addAll(supportBolts(bay, bay + 1, -1));
        return at.stream().sorted().toList();
    }

    /** On the cleat, and where it laps at both ends of the lap. */
    private List<Double> supportBolts(int bay, int frame, int intoBay) {
        if (isEnd(frame)) {
            return List.of(middle(frame));
        }
        double line = setOut.frameLine(frame);
        if (!lapped()) {
            return List.of(line + intoBay * BUTT_BOLTS);
        }
        double toBolts = halfLap(frame) - TO_BOLTS;
        return List.of(line - toBolts, line, line + toBolts);
    }
}
