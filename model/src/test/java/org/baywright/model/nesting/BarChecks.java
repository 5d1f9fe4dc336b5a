package org.baywright.model.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.baywright.model.cutting.Stock;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;

/**
 * What must hold of every bar, from outlines of its pieces as plane polygons alone: each lies in the bar behind the end
 * trim, and neither a piece nor the blade that parts it runs into another piece. Both planes of the section are looked
 * at; a mitre in the other plane is a block from tip to tip.
 */
final class BarChecks {
    private static final GeometryFactory GEOMETRY = new GeometryFactory(new PrecisionModel());
    private static final double SPECK_MM2 = 0.01;

    private BarChecks() {}

    /** Every bar fits, each piece is cut as often as asked, and the figures of each bar add up to it. */
    static void areRight(SectionCuts cuts) {
        cuts.bars().forEach(BarChecks::isRight);
        Map<String, Long> made = new HashMap<>();
        cuts.bars()
                .forEach(bar -> bar.pieces().stream()
                        .map(p -> p.blank().mark())
                        .distinct()
                        .forEach(mark -> made.merge(mark, bar.count(mark) * bar.times(), Long::sum)));
        Map<String, Long> asked = new HashMap<>();
        cuts.needs().forEach(n -> asked.merge(n.blank().mark(), (long) n.quantity(), Long::sum));
        assertEquals(asked, made, cuts.section().designation());
        assertTrue(cuts.purchasedMm() >= cuts.boundMm() - 1e-6, "bought less than the bound");
        assertTrue(cuts.cost() >= cuts.boundCost() - 1e-6, "cheaper than the bound");
        Map<Stock, Integer> drawn = new HashMap<>();
        cuts.bars().forEach(b -> drawn.merge(b.stock(), b.times(), Integer::sum));
        drawn.forEach((stock, bars) -> assertTrue(bars <= stock.limit(), "stock is overdrawn: " + stock));
    }

    static void isRight(LaidBar bar) {
        for (int i = 0; i < bar.pieces().size(); i++) {
            Laid laid = bar.pieces().get(i);
            for (SawPlane plane : SawPlane.values()) {
                Envelope seen = Shape.of(laid, plane).piece().getEnvelopeInternal();
                assertTrue(seen.getMinX() > bar.saw().endTrimMm() - 1e-6, "in the end trim: " + bar);
                assertTrue(seen.getMaxX() < bar.stock().lengthMm() + 1e-5, "out of the bar: " + bar);
            }
            for (int j = 0; j < bar.pieces().size(); j++) {
                Laid other = bar.pieces().get(j);
                boolean apart = i == j || Stream.of(SawPlane.values()).anyMatch(p -> areApart(laid, other, p, bar));
                assertTrue(apart, () -> laid + " and " + other + " in " + bar);
            }
        }
        double sum = bar.piecesMm()
                + bar.kerfMm()
                + bar.wedgesMm()
                + bar.offcutMm()
                + bar.saw().endTrimMm();
        assertEquals(bar.stock().lengthMm(), sum, 1e-6);
        assertTrue(bar.wedgesMm() > -1e-5, "a wedge under nothing: " + bar);
    }

    /** Steel that is apart as seen in one plane is apart. */
    private static boolean areApart(Laid laid, Laid other, SawPlane plane, LaidBar bar) {
        Shape shape = Shape.of(laid, plane);
        Polygon piece = Shape.of(other, plane).piece();
        double first = bar.saw().kerfMm() * Math.hypot(1, shape.left);
        double last = bar.saw().kerfMm() * Math.hypot(1, shape.right);
        Stream<Polygon> blades = bar.saw().kerfMm() == 0
                ? Stream.of()
                : Stream.of(
                        shape.band(shape.from - first, shape.left, shape.from, shape.left),
                        shape.band(shape.to, shape.right, shape.to + last, shape.right));
        return Stream.concat(Stream.of(shape.piece()), blades)
                .allMatch(steel -> steel.intersection(piece).getArea() < SPECK_MM2);
    }

    /** A piece seen in a plane, worked out from the blank and its turn here again; square pieces fill the bar. */
    private record Shape(double from, double left, double to, double right, double half) {
        static Shape of(Laid laid, SawPlane plane) {
            Blank b = laid.blank();
            double start = b.startSlope();
            double end = b.endSlope();
            double left = switch (laid.turn()) {
                case AS_DRAWN -> start;
                case ROLLED -> -start;
                case END_FOR_END -> end;
                case END_FOR_END_ROLLED -> -end;
            };
            double right = switch (laid.turn()) {
                case AS_DRAWN -> end;
                case ROLLED -> -end;
                case END_FOR_END -> start;
                case END_FOR_END_ROLLED -> -start;
            };
            double half = b.depthMm() / 2;
            double to = laid.atMm() + b.middleMm();
            if (b.plane() == plane) {
                return new Shape(laid.atMm(), left, to, right, half);
            }
            return new Shape(laid.atMm() - Math.abs(left) * half, 0, to + Math.abs(right) * half, 0, half);
        }

        Polygon piece() {
            return band(from, left, to, right);
        }

        Polygon band(double from, double fromSlope, double to, double toSlope) {
            Coordinate first = new Coordinate(from - fromSlope * half, -half);
            return GEOMETRY.createPolygon(new Coordinate[] {
                first,
                new Coordinate(to - toSlope * half, -half),
                new Coordinate(to + toSlope * half, half),
                new Coordinate(from + fromSlope * half, half),
                first
            });
        }
    }
}
