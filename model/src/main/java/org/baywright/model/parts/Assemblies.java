package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec3;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * What is welded to what: found from where the pieces stand, so that it is true of whatever was built. A plate belongs
 * to a member of a kind that carries such plates and that it touches; a cleat on a bracket or a cap plate, and the plate
 * on the bracket of a lifting beam, go with what that is on. Of a pair of brackets under one plate the plate goes with the
 * one nearer to line A. A plate that touches no such member is loose.
 */
public final class Assemblies {
    private static final Set<PartKind> COLUMNS = EnumSet.of(PartKind.COLUMN, PartKind.LEAN_TO_COLUMN);
    private static final Set<PartKind> RAFTERS = EnumSet.of(PartKind.RAFTER, PartKind.LEAN_TO_RAFTER);
    private static final Set<PartKind> FRAME =
            EnumSet.of(PartKind.COLUMN, PartKind.LEAN_TO_COLUMN, PartKind.RAFTER, PartKind.LEAN_TO_RAFTER);
    private static final Set<PartKind> UPRIGHTS =
            EnumSet.of(PartKind.COLUMN, PartKind.LEAN_TO_COLUMN, PartKind.MULLION, PartKind.JAMB);
    /** What a girt's cleat may stand on: uprights, the header or sill that a trimmer lies on, a rafter at the rake. */
    static final Set<PartKind> CARRY_GIRTS = EnumSet.of(
            PartKind.COLUMN,
            PartKind.LEAN_TO_COLUMN,
            PartKind.MULLION,
            PartKind.JAMB,
            PartKind.HEADER,
            PartKind.SILL,
            PartKind.RAFTER,
            PartKind.LEAN_TO_RAFTER);

    private static final Map<PartKind, Set<PartKind>> CARRIED_BY = new EnumMap<>(Map.of(
            PartKind.BASE_PLATE, UPRIGHTS,
            PartKind.CAP_PLATE, COLUMNS,
            PartKind.KNEE_PLATE, RAFTERS,
            PartKind.APEX_PLATE, RAFTERS,
            PartKind.LEAN_TO_PLATE, EnumSet.of(PartKind.LEAN_TO_RAFTER),
            PartKind.PURLIN_CLEAT, FRAME,
            PartKind.GIRT_CLEAT, CARRY_GIRTS,
            PartKind.BRACE_CLEAT, FRAME,
            PartKind.MULLION_CLEAT, RAFTERS,
            PartKind.LIFTING_BRACKET, EnumSet.of(PartKind.COLUMN, PartKind.RAFTER)));

    /** What lies on a seat that is itself welded to a member goes with that member. */
    private static final Map<PartKind, Set<PartKind>> SEATS = Map.of(
            PartKind.PURLIN_CLEAT, EnumSet.of(PartKind.CAP_PLATE, PartKind.KNEE_PLATE),
            PartKind.LIFTING_PLATE, EnumSet.of(PartKind.LIFTING_BRACKET),
            PartKind.MULLION_CLEAT, EnumSet.of(PartKind.APEX_PLATE));

    private final STRtree members = new STRtree();
    private final STRtree seats = new STRtree();
    private final Map<Place, List<Attached>> welded = new IdentityHashMap<>();
    private final Map<String, Integer> loose = new HashMap<>();
    private final Map<String, List<Assembly>> byMember = new LinkedHashMap<>();

    static {
        CARRIED_BY.put(PartKind.BRACE_LUG, EnumSet.of(PartKind.BRACE));
        CARRIED_BY.put(PartKind.FLY_BRACE_LUG, RAFTERS);
        CARRIED_BY.put(PartKind.BRIDGING_CLEAT, EnumSet.of(PartKind.BRIDGING));
        CARRIED_BY.put(PartKind.JAMB_CLEAT, EnumSet.of(PartKind.JAMB));
    }

    Assemblies(Shed shed) {
        Set<PartKind> carriers =
                CARRIED_BY.values().stream().flatMap(Set::stream).collect(Collectors.toSet());
        List<Standing> plates = new ArrayList<>();
        for (Part part : shed.parts()) {
            if (carriers.contains(part.kind())) {
                insert(part, members);
            } else if (part.kind().isWeldedOn()) {
                part.places().forEach(place -> plates.add(Standing.of(part, place)));
            }
        }
        plates.stream()
                .filter(p -> p.part().isSeat()
                        || SEATS.values().stream()
                                .anyMatch(s -> s.contains(p.part().kind())))
                .forEach(p -> seats.insert(p.plan(), p));
        members.build();
        seats.build();
        plates.forEach(this::attach);
        shed.parts().stream().filter(p -> !p.kind().isWeldedOn()).forEach(p -> byMember.put(p.mark(), variants(p)));
    }

    /** What is welded to what in a shed. */
    public static Assemblies of(Shed shed) {
        return shed.assemblies();
    }

    private static void insert(Part part, STRtree index) {
        for (Place place : part.places()) {
            Standing standing = Standing.of(part, place);
            index.insert(standing.plan(), standing);
        }
    }

    /** Whether a plate may lie on another: on one of those at a joint or, unless it is a seat itself, on a seat of its kind. */
    private static boolean isSeatOf(Part plate, Part seat) {
        return SEATS.getOrDefault(plate.kind(), Set.of()).contains(seat.kind())
                || seat.isSeat() && seat.kind() == plate.kind() && !plate.isSeat();
    }

    private void attach(Standing plate) {
        Optional<Standing> member = carrier(plate);
        Optional<Standing> seat = member.isPresent() ? Optional.empty() : seat(plate);
        member.or(() -> seat.flatMap(this::host))
                .ifPresentOrElse(
                        h -> welded.computeIfAbsent(h.place(), k -> new ArrayList<>())
                                .add(new Attached(
                                        plate.part(),
                                        within(
                                                h.place().placement(),
                                                plate.place().placement()),
                                        seat.map(Standing::part))),
                        () -> loose.merge(plate.part().mark(), 1, Integer::sum));
    }

    /** The member that a seat hangs on, by itself or by another seat. */
    private Optional<Standing> host(Standing seat) {
        return carrier(seat).or(() -> seat(seat).flatMap(this::host));
    }

    /** The member that a plate touches. */
    private Optional<Standing> carrier(Standing plate) {
        Set<PartKind> carriers = CARRIED_BY.getOrDefault(plate.part().kind(), Set.of());
        return touched(plate, members, part -> carriers.contains(part.kind()));
    }

    /** What a plate that touches no member lies on. */
    private Optional<Standing> seat(Standing plate) {
        return touched(plate, seats, part -> isSeatOf(plate.part(), part));
    }

    /**
     * A girt's cleat at the end of a header or under a rafter stands on the upright beside it, which it meets no less; a
     * purlin's on the rafter before the column that the rafter butts against.
     */
    private static boolean isSecond(Standing plate, Part host) {
        return switch (plate.part().kind()) {
            case GIRT_CLEAT -> !UPRIGHTS.contains(host.kind());
            case PURLIN_CLEAT -> !RAFTERS.contains(host.kind());
            default -> false;
        };
    }

    /**
     * The nearest of what a plate touches and may lie on, an upright before what is framed into it; of equals the one
     * nearest to line A, then to frame 1.
     */
    @SuppressWarnings("unchecked") // the index holds standing pieces only
    private static Optional<Standing> touched(Standing plate, STRtree index, Predicate<Part> wanted) {
        List<Standing> near = index.query(plate.plan());
        return near.stream()
                .filter(other -> wanted.test(other.part()) && plate.touches(other))
                .min(Comparator.comparing((Standing other) -> isSecond(plate, other.part()))
                        .thenComparingLong(other -> Math.round(plate.gap(other) * 1e4))
                        .thenComparing(Standing.FROM_A1));
    }

    /** A placement in the building, in the axes of another. */
    private static Placement within(Placement host, Placement inner) {
        return new Placement(
                host.toLocal(inner.origin()),
                turned(host, inner.along()),
                turned(host, inner.depth()),
                turned(host, inner.width()));
    }

    private static Vec3 turned(Placement host, Vec3 direction) {
        return new Vec3(direction.dot(host.along()), direction.dot(host.depth()), direction.dot(host.width()));
    }

    private List<Assembly> variants(Part member) {
        Map<String, List<Place>> alike = new LinkedHashMap<>();
        for (Place place : member.places()) {
            alike.computeIfAbsent(likeness(platesAt(place)), k -> new ArrayList<>())
                    .add(place);
        }
        List<Assembly> variants = new ArrayList<>();
        for (List<Place> places : alike.values()) {
            String mark = member.mark() + "-" + letters(variants.size());
            variants.add(new Assembly(mark, member, places, platesAt(places.get(0))));
        }
        return variants;
    }

    private List<Attached> platesAt(Place place) {
        return welded.getOrDefault(place, List.of());
    }

    /**
     * What two members of a mark must share to be one assembly: the same plates with the same holes at the same places,
     * to 0.1 mm. A plate that is the same turned about counts as the same.
     */
    private static String likeness(List<Attached> plates) {
        return plates.stream().map(Assemblies::likeness).sorted().collect(Collectors.joining("|"));
    }

    private static String likeness(Attached plate) {
        double middle = plate.plate().solid().axisLength() / 2;
        String holes = plate.plate().holes().stream()
                .map(h -> steps(plate.at().toWorld(middle, h.at().x(), h.at().y()), 10))
                .sorted()
                .collect(Collectors.joining());
        return plate.plate().mark()
                + steps(plate.middle(), 10)
                + line(plate.at().along())
                + line(plate.at().depth())
                + holes;
    }

    /** A direction and its opposite are one. */
    private static String line(Vec3 direction) {
        String one = steps(direction, 1000);
        String other = steps(direction.negated(), 1000);
        return one.compareTo(other) > 0 ? one : other;
    }

    private static String steps(Vec3 v, double per) {
        return " " + Math.round(v.x() * per) + " " + Math.round(v.y() * per) + " " + Math.round(v.z() * per);
    }

    /** A to Z, then AA and on. */
    private static String letters(int n) {
        String last = String.valueOf((char) ('A' + n % 26));
        return n < 26 ? last : letters(n / 26 - 1) + last;
    }

    /** The ways a member is made up with plates; one with no plates when nothing is welded to it. */
    public List<Assembly> of(Part member) {
        return byMember.getOrDefault(member.mark(), List.of());
    }

    /** All assemblies that hold a plate, or another part that is welded on. */
    public List<Assembly> holding(Part plate) {
        return byMember.values().stream()
                .flatMap(List::stream)
                .filter(a -> a.welded().stream().anyMatch(w -> w.plate() == plate))
                .toList();
    }

    /** How many of a plate touch no member that carries such plates. */
    public int loose(Part plate) {
        return loose.getOrDefault(plate.mark(), 0);
    }
}
