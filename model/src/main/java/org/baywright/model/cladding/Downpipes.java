package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where pipes drop from a gutter. The gutter falls to each from halfway to its neighbours, so that a pipe between two
 * others takes more than one at an end.
 *
 * @param from where the gutter starts along the building
 * @param to where it ends
 * @param most gutter that one pipe can drain
 * @param mostOneWay gutter that can drain to a pipe from one side
 * @param columns where there are columns, in order
 * @param openings pairs of ends of the openings below and of the way of their leaves; no pipe hangs in front of one
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
    /** Room beside an opening for half a pipe and its straps. Common practice, no source. */
    private static final double BESIDE = 150;

    /**
     * Pipes closer than this look like one to few: two are put so close only where nothing else carries the water, as on
     * both sides of a column between doors, and then no closer than the second. Common practice, no source.
     */
    private static final double APART = 1000;

    private static final double LEAST_APART = 200;

    /** Places along a wall are looked at so far apart, and so many to what a pipe can drain. */
    private static final double STEP = 250;

    private static final int STEPS_TO_MOST = 8;

    /**
     * As few as can carry the water, at places where one can hang: at columns if those do with one more at most, since
     * a pipe at a column is the easiest to strap; else evenly along the gutter if nothing is in the way. Where no
     * places carry it, those that help most.
     */
    List<Double> places() {
        List<Double> atColumns = search(APART, freeColumns()).within();
        // No places do with fewer than even ones: the long search is left out where its outcome cannot matter.
        if (!atColumns.isEmpty() && atColumns.size() <= least() + 1) {
            return atColumns;
        }
        List<Double> even = even();
        List<Double> fewest = isFree(even) ? even : fewest(allPlaces());
        if (!atColumns.isEmpty() && (fewest.isEmpty() || atColumns.size() <= fewest.size() + 1)) {
            return atColumns;
        }
        return fewest.isEmpty() ? search(APART, allPlaces()).nearest() : fewest;
    }

    private List<Double> fewest(List<Double> candidates) {
        List<Double> apart = search(APART, candidates).within();
        return apart.isEmpty() ? search(LEAST_APART, candidates).within() : apart;
    }

    private PipeSearch search(double apart, List<Double> candidates) {
        return new PipeSearch(from, to, most, mostOneWay, apart, candidates);
    }

    /** How many pipes carry the water when nothing is in their way. */
    private int least() {
        double each = Math.min(most, 2 * mostOneWay);
        return (int) Math.max(1, Math.ceil((to - from) / each - 1e-9));
    }

    private List<Double> even() {
        int n = least();
        return IntStream.range(0, n)
                .mapToObj(i -> from + (i + 0.5) / n * (to - from))
                .toList();
    }

    private boolean isFree(List<Double> places) {
        return places.stream().allMatch(p -> isClear(p) && hasWall(p));
    }

    private List<Double> freeColumns() {
        return columns.stream().filter(this::isClear).toList();
    }

    /** The columns, the edges of what is in the way, and steps along the wall between. */
    private List<Double> allPlaces() {
        double step = Math.min(STEP, most / STEPS_TO_MOST);
        List<Double> wall = new ArrayList<>();
        for (int i = 0; i < (to - from) / step; i++) {
            wall.add(from + i * step);
        }
        wall.add(to);
        openings.forEach(o -> wall.addAll(List.of(o[0] - BESIDE, o[1] + BESIDE)));
        Stream<Double> onWall = wall.stream().filter(p -> p >= from && p <= to && isFree(List.of(p)));
        return Stream.concat(onWall, freeColumns().stream()).sorted().distinct().toList();
    }

    private boolean isClear(double place) {
        return openings.stream().noneMatch(o -> place > o[0] - BESIDE + 1e-6 && place < o[1] + BESIDE - 1e-6);
    }

    private boolean hasWall(double place) {
        return open.stream().noneMatch(o -> place > o[0] && place < o[1]);
    }
}
