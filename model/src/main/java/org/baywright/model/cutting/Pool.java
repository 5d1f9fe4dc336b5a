package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Patterns that a {@link Master} may use but that are not in its program yet. Most are never worth having, so they join
 * only once the prices call for them; that keeps the program small.
 */
final class Pool {
    private static final double WORTH_JOINING = 1e-8;
    private static final int MOST_JOINING = 60;

    private final List<Pattern> patterns = new ArrayList<>();
    private final List<Column> columns = new ArrayList<>();

    void add(Pattern pattern, Column column) {
        patterns.add(pattern);
        columns.add(column);
    }

    int count() {
        return patterns.size();
    }

    Pattern pattern(int k) {
        return patterns.get(k);
    }

    Column column(int k) {
        return columns.get(k);
    }

    /** Takes out those that are worth most over what they cost at some prices. */
    List<Pattern> takeWanted(double[] price) {
        columns.forEach(c -> c.reduced = c.cost - c.dot(price));
        int[] wanted = IntStream.range(0, columns.size())
                .filter(k -> columns.get(k).reduced < -WORTH_JOINING)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> columns.get(k).reduced))
                .limit(MOST_JOINING)
                .sorted(Comparator.reverseOrder())
                .mapToInt(k -> k)
                .toArray();
        List<Pattern> taken = new ArrayList<>();
        for (int k : wanted) {
            taken.add(patterns.get(k));
            int last = count() - 1;
            patterns.set(k, patterns.get(last));
            columns.set(k, columns.get(last));
            patterns.remove(last);
            columns.remove(last);
        }
        return taken;
    }

    /** Takes out all. */
    List<Pattern> takeAll() {
        List<Pattern> all = List.copyOf(patterns);
        patterns.clear();
        columns.clear();
        return all;
    }
}
