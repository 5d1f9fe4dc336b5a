package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.baywright.model.catalogue.Section;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Material;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PlateStand;
import org.locationtech.jts.geom.Envelope;

/**
 * A base plate under one outline of upright: what needs a detail of its own. Uprights that differ in wall only are alike.
 * Places are in the plate: x from the outside of the building inward, y along the wall.
 *
 * @param stands all places that are alike in this
 */
record PlateUse(List<PlateStand> stands) {
    /** Copies the list. */
    PlateUse {
        stands = List.copyOf(stands);
    }

    /** Every plate mark under every outline that stands on it, by mark. */
    static List<PlateUse> of(List<PlateStand> stands) {
        Map<String, List<PlateStand>> alike = new LinkedHashMap<>();
        stands.stream()
                .sorted(Comparator.comparing((PlateStand s) -> s.plate().mark().length())
                        .thenComparing(s -> s.plate().mark())
                        .thenComparing(s -> !s.isOfFrame()))
                .forEach(s ->
                        alike.computeIfAbsent(key(s), k -> new ArrayList<>()).add(s));
        return alike.values().stream().map(PlateUse::new).toList();
    }

    /** The first that is under a column. */
    static PlateUse underColumn(List<PlateStand> stands) {
        return of(stands.stream().filter(PlateStand::isOfFrame).toList()).get(0);
    }

    private static String key(PlateStand stand) {
        Envelope outline = outline(stand);
        return stand.plate().mark() + "|" + Math.rint(outline.getMinX()) + "|" + Math.rint(outline.getMaxX()) + "|"
                + Math.rint(outline.getMinY()) + "|" + Math.rint(outline.getMaxY());
    }

    private static Envelope outline(PlateStand stand) {
        Envelope outline = new Envelope();
        stand.upright().solid().profile().outline().stream()
                .map(stand::onPlate)
                .forEach(p -> outline.expandToInclude(p.x(), p.y()));
        return outline;
    }

    private PlateStand first() {
        return stands.get(0);
    }

    Part plate() {
        return first().plate();
    }

    /** The upright whose section is drawn. */
    Part upright() {
        return first().upright();
    }

    /** What the upright's section takes on the plate. */
    Envelope outline() {
        return outline(first());
    }

    /** The upright's section on the plate, with its radii. */
    List<List<Vec2>> rings() {
        Section section = ((Material.Bar) upright().material()).section();
        return SectionShape.rings(section, upright().solid().profile()).stream()
                .map(ring -> ring.stream().map(first()::onPlate).toList())
                .toList();
    }

    /** The sections that stand on it, each once. */
    List<String> sections() {
        return stands.stream()
                .map(s -> s.upright().material().designation())
                .distinct()
                .toList();
    }

    /** Those that carry one section. */
    List<PlateStand> under(String section) {
        return stands.stream()
                .filter(s -> s.upright().material().designation().equals(section))
                .toList();
    }

    /** From outside to inside. */
    double width() {
        return plate().solid().profile().depth();
    }

    /** Along the wall. */
    double depth() {
        return plate().solid().profile().width();
    }

    double thickness() {
        return plate().solid().axisLength();
    }

    List<Hole> holes() {
        return plate().holes();
    }

    /** Between the outermost hole lines from outside to inside. */
    double gaugeX() {
        return spread(Vec2::x);
    }

    /** Between the outermost hole lines along the wall; zero when there is one. */
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

    /** Columns by line, frames in runs, such as {@code A 2-4, 6}; posts of walls by the lines they stand between. */
    static String places(List<PlateStand> stands) {
        Map<String, List<Integer>> frames = new TreeMap<>();
        stands.stream()
                .filter(PlateStand::isOfFrame)
                .forEach(s -> frames.computeIfAbsent(
                                s.grid().substring(0, s.grid().indexOf('/')), k -> new ArrayList<>())
                        .add(s.uprightPlace().frame()));
        List<String> words = new ArrayList<>();
        frames.forEach((letter, numbers) -> words.add(letter + " " + runs(numbers)));
        stands.stream()
                .filter(s -> !s.isOfFrame())
                .map(PlateStand::grid)
                .distinct()
                .forEach(words::add);
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

    /** The marks of the uprights. */
    static String marks(List<PlateStand> stands) {
        return String.join(
                ", ", stands.stream().map(s -> s.upright().mark()).distinct().toList());
    }
}
