package org.baywright.model.catalogue;

import java.util.List;

/**
 * The lengths of bar a merchant sells.
 *
 * @param family the sections sold so
 * @param usualMm the length most often in stock
 * @param lengthsMm every length, shortest first, the usual one among them
 * @param source where the row comes from
 */
public record StockLengths(Family family, double usualMm, List<Double> lengthsMm, String source) {
    /** Copies the list, and checks it. */
    public StockLengths {
        lengthsMm = List.copyOf(lengthsMm);
        if (!lengthsMm.contains(usualMm) || lengthsMm.stream().anyMatch(length -> !(length > 0))) {
            throw new IllegalArgumentException("stock lengths are above zero and include the usual one");
        }
        if (!lengthsMm.stream().sorted().toList().equals(lengthsMm)) {
            throw new IllegalArgumentException("stock lengths come shortest first");
        }
    }
}
