package org.baywright.model.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.baywright.model.definition.Site;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** A boundary that does not cross itself, with the shed inside it and clear of its neighbours. */
final class SiteRule implements Rule {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** A boundary smaller than a shed was surely given in metres. */
    private static final double METRES_MEANT = 2000;

    /** Outlines that touch share this much at most, in mm². */
    private static final double TOUCHING = 1000;

    @Override
    public void check(Asked asked) {
        asked.definition().ground().site().ifPresent(site -> check(asked, site));
    }

    private static void check(Asked asked, Site site) {
        Polygon land = polygon(site.boundary());
        List<Polygon> shed = footprint(site, asked.setOut());
        if (crosses(land)) {
            asked.error(
                    "boundary-crosses",
                    "site.boundary",
                    "the boundary crosses itself, or all its corners lie on one line",
                    "give the corners in order, walking along the boundary");
        } else if (land.getEnvelopeInternal().getDiameter() < METRES_MEANT) {
            asked.error(
                    "boundary-small",
                    "site.boundary",
                    "the land is " + Asked.mm(land.getEnvelopeInternal().getDiameter()) + " mm from end to end",
                    "lengths are in millimetres: multiply metres by 1000");
        } else if (outside(shed, land) > TOUCHING) {
            asked.error(
                    "shed-outside-boundary",
                    "site.corner",
                    String.format(
                            Locale.ROOT, "%.2f m² of the shed lie outside the boundary", outside(shed, land) / 1e6),
                    "change corner or turn");
        }
        neighbours(asked, site, shed);
    }

    private static double outside(List<Polygon> shed, Polygon land) {
        return shed.stream()
                .mapToDouble(part -> part.difference(land).getArea())
                .sum();
    }

    private static void neighbours(Asked asked, Site site, List<Polygon> shed) {
        for (int i = 0; i < site.neighbours().size(); i++) {
            Polygon other = polygon(site.neighbours().get(i));
            String key = "site.neighbours[" + i + "]";
            if (crosses(other)) {
                asked.error("boundary-crosses", key, "the outline crosses itself", "give its corners in order");
            } else if (shed.stream().anyMatch(part -> part.intersection(other).getArea() > TOUCHING)) {
                asked.error("shed-on-neighbour", key, "the shed stands on this building", "move one of them");
            }
        }
    }

    private static boolean crosses(Polygon polygon) {
        return !polygon.isValid() || polygon.getArea() == 0;
    }

    /** Column faces of the main building and of each lean-to. */
    private static List<Polygon> footprint(Site site, SetOut setOut) {
        List<Polygon> parts = new ArrayList<>();
        parts.add(part(site, 0, setOut.span(), 0, setOut.length()));
        for (ColumnLine lean : setOut.leanTos()) {
            double from = setOut.frameLine(lean.firstFrame());
            double to = setOut.frameLine(lean.lastFrame());
            parts.add(part(site, setOut.main(lean.side()).x(), lean.x(), from, to));
        }
        return parts;
    }

    private static Polygon part(Site site, double x0, double x1, double y0, double y1) {
        return polygon(Stream.of(new Vec2(x0, y0), new Vec2(x1, y0), new Vec2(x1, y1), new Vec2(x0, y1))
                .map(p -> onLand(site, p))
                .toList());
    }

    /** Across and along the shed to east and north: its length points to the bearing, its width to the right of it. */
    private static Vec2 onLand(Site site, Vec2 p) {
        double sin = Math.sin(Math.toRadians(site.turnDeg()));
        double cos = Math.cos(Math.toRadians(site.turnDeg()));
        return new Vec2(
                site.corner().x() + p.x() * cos + p.y() * sin, site.corner().y() - p.x() * sin + p.y() * cos);
    }

    private static Polygon polygon(List<Vec2> corners) {
        List<Coordinate> ring = new ArrayList<>();
        corners.forEach(c -> ring.add(new Coordinate(c.x(), c.y())));
        ring.add(ring.get(0).copy());
        return GEOMETRY.createPolygon(ring.toArray(Coordinate[]::new));
    }
}
