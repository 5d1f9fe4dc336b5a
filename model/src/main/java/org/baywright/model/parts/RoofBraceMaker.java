package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RoofRows;

/**
 * The crossed braces of one slope, in its own plane under the purlins, with their cleats on the rafters' sides and a
 * strut purlin between the rafters at every node, bolted under the cleats. One brace of a pair lies on the cleats, the other under them, so that
 * they pass each other at the crossing.
 *
 * @param bays the slope along the building
 */
record RoofBraceMaker(RowBays bays) {
    /** Strut purlins. Common practice, no source; or as the engineer says. */
    static final Section STRUT = Catalogue.shipped().section("SHS 50x50x3").orElseThrow();

    private static final double HOLE = 18;

    /** From a brace's end to its bolt, and around it. Common practice, no source. */
    private static final double EDGE = BraceLine.EDGE;

    private static final double LAP = 2 * EDGE;

    /** Left between a strut's end and its rafter, and beside its bolt for the nut. Common practice, no source. */
    private static final double STRUT_GAP = 10;

    private static final double STRUT_NUT = 5;

    /** The same where an upright of an end wall stands under the rafter: room for the plates of its head. */
    private static final double PAST_HEAD = 25;

    private RoofRows rows() {
        return bays.rows();
    }

    Stream<Piece> pieces() {
        return bays.definition().envelope().bracing().bays().stream()
                .distinct()
                .filter(bay -> bay >= bays.first() && bay < bays.last())
                .map(bay -> new BracePanels(bays, bay))
                .flatMap(this::bay);
    }

    private Stream<Piece> bay(BracePanels panels) {
        List<Double> nodes = panels.nodes();
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            pieces.add(strut(panels, nodes.get(i)));
            pieces.add(cleat(panels, nodes, i, panels.bay(), 1));
            pieces.add(cleat(panels, nodes, i, panels.bay() + 1, -1));
        }
        IntStream.range(1, nodes.size()).forEach(i -> {
            pieces.addAll(brace(panels, nodes, i, true));
            pieces.addAll(brace(panels, nodes, i, false));
        });
        return pieces.stream();
    }

    private Piece strut(BracePanels panels, double node) {
        int bay = panels.bay();
        double from = bays.middle(bay) + panels.face(bay) + gap(node, bay);
        double to = bays.middle(bay + 1) - panels.face(bay + 1) - gap(node, bay + 1);
        double above = -panels.plateDepth() - BracePanels.PLATE - STRUT.depth() / 2;
        Placement at = Placement.of(
                rows().place(node, from, above),
                Vec3.ALONG,
                rows().slope().roof().outward());
        return new Piece(
                PartKind.STRUT,
                new Material.Bar(STRUT, false),
                Solid.square(STRUT.profile(), 0, to - from),
                List.of(),
                new Place(at, panels.bay(), rows().slope().side()));
    }

    /** From a rafter to the end of the strut at a node. */
    private double gap(double node, int frame) {
        double x = rows().place(node, 0, 0).x();
        double near = STRUT.width()
                + bays.definition().envelope().walls().mullions().member().width();
        return new EndUprights(bays).across(frame).anyMatch(u -> Math.abs(u - x) < near) ? PAST_HEAD : STRUT_GAP;
    }

    /** The upper brace of a pair starts low on the first rafter, the lower one low on the second. */
    private List<Piece> brace(BracePanels panels, List<Double> nodes, int high, boolean upper) {
        double above = -panels.plateDepth() - (upper ? 0 : BracePanels.PLATE);
        int bay = panels.bay();
        Vec3 low = rows().place(nodes.get(high - 1), bays.middle(upper ? bay : bay + 1), above);
        Vec3 top = rows().place(nodes.get(high), bays.middle(upper ? bay + 1 : bay), above);
        Vec3 along = top.minus(low).unit();
        Vec3 outward = rows().slope().roof().outward();
        double stop = panels.stop(nodes);
        Placement at =
                Placement.of(low.plus(along.times(stop)), along, (upper ? outward : outward.negated()).cross(along));
        return new BraceLine(panels.section(), top.distance(low) - 2 * stop)
                .pieces(at, p -> new Place(p, bay, rows().slope().side()));
    }

    /**
     * A plate in the plane of the roof on the side of a rafter, under the ends of one or two braces and over the end of a
     * strut.
     */
    private Piece cleat(BracePanels panels, List<Double> nodes, int node, int frame, int intoBay) {
        double bolt = panels.stop(nodes) + EDGE;
        double across = bolt * panels.sine(nodes);
        double out = bolt * panels.cosine(nodes) - panels.face(frame);
        double length = PlateRoom.upTo5(2 * (across + EDGE));
        double ofStrut = panels.pastFlange(frame) + gap(nodes.get(node), frame) + EDGE + STRUT_NUT;
        double width = PlateRoom.upTo5(Math.max(out + LAP, ofStrut + EDGE));
        Stream<Hole> ofBraces = Stream.of(node > 0 ? -across : 0, node < nodes.size() - 1 ? across : 0)
                .filter(up -> up != 0)
                .map(up -> new Hole(new Vec2(up, out - width / 2), HOLE));
        List<Hole> holes = Stream.concat(Stream.of(new Hole(new Vec2(0, ofStrut - width / 2), HOLE)), ofBraces)
                .toList();
        double y = bays.middle(frame) + intoBay * (panels.face(frame) + width / 2);
        Vec3 along = rows().up().cross(Vec3.ALONG.times(intoBay));
        boolean upward = along.z() > 0;
        double above = upward ? -panels.plateDepth() - BracePanels.PLATE : -panels.plateDepth();
        Placement at = Placement.of(rows().place(nodes.get(node), y, above), along, rows().up());
        return PlateMaker.plate(
                PartKind.BRACE_CLEAT,
                length,
                width,
                BracePanels.PLATE,
                holes,
                new Place(at, frame, rows().slope().side()));
    }
}
