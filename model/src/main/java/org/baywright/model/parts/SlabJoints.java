package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.definition.Slab;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.setout.SetOut;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The joints that are sawn into a slab so that it cracks there. Across the building they part every bay evenly about
 * its middle, along it the width from the first to the last line; each moves off base plates where there is room, and
 * stops at thickenings.
 *
 * <p>@source at most about 6 m, panels near square, not near base-plate fixings: joint layout for slabs on ground
 *
 * @param across distances from line 1 of the joints across the building
 * @param along distances from line A of those along it
 * @param cuts where the saw runs
 * @param under the places in the grid of base plates that a cut runs under, for want of a clear place
 */
public record SlabJoints(List<Double> across, List<Double> along, List<Cut> cuts, List<String> under) {
    /** No joints: of pads, or of a slab that is to have none. */
    public static final SlabJoints NONE = new SlabJoints(List.of(), List.of(), List.of(), List.of());

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Joints lie at whole steps from the datum. */
    private static final double STEP = 50;

    /** A cut of the saw, straight. */
    public record Cut(Vec2 from, Vec2 to) {
        Envelope box() {
            return new Envelope(from.x(), to.x(), from.y(), to.y());
        }
    }

    /** Copies the lists. */
    public SlabJoints {
        across = List.copyOf(across);
        along = List.copyOf(along);
        cuts = List.copyOf(cuts);
        under = List.copyOf(under);
    }

    /** The joints of a slab. */
    static SlabJoints of(Slab slab, SetOut setOut, List<PlateStand> stands, Geometry thin) {
        if (slab.isPads() || slab.joints() == 0) {
            return NONE;
        }
        List<Double> across =
                placed(inBays(slab, setOut), slab, stands, s -> s.middle().y(), Envelope::getHeight);
        List<Double> along =
                placed(overWidth(slab, setOut), slab, stands, s -> s.middle().x(), Envelope::getWidth);
        List<Cut> cuts = new ArrayList<>();
        var box = thin.getEnvelopeInternal();
        cuts.addAll(cuts(thin, across.stream().map(y -> line(box.getMinX(), y, box.getMaxX(), y))));
        cuts.addAll(cuts(thin, along.stream().map(x -> line(x, box.getMinY(), x, box.getMaxY()))));
        return new SlabJoints(across, along, cuts, under(cuts, stands));
    }

    private static List<String> under(List<Cut> cuts, List<PlateStand> stands) {
        return stands.stream()
                .filter(s -> cuts.stream().anyMatch(cut -> box(s).intersects(cut.box())))
                .map(PlateStand::grid)
                .distinct()
                .toList();
    }

    /** What a base plate takes of the floor. */
    private static Envelope box(PlateStand stand) {
        return Standing.of(stand.plate(), stand.platePlace()).plan();
    }

    /** Halves of panels at both ends of each bay, so that no joint lies on a frame's plates. */
    private static List<Double> inBays(Slab slab, SetOut setOut) {
        return IntStream.range(1, setOut.frames())
                .boxed()
                .flatMap(bay -> {
                    double from = setOut.frameLine(bay);
                    double length = setOut.frameLine(bay + 1) - from;
                    int panels = panels(length, slab.joints());
                    return IntStream.range(0, panels).mapToObj(i -> from + (i + 0.5) * length / panels);
                })
                .toList();
    }

    private static List<Double> overWidth(Slab slab, SetOut setOut) {
        double width = setOut.right() - setOut.left();
        int panels = panels(width, slab.joints());
        return IntStream.range(1, panels)
                .mapToObj(i -> setOut.left() + i * width / panels)
                .toList();
    }

    private static int panels(double length, double most) {
        return (int) Math.ceil(length / most - 1e-9);
    }

    /** Each at the nearest place to where it is wished that is clear of plates and thickenings, else where it is wished. */
    private static List<Double> placed(
            List<Double> wished,
            Slab slab,
            List<PlateStand> stands,
            ToDoubleFunction<PlateStand> at,
            ToDoubleFunction<Envelope> extent) {
        double[] plates = stands.stream().mapToDouble(at).sorted().distinct().toArray();
        double widest = stands.stream()
                .mapToDouble(s -> extent.applyAsDouble(box(s)))
                .max()
                .orElse(0);
        double clear = Math.max(slab.padSide(), widest) / 2;
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < wished.size(); i++) {
            double before = i == 0 ? Double.POSITIVE_INFINITY : places.get(i - 1);
            double after = i + 1 < wished.size() ? wished.get(i + 1) : Double.NEGATIVE_INFINITY;
            double low = Math.max(wished.get(i) - slab.joints() / 4, after - slab.joints());
            double high = Math.min(wished.get(i) + slab.joints() / 4, before + slab.joints());
            places.add(nearest(wished.get(i), plates, clear, low, high));
        }
        return places;
    }

    /** The nearest place of whole steps between two limits that is clear; where there is none, as wished. */
    private static double nearest(double wished, double[] plates, double clear, double low, double high) {
        double start = Math.rint(wished / STEP) * STEP;
        for (double off = 0; off <= high - low; off += STEP) {
            for (double place : new double[] {start - off, start + off}) {
                boolean within = place >= low && place <= high;
                if (within && DoubleStream.of(plates).allMatch(p -> Math.abs(p - place) >= clear)) {
                    return place;
                }
            }
        }
        return Math.max(low, Math.min(high, wished));
    }

    private static LineString line(double x0, double y0, double x1, double y1) {
        return GEOMETRY.createLineString(new Coordinate[] {new Coordinate(x0, y0), new Coordinate(x1, y1)});
    }

    /** Lines that do not meet, as far as they lie on a floor. */
    private static List<Cut> cuts(Geometry floor, Stream<LineString> lines) {
        Geometry all = GEOMETRY.createMultiLineString(lines.toArray(LineString[]::new));
        Geometry line = OverlayNGRobust.overlay(all, floor, OverlayNG.INTERSECTION);
        return IntStream.range(0, line.getNumGeometries())
                .mapToObj(line::getGeometryN)
                .filter(piece -> piece.getLength() > 0)
                .map(piece -> {
                    Coordinate[] ends = piece.getCoordinates();
                    Coordinate last = ends[ends.length - 1];
                    return new Cut(new Vec2(ends[0].x, ends[0].y), new Vec2(last.x, last.y));
                })
                .toList();
    }

    /** How far the saw runs, metres. */
    public double metres() {
        return cuts.stream().mapToDouble(c -> c.from().distance(c.to())).sum() / 1000;
    }
}
