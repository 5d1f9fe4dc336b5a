package org.baywright.model.cutting;

import java.util.Objects;

/**
 * Equal pieces to be cut.
 *
 * @param mark what is written on them; may be empty
 * @param lengthMm length along the bar; for mitred pieces the edge length, see {@link Mitre}
 * @param quantity how many, at least one
 * @param mitre the slope of their ends
 * @param setbacks of their ends, for a {@link Closing}; planning leaves them alone
 */
public record Piece(String mark, double lengthMm, int quantity, Mitre mitre, Setbacks setbacks) {
    /** Checks the ranges. */
    public Piece {
        Objects.requireNonNull(mark);
        Objects.requireNonNull(mitre);
        Objects.requireNonNull(setbacks);
        if (!(lengthMm >= 0.001 && lengthMm <= Stock.LONGEST_MM)) {
            throw new IllegalArgumentException("a piece's length must be over 0 and under 1 km: " + lengthMm);
        }
        if (quantity < 1) {
            throw new IllegalArgumentException("a piece's quantity must be 1 or more: " + quantity);
        }
    }

    /** Pieces of a mitre. */
    public Piece(String mark, double lengthMm, int quantity, Mitre mitre) {
        this(mark, lengthMm, quantity, mitre, Setbacks.NONE);
    }

    /** Square pieces without a mark. */
    public static Piece square(double lengthMm, int quantity) {
        return new Piece("", lengthMm, quantity, Mitre.SQUARE);
    }

    /** Square pieces with a mark. */
    public static Piece square(String mark, double lengthMm, int quantity) {
        return new Piece(mark, lengthMm, quantity, Mitre.SQUARE);
    }
}
