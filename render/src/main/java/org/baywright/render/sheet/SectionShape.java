package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.catalogue.HollowSection;
import org.baywright.model.catalogue.Section;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;

/** The true shape of a section, of hollow sections and beams with its radii, in (depth, width) about its middle, for details large enough to see them. */
final class SectionShape {
    /** Straight steps that a quarter circle is drawn in. */
    private static final int STEPS = 8;

    private SectionShape() {}

    /** Outline and bore of a section as it stands in a profile, which may be turned. */
    static List<List<Vec2>> rings(Section section, Profile standing) {
        if (section instanceof HollowSection hollow) {
            return List.of(
                    rounded(standing.outline(), hollow.outerRadius(), 0),
                    rounded(standing.bore(), hollow.innerRadius(), 0));
        }
        if (section instanceof BeamSection beam) {
            return List.of(rounded(standing.outline(), 0, beam.rootRadius()));
        }
        return standing.bore().isEmpty() ? List.of(standing.outline()) : List.of(standing.outline(), standing.bore());
    }

    /** An anticlockwise ring of square corners, its outward corners rounded by one radius and its inward by another. */
    static List<Vec2> rounded(List<Vec2> ring, double outward, double inward) {
        List<Vec2> points = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Vec2 corner = ring.get(i);
            Vec2 in =
                    corner.minus(ring.get((i + ring.size() - 1) % ring.size())).unit();
            Vec2 out = ring.get((i + 1) % ring.size()).minus(corner).unit();
            double radius = in.cross(out) > 0 ? outward : inward;
            if (radius == 0) {
                points.add(corner);
            } else {
                points.addAll(arc(corner, in, out, radius));
            }
        }
        return points;
    }

    /** From the way in to the way out, round a centre that lies a radius from both sides. */
    private static List<Vec2> arc(Vec2 corner, Vec2 in, Vec2 out, double radius) {
        Vec2 centre = corner.plus(out.minus(in).times(radius));
        List<Vec2> points = new ArrayList<>();
        for (int k = 0; k <= STEPS; k++) {
            double angle = Math.PI / 2 * k / STEPS;
            Vec2 spoke = in.times(Math.sin(angle)).minus(out.times(Math.cos(angle)));
            points.add(centre.plus(spoke.times(radius)));
        }
        return points;
    }
}
