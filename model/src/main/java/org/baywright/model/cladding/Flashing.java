package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;

/**
 * A folded strip that closes an edge: one folded section and every run of it.
 *
 * @param mark such as {@code F1}
 * @param kind what it closes
 * @param fold the folded section as its outside line, from edge to edge, the weather and colour side on its left, mm
 * @param stockLength of a piece
 * @param lap of one piece over the next
 * @param runs where it goes
 */
public record Flashing(String mark, Kind kind, List<Vec2> fold, double stockLength, double lap, List<Run> runs) {
    /** What a flashing closes. */
    public enum Kind {
        RIDGE("ridge"),
        BARGE("barge"),
        CORNER("corner"),
        INNER_CORNER("internal corner"),
        APRON("apron"),
        HIGH_EAVE("high eave"),
        EAVE_ANGLE("eave angle"),
        HEAD("head"),
        JAMB("jamb"),
        SILL("sill"),
        BASE("base"),
        ROOF_STEP("change of pitch");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** The trade's word. */
        public String label() {
            return label;
        }
    }

    /** From one end to the other. */
    public record Run(Vec3 from, Vec3 to) {
        /** How long it is. */
        public double length() {
            return from.distance(to);
        }

        /**
         * Pieces that it takes: each further one loses a lap.
         *
         * <p>Common practice, no source: ⌈(run − lap)/(stock − lap)⌉
         */
        public int pieces(double stockLength, double lap) {
            return Math.max(1, (int) Math.ceil((length() - lap) / (stockLength - lap) - 1e-9));
        }

        /** The lengths of those pieces: whole ones, and the last as long as is left. */
        public List<Double> strips(double stockLength, double lap) {
            int whole = pieces(stockLength, lap) - 1;
            List<Double> strips = new ArrayList<>(Collections.nCopies(whole, stockLength));
            strips.add(Math.min(stockLength, length() - whole * (stockLength - lap)));
            return strips;
        }
    }

    /** Copies the lists. */
    public Flashing {
        fold = List.copyOf(fold);
        runs = List.copyOf(runs);
    }

    /** Width of flat strip that it is folded from, bends taken sharp. */
    public double girth() {
        double sum = 0;
        for (int i = 1; i < fold.size(); i++) {
            sum += fold.get(i).distance(fold.get(i - 1));
        }
        return sum;
    }

    /** How often it is folded. */
    public int folds() {
        return fold.size() - 2;
    }

    /** Pieces that all its runs are made of. */
    public int pieces() {
        return runs.stream().mapToInt(r -> r.pieces(stockLength, lap)).sum();
    }

    /** All its runs together, net, mm. */
    public double length() {
        return runs.stream().mapToDouble(Run::length).sum();
    }
}
