package org.baywright.model.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Site;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Vec2;
import org.junit.jupiter.api.Test;

/** Worked by hand: a shed 10 m x 20 m (bare frame, so over its string lines) on land 100 m x 80 m and others. */
class SitePlanTest {
    private static final String SHED = "span: 10000\nbays: 4\nbaySpacing: 5000\neaveHeight: 4200\nroofPitch: 10\n";
    private static final String LEAN =
            "leanTos:\n  - {side: right, width: 4000, pitch: 5, drop: 400, fromBay: 1, toBay: 2}\n";

    private static final List<Vec2> LAND = ring(0, 0, 100_000, 0, 100_000, 80_000, 0, 80_000);

    private static List<Vec2> ring(double... xy) {
        return java.util.stream.IntStream.range(0, xy.length / 2)
                .mapToObj(i -> new Vec2(xy[2 * i], xy[2 * i + 1]))
                .toList();
    }

    private static SitePlan plan(String yaml, Site site) {
        Definition definition = Definitions.of(yaml + "envelope: none\n");
        return SitePlan.of(definition, SetOut.of(definition), site);
    }

    private static Site site(List<Vec2> land, double east, double north, double turnDeg) {
        return new Site(land, new Vec2(east, north), turnDeg, 0, List.of());
    }

    private static double setback(SitePlan plan, int leg) {
        return plan.setbacks().stream()
                .filter(s -> s.number() == leg)
                .findFirst()
                .orElseThrow()
                .length();
    }

    @Test
    void facingNorthEveryWallKeepsItsOwnDistance() {
        SitePlan plan = plan(SHED, site(LAND, 30_000, 15_000, 0));
        assertEquals(4, plan.setbacks().size());
        assertEquals(15_000, setback(plan, 1), 1e-6);
        assertEquals(100_000 - 40_000, setback(plan, 2), 1e-6);
        assertEquals(80_000 - 35_000, setback(plan, 3), 1e-6);
        assertEquals(30_000, setback(plan, 4), 1e-6);
        assertTrue(plan.setbacks().get(0).walls().contains(Wall.FRONT));
        assertTrue(plan.setbacks().get(1).walls().contains(Wall.RIGHT));
        assertTrue(plan.setbacks().get(2).walls().contains(Wall.REAR));
        assertTrue(plan.setbacks().get(3).walls().contains(Wall.LEFT));
        assertEquals(8e9, plan.areas().land(), 1);
        assertEquals(2e8, plan.areas().building(), 1);
        assertEquals(2.5, plan.areas().coveragePercent(), 1e-9);
        assertTrue(plan.isInside());
    }

    @Test
    void facingEastTheLengthRunsEastAndTheSpanSouth() {
        SitePlan plan = plan(SHED, site(LAND, 30_000, 40_000, 90));
        assertEquals(30_000, setback(plan, 1), 1e-6);
        assertEquals(100_000 - 50_000, setback(plan, 2), 1e-6);
        assertEquals(80_000 - 40_000, setback(plan, 3), 1e-6);
        assertEquals(30_000, setback(plan, 4), 1e-6);
        assertTrue(plan.setbacks().get(3).walls().contains(Wall.FRONT));
    }

    /** Turned 30°: across = (cos 30, −sin 30), along = (sin 30, cos 30); the corners are worked out from those. */
    @Test
    void turnedByThirtyDegreesItsCornersAreNearest() {
        SitePlan plan = plan(SHED, site(LAND, 30_000, 30_000, 30));
        double cos = Math.sqrt(3) / 2;
        // Corner B/1 is lowest, B/5 furthest east, A/5 highest, A/1 furthest west.
        assertEquals(30_000 - 10_000 * 0.5, setback(plan, 1), 1e-3);
        assertEquals(100_000 - (30_000 + 10_000 * cos + 20_000 * 0.5), setback(plan, 2), 1e-3);
        assertEquals(80_000 - (30_000 + 20_000 * cos), setback(plan, 3), 1e-3);
        assertEquals(30_000, setback(plan, 4), 1e-3);
        plan.setbacks().forEach(s -> assertEquals(2, s.walls().size(), "a corner"));
        assertEquals(2e8, plan.areas().building(), 1);
    }

    @Test
    void onTheBoundaryItsSetbackIsNothing() {
        SitePlan plan = plan(SHED, site(LAND, 0, 15_000, 0));
        assertEquals(0, setback(plan, 4), 1e-6);
        assertTrue(plan.isInside());
        assertFalse(plan(SHED, site(LAND, -50, 15_000, 0)).isInside());
    }

    @Test
    void leanToCountsWhereItStands() {
        SitePlan plan = plan(SHED + LEAN, site(LAND, 30_000, 15_000, 0));
        assertEquals(6, plan.outline().size());
        assertEquals(100_000 - 44_000, setback(plan, 2), 1e-6);
        assertEquals(2e8 + 4e7, plan.areas().building(), 1);
    }

    /** A full shed is measured over girts and sheets, 100 mm channel and the first sheet's depth, and over its gutters. */
    @Test
    void fullShedIsMeasuredOverItsSheetsAndGutters() {
        Definition definition = Definitions.of(SHED + "envelope: full\n");
        SitePlan plan = SitePlan.of(definition, SetOut.of(definition), site(LAND, 30_000, 15_000, 0));
        double sheet = definition.envelope().sheeting().walls().profile().depth();
        double girt = definition.envelope().walls().girts().member().depth();
        assertTrue(girt > 90 && sheet > 10);
        assertEquals(15_000 - girt - sheet, setback(plan, 1), 1e-6);
        double gutter = definition.envelope().roofWater().gutter().width();
        assertEquals(30_000 - girt - sheet - gutter, setback(plan, 4), 1e-6);
        assertTrue(plan.isInside());
        Site tight = site(LAND, 200, 15_000, 0);
        SitePlan over = SitePlan.of(definition, SetOut.of(definition), tight);
        assertEquals(4, over.overhang().orElseThrow().number());
        assertTrue(over.wallsOver().isEmpty());
    }

    /** An L: the leg behind the inner corner is not faced, and the inner corner is told once. */
    @Test
    void aLegBehindACornerIsNotFaced() {
        List<Vec2> ell = ring(0, 0, 100_000, 0, 100_000, 80_000, 60_000, 80_000, 60_000, 200_000, 0, 200_000);
        SitePlan plan = plan(SHED, site(ell, 70_000, 20_000, 0));
        List<Integer> faced =
                plan.setbacks().stream().map(SitePlan.Distance::number).toList();
        assertEquals(List.of(1, 2, 3, 6), faced);
        // Leg 4 runs up from the inner corner and leg 5 ends above it: the way to either leaves the land.
        assertEquals(40_000, setback(plan, 3), 1e-6);
    }

    @Test
    void neighboursCountWhereTheyStandOnTheLand() {
        Site site = new Site(
                LAND,
                new Vec2(30_000, 15_000),
                0,
                0,
                List.of(
                        ring(50_000, 15_000, 60_000, 15_000, 60_000, 25_000, 50_000, 25_000),
                        ring(-10_000, 60_000, 10_000, 60_000, 10_000, 70_000, -10_000, 70_000)));
        SitePlan plan = plan(SHED, site);
        assertEquals(10_000, plan.gaps().get(0).length(), 1e-6);
        assertEquals(Math.hypot(20_000, 25_000), plan.gaps().get(1).length(), 1e-6);
        assertEquals(2e8, plan.areas().others(), 1);
        assertEquals(5, plan.areas().coveragePercent(), 1e-9);
    }

    @Test
    void bearingsTurnClockwiseFromNorth() {
        SitePlan plan = plan(SHED, site(LAND, 30_000, 15_000, 0));
        assertEquals(
                List.of(90.0, 0.0, 270.0, 180.0),
                plan.legs().stream().map(SitePlan.Leg::bearingDeg).toList());
        assertEquals(
                List.of(100_000.0, 80_000.0, 100_000.0, 80_000.0),
                plan.legs().stream().map(SitePlan.Leg::length).toList());
    }
}
