package org.baywright.model.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.baywright.model.definition.SlabBars;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.setout.BarGrid.Meeting;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Holes against bars: JTS strips and a search in steps of 0.1 mm say the same as the exact arithmetic. */
class BarGridTest {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Lengths that are whole tenths of a millimetre, so that a search by tenths can find every end of an arc. */
    private static Arbitrary<Double> tenths(int low, int high) {
        return Arbitraries.integers().between(low, high).map(n -> n / 10.0);
    }

    private static Arbitrary<SlabBars.Row> rows() {
        return Combinators.combine(tenths(500, 3000), tenths(-2000, 2000)).as(SlabBars.Row::new);
    }

    /** Diameters of whole fifths, so that radii are tenths. */
    @Provide
    Arbitrary<BarGrid> grids() {
        Arbitrary<Double> bar = Arbitraries.integers().between(20, 100).map(n -> n / 5.0);
        Arbitrary<Double> drill = Arbitraries.integers().between(40, 150).map(n -> n / 5.0);
        return Combinators.combine(rows(), rows(), bar, drill, tenths(0, 200))
                .as((along, across, d, hole, close) ->
                        new BarGrid(new SlabBars(d, along, across, 40, close), hole, 125));
    }

    @Provide
    Arbitrary<Vec2> holes() {
        return Combinators.combine(tenths(-10_000, 10_000), tenths(-10_000, 10_000))
                .as(Vec2::new);
    }

    /** The bars of both ways within reach of the holes, drawn as strips. */
    private static Geometry strips(BarGrid grid, double moveAlong, double moveAcross) {
        double r = grid.bars().diameter() / 2;
        SlabBars.Row along = grid.bars().along();
        SlabBars.Row across = grid.bars().across();
        List<Geometry> bars = new ArrayList<>();
        for (int k = -70; k <= 70; k++) {
            double y = along.offset() + moveAlong + k * along.spacing();
            double x = across.offset() + moveAcross + k * across.spacing();
            bars.add(GEOMETRY.toGeometry(new Envelope(new Coordinate(-9000, y - r), new Coordinate(9000, y + r))));
            bars.add(GEOMETRY.toGeometry(new Envelope(new Coordinate(x - r, -9000), new Coordinate(x + r, 9000))));
        }
        return GEOMETRY.buildGeometry(bars);
    }

    /** Distance from the hole's edge to a strip; its middle may lie in one, so the depth into it does not count. */
    private static double jtsGap(Geometry strips, BarGrid grid, Vec2 hole) {
        return strips.distance(GEOMETRY.createPoint(new Coordinate(hole.x(), hole.y()))) - grid.drill() / 2;
    }

    @Property(tries = 300)
    void meetingsAgreeWithStrips(@ForAll("grids") BarGrid grid, @ForAll("holes") Vec2 hole) {
        double gap = jtsGap(strips(grid, 0, 0), grid, hole);
        Meeting expected = gap < -1e-5 ? Meeting.HIT : gap < grid.bars().close() - 1e-5 ? Meeting.CLOSE : Meeting.CLEAR;
        boolean onLimit = Math.abs(gap) < 1e-4 || Math.abs(gap - grid.bars().close()) < 1e-4;
        assertTrue(onLimit || expected == grid.meeting(hole), () -> gap + " is " + grid.meeting(hole));
    }

    @Property(tries = 150)
    void theShiftClearsEveryHole(
            @ForAll("grids") BarGrid grid, @ForAll @Size(min = 1, max = 6) List<@From("holes") Vec2> holes) {
        Optional<BarShift> shift = grid.shift(holes);
        shift.ifPresent(s -> {
            Geometry moved = strips(grid, s.along(), s.across());
            double least = s.clear() ? grid.bars().close() : 0;
            holes.forEach(h -> assertTrue(jtsGap(moved, grid, h) >= least - 1e-5, s + " leaves " + h));
        });
        // The plate moved the other way lies to the bars as the holes do to the moved bars.
        shift.map(BarShift::reversed)
                .ifPresent(s -> holes.forEach(h ->
                        assertFalse(grid.meeting(new Vec2(h.x() + s.across(), h.y() + s.along())) == Meeting.HIT)));
    }

    @Property(tries = 300)
    void noSmallerShiftIsFoundByTenths(
            @ForAll("grids") BarGrid grid, @ForAll @Size(min = 1, max = 8) List<@From("holes") Vec2> holes) {
        BarRow row = new BarRow(grid.bars().along());
        List<Double> places = holes.stream().map(Vec2::y).toList();
        double away = (grid.drill() + grid.bars().diameter()) / 2 + grid.bars().close();
        OptionalDouble exact = row.shift(places, away);
        OptionalDouble searched = searched(row, places, away);
        assertEquals(searched.isPresent(), exact.isPresent());
        assertEquals(Math.abs(searched.orElse(0)), Math.abs(exact.orElse(0)), 1e-6);
    }

    private static OptionalDouble searched(BarRow row, List<Double> places, double away) {
        for (int n = 0; n / 10.0 <= row.spacing() / 2 + 1e-9; n++) {
            for (int sign : new int[] {1, -1}) {
                double shift = sign * n / 10.0;
                BarRow moved = new BarRow(row.spacing(), row.offset() + shift);
                if (places.stream().allMatch(p -> moved.distance(p) >= away - 1e-6)) {
                    return OptionalDouble.of(shift);
                }
            }
        }
        return OptionalDouble.empty();
    }

    private static BarGrid usual(double offset, double close, double depth) {
        SlabBars.Row row = new SlabBars.Row(200, offset);
        return new BarGrid(new SlabBars(12, row, row, 40, close), 18, depth);
    }

    /** Holes at −35 and 135 across and 15 and 185 along, as at the first column: worked by hand. */
    @Test
    void byHand() {
        BarGrid grid = usual(135, 10, 125);
        assertEquals(Meeting.HIT, grid.meeting(new Vec2(135, 15)));
        assertEquals(Meeting.CLEAR, grid.meeting(new Vec2(60, 60)));
        assertEquals(Meeting.CLOSE, grid.meeting(new Vec2(110.5, 60)));
        // Holes at 135 and −35 ≡ 165 forbid bars from 110 to 190: from 135 that is 25 back or 55 on.
        BarShift shift =
                grid.shift(List.of(new Vec2(135, 60), new Vec2(-35, 60))).orElseThrow();
        assertEquals(-25, shift.across(), 1e-9);
        assertEquals(0, shift.along(), 1e-9);
        assertTrue(shift.clear());
    }

    /** Bars along the building are so close that every hole meets one; those across it at 0 step aside by 25. */
    @Test
    void whatOneWayCanClearIsGivenAndWhatStaysHitIsCounted() {
        BarGrid grid =
                new BarGrid(new SlabBars(12, new SlabBars.Row(200, 0), new SlabBars.Row(25, 0), 40, 10), 18, 125);
        List<Vec2> holes = List.of(new Vec2(0, 0), new Vec2(300, 400), new Vec2(12, 100));
        assertEquals(Optional.empty(), grid.shift(holes));
        OneWayShift shift = grid.oneWay(holes).orElseThrow();
        assertTrue(shift.along() && shift.clear());
        assertEquals(25, Math.abs(shift.shift()), 1e-9);
        assertEquals(3, shift.stillHit());
    }

    @Test
    void holesThatEndAboveTheBarsAreClear() {
        assertEquals(Meeting.CLEAR, usual(0, 10, 40).meeting(new Vec2(0, 0)));
        assertEquals(Meeting.HIT, usual(0, 10, 40.1).meeting(new Vec2(0, 0)));
    }

    /** Four holes a quarter of the spacing apart leave 50 between them: 2 × 15 fits, 2 × 25 just, 2 × 25.1 does not. */
    @Test
    void noShiftIsSaidSo() {
        List<Vec2> holes = List.of(new Vec2(0, 0), new Vec2(50, 50), new Vec2(100, 100), new Vec2(150, 150));
        assertTrue(usual(0, 10, 125).shift(holes).orElseThrow().clear());
        assertFalse(usual(0, 10.1, 125).shift(holes).orElseThrow().clear());
        SlabBars.Row row = new SlabBars.Row(50, 0);
        assertEquals(
                Optional.empty(),
                new BarGrid(new SlabBars(20, row, row, 40, 0), 32, 125).shift(List.of(new Vec2(0, 0))));
    }
}
