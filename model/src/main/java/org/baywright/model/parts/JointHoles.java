package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Where members that are bolted to cleats need holes: found from the holes of the cleats that each lies on. The holes of a
 * mark are those of its first place, and it is known when its other places want others. A rod has none: its lugs
 * have them.
 */
public final class JointHoles {
    private static final Map<PartKind, Set<PartKind>> BOLTED = new EnumMap<>(Map.of(
            PartKind.PURLIN_CLEAT, EnumSet.of(PartKind.PURLIN),
            PartKind.GIRT_CLEAT, EnumSet.of(PartKind.GIRT),
            PartKind.BRACE_CLEAT, EnumSet.of(PartKind.BRACE, PartKind.STRUT),
            PartKind.MULLION_CLEAT, EnumSet.of(PartKind.MULLION, PartKind.JAMB),
            PartKind.FLY_BRACE_LUG, EnumSet.of(PartKind.FLY_BRACE),
            PartKind.JAMB_CLEAT, EnumSet.of(PartKind.PURLIN)));

    /** A bolt reaches through the web of a neighbour that laps between cleat and member, mm. */
    static final double THROUGH = 4;

    private final STRtree cleats = new STRtree();
    private final Map<String, List<JointHole>> byMember = new HashMap<>();

    private final Map<String, Integer> unlike = new HashMap<>();

    private JointHoles(Shed shed) {
        for (Part part : shed.parts()) {
            if (BOLTED.containsKey(part.kind()) && !part.holes().isEmpty()) {
                for (Place place : part.places()) {
                    Standing cleat = Standing.of(part, place);
                    cleats.insert(cleat.plan(), cleat);
                }
            }
        }
        cleats.build();
        for (Part part : shed.parts()) {
            if (part.kind().isMember() && !part.isRod()) {
                byMember.put(part.mark(), holes(Standing.of(part, part.places().get(0))));
                unlike.put(part.mark(), (int) part.places().stream()
                        .filter(place -> !like(holes(Standing.of(part, place))).equals(like(of(part))))
                        .count());
            }
        }
    }

    /** The holes of a shed's members. */
    public static JointHoles of(Shed shed) {
        return new JointHoles(shed);
    }

    @SuppressWarnings("unchecked") // the index holds standing pieces only
    private List<JointHole> holes(Standing member) {
        List<Standing> near = cleats.query(member.plan());
        List<JointHole> holes = new ArrayList<>();
        for (Standing cleat : near) {
            boolean bolted =
                    BOLTED.get(cleat.part().kind()).contains(member.part().kind());
            if (bolted && cleat.gap(member) <= THROUGH) {
                cleat.part().holes().forEach(h -> add(h, cleat, member, holes));
            }
        }
        holes.sort(Comparator.comparingDouble((JointHole h) -> h.at().x()).thenComparingDouble(JointHole::off));
        return holes;
    }

    private static void add(Hole hole, Standing cleat, Standing member, List<JointHole> holes) {
        var host = member.place().placement();
        Vec3 at = host.toLocal(
                cleat.place().placement().toWorld(0, hole.at().x(), hole.at().y()));
        Vec3 axis = cleat.place().placement().along();
        boolean throughDepth = Math.abs(axis.dot(host.depth())) > Math.abs(axis.dot(host.width()));
        Profile profile = member.part().solid().profile();
        boolean within = profile.outline().stream().anyMatch(p -> beyond(p, at, throughDepth, 1))
                && profile.outline().stream().anyMatch(p -> beyond(p, at, throughDepth, -1));
        boolean along = at.x() > 0 && at.x() < member.part().solid().axisLength();
        if (within && along) {
            holes.add(new JointHole(
                    at, hole.diameter(), throughDepth, cleat.part().mark()));
        }
    }

    private static boolean beyond(Vec2 corner, Vec3 at, boolean throughDepth, int sign) {
        double over = throughDepth ? corner.y() - at.z() : corner.x() - at.y();
        return sign * over > 0;
    }

    /** Holes are alike to the millimetre. */
    private static List<String> like(List<JointHole> holes) {
        return holes.stream()
                .map(h -> Math.round(h.at().x()) + " " + Math.round(h.off()) + " " + h.throughDepth() + h.diameter())
                .sorted()
                .toList();
    }

    /** How many pieces of a member's mark want other holes than its first. */
    public int unlike(Part member) {
        return unlike.getOrDefault(member.mark(), 0);
    }

    /** The holes of a member's first piece, from its marked end on. */
    public List<JointHole> of(Part member) {
        return byMember.getOrDefault(member.mark(), List.of());
    }
}
