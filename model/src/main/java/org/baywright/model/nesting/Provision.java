package org.baywright.model.nesting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;

/**
 * Where pieces come from: those that stock takes, and those to be ordered at their own length, because neither a length to
 * buy nor what the yard holds takes them.
 *
 * @param stocked to be planned, longest first
 * @param toLength with what is left of their number once the yard has given what it can, longest first
 */
record Provision(List<Need> stocked, List<Need> toLength) {
    private static final double FINE = 1e-6;

    /** Copies the lists. */
    Provision {
        stocked = List.copyOf(stocked);
        toLength = List.copyOf(toLength);
    }

    /** Only lengths to buy count. */
    static Provision withoutYard(List<Need> longestFirst, List<Stock> stocks, Saw saw) {
        double bought = longest(stocks, saw);
        return new Provision(
                longestFirst.stream().filter(n -> isWithin(n, bought)).toList(),
                longestFirst.stream().filter(n -> !isWithin(n, bought)).toList());
    }

    /**
     * The yard's bars hold of the pieces that no length to buy takes as many as best fit finds room for: longest first, each on
     * the bar begun where it leaves least, else on the shortest new one.
     */
    static Provision withYard(List<Need> longestFirst, List<Stock> stocks, Saw saw) {
        Provision bought = withoutYard(longestFirst, stocks, saw);
        YardBars yard = new YardBars(stocks, saw);
        List<Need> stocked = new ArrayList<>();
        List<Need> toLength = new ArrayList<>();
        for (Need need : bought.toLength) {
            int held = (int) IntStream.range(0, need.quantity())
                    .takeWhile(n -> yard.takes(need.blank()))
                    .count();
            part(need, held).ifPresent(stocked::add);
            part(need, need.quantity() - held).ifPresent(toLength::add);
        }
        stocked.addAll(bought.stocked);
        return new Provision(stocked, toLength);
    }

    private static double longest(List<Stock> stocks, Saw saw) {
        return stocks.stream()
                .filter(s -> !s.isLimited())
                .mapToDouble(s -> s.lengthMm() - saw.endTrimMm())
                .max()
                .orElse(0);
    }

    private static boolean isWithin(Need need, double room) {
        return need.blank().tipMm() <= room + FINE;
    }

    private static Optional<Need> part(Need need, int quantity) {
        return quantity == 0 ? Optional.empty() : Optional.of(new Need(need.blank(), quantity));
    }

    /** The bars of the yard, with what lies on those begun. */
    private static final class YardBars {
        private final Map<Stock, Integer> unbegun = new LinkedHashMap<>();
        private final List<Begun> begun = new ArrayList<>();
        private final Saw saw;

        YardBars(List<Stock> stocks, Saw saw) {
            this.saw = saw;
            stocks.stream()
                    .filter(Stock::isLimited)
                    .sorted(Comparator.comparingDouble(Stock::lengthMm))
                    .forEach(s -> unbegun.merge(s, s.limit(), Integer::sum));
        }

        boolean takes(Blank blank) {
            Optional<Begun> bar = begun.stream()
                    .filter(b -> b.takes(blank, saw))
                    .min(Comparator.comparingDouble(Begun::roomMm))
                    .or(() -> shortest(blank));
            bar.ifPresent(b -> b.blanks.add(blank));
            return bar.isPresent();
        }

        private Optional<Begun> shortest(Blank blank) {
            Optional<Begun> bar = unbegun.entrySet().stream()
                    .filter(e -> e.getValue() > 0)
                    .map(e -> new Begun(e.getKey(), new ArrayList<>()))
                    .filter(b -> b.takes(blank, saw))
                    .findFirst();
            bar.ifPresent(b -> {
                begun.add(b);
                unbegun.merge(b.stock, -1, Integer::sum);
            });
            return bar;
        }
    }

    private record Begun(Stock stock, List<Blank> blanks) {
        double roomMm() {
            return stock.lengthMm()
                    - blanks.stream().mapToDouble(Blank::middleMm).sum();
        }

        boolean takes(Blank blank, Saw saw) {
            List<Blank> all = new ArrayList<>(blanks);
            all.add(blank);
            return blank.middleMm() <= roomMm() && new LaidBar(stock, Nest.of(all, saw), 1, saw).fits();
        }
    }
}
