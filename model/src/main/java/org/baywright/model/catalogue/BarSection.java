package org.baywright.model.catalogue;

import java.util.List;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;

/**
 * Bar that braces are cut from: round rod, flat, or equal angle.
 *
 * @param designation trade name
 * @param form round, flat or angle
 * @param depth diameter, width of the flat, or leg of the angle, mm
 * @param thickness of the flat or angle; the diameter again for a rod, mm
 * @param grade grade and standard
 * @param source where the row comes from
 */
public record BarSection(String designation, Form form, double depth, double thickness, String grade, String source)
        implements Section {
    /** Its shape. */
    public enum Form {
        ROUND,
        FLAT,
        ANGLE
    }

    private static final int SIDES = 12;

    /** Checks the thickness. */
    public BarSection {
        if (!(thickness > 0) || !(thickness <= depth)) {
            throw new IllegalArgumentException("a bar is at most as thick as it is deep: " + designation);
        }
    }

    @Override
    public double width() {
        return form == Form.ANGLE ? depth : thickness;
    }

    @Override
    public Profile profile() {
        return switch (form) {
            case ROUND -> round();
            case FLAT -> Profile.rectangle(depth, thickness);
            case ANGLE -> angle();
        };
    }

    /** Drawn as a polygon, with the circle's own properties. */
    private Profile round() {
        double r = depth / 2;
        List<Vec2> ring = IntStream.range(0, SIDES)
                .mapToDouble(i -> 2 * Math.PI * i / SIDES)
                .mapToObj(a -> new Vec2(r * Math.cos(a), r * Math.sin(a)))
                .toList();
        double inertia = Math.PI * Math.pow(depth, 4) / 64;
        return new Profile(ring, List.of(), List.of(ring), Math.PI * r * r, inertia, inertia);
    }

    private Profile angle() {
        double b = depth;
        double t = thickness;
        return new ThinWall(
                        List.of(
                                new Vec2(0, 0),
                                new Vec2(b, 0),
                                new Vec2(b, t),
                                new Vec2(t, t),
                                new Vec2(t, b),
                                new Vec2(0, b)),
                        List.of(new double[] {0, 0, b, t}, new double[] {0, t, t, b}))
                .profile();
    }

    @Override
    public double surfaceM2PerM() {
        return switch (form) {
            case ROUND -> Math.PI * depth / 1000;
            case FLAT -> 2 * (depth + thickness) / 1000;
            case ANGLE -> 4 * depth / 1000;
        };
    }
}
