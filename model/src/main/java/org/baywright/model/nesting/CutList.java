package org.baywright.model.nesting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.baywright.model.catalogue.Section;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;

/**
 * What is cut at the saw, mark by mark.
 *
 * @param groups section by section
 */
public record CutList(List<Group> groups) {
    /** Copies the list. */
    public CutList {
        groups = List.copyOf(groups);
    }

    /** The pieces of one section, longest first. */
    public record Group(Section section, List<Entry> entries) {
        /** Copies the list. */
        public Group {
            entries = List.copyOf(entries);
        }
    }

    /**
     * One mark.
     *
     * @param part the member
     * @param blank as the saw sees it, its marked end A on the left
     * @param welded what is welded to it, way by way when its pieces differ
     */
    public record Entry(Part part, Blank blank, List<String> welded) {
        /** Copies the list. */
        public Entry {
            welded = List.copyOf(welded);
        }

        /** Length of the edge that is drawn on top. */
        public double topEdgeMm() {
            return blank.endSlope() >= blank.startSlope() ? part.longEdge() : part.shortEdge();
        }

        /** Length of the edge that is drawn below. */
        public double bottomEdgeMm() {
            return blank.endSlope() >= blank.startSlope() ? part.shortEdge() : part.longEdge();
        }

        /** Where the long point of end A is drawn. */
        public LongPoint startPoint() {
            return LongPoint.of(-blank.startSlope());
        }

        /** Where the long point of end B is drawn. */
        public LongPoint endPoint() {
            return LongPoint.of(blank.endSlope());
        }

        /** Whether the saw must be set in two planes, which no elevation shows. */
        public boolean isCompound() {
            return blank.isSquare() && Math.max(part.cutADeg(), part.cutBDeg()) > 0.005;
        }
    }

    /** Which edge a slanted end reaches furthest on. */
    public enum LongPoint {
        NONE,
        TOP,
        BOTTOM;

        static LongPoint of(double lean) {
            return lean == 0 ? NONE : lean > 0 ? TOP : BOTTOM;
        }
    }

    /** The cut list of a shed, for the pieces that a plan cuts. */
    public static CutList of(Shed shed, ShedCutting cutting) {
        Assemblies assemblies = Assemblies.of(shed);
        Map<String, Part> parts = new HashMap<>();
        shed.parts().forEach(p -> parts.put(p.mark(), p));
        List<Group> groups = new ArrayList<>();
        for (SectionCuts cuts : cutting.sections()) {
            List<Entry> entries = cuts.needs().stream()
                    .map(Need::blank)
                    .map(blank -> {
                        Part part = parts.get(blank.mark());
                        return new Entry(part, blank, welded(part, assemblies));
                    })
                    .sorted(Comparator.comparingDouble((Entry e) -> -e.part().stockLength()))
                    .toList();
            groups.add(new Group(cuts.section(), entries));
        }
        return new CutList(groups);
    }

    /** What is welded to a member: alike in number on all of them, or each number of plates with the marks it goes with. */
    private static List<String> welded(Part part, Assemblies assemblies) {
        if (part.kind().isWeldedOn()) {
            return assemblies.holding(part).stream()
                    .map(a -> "it is welded to " + a.mark())
                    .toList();
        }
        List<Assembly> ways = assemblies.of(part);
        Map<String, List<Assembly>> alike =
                ways.stream().collect(Collectors.groupingBy(CutList::counts, LinkedHashMap::new, Collectors.toList()));
        if (alike.size() == 1) {
            return alike.keySet().stream().filter(words -> !words.isEmpty()).toList();
        }
        return alike.entrySet().stream()
                .map(e -> marks(e.getValue()) + ": " + (e.getKey().isEmpty() ? "nothing" : e.getKey()))
                .toList();
    }

    private static String marks(List<Assembly> ways) {
        int pieces = ways.stream().mapToInt(Assembly::quantity).sum();
        return pieces + " of them (" + ways.stream().map(Assembly::mark).collect(Collectors.joining(", ")) + ")";
    }

    private static String counts(Assembly way) {
        return way.counts().entrySet().stream()
                .map(e -> e.getValue() + " × " + e.getKey())
                .collect(Collectors.joining(", "));
    }
}
