package org.baywright.model.catalogue;

import java.util.List;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;

/**
 * A purlin or girt folded from galvanised strip. The depth stands square to the sheeting; the web of a C lies at the low
 * side of the width, the flange of a Z at the high side of the depth points to the high side of the width.
 *
 * @param designation trade name
 * @param form lipped C, lipped Z or top hat
 * @param depth over the flanges, mm
 * @param flange width of the flanges of a C or Z, or of a top hat's crown, mm
 * @param lip of a C or Z, or width of a top hat's feet, mm
 * @param thickness of the strip, mm
 * @param grade grade and standard
 * @param source where the row comes from
 */
public record ColdFormedSection(
        String designation,
        Form form,
        double depth,
        double flange,
        double lip,
        double thickness,
        String grade,
        String source)
        implements Section {
    /** How the strip is folded. */
    public enum Form {
        /** Lipped channel. */
        C,
        /** Lipped, flanges to opposite sides, so that lengths can be lapped. */
        Z,
        /** Crown, two webs and two feet. */
        TOP_HAT
    }

    /** Checks that the folds leave room for each other. */
    public ColdFormedSection {
        if (!(thickness > 0) || !(lip > thickness) || !(2 * lip < depth) || !(flange > 2 * thickness)) {
            throw new IllegalArgumentException("the folds of a section do not fit: " + designation);
        }
    }

    @Override
    public double width() {
        return switch (form) {
            case C -> flange;
            case Z -> 2 * flange - thickness;
            case TOP_HAT -> flange + 2 * (lip - thickness);
        };
    }

    @Override
    public Profile profile() {
        return switch (form) {
            case C -> channel().profile();
            case Z -> zed().profile();
            case TOP_HAT -> hat().profile();
        };
    }

    private ThinWall channel() {
        double h = depth / 2;
        double b = flange;
        double t = thickness;
        double l = h - lip;
        return new ThinWall(
                List.of(
                        new Vec2(-h, 0),
                        new Vec2(h, 0),
                        new Vec2(h, b),
                        new Vec2(l, b),
                        new Vec2(l, b - t),
                        new Vec2(h - t, b - t),
                        new Vec2(h - t, t),
                        new Vec2(t - h, t),
                        new Vec2(t - h, b - t),
                        new Vec2(-l, b - t),
                        new Vec2(-l, b),
                        new Vec2(-h, b)),
                List.of(
                        box(-h, 0, h, t),
                        box(h - t, t, h, b),
                        box(-h, t, t - h, b),
                        box(l, b - t, h - t, b),
                        box(t - h, b - t, -l, b)));
    }

    private ThinWall zed() {
        double h = depth / 2;
        double b = flange - thickness / 2;
        double t = thickness;
        double s = t / 2;
        double l = h - lip;
        return new ThinWall(
                List.of(
                        new Vec2(h, -s),
                        new Vec2(h, b),
                        new Vec2(l, b),
                        new Vec2(l, b - t),
                        new Vec2(h - t, b - t),
                        new Vec2(h - t, s),
                        new Vec2(-h, s),
                        new Vec2(-h, -b),
                        new Vec2(-l, -b),
                        new Vec2(-l, t - b),
                        new Vec2(t - h, t - b),
                        new Vec2(t - h, -s)),
                List.of(
                        box(-h, -s, h, s),
                        box(h - t, s, h, b),
                        box(l, b - t, h - t, b),
                        box(-h, -b, t - h, -s),
                        box(t - h, -b, -l, t - b)));
    }

    private ThinWall hat() {
        double h = depth / 2;
        double c = flange / 2;
        double t = thickness;
        double f = c - t + lip;
        return new ThinWall(
                List.of(
                        new Vec2(-h, -f),
                        new Vec2(-h, t - c),
                        new Vec2(h - t, t - c),
                        new Vec2(h - t, c - t),
                        new Vec2(-h, c - t),
                        new Vec2(-h, f),
                        new Vec2(t - h, f),
                        new Vec2(t - h, c),
                        new Vec2(h, c),
                        new Vec2(h, -c),
                        new Vec2(t - h, -c),
                        new Vec2(t - h, -f)),
                List.of(
                        box(h - t, -c, h, c),
                        box(-h, -c, h - t, t - c),
                        box(-h, c - t, h - t, c),
                        box(-h, -f, t - h, -c),
                        box(-h, c, t - h, f)));
    }

    private static double[] box(double d0, double w0, double d1, double w1) {
        return new double[] {d0, w0, d1, w1};
    }

    /** Both faces of the strip. */
    @Override
    public double surfaceM2PerM() {
        return 2 * areaMm2() / thickness / 1000;
    }
}
