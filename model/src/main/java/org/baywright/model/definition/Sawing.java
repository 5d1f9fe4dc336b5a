package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import org.baywright.model.catalogue.Section;

/**
 * What bars are cut from, and what the saw takes.
 *
 * @param kerf of one cut
 * @param trim of each bar at its ends
 * @param lengths to buy
 * @param yard bars already there
 */
public record Sawing(double kerf, double trim, List<Lengths> lengths, List<YardBars> yard) {
    /** Copies the lists. */
    public Sawing {
        lengths = List.copyOf(lengths);
        yard = List.copyOf(yard);
    }

    /**
     * Lengths that bars come in.
     *
     * @param section of which; empty for every section that is not named
     * @param mm the lengths
     * @param prices one for each, or none
     */
    public record Lengths(Optional<Section> section, List<Double> mm, List<Double> prices) {
        /** Copies the lists; prices are for all or none. */
        public Lengths {
            mm = List.copyOf(mm);
            prices = List.copyOf(prices);
            if (!prices.isEmpty() && prices.size() != mm.size()) {
                throw new IllegalArgumentException("a price for each length, or none");
            }
        }
    }

    /** Bars of one length in the yard. */
    public record YardBars(Section section, double length, int count) {}

    /** The lengths given for a section: its own, else those of every section; none when neither is. */
    public List<Lengths> of(Section section) {
        List<Lengths> own = lengths.stream()
                .filter(l -> l.section().equals(Optional.of(section)))
                .toList();
        return own.isEmpty()
                ? lengths.stream().filter(l -> l.section().isEmpty()).toList()
                : own;
    }
}
