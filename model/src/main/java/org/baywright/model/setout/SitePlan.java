package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Site;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Vec2;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.DistanceOp;

/**
 * A building on its land: its outline among the boundaries, and how far it keeps off them. Millimetres east and north.
 *
 * <pre>
 *   along  = (sin t, cos t)      t: bearing of the building's length, clockwise from north
 *   across = (cos t, -sin t)     to the right of it, from line A to line B
 * </pre>
 *
 * @param site as it was given
 * @param outline the building's corners, over its walls
 * @param edge the corners of its outermost edge, roof and gutters with it
 * @param legs the sides of the land, from corner to corner as given
 * @param setbacks the least distance from the outermost edge to each leg that faces the building
 * @param gaps the least distance from the outermost edge to each neighbour
 * @param areas of land and buildings
 */
public record SitePlan(
        Site site,
        List<Vec2> outline,
        List<Vec2> edge,
        List<Leg> legs,
        List<Distance> setbacks,
        List<Distance> gaps,
        Areas areas) {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Nearer than this to a leg's end, a place is its corner. */
    private static final double CORNER = 1;

    /** A side of the land, numbered from 1. */
    public record Leg(int number, Vec2 from, Vec2 to) {
        /** How long it is. */
        public double length() {
            return from.distance(to);
        }

        /** The place on it that is nearest to another. */
        Vec2 nearest(Vec2 place) {
            Vec2 along = to.minus(from).unit();
            double at = Math.max(0, Math.min(length(), place.minus(from).dot(along)));
            return from.plus(along.times(at));
        }

        /** The direction it is walked in, clockwise from north, 0 to 360. */
        public double bearingDeg() {
            Vec2 step = to.minus(from);
            return (Math.toDegrees(Math.atan2(step.x(), step.y())) + 360) % 360;
        }
    }

    /**
     * The shortest way from the building.
     *
     * @param number of the leg or neighbour it leads to, from 1
     * @param from on the building's outline
     * @param to where it ends
     * @param walls the walls that it starts from: two at a corner
     */
    public record Distance(int number, Vec2 from, Vec2 to, List<Wall> walls) {
        /** Copies the list. */
        public Distance {
            walls = List.copyOf(walls);
        }

        /** How long it is. */
        public double length() {
            return from.distance(to);
        }
    }

    /**
     * Areas, mm².
     *
     * @param land inside the boundary
     * @param building of the outline
     * @param others of neighbours, as far as they stand on the land
     */
    public record Areas(double land, double building, double others) {
        /** The share of the land under roof with the building, percent. */
        public double coveragePercent() {
            return 100 * (building + others) / land;
        }
    }

    /** Copies the lists. */
    public SitePlan {
        outline = List.copyOf(outline);
        edge = List.copyOf(edge);
        legs = List.copyOf(legs);
        setbacks = List.copyOf(setbacks);
        gaps = List.copyOf(gaps);
    }

    /** The plan of a building on a site. */
    public static SitePlan of(Definition definition, SetOut setOut, Site site) {
        return new Maker(site, Footprint.of(definition, setOut), Footprint.withEaves(definition, setOut)).plan();
    }

    /** Whether all of the building stands on the land, roof and gutters with it. */
    public boolean isInside() {
        return overhang().isEmpty();
    }

    /** The furthest that the outermost edge reaches over the boundary, to the leg it crosses. */
    public Optional<Distance> overhang() {
        return furthest(edge);
    }

    /** The same of the walls alone. */
    public Optional<Distance> wallsOver() {
        return furthest(outline);
    }

    private Optional<Distance> furthest(List<Vec2> ring) {
        Geometry out = polygon(ring).difference(polygon(site.boundary()));
        return Stream.of(out.getCoordinates())
                .map(c -> nearestLeg(new Vec2(c.x, c.y)))
                .filter(way -> way.length() > CORNER)
                .max(Comparator.comparingDouble(Distance::length));
    }

    private Distance nearestLeg(Vec2 from) {
        return legs.stream()
                .map(leg -> new Distance(leg.number(), from, leg.nearest(from), List.of()))
                .min(Comparator.comparingDouble(Distance::length))
                .orElseThrow();
    }

    /** The neighbours, numbered from 0, that the outermost edge stands over. */
    public List<Integer> neighboursUnder() {
        return IntStream.range(0, site.neighbours().size())
                .filter(i -> polygon(edge)
                        .buffer(-CORNER)
                        .intersects(polygon(site.neighbours().get(i))))
                .boxed()
                .toList();
    }

    private static Polygon polygon(List<Vec2> corners) {
        return GEOMETRY.createPolygon(Stream.concat(corners.stream(), Stream.of(corners.get(0)))
                .map(SitePlan::jts)
                .toArray(Coordinate[]::new));
    }

    private static Coordinate jts(Vec2 v) {
        return new Coordinate(v.x(), v.y());
    }

    /** Lays the footprint on the land and measures. */
    private record Maker(Site site, Footprint walls, Footprint eaves) {
        SitePlan plan() {
            List<Vec2> outline = walls.outline().stream().map(this::onLand).toList();
            List<Vec2> edge = eaves.outline().stream().map(this::onLand).toList();
            List<Leg> legs = legs();
            return new SitePlan(site, outline, edge, legs, setbacks(edge, legs), gaps(edge), areas(outline));
        }

        private Vec2 along() {
            double turn = Math.toRadians(site.turnDeg());
            return new Vec2(Math.sin(turn), Math.cos(turn));
        }

        private Vec2 across() {
            return along().left().times(-1);
        }

        private Vec2 onLand(Vec2 place) {
            return site.corner().plus(across().times(place.x())).plus(along().times(place.y()));
        }

        private Vec2 inBuilding(Vec2 place) {
            Vec2 step = place.minus(site.corner());
            return new Vec2(step.dot(across()), step.dot(along()));
        }

        private List<Leg> legs() {
            List<Leg> legs = new ArrayList<>();
            int n = site.boundary().size();
            for (int i = 0; i < n; i++) {
                legs.add(new Leg(i + 1, site.boundary().get(i), site.boundary().get((i + 1) % n)));
            }
            return legs;
        }

        /**
         * A leg faces the building when the shortest way to it stays on the land and ends on the leg itself; at a
         * corner that two legs share it counts for the first of them.
         */
        private List<Distance> setbacks(List<Vec2> outline, List<Leg> legs) {
            Geometry land = polygon(site.boundary()).buffer(CORNER);
            List<Distance> setbacks = new ArrayList<>();
            for (Leg leg : legs) {
                Distance way = way(leg.number(), outline, line(leg.from(), leg.to()));
                boolean onLand = way.length() < CORNER || land.covers(line(way.from(), way.to()));
                boolean told = setbacks.stream().anyMatch(s -> s.to().distance(way.to()) < CORNER);
                boolean nearer = legs.stream().anyMatch(l -> l != leg && isNearerAtCorner(l, way, outline));
                if (onLand && !told && !nearer) {
                    setbacks.add(way);
                }
            }
            return setbacks;
        }

        /** Whether a way ends in a corner that it shares with a leg which is nearer. */
        private static boolean isNearerAtCorner(Leg leg, Distance way, List<Vec2> outline) {
            boolean shared = Math.min(way.to().distance(leg.from()), way.to().distance(leg.to())) < CORNER;
            return shared && polygon(outline).distance(line(leg.from(), leg.to())) < way.length() - 1e-6;
        }

        private List<Distance> gaps(List<Vec2> outline) {
            List<Distance> gaps = new ArrayList<>();
            for (List<Vec2> neighbour : site.neighbours()) {
                gaps.add(way(gaps.size() + 1, outline, polygon(neighbour)));
            }
            return gaps;
        }

        private Distance way(int number, List<Vec2> outline, Geometry to) {
            Coordinate[] ends = DistanceOp.nearestPoints(polygon(outline), to);
            Vec2 from = new Vec2(ends[0].x, ends[0].y);
            return new Distance(number, from, new Vec2(ends[1].x, ends[1].y), eaves.wallsAt(inBuilding(from)));
        }

        private static LineString line(Vec2 from, Vec2 to) {
            return GEOMETRY.createLineString(new Coordinate[] {jts(from), jts(to)});
        }

        private Areas areas(List<Vec2> outline) {
            Polygon land = polygon(site.boundary());
            Polygon building = polygon(outline);
            Geometry others = site.neighbours().stream()
                    .map(n -> (Geometry) polygon(n))
                    .reduce(GEOMETRY.createPolygon(), Geometry::union)
                    .intersection(land)
                    .difference(building);
            return new Areas(land.getArea(), building.getArea(), others.getArea());
        }
    }
}
