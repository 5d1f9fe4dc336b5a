package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.baywright.model.definition.SlabBars;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.BarCheck;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.setout.BarGrid.Meeting;
import org.baywright.model.setout.BarShift;
import org.baywright.render.dimension.Figure;

/**
 * Plates whose holes lie alike to the bars, some of them not clear.
 *
 * @param check of all holes
 * @param stands the plates
 * @param keepsEdge whether a plate so moved still keeps from the slab's edge
 */
record StruckPlates(BarCheck check, List<PlateStand> stands, BiPredicate<PlateStand, BarShift> keepsEdge) {
    /** Copies the list. */
    StruckPlates {
        stands = List.copyOf(stands);
    }

    /** All plates with a hole that is not clear; those that lie alike together. */
    static List<StruckPlates> of(BarCheck check, BiPredicate<PlateStand, BarShift> keepsEdge) {
        Map<String, List<PlateStand>> alike = new LinkedHashMap<>();
        check.stands().stream()
                .filter(s -> s.holes().stream().anyMatch(h -> check.grid().meeting(h) != Meeting.CLEAR))
                .forEach(s -> alike.computeIfAbsent(key(check, s), k -> new ArrayList<>())
                        .add(s));
        return alike.values().stream()
                .map(all -> new StruckPlates(check, all, keepsEdge))
                .toList();
    }

    private static String key(BarCheck check, PlateStand stand) {
        return stand.plate().mark() + "|" + stand.turnDeg() + "|"
                + past(stand.middle().y(), check.grid().bars().along()) + "|"
                + past(stand.middle().x(), check.grid().bars().across());
    }

    /** How far a place lies beyond a bar, to a tenth, all bars alike. */
    private static long past(double at, SlabBars.Row row) {
        double past = (at - row.offset()) % row.spacing();
        long tenths = Math.round((past < 0 ? past + row.spacing() : past) * 10);
        return tenths == Math.round(row.spacing() * 10) ? 0 : tenths;
    }

    PlateStand first() {
        return stands.get(0);
    }

    String places() {
        return stands.stream().map(PlateStand::name).collect(Collectors.joining(", "));
    }

    /** The numbers of the holes that lie so. */
    String holes(Meeting meeting) {
        List<Vec2> holes = first().holes();
        String numbers = IntStream.range(0, holes.size())
                .filter(i -> check.grid().meeting(holes.get(i)) == meeting)
                .mapToObj(i -> String.valueOf(i + 1))
                .collect(Collectors.joining(", "));
        return numbers.isEmpty() ? "–" : numbers;
    }

    /** The least gap between a hole and a bar; below zero when they overlap. */
    double gap() {
        return first().holes().stream().mapToDouble(check.grid()::gap).min().orElse(0);
    }

    /** The smallest shift of one of these plates, along and then across. */
    List<String> shift() {
        Optional<BarShift> shift = check.plateShift(first());
        List<String> words = words(shift);
        boolean keeps = shift.isEmpty() || stands.stream().allMatch(s -> keepsEdge.test(s, shift.get()));
        return keeps ? words : List.of(words.get(0), words.get(1), words.get(2) + ", but too near the slab's edge");
    }

    /** A shift in words: along, across, and what it leaves. */
    static List<String> words(Optional<BarShift> shift) {
        return shift.map(s ->
                        List.of(signed(s.along()), signed(s.across()), s.clear() ? "all clear" : "misses, but close"))
                .orElse(List.of("–", "–", "no shift misses every bar"));
    }

    /** Rounded away from zero to a tenth: less would not do. */
    static String signed(double mm) {
        double tenths = Math.ceil(Math.abs(mm) * 10 - 1e-6) / 10;
        return mm == 0 ? "0" : (mm > 0 ? "+" : "−") + Figure.length(tenths);
    }

    /** Both counts of the first plate, such as {@code 2 hit, 1 close}. */
    String counts() {
        List<String> words = new ArrayList<>();
        for (Meeting meeting : List.of(Meeting.HIT, Meeting.CLOSE)) {
            long n = first().holes().stream()
                    .filter(h -> check.grid().meeting(h) == meeting)
                    .count();
            if (n > 0) {
                words.add(n + " " + meeting.name().toLowerCase(Locale.ROOT));
            }
        }
        return String.join(", ", words);
    }
}
