package org.baywright.model.takeoff;

import java.util.List;
import org.baywright.model.cladding.Surface;
import org.baywright.model.geometry.Vec2;

/** Areas of sheeted surfaces, m². */
final class Areas {
    private Areas() {}

    /** What the sheets cover as fixed: the outline without its holes. */
    static double sheeted(Surface surface) {
        return (polygon(surface.outline())
                        - surface.holes().stream().mapToDouble(Areas::polygon).sum())
                / 1e6;
    }

    /** What the sheets cover as ordered: cover width by length, each. */
    static double ordered(Surface surface) {
        return surface.sheets().stream().mapToDouble(Surface.Sheet::length).sum()
                * surface.profile().cover()
                / 1e6;
    }

    /** @source shoelace formula */
    private static double polygon(List<Vec2> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Vec2 a = ring.get(i);
            Vec2 b = ring.get((i + 1) % ring.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }
}
