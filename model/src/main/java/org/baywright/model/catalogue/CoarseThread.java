package org.baywright.model.catalogue;

import java.util.NavigableMap;
import java.util.TreeMap;

/** Metric coarse threads. @source pitches of ISO 261, from memory */
public final class CoarseThread {
    private static final NavigableMap<Double, Double> PITCHES = new TreeMap<>();

    static {
        double[][] rows = {
            {6, 1},
            {8, 1.25},
            {10, 1.5},
            {12, 1.75},
            {16, 2},
            {22, 2.5},
            {27, 3},
            {33, 3.5},
            {39, 4},
            {45, 4.5},
            {52, 5},
            {60, 5.5},
            {68, 6}
        };
        for (double[] row : rows) {
            PITCHES.put(row[0], row[1]);
        }
    }

    private CoarseThread() {}

    /**
     * What the thread leaves of a rod, mm²: π/4 · (d − 0.9382 · pitch)².
     *
     * @source ISO 898-1, from memory; 84.3, 157 and 245 mm² for M12, M16 and M20
     */
    public static double stressArea(double diameter) {
        double pitch = PITCHES.ceilingEntry(diameter).getValue();
        double core = diameter - 0.9382 * pitch;
        return Math.PI / 4 * core * core;
    }
}
