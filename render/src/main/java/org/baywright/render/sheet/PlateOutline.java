package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Attached;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PlateRoom;
import org.locationtech.jts.geom.Envelope;

/**
 * The outline of what stands on an end plate, in the plate's face.
 *
 * @param ring its corners, depth right and width up from the plate's middle
 * @param members the members that stand so
 */
record PlateOutline(List<Vec2> ring, List<Part> members) {
    /** Copies the lists. */
    PlateOutline {
        ring = List.copyOf(ring);
        members = List.copyOf(members);
    }

    /** The different outlines on a plate; none on a cleat. */
    static List<PlateOutline> of(Part plate, List<Assembly> holding) {
        Map<String, List<Vec2>> rings = new LinkedHashMap<>();
        Map<String, List<Part>> members = new LinkedHashMap<>();
        for (Assembly assembly : holding) {
            for (Attached attached : assembly.welded()) {
                if (attached.plate() == plate && attached.isOnAnEnd()) {
                    List<Vec2> ring = ring(assembly.member().solid(), attached);
                    String likeness = likeness(ring);
                    rings.putIfAbsent(likeness, ring);
                    List<Part> on = members.computeIfAbsent(likeness, k -> new ArrayList<>());
                    if (!on.contains(assembly.member())) {
                        on.add(assembly.member());
                    }
                }
            }
        }
        return rings.entrySet().stream()
                .map(e -> new PlateOutline(e.getValue(), members.get(e.getKey())))
                .toList();
    }

    /** The same outline begun at another corner is the same outline. */
    private static String likeness(List<Vec2> ring) {
        return ring.stream()
                .map(p -> Math.round(p.x()) + "/" + Math.round(p.y()))
                .sorted()
                .collect(Collectors.joining(" "));
    }

    private static List<Vec2> ring(Solid member, Attached attached) {
        boolean first = attached.middle().x() < member.axisLength() / 2;
        List<Vec2> outline = member.profile().outline();
        List<Vec3> ring = first ? member.startRing(outline) : member.endRing(outline);
        return ring.stream()
                .map(attached.at()::toLocal)
                .map(p -> new Vec2(p.y(), p.z()))
                .toList();
    }

    /** The box round it. */
    Envelope box() {
        Envelope box = new Envelope();
        ring.forEach(p -> box.expandToInclude(p.x(), p.y()));
        return box;
    }

    /** Whether an edge of the plate leaves no ledge for a fillet beside the member, whose edge is butt welded there. */
    boolean isButted(Part plate) {
        Envelope edges = new Envelope();
        plate.solid().profile().outline().forEach(p -> edges.expandToInclude(p.x(), p.y()));
        Envelope member = box();
        double ledge = Math.min(
                Math.min(member.getMinX() - edges.getMinX(), edges.getMaxX() - member.getMaxX()),
                Math.min(member.getMinY() - edges.getMinY(), edges.getMaxY() - member.getMaxY()));
        return ledge < PlateRoom.WELD_LEG;
    }

    /** The marks of the members. */
    String marks() {
        return members.stream().map(Part::mark).collect(Collectors.joining(", "));
    }
}
