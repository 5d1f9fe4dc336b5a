package org.baywright.model.catalogue;

import java.util.List;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;

/**
 * A hot-rolled universal beam or column with parallel flanges.
 *
 * @param designation trade name
 * @param depth overall depth, mm
 * @param width flange width, mm
 * @param flangeThickness mm
 * @param webThickness mm
 * @param rootRadius fillet between web and flange, mm
 * @param grade grade and product standard
 * @param source where the row comes from
 */
public record BeamSection(
        String designation,
        double depth,
        double width,
        double flangeThickness,
        double webThickness,
        double rootRadius,
        String grade,
        String source)
        implements Section {
    /** Checks that the web fits between the flanges. */
    public BeamSection {
        if (!(flangeThickness > 0) || !(webThickness > 0) || !(rootRadius >= 0)) {
            throw new IllegalArgumentException("a beam needs flanges, a web and a root radius of zero or more");
        }
        if (!(2 * (flangeThickness + rootRadius) < depth) || !(webThickness + 2 * rootRadius < width)) {
            throw new IllegalArgumentException("web, flanges and fillets do not fit the beam");
        }
    }

    @Override
    public Profile profile() {
        double h = depth / 2;
        double b = width / 2;
        double f = h - flangeThickness;
        double w = webThickness / 2;
        List<Vec2> outline = List.of(
                new Vec2(-h, -b),
                new Vec2(-f, -b),
                new Vec2(-f, -w),
                new Vec2(f, -w),
                new Vec2(f, -b),
                new Vec2(h, -b),
                new Vec2(h, b),
                new Vec2(f, b),
                new Vec2(f, w),
                new Vec2(-f, w),
                new Vec2(-f, b),
                new Vec2(-h, b));
        List<List<Vec2>> pieces =
                List.of(Profile.box(-h, -b, -f, b), Profile.box(-f, -w, f, w), Profile.box(f, -b, h, b));
        return new Profile(outline, List.of(), pieces, area(), inertia(), inertiaWidth());
    }

    private double clear() {
        return depth - 2 * flangeThickness;
    }

    /** Two flanges, the web and four fillets of (1 − π/4)r². */
    private double area() {
        return 2 * width * flangeThickness + clear() * webThickness + 4 * filletArea();
    }

    private double filletArea() {
        return (1 - Math.PI / 4) * rootRadius * rootRadius;
    }

    /** Distance of a fillet's centroid from the flange or web face it touches: r(10 − 3π)/(12 − 3π). */
    private double filletCentroid() {
        return rootRadius * (10 - 3 * Math.PI) / (12 - 3 * Math.PI);
    }

    private double inertia() {
        double arm = clear() / 2 - filletCentroid();
        return (width * cube(depth) - (width - webThickness) * cube(clear())) / 12
                + 4 * (filletOwnInertia() + filletArea() * arm * arm);
    }

    private double inertiaWidth() {
        double arm = webThickness / 2 + filletCentroid();
        return (2 * flangeThickness * cube(width) + clear() * cube(webThickness)) / 12
                + 4 * (filletOwnInertia() + filletArea() * arm * arm);
    }

    /** Second moment of a fillet about its own centroid: 0.00755 r⁴ (the spandrel of a quarter circle). */
    private double filletOwnInertia() {
        double r = rootRadius;
        double aboutCentre = cube(r) * r / 3 - Math.PI * cube(r) * r / 16;
        double arm = r - filletCentroid();
        return aboutCentre - filletArea() * arm * arm;
    }

    private static double cube(double x) {
        return x * x * x;
    }

    /** Outline of the shape with its four fillets: each replaces 2r of corner by πr/2 of arc. */
    @Override
    public double surfaceM2PerM() {
        return (2 * depth + 4 * width - 2 * webThickness - (8 - 2 * Math.PI) * rootRadius) / 1000;
    }
}
