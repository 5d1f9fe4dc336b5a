package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where pipes drop from a gutter. The gutter falls to each from halfway to its neighbours, so that a pipe between two
 * others takes more than one at an end.
 *
 * @param from where the gutter starts along the building
 * @param to where it ends
 * @param most gutter that one pipe can drain
 * @param mostOneWay gutter that can drain to a pipe from one side
 * @param columns where there are columns, in order
 * @param openings pairs of ends of the openings below; no pipe hangs in front of one
 * @param open pairs of frame lines between which there is no wall; pipes are on the columns there
 */
record Downpipes(
        double from,
        double to,
        double most,
        double mostOneWay,
        List<Double> columns,
        List<double[]> openings,
        List<double[]> open) {
    /** Two pipes are not put closer than this. Common practice, no source. */
    private static final double LEAST_APART = 200;

    /** Room beside an opening for half a pipe and its straps. Common practice, no source. */
    private static final double BESIDE = 150;

    /** As few as can carry the water: at columns, from both ends inward, if those do; else evenly along the gutter. */
    List<Double> places() {
        int least = (int) Math.max(1, Math.ceil((to - from) / most - 1e-9));
        return IntStream.rangeClosed(least, columns.size())
                .mapToObj(n -> atColumns(n))
                .flatMap(Optional::stream)
                .findFirst()
                .orElseGet(() -> evenly(least));
    }

    private Optional<List<Double>> atColumns(int n) {
        List<Double> outer = new ArrayList<>();
        List<Double> inner = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            outer.add(n == 1 ? 1 : (double) i / (n - 1));
            inner.add((i + 0.5) / n);
        }
        return List.of(outer, inner).stream()
                .map(this::snapped)
                .filter(p -> p.stream().distinct().count() == n && carries(p))
                .findFirst();
    }

    /** To the nearest columns, the far half as a mirror image of the near one. */
    private List<Double> snapped(List<Double> shares) {
        int n = shares.size();
        int last = columns.size() - 1;
        List<Double> at = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            boolean near = 2 * i < n - 1 || n == 1 || 2 * i == n - 1;
            int column = near ? nearest(shares.get(i)) : last - nearest(shares.get(n - 1 - i));
            at.add(columns.get(column));
        }
        return at;
    }

    private int nearest(double share) {
        double at = columns.get(0) + share * (columns.get(columns.size() - 1) - columns.get(0));
        int found = Collections.binarySearch(columns, at);
        if (found >= 0) {
            return found;
        }
        int after = Math.min(columns.size() - 1, -found - 1);
        int before = Math.max(0, after - 1);
        return at - columns.get(before) <= columns.get(after) - at ? before : after;
    }

    /** More pipes until moving them out of the way of openings leaves none with too much. */
    private List<Double> evenly(int least) {
        List<Double> at = even(least);
        for (int n = least + 1; n <= 3 * least + columns.size() && !carries(at); n++) {
            at = even(n);
        }
        return at;
    }

    private List<Double> even(int n) {
        List<Double> at = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double place = beside(onColumn(from + (i + 0.5) / n * (to - from)));
            if (at.isEmpty() || place > at.get(at.size() - 1) + LEAST_APART) {
                at.add(place);
            }
        }
        return at;
    }

    private double onColumn(double place) {
        boolean free = open.stream().anyMatch(o -> place > o[0] && place < o[1]);
        return free
                ? columns.stream()
                        .min(Comparator.comparingDouble(c -> Math.abs(c - place)))
                        .orElseThrow()
                : place;
    }

    /** The place itself, or the nearer side of the opening that it is in front of. */
    private double beside(double place) {
        return openings.stream()
                .filter(o -> place > o[0] - BESIDE && place < o[1] + BESIDE)
                .findFirst()
                .map(o -> place < (o[0] + o[1]) / 2 ? o[0] - BESIDE : o[1] + BESIDE)
                .orElse(place);
    }

    /** Whether every pipe gets no more than it can carry, from both sides and from each. */
    boolean carries(List<Double> at) {
        for (int i = 0; i < at.size(); i++) {
            double low = i == 0 ? from : (at.get(i - 1) + at.get(i)) / 2;
            double high = i == at.size() - 1 ? to : (at.get(i) + at.get(i + 1)) / 2;
            double oneWay = Math.max(high - at.get(i), at.get(i) - low);
            if (high - low > most + 1e-6 || oneWay > mostOneWay + 1e-6) {
                return false;
            }
        }
        return true;
    }
}
