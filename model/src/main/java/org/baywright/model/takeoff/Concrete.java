package org.baywright.model.takeoff;

import org.baywright.model.definition.Slab;
import org.baywright.model.parts.Foundation;
import org.baywright.model.parts.Shed;
import org.locationtech.jts.geom.Geometry;

/**
 * The concrete of a shed: a slab under the main building and its lean-tos, thicker along its edge and under every base
 * plate, or pads under the plates only.
 *
 * <p>V = A·t + Σ edge·(d − t) + Σ pads·(h − t); where both meet the deeper counts; + allowance; up to 0.2 m³. @source
 * house rules and worked examples on ordering ready-mixed concrete: 5 % to 10 % allowance
 *
 * @param areaM2 of the slab or pads
 * @param padM2 of the thickenings inside the slab's edge, overlaps counted once
 * @param edgeM2 of the beam along the edge
 * @param bothM2 of what is beam and thickening at once
 * @param jointsM how far the saw runs
 * @param slab thicknesses
 */
public record Concrete(double areaM2, double padM2, double edgeM2, double bothM2, double jointsM, Slab slab) {
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
        Foundation foundation = Foundation.of(shed);
        Geometry pads = foundation.pads();
        Geometry beam = foundation.edgeBeam();
        return new Concrete(
                m2(foundation.edge().shape()),
                m2(pads),
                m2(beam),
                m2(pads.intersection(beam)),
                foundation.joints(shed.setOut()).metres(),
                shed.definition().ground().slab());
    }

    private static double m2(Geometry shape) {
        return shape.getArea() / 1e6;
    }

    /** What the forms hold. */
    public double netM3() {
        double pads = Math.max(0, slab.padDepth() - slab.flat());
        double edge = Math.max(0, slab.edgeDepth() - slab.flat());
        return (areaM2 * slab.flat() + padM2 * pads + edgeM2 * edge - bothM2 * Math.min(pads, edge)) / 1000;
    }

    /** What to order. */
    public double orderM3() {
        return Math.round(Packs.holding(netM3() * (1 + ALLOWANCE), STEP) * STEP * 10) / 10.0;
    }

    /** Sheets of mesh: the slab over what a sheet covers when lapped; none in pads, nor where bars on a grid are given. */
    public int meshSheets() {
        double covers = (MESH_LENGTH - MESH_LAP) * (MESH_WIDTH - MESH_LAP) / 1e6;
        return slab.isPads() || slab.bars().isPresent() ? 0 : Packs.holding(areaM2, covers);
    }

    /** Metres of the bars on its grid, both ways, laps apart. */
    double barsM() {
        return slab.bars()
                .map(b -> areaM2 * 1000 / b.along().spacing()
                        + areaM2 * 1000 / b.across().spacing())
                .orElse(0.0);
    }

    /** What its mesh sheets measure, laps and all. */
    double meshM2() {
        return meshSheets() * MESH_LENGTH * MESH_WIDTH / 1e6;
    }
}
