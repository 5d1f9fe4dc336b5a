package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the bars worth most under given piece values: a bounded knapsack for all stock lengths at once, by dynamic
 * programming over lists of undominated states, dropping each state that cannot come to be worth more than its bar.
 * Values are whole numbers, so what it finds, or proves not to exist, is exact.
 *
 * <p>Items come family by family: a family's states start from the bars before it with the overlap added, and join them
 * at its end.
 *
 * @source Gilmore & Gomory (1963), Operations Research 11(6), 863–888; state lists with bounds: Pisinger (1997),
 *     Operations Research 45(5), 758–767
 */
final class Pricer {
    private static final int STEPS_PER_CHUNK = 50;
    private static final int STEPS_PER_STATE = 35;

    private final Order order;
    private final int largest;
    private final Deadline deadline;

    /**
     * What a search found.
     *
     * @param patterns worth more than their threshold
     * @param complete whether nothing was dropped on the way
     * @param most no bar of a stock is worth more
     */
    record Found(List<Pattern> patterns, boolean complete, long[] most) {}

    private record Find(int node, int stock, long value) {}

    Pricer(Order order, Deadline deadline) {
        this.order = order;
        this.deadline = deadline;
        largest = Arrays.stream(order.capacity()).max().orElse(0);
    }

    /**
     * Patterns worth more than the threshold of their stock.
     *
     * @param value of each item
     * @param demand the most of each item one bar may hold
     * @param threshold for each stock; a stock with none left has {@link Long#MAX_VALUE}
     * @param width how many states to keep; the search is complete unless more were needed
     * @param wanted how many patterns at most
     */
    Found search(long[] value, int[] demand, long[] threshold, int width, int wanted) {
        return new Run(value, demand, threshold, width).search(wanted);
    }

    private final class Run {
        private final long[] threshold;
        private final int width;
        private final List<Chunk> chunks;
        private final List<Find> finds = new ArrayList<>();
        private final long[] most;
        // After chunk k: best worth per length and least length among the chunks still to come.
        private double[] rate;
        private int[] least;
        private final Trail trail = new Trail();
        private boolean complete = true;
        private States spare = new States();
        private Find best;

        Run(long[] value, int[] demand, long[] threshold, int width) {
            this.threshold = threshold;
            this.width = width;
            most = threshold.clone();
            chunks = Chunk.of(order, value, demand, largest);
            measureRest();
        }

        private void measureRest() {
            rate = new double[chunks.size() + 1];
            least = new int[chunks.size() + 1];
            least[chunks.size()] = Integer.MAX_VALUE;
            for (int k = chunks.size() - 1; k >= 0; k--) {
                Chunk c = chunks.get(k);
                // A hair more than exact, so that rounding never drops a state wrongly.
                rate[k] = Math.max(rate[k + 1], (double) c.value() / c.size() * (1 + 1e-12));
                least[k] = Math.min(least[k + 1], c.size());
            }
        }

        Found search(int wanted) {
            States states = new States();
            states.push(0, 0, 0);
            int k = 0;
            while (k < chunks.size()) {
                int family = order.family()[chunks.get(k).item()];
                int end = k;
                while (end < chunks.size() && order.family()[chunks.get(end).item()] == family) {
                    end++;
                }
                states = order.overlap()[family] == 0
                        ? addChunks(states, k, end)
                        : joined(states, addChunks(states.heavier(order.overlap()[family]), k, end), end);
                k = end;
            }
            return new Found(best(wanted), complete, most);
        }

        private States addChunks(States states, int from, int to) {
            States now = states;
            for (int k = from; k < to && now.length > 0; k++) {
                States next = added(now, k);
                spare = now == states ? new States() : now;
                now = next;
            }
            return now;
        }

        private States added(States states, int k) {
            Chunk chunk = chunks.get(k);
            deadline.count(STEPS_PER_CHUNK + (long) STEPS_PER_STATE * states.length);
            States out = spare;
            out.length = 0;
            best = null;
            long top = -1;
            int a = 0;
            int b = 0;
            while (b < states.length) {
                int plain = a < states.length ? states.load[a] : Integer.MAX_VALUE;
                int more = states.load[b] + chunk.size();
                if (more > largest) {
                    b = states.length;
                } else if (plain < more || plain == more && states.worth[a] >= states.worth[b] + chunk.value()) {
                    top = keep(out, states, a++, k, top);
                } else {
                    top = extend(out, states, b++, k, top);
                }
            }
            while (a < states.length) {
                top = keep(out, states, a++, k, top);
            }
            if (best != null) {
                finds.add(best);
            }
            if (out.length > width) {
                narrow(out, k + 1);
            }
            return out;
        }

        private long keep(States out, States states, int a, int k, long top) {
            if (states.worth[a] > top) {
                if (isAlive(states.load[a], states.worth[a], k + 1)) {
                    out.push(states.load[a], states.worth[a], states.node[a]);
                }
                return states.worth[a];
            }
            return top;
        }

        private long extend(States out, States states, int b, int k, long top) {
            Chunk chunk = chunks.get(k);
            int load = states.load[b] + chunk.size();
            long worth = states.worth[b] + chunk.value();
            if (worth <= top) {
                return top;
            }
            boolean alive = isAlive(load, worth, k + 1);
            boolean found = isFind(load, worth);
            if (alive || found) {
                int node = trail.add(states.node[b], k);
                if (alive) {
                    out.push(load, worth, node);
                }
                if (found) {
                    note(load, worth, node);
                }
            }
            return worth;
        }

        private boolean isAlive(int load, long worth, int rest) {
            for (int s = 0; s < threshold.length; s++) {
                int room = order.capacity()[s] - load;
                if (room >= least[rest] && worth + room * rate[rest] > threshold[s]) {
                    return true;
                }
            }
            return false;
        }

        private boolean isFind(int load, long worth) {
            for (int s = 0; s < threshold.length; s++) {
                if (worth > threshold[s] && load <= order.capacity()[s]) {
                    return true;
                }
            }
            return false;
        }

        private void note(int load, long worth, int node) {
            for (int s = 0; s < threshold.length; s++) {
                if (load <= order.capacity()[s] && worth > threshold[s]) {
                    most[s] = Math.max(most[s], worth);
                    if (best == null || gain(s, worth) > gain(best.stock(), best.value())) {
                        best = new Find(node, s, worth);
                    }
                }
            }
        }

        private double gain(int s, long worth) {
            return (double) (worth - threshold[s]);
        }

        private States joined(States one, States other, int rest) {
            States out = new States();
            long top = -1;
            int a = 0;
            int b = 0;
            while (a < one.length || b < other.length) {
                boolean first = b == other.length || a < one.length && one.load[a] <= other.load[b];
                States from = first ? one : other;
                int s = first ? a++ : b++;
                if (from.worth[s] > top) {
                    top = from.worth[s];
                    if (isAlive(from.load[s], top, rest)) {
                        out.push(from.load[s], top, from.node[s]);
                    }
                }
            }
            return out;
        }

        private void noteLoss(int load, long worth, int rest) {
            for (int s = 0; s < threshold.length; s++) {
                int room = order.capacity()[s] - load;
                if (room >= 0 && threshold[s] < Long.MAX_VALUE) {
                    most[s] = Math.max(most[s], (long) Math.ceil((worth + room * rate[rest]) * (1 + 1e-15)));
                }
            }
        }

        /** Keeps the most promising states only; what the others could have been worth at most is noted. */
        private void narrow(States states, int rest) {
            complete = false;
            double[] promise = new double[states.length];
            for (int s = 0; s < states.length; s++) {
                promise[s] = states.worth[s] + (double) (largest - states.load[s]) * rate[rest];
            }
            double[] sorted = promise.clone();
            Arrays.sort(sorted);
            double cut = sorted[states.length - width];
            int kept = 0;
            for (int s = 0; s < states.length; s++) {
                if (promise[s] > cut || promise[s] == cut && kept < width) {
                    states.move(s, kept++);
                } else {
                    noteLoss(states.load[s], states.worth[s], rest);
                }
            }
            states.length = kept;
        }

        private List<Pattern> best(int wanted) {
            return finds.stream()
                    .sorted(Comparator.comparingDouble((Find f) -> -gain(f.stock(), f.value())))
                    .limit(wanted)
                    .map(this::pattern)
                    .distinct()
                    .toList();
        }

        private Pattern pattern(Find find) {
            return Pattern.of(find.stock(), trail.counts(find.node(), chunks, order.count()));
        }
    }
}
