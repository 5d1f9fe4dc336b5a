package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.List;

/**
 * Chooses among places for downpipes: the fewest, then the most even loads, then nearest the gutter's ends. The
 * cheapest way along the places, where a step knows the pipe before it, since a pipe's load depends on both neighbours.
 * At an end of the gutter the neighbour is its own image past that end, as it then drains all that is left.
 *
 * <pre>
 *   before     at       after        load = (after - before)/2
 *     o---------o---------o
 *          ^         ^               high points of the gutter
 * </pre>
 *
 * @param from where the gutter starts
 * @param to where it ends
 * @param most gutter that one pipe can drain
 * @param mostOneWay gutter that can drain to a pipe from one side
 * @param apart two pipes are not put closer than this
 * @param places where a pipe can hang, in order
 */
record PipeSearch(double from, double to, double most, double mostOneWay, double apart, List<Double> places) {
    /** What an uneven load and a far end cost beside a pipe's one: together less than one, however many pipes. */
    private static final double UNEVEN = 1e-5;

    private static final double FAR = 1e-9;

    /** Where no places carry the water, one more pipe is worth it when it lifts a fifth of a pipe's load. */
    private static final double OVER = 5;

    /** The places that leave no pipe with too much; none when there are no such. */
    List<Double> within() {
        return best(Double.POSITIVE_INFINITY);
    }

    /** The places that leave the least too much. */
    List<Double> nearest() {
        return best(OVER);
    }

    /** A pipe's load as a share of what it can carry. */
    private double share(double before, double at, double after) {
        double oneWay = Math.max(after - at, at - before) / 2;
        return Math.max((after - before) / 2 / most, oneWay / mostOneWay);
    }

    private double cost(double before, double at, double after, double over) {
        double share = share(before, at, after);
        double even = 1 + UNEVEN * share * share;
        return share <= 1 + 1e-9 ? even : even + over * (share - 1);
    }

    private static double image(double end, double place) {
        return 2 * end - place;
    }

    private List<Double> best(double over) {
        return places.isEmpty() ? List.of() : new Walk(this, over).cheapest();
    }

    /**
     * What pipes cost up to one of them, and the one before it.
     *
     * @param cost of all so far
     * @param before its number, or -1 at the first
     */
    private record Step(double cost, int before) {}

    /** One walk along the places. {@code steps[at][k]}: up to the pipe at, when the next is k places after it. */
    private static final class Walk {
        private final PipeSearch search;
        private final double over;
        private final int n;
        private final Step[][] steps;

        Walk(PipeSearch search, double over) {
            this.search = search;
            this.over = over;
            this.n = search.places.size();
            this.steps = new Step[n][];
        }

        private double place(int i) {
            return search.places.get(i);
        }

        List<Double> cheapest() {
            int last = -1;
            Step least = new Step(Double.POSITIVE_INFINITY, -1);
            for (int at = 0; at < n; at++) {
                forward(at);
                Step end = arrive(at, image(search.to, place(at)));
                double cost = end.cost() + FAR * (search.to - place(at)) / search.most;
                if (cost < least.cost()) {
                    least = new Step(cost, end.before());
                    last = at;
                }
            }
            return last < 0 ? List.of() : back(last, least.before());
        }

        private void forward(int at) {
            steps[at] = new Step[furthest(at) - at];
            for (int k = 1; k < steps[at].length; k++) {
                boolean apart = place(at + k) - place(at) >= search.apart;
                steps[at][k] = apart ? arrive(at, place(at + k)) : new Step(Double.POSITIVE_INFINITY, -1);
            }
        }

        /** Pipes further apart have too much between them: one after those, for a stretch with no place. */
        private int furthest(int at) {
            double reach = 2 * Math.min(search.most, search.mostOneWay);
            int i = at + 1;
            while (i < n && place(i) - place(at) <= reach + 1e-6) {
                i++;
            }
            return Math.min(n, i + 1);
        }

        /** The cheapest way to a pipe when the place of the one after it is known. */
        private Step arrive(int at, double after) {
            double first = search.cost(image(search.from, place(at)), place(at), after, over);
            Step least = new Step(first + FAR * (place(at) - search.from) / search.most, -1);
            for (int h = at - 1; h >= 0 && at - h < steps[h].length; h--) {
                double here = steps[h][at - h].cost() + search.cost(place(h), place(at), after, over);
                if (here < least.cost()) {
                    least = new Step(here, h);
                }
            }
            return least;
        }

        private List<Double> back(int last, int beforeLast) {
            List<Double> chosen = new ArrayList<>(List.of(place(last)));
            int after = last;
            int at = beforeLast;
            while (at >= 0) {
                chosen.add(0, place(at));
                int before = steps[at][after - at].before();
                after = at;
                at = before;
            }
            return chosen;
        }
    }
}
