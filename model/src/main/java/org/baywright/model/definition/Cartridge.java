package org.baywright.model.definition;

import java.util.Comparator;
import java.util.List;

/**
 * The adhesive as it is bought.
 *
 * @param volumeMl what the cartridge is sold as holding
 * @param primingMl what each new nozzle takes before the colour is even
 * @param cure by temperature of the concrete, coldest first
 * @param example whether the times are ours, not those of the user's label
 */
public record Cartridge(double volumeMl, double primingMl, List<CureTime> cure, boolean example) {
    /**
     * Times of one product.
     *
     * @source curing: pure-epoxy anchor data sheet, dry and wet hole at 5, 10, 20, 30 and 40 degrees; workable: the same,
     *     two hours when cold and twelve minutes when hot, evenly falling in ratio between (ours)
     */
    private static final List<CureTime> EXAMPLE = List.of(
            new CureTime(5, 120, 50, 100),
            new CureTime(10, 86, 30, 60),
            new CureTime(20, 45, 10, 20),
            new CureTime(30, 23, 6, 12),
            new CureTime(40, 12, 4, 8));

    /** Puts the coldest first. */
    public Cartridge {
        cure = cure.stream()
                .sorted(Comparator.comparingDouble(CureTime::concreteC))
                .toList();
        if (!(primingMl < volumeMl) || cure.isEmpty()) {
            throw new IllegalArgumentException("a cartridge holds more than its nozzle takes, and cures in some time");
        }
    }

    /** A cartridge with the times of our example. */
    public static Cartridge example(double volumeMl, double primingMl) {
        return new Cartridge(volumeMl, primingMl, EXAMPLE, true);
    }
}
