package org.baywright.model.rules;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Site;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.setout.SitePlan;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** A boundary that does not cross itself, with the shed inside it and clear of its neighbours, to the edge of its roof and gutters. */
final class SiteRule implements Rule {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** A boundary smaller than a shed was surely given in metres. */
    private static final double METRES_MEANT = 2000;

    @Override
    public void check(Asked asked) {
        asked.definition()
                .ground()
                .site()
                .filter(site -> !outlinesCross(asked, site))
                .ifPresent(site -> check(asked, site));
    }

    private static void check(Asked asked, Site site) {
        Polygon land = polygon(site.boundary());
        SitePlan plan = SitePlan.of(asked.definition(), asked.setOut(), site);
        if (land.getEnvelopeInternal().getDiameter() < METRES_MEANT) {
            asked.error(
                    "boundary-small",
                    "site.boundary",
                    "the land is " + Asked.mm(land.getEnvelopeInternal().getDiameter()) + " mm from end to end",
                    "lengths are in millimetres: multiply metres by 1000");
        } else if (plan.wallsOver().isPresent()) {
            asked.error(
                    "shed-outside-boundary",
                    "site.corner",
                    "walls stand " + over(plan.wallsOver().get()),
                    "change corner or turn");
        } else if (plan.overhang().isPresent()) {
            asked.advice(
                    "eaves-over-boundary",
                    "site.corner",
                    "roof or gutter reaches " + over(plan.overhang().get()),
                    "change corner or turn, unless the neighbour and the council have agreed");
        }
        plan.neighboursUnder()
                .forEach(i -> asked.error(
                        "shed-on-neighbour",
                        "site.neighbours[" + i + "]",
                        "the shed, with its roof and gutters, stands over this building",
                        "move one of them"));
    }

    /** How far, where and over which leg. */
    private static String over(SitePlan.Distance way) {
        return Asked.mmUp(way.length()) + " mm over leg " + way.number() + " of the boundary, "
                + Asked.mm(way.from().x()) + " east and " + Asked.mm(way.from().y()) + " north";
    }

    private static boolean outlinesCross(Asked asked, Site site) {
        boolean crossed = crosses(polygon(site.boundary()));
        if (crossed) {
            asked.error(
                    "boundary-crosses",
                    "site.boundary",
                    "the boundary crosses itself, or all its corners lie on one line",
                    "give the corners in order, walking along the boundary");
        }
        for (int i = 0; i < site.neighbours().size(); i++) {
            if (crosses(polygon(site.neighbours().get(i)))) {
                crossed = true;
                asked.error(
                        "boundary-crosses",
                        "site.neighbours[" + i + "]",
                        "the outline crosses itself",
                        "give its corners in order");
            }
        }
        return crossed;
    }

    private static boolean crosses(Polygon polygon) {
        return !polygon.isValid() || polygon.getArea() == 0;
    }

    private static Polygon polygon(List<Vec2> corners) {
        List<Coordinate> ring = new ArrayList<>();
        corners.forEach(c -> ring.add(new Coordinate(c.x(), c.y())));
        ring.add(ring.get(0).copy());
        return GEOMETRY.createPolygon(ring.toArray(Coordinate[]::new));
    }
}
