package org.baywright.model.takeoff;

import java.util.List;

/**
 * Something that is lifted in one piece.
 *
 * @param kind how it is made up
 * @param marks what it is
 * @param places frames or bays it is lifted at; empty where its mark says enough
 * @param count how many such lifts
 * @param massKg of one, steel of the model without welds, bolts and zinc
 * @param balance where it hangs level
 * @param height of its highest point when it is in place, above the finished floor
 */
public record Lift(
        Kind kind, String marks, List<Integer> places, int count, double massKg, Balance balance, double height) {
    /** One person lifts no more. Common practice, no source. */
    public static final double BY_HAND_KG = 25;

    /** Welds and zinc on the steel of the model. @source welds 3 %: trade practice; zinc 5 %: from memory */
    private static final double WELDS_AND_ZINC = 1.08;

    /** How a lift is made up. */
    public enum Kind {
        /** Columns and rafters of a frame, bolted together. */
        FRAME,
        /** Two rafters bolted at the ridge. */
        RAFTER_PAIR,
        /** A member with what is welded to it. */
        PIECE,
        /** The rows of one slope or side wall in a bay, bundled. */
        PACK,
        /** The girts of an end wall, bundled. */
        END_PACK
    }

    /**
     * Centre of gravity.
     *
     * @param along from the tip at the marked end of a piece or row; from line A across the building otherwise
     * @param up above the underside of the base plates of a frame, above the lowest point of a pair; zero otherwise
     */
    public record Balance(double along, double up) {}

    /** Copies the list. */
    public Lift {
        places = List.copyOf(places);
    }

    /** What to lift it as: with welds and zinc, in whole kilograms. */
    public long liftedKg() {
        return (long) Math.ceil(massKg * WELDS_AND_ZINC - 1e-9);
    }

    /** Whether it is more than one person lifts. */
    public boolean isHeavy() {
        return liftedKg() > BY_HAND_KG;
    }
}
