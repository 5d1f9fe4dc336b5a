package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.baywright.model.catalogue.Section;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Material;
import org.baywright.model.parts.Part;

/**
 * A base plate under one column section: what needs a detail of its own.
 *
 * @param footings all places that are alike in this
 */
record PlateUse(List<Footing> footings) {
    /** Copies the list. */
    PlateUse {
        footings = List.copyOf(footings);
    }

    /** Every plate mark under every section it carries, by mark. */
    static List<PlateUse> of(List<Footing> footings) {
        Map<String, List<Footing>> alike = new LinkedHashMap<>();
        for (Part plate : footings.stream()
                .map(Footing::plate)
                .distinct()
                .sorted(Comparator.comparing((Part p) -> p.mark().length()).thenComparing(Part::mark))
                .toList()) {
            footings.stream()
                    .filter(f -> f.plate() == plate)
                    .forEach(f -> alike.computeIfAbsent(
                                    plate.mark() + "|" + f.column().material().designation() + "|"
                                            + f.column().solid().profile().depth(),
                                    k -> new ArrayList<>())
                            .add(f));
        }
        return alike.values().stream().map(PlateUse::new).toList();
    }

    Part plate() {
        return footings.get(0).plate();
    }

    /** The column's section. */
    Section section() {
        return ((Material.Bar) footings.get(0).column().material()).section();
    }

    /** The column's section as it stands. */
    Profile standing() {
        return footings.get(0).column().solid().profile();
    }

    /** Across the building. */
    double width() {
        return plate().solid().profile().depth();
    }

    /** Along the building. */
    double depth() {
        return plate().solid().profile().width();
    }

    double thickness() {
        return plate().solid().axisLength();
    }

    List<Hole> holes() {
        return plate().holes();
    }

    /** Between the outermost hole lines across the building. */
    double gaugeX() {
        return spread(Vec2::x);
    }

    /** Between the outermost hole lines along the building; zero when there is one. */
    double gaugeY() {
        return spread(Vec2::y);
    }

    private double spread(ToDoubleFunction<Vec2> along) {
        double most = holes().stream()
                .mapToDouble(h -> along.applyAsDouble(h.at()))
                .max()
                .orElseThrow();
        double least = holes().stream()
                .mapToDouble(h -> along.applyAsDouble(h.at()))
                .min()
                .orElseThrow();
        return most - least;
    }

    /** The columns by line, frames in runs, such as {@code A 2-4, 6}. */
    String places() {
        Map<String, List<Integer>> frames = new TreeMap<>();
        footings.forEach(f -> frames.computeIfAbsent(f.line().letter(), k -> new ArrayList<>())
                .add(f.frame()));
        List<String> words = new ArrayList<>();
        frames.forEach((letter, numbers) -> words.add(letter + " " + runs(numbers)));
        return String.join("; ", words);
    }

    /** Numbers that never fall, neighbours joined. */
    static String runs(List<Integer> numbers) {
        List<String> runs = new ArrayList<>();
        int i = 0;
        while (i < numbers.size()) {
            int end = i;
            while (end + 1 < numbers.size() && numbers.get(end + 1) == numbers.get(end) + 1) {
                end++;
            }
            String joint = end == i + 1 ? ", " : "–";
            runs.add(end == i ? "" + numbers.get(i) : numbers.get(i) + joint + numbers.get(end));
            i = end + 1;
        }
        return String.join(", ", runs);
    }

    /** The marks of the columns. */
    String columns() {
        return String.join(
                ", ", footings.stream().map(f -> f.column().mark()).distinct().toList());
    }
}
