package org.baywright.model.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * Gutters and downpipes by name.
 *
 * @param gutters usual eaves gutters
 * @param downpipes usual downpipes
 */
public record RainwaterGoods(List<GutterSize> gutters, List<DownpipeSize> downpipes) {
    /**
     * An eaves gutter.
     *
     * @param name trade name
     * @param depth outside, mm
     * @param width outside, mm
     * @param areaMm2 that water may fill
     * @param source where the row comes from
     */
    public record GutterSize(String name, double depth, double width, double areaMm2, String source) {
        /** Checks that the water fits in. */
        public GutterSize {
            if (!(depth > 0) || !(width > 0) || !(areaMm2 > 0) || !(areaMm2 <= depth * width)) {
                throw new IllegalArgumentException("a gutter holds at most its depth by its width: " + name);
            }
        }
    }

    /**
     * A downpipe.
     *
     * @param name trade name
     * @param areaMm2 clear area
     * @param source where the row comes from
     */
    public record DownpipeSize(String name, double areaMm2, String source) {
        /** Checks the area. */
        public DownpipeSize {
            if (!(areaMm2 > 0)) {
                throw new IllegalArgumentException("a downpipe has an area: " + name);
            }
        }
    }

    /** Copies the lists. */
    public RainwaterGoods {
        gutters = List.copyOf(gutters);
        downpipes = List.copyOf(downpipes);
    }

    /** What is shipped with Baywright. */
    public static RainwaterGoods shipped() {
        return Shipped.RAINWATER;
    }

    /** The gutter of that name; spaces and case are forgiven. */
    public Optional<GutterSize> gutter(String name) {
        Designation wanted = Designation.of(name);
        return gutters.stream()
                .filter(g -> Designation.of(g.name()).equals(wanted))
                .findFirst();
    }

    /** The downpipe of that name; spaces and case are forgiven. */
    public Optional<DownpipeSize> downpipe(String name) {
        Designation wanted = Designation.of(name);
        return downpipes.stream()
                .filter(d -> Designation.of(d.name()).equals(wanted))
                .findFirst();
    }

    /** The names of the gutters. */
    public List<String> gutterNames() {
        return gutters.stream().map(GutterSize::name).toList();
    }

    /** The names of the downpipes. */
    public List<String> downpipeNames() {
        return downpipes.stream().map(DownpipeSize::name).toList();
    }
}
