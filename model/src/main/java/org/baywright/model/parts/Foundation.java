package org.baywright.model.parts;

import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Slab;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.SlabEdge;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The concrete on plan: a slab with an edge beam and a thickening under every base plate, or pads only. Places are on
 * the floor, x across the building and y along it.
 */
public final class Foundation {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Corners stay corners when the edge is moved in. */
    private static final BufferParameters SQUARE =
            new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 10);

    private final Slab slab;
    private final List<PlateStand> stands;
    private final SlabEdge edge;
    private final Geometry pads;

    private Foundation(Slab slab, List<PlateStand> stands, SlabEdge edge, Geometry pads) {
        this.slab = slab;
        this.stands = stands;
        this.edge = edge;
        this.pads = pads;
    }

    /** What a shed stands on. */
    public static Foundation of(Shed shed) {
        return of(shed.definition(), shed.setOut(), PlateStand.of(shed));
    }

    /** What some base plates stand on. */
    public static Foundation of(Definition definition, SetOut setOut, List<PlateStand> stands) {
        Slab slab = definition.ground().slab();
        List<Geometry> squares = slab.padSide() == 0
                ? List.of()
                : stands.stream().map(s -> square(s, slab.padSide())).toList();
        Geometry pads = squares.isEmpty() ? GEOMETRY.createPolygon() : OverlayNGRobust.union(squares);
        SlabEdge edge = slab.isPads() ? SlabEdge.round(pads) : SlabEdge.of(definition, setOut);
        return new Foundation(
                slab, List.copyOf(stands), edge, OverlayNGRobust.overlay(pads, edge.shape(), OverlayNG.INTERSECTION));
    }

    private static Geometry square(PlateStand stand, double side) {
        Envelope box =
                new Envelope(new Coordinate(stand.middle().x(), stand.middle().y()));
        box.expandBy(side / 2);
        return GEOMETRY.toGeometry(box);
    }

    /** Where the concrete ends. */
    public SlabEdge edge() {
        return edge;
    }

    /** The pads, or the thickenings of a slab, inside its edge; those that overlap are one. */
    public Geometry pads() {
        return pads.copy();
    }

    /** The beam along a slab's edge; empty for pads, and where the slab is as deep. */
    public Geometry edgeBeam() {
        if (slab.isPads() || slab.edgeWidth() == 0 || slab.edgeDepth() <= slab.thickness()) {
            return GEOMETRY.createPolygon();
        }
        Geometry shape = edge.shape();
        return shape.difference(BufferOp.bufferOp(shape, -slab.edgeWidth(), SQUARE));
    }

    /** The joints to saw into a slab. */
    public SlabJoints joints(SetOut setOut) {
        return SlabJoints.of(slab, setOut, stands, OverlayNGRobust.overlay(edge.shape(), pads, OverlayNG.DIFFERENCE));
    }
}
