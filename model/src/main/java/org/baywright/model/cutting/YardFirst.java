package org.baywright.model.cutting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Yard bars that a plan leaves although they could take pieces of a bar to buy: nothing less is bought for it, but the
 * yard is cleared and a longer off-cut of the new bar stays.
 */
final class YardFirst {
    private final Order order;
    private Draft plan;

    private YardFirst(Order order, Draft plan) {
        this.order = order;
        this.plan = plan;
    }

    /** The plan with each yard bar used that takes a piece of a bar to buy; longest first. */
    static Draft used(Order order, Draft plan) {
        YardFirst yard = new YardFirst(order, plan);
        if (!order.hasFamilies()) {
            IntStream.range(0, order.stocks())
                    .filter(s -> order.cost()[s] == 0)
                    .boxed()
                    .sorted(Comparator.comparingInt(s -> -order.capacity()[s]))
                    .forEach(yard::use);
        }
        return yard.plan;
    }

    private void use(int stock) {
        int left = order.limit()[stock]
                - plan.times().entrySet().stream()
                        .filter(e -> e.getKey().stock == stock)
                        .mapToInt(Map.Entry::getValue)
                        .sum();
        boolean moved = true;
        for (; left > 0 && moved; left--) {
            moved = move(stock);
        }
    }

    /** Moves pieces of the bar to buy that then has the longest off-cut. */
    private boolean move(int stock) {
        Optional<Pattern> from = plan.times().keySet().stream()
                .filter(p -> order.cost()[p.stock] > 0)
                .filter(p -> taken(p, stock).item.length > 0)
                .max(Comparator.comparingLong(p -> order.leftUm(p) + order.unitUm() * order.load(taken(p, stock))));
        from.ifPresent(p -> plan = moved(p, taken(p, stock)));
        return from.isPresent();
    }

    /** What a yard bar takes of a pattern: the longest that fits, again and again. */
    private Pattern taken(Pattern from, int stock) {
        int[] counts = new int[order.count()];
        long room = order.capacity()[stock];
        for (int k = 0; k < from.item.length; k++) {
            int i = from.item[k];
            counts[i] = (int) Math.max(0, Math.min(from.count[k], room / order.size()[i]));
            room -= (long) counts[i] * order.size()[i];
        }
        return Pattern.of(stock, counts);
    }

    private Draft moved(Pattern from, Pattern taken) {
        int[] counts = new int[order.count()];
        from.take(counts, -1);
        taken.take(counts, 1);
        Draft draft = new Draft(order);
        plan.times().forEach((p, n) -> draft.add(p, p.equals(from) ? n - 1 : n));
        draft.add(taken, 1);
        if (Arrays.stream(counts).anyMatch(c -> c > 0)) {
            draft.add(Pattern.of(from.stock, counts), 1);
        }
        return draft;
    }
}
