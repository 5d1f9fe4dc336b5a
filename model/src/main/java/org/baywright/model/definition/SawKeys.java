package org.baywright.model.definition;

import java.util.List;

/** The keys of the saw and of the bars to cut. Usual values are a cold saw's, common practice, no source. */
public final class SawKeys {
    /** {@code saw}. */
    public static final KeyGroup SAW = new KeyGroup(
            "saw",
            List.of(
                    Key.mm("kerf", 0, 1000, "what one saw cut takes").usually("3"),
                    Key.mm("trim", 0, 1000, "what each bar gives up at its ends")
                            .usually("10"),
                    Key.of("stock", "list of lengths to buy; the catalogue's when left out"),
                    Key.of("yard", "list of bars already there, used first")));

    /** An entry of {@code saw.stock}. */
    public static final KeyGroup STOCK = new KeyGroup(
            "saw.stock",
            List.of(
                    Key.of("section", "of which section; of all others when left out"),
                    Key.mm("lengths", 100, 100_000, "list of the lengths that bars come in")
                            .must(),
                    Key.number(
                            "prices",
                            0.01,
                            1e6,
                            Range.Unit.NUMBER,
                            "list of a price for each length: least cost is sought instead of least length")));

    /** An entry of {@code saw.yard}. */
    public static final KeyGroup YARD = new KeyGroup(
            "saw.yard",
            List.of(
                    Key.of("section", "of which section they are").must(),
                    Key.mm("length", 100, 100_000, "of each").must(),
                    Key.count("count", 1, 10_000, "how many").usually("1")));

    /** All of them. */
    static final List<KeyGroup> ALL = List.of(SAW, STOCK, YARD);

    private SawKeys() {}
}
