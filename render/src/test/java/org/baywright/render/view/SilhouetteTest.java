package org.baywright.render.view;

import static org.baywright.render.view.Scenes.BEAM;
import static org.baywright.render.view.Scenes.TUBE;
import static org.baywright.render.view.Scenes.across;
import static org.baywright.render.view.Scenes.box;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

class SilhouetteTest {
    private static final Plane MID_LENGTH = Plane.through(new Vec3(250, 0, 0), Vec3.ACROSS);
    private static final Plane MID_WIDTH = Plane.through(Vec3.ZERO, Vec3.ALONG);

    @Test
    void aTubeCutSquareShowsItsWallAndBore() {
        List<List<Vec2>> rings = Silhouette.cut(across("R", TUBE, 500), MID_LENGTH, Projection.leftSide());
        assertEquals(2, rings.size());
        assertEquals(100 * 60, area(rings.get(0)), 1e-6);
        assertEquals(90 * 50, area(rings.get(1)), 1e-6);
    }

    @Test
    void aTubeCutOnASlantIsLongerByTheSlant() {
        Plane slant = Plane.through(new Vec3(250, 0, 0), new Vec3(1, 0, 1));
        List<List<Vec2>> rings = Silhouette.cut(across("R", TUBE, 500), slant, Projection.leftSide());
        assertEquals(100 * 60, area(rings.get(0)), 1e-6, "seen along the tube the slant does not show");
        rings = Silhouette.cut(across("R", TUBE, 500), slant, Projection.above());
        assertEquals(100 * 60, area(rings.get(0)), 1e-6, "at 45 degrees as long as high");
    }

    @Test
    void aTubeCutAlongShowsTwoWalls() {
        List<List<Vec2>> rings = Silhouette.cut(across("R", TUBE, 500), MID_WIDTH, Projection.front());
        assertEquals(2, rings.size());
        rings.forEach(r -> assertEquals(5 * 500, area(r), 1e-6));
    }

    @Test
    void aBeamCutSquareIsOneRing() {
        List<List<Vec2>> rings = Silhouette.cut(across("R", BEAM, 500), MID_LENGTH, Projection.leftSide());
        assertEquals(1, rings.size());
        assertEquals(12, rings.get(0).size());
        assertEquals(2 * 100 * 10 + 180 * 6, area(rings.get(0)), 1e-6);
    }

    @Test
    void aPlaneThatMissesOrTouchesCutsNothing() {
        Item beam = across("R", BEAM, 500);
        for (double x : new double[] {-10, 0, 500, 510}) {
            Plane plane = Plane.through(new Vec3(x, 0, 0), Vec3.ACROSS);
            assertTrue(Silhouette.cut(beam, plane, Projection.leftSide()).isEmpty(), "at " + x);
            assertTrue(
                    Silhouette.cut(beam, plane.flipped(), Projection.leftSide()).isEmpty(), "back at " + x);
        }
    }

    @Test
    void theOutlineIsWhatIsCovered() {
        Item beam = across("R", BEAM, 500);
        assertEquals(
                200 * 500, area(Silhouette.outline(beam, Projection.front()).get(0)), 1e-6);
        assertEquals(
                2 * 100 * 10 + 180 * 6,
                area(Silhouette.outline(beam, Projection.leftSide()).get(0)),
                1e-6);
    }

    @Test
    void boundsHoldAllItems() {
        List<Item> items = List.of(box("A", 0, 0, 0, 10, 20, 30), box("B", -5, 0, 40, 0, 1, 50));
        assertEquals(new Envelope(-5, 10, 0, 50), Silhouette.bounds(items, Projection.front()));
        assertEquals(new Envelope(-5, 10, 0, 20), Silhouette.bounds(items, Projection.above()));
    }

    @Test
    void behindKeepsWhatReachesBehind() {
        Item near = box("near", 0, 0, 0, 10, 10, 10);
        Item through = box("through", 0, 5, 0, 10, 25, 10);
        Item far = box("far", 0, 10, 0, 10, 30, 10);
        // Looking along the building: kept is what lies beyond y = 10.
        Plane plane = Plane.through(new Vec3(0, 10, 0), Vec3.ALONG.negated());
        assertEquals(List.of(through, far), Silhouette.behind(List.of(near, through, far), plane));
    }

    private static double area(List<Vec2> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
        }
        return Math.abs(twice) / 2;
    }
}
