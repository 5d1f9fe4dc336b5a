package org.baywright.model.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The sections and anchors to choose from.
 *
 * @param sections every section, in trade order
 * @param anchors every anchor, smallest first
 */
public record Catalogue(List<Section> sections, List<AnchorType> anchors) {
    /** Copies the lists. */
    public Catalogue {
        sections = List.copyOf(sections);
        anchors = List.copyOf(anchors);
    }

    /** What is shipped with Baywright. */
    public static Catalogue shipped() {
        return new Catalogue(
                List.of(
                        HollowSection.asNzs1163("SHS 100x100x5", 100, 100, 5, "C350L0 AS/NZS 1163", "stub"),
                        HollowSection.asNzs1163("SHS 100x100x4", 100, 100, 4, "C350L0 AS/NZS 1163", "stub"),
                        HollowSection.asNzs1163("RHS 150x100x4", 150, 100, 4, "C350L0 AS/NZS 1163", "stub"),
                        HollowSection.asNzs1163("RHS 200x100x5", 200, 100, 5, "C350L0 AS/NZS 1163", "stub"),
                        new BeamSection("200UB25.4", 203, 133, 7.8, 5.8, 8.9, "300 AS/NZS 3679.1", "stub")),
                List.of(new AnchorType("M16", 16, 18, 125, 80, 165, 22, "stub")));
    }

    /** This catalogue with the user's own sections found before the shipped ones. */
    public Catalogue with(List<Section> own) {
        List<Section> all = new ArrayList<>(own);
        all.addAll(sections);
        return new Catalogue(all, anchors);
    }

    /** The section of that name; spaces and case are forgiven. */
    public Optional<Section> section(String name) {
        return sections.stream()
                .filter(s -> key(s.designation()).equals(key(name)))
                .findFirst();
    }

    /** The anchor of that size; spaces and case are forgiven. */
    public Optional<AnchorType> anchor(String size) {
        return anchors.stream().filter(a -> key(a.size()).equals(key(size))).findFirst();
    }

    private static String key(String name) {
        return name.replaceAll("\\s+", "").replace('×', 'x').toLowerCase(Locale.ROOT);
    }
}
