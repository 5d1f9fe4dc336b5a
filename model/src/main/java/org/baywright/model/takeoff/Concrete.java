package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Slab;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.SlabEdge;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * The concrete of a shed: a slab under the main building and its lean-tos, thickened under every base plate.
 *
 * <p>V = A·t + Σ pads·(h − t); + allowance; up to 0.2 m³. @source house rules and worked examples on ordering
 * ready-mixed concrete: 5 % to 10 % allowance
 *
 * @param areaM2 of the slab
 * @param padM2 of the thickenings inside the slab's edge, overlaps counted once
 * @param slab thicknesses
 */
public record Concrete(double areaM2, double padM2, Slab slab) {
    /** @source how to estimate and order ready mix: 5 % */
    private static final double ALLOWANCE = 0.05;

    /** @source loads are batched in steps of 0.2 m³: common practice */
    private static final double STEP = 0.2;

    /** Mesh sheets lap by at least so much. @source concrete slabs and control joints (NZ house rules): lap ≥ 225 */
    private static final double MESH_LAP = 225;

    /** @source types of reinforcing mesh: sheet 6 m x 2.4 m */
    private static final double MESH_LENGTH = 6000;

    private static final double MESH_WIDTH = 2400;

    /** What the shed stands on. */
    public static Concrete of(Shed shed) {
        Slab slab = shed.definition().ground().slab();
        Geometry outline = SlabEdge.of(shed.definition(), shed.setOut()).shape();
        List<Geometry> pads = pads(shed, slab.padSide());
        double padM2 = pads.isEmpty()
                ? 0
                : UnaryUnionOp.union(pads).intersection(outline).getArea() / 1e6;
        return new Concrete(outline.getArea() / 1e6, padM2, slab);
    }

    private static List<Geometry> pads(Shed shed, double side) {
        List<Geometry> pads = new ArrayList<>();
        for (Part plate : shed.parts(PartKind.BASE_PLATE)) {
            for (Place place : side > 0 ? plate.places() : List.<Place>of()) {
                Vec3 at = place.placement().origin();
                pads.add(square(at, side));
            }
        }
        return pads;
    }

    private static Geometry square(Vec3 middle, double side) {
        Envelope box = new Envelope(new Coordinate(middle.x(), middle.y()));
        box.expandBy(side / 2);
        return new GeometryFactory().toGeometry(box);
    }

    /** What the forms hold. */
    public double netM3() {
        double deeper = Math.max(0, slab.padDepth() - slab.thickness());
        return (areaM2 * slab.thickness() + padM2 * deeper) / 1000;
    }

    /** What to order. */
    public double orderM3() {
        return Math.round(Packs.holding(netM3() * (1 + ALLOWANCE), STEP) * STEP * 10) / 10.0;
    }

    /** Sheets of mesh: the slab over what a sheet covers when lapped. */
    public int meshSheets() {
        double covers = (MESH_LENGTH - MESH_LAP) * (MESH_WIDTH - MESH_LAP) / 1e6;
        return Packs.holding(areaM2, covers);
    }

    /** What its mesh sheets measure, laps and all. */
    double meshM2() {
        return meshSheets() * MESH_LENGTH * MESH_WIDTH / 1e6;
    }
}
