package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;

/**
 * Everything that is lifted: frames whole, rafter pairs, every member with its plates, and the rows bay by bay. Which of
 * them are lifted so, and with what, is for whoever plans the lift.
 */
public final class Lifts {
    /** What is always told; rows and bridging only when one is more than a person lifts. */
    private static final Set<PartKind.Group> TOLD =
            EnumSet.of(PartKind.Group.FRAME, PartKind.Group.WALL, PartKind.Group.LIFTING, PartKind.Group.BRACING);

    private static final List<PartKind> BUNDLED = List.of(PartKind.PURLIN, PartKind.GIRT);

    private final Shed shed;
    private final Assemblies assemblies;

    private Lifts(Shed shed) {
        this.shed = shed;
        this.assemblies = Assemblies.of(shed);
    }

    /** The lifts of a shed, whole frames first. */
    public static List<Lift> of(Shed shed) {
        Lifts lifts = new Lifts(shed);
        List<Lift> all = new ArrayList<>(lifts.wholeFrames());
        if (shed.definition().shape().roofShape() == RoofShape.GABLE) {
            all.addAll(lifts.frames(Lift.Kind.RAFTER_PAIR, EnumSet.of(PartKind.RAFTER)));
        }
        all.addAll(lifts.pieces());
        all.addAll(lifts.packs());
        return all;
    }

    /** The frames of a shed by themselves, lifted whole. */
    public static List<Lift> frames(Shed shed) {
        return new Lifts(shed).wholeFrames();
    }

    private List<Lift> wholeFrames() {
        return frames(Lift.Kind.FRAME, EnumSet.of(PartKind.COLUMN, PartKind.RAFTER));
    }

    /** What is made up of some kinds of member at each frame. */
    private List<Lift> frames(Lift.Kind kind, Set<PartKind> kinds) {
        Map<Integer, List<Hung>> steel = new TreeMap<>();
        Map<Integer, Set<String>> marks = new TreeMap<>();
        for (Part part : shed.parts()) {
            for (Assembly assembly : kinds.contains(part.kind()) ? assemblies.of(part) : List.<Assembly>of()) {
                for (Place place : assembly.places()) {
                    steel.computeIfAbsent(place.frame(), k -> new ArrayList<>())
                            .add(Hung.of(assembly, place.placement()));
                    marks.computeIfAbsent(place.frame(), k -> new TreeSet<>()).add(part.mark());
                }
            }
        }
        double a = shed.setOut().main(Side.LEFT).x();
        List<Lift> lifts = new ArrayList<>();
        steel.forEach((frame, hung) -> {
            Hung whole = Hung.together(hung);
            Lift.Balance balance =
                    new Lift.Balance(whole.centre().x() - a, whole.centre().z() - whole.low());
            String names = String.join(", ", marks.get(frame));
            lifts.add(new Lift(kind, names, List.of(frame), 1, whole.massKg(), balance, whole.high()));
        });
        return alike(lifts);
    }

    private List<Lift> pieces() {
        List<Lift> lifts = new ArrayList<>();
        for (Part part : shed.parts()) {
            boolean told = TOLD.contains(part.kind().group()) && part.kind() != PartKind.FLY_BRACE;
            for (Assembly assembly : assemblies.of(part)) {
                Lift lift = piece(assembly);
                if (told || lift.isHeavy()) {
                    lifts.add(lift);
                }
            }
        }
        return alike(lifts);
    }

    private static Lift piece(Assembly assembly) {
        Hung flat = Hung.of(assembly, Placement.of(Vec3.ZERO, new Vec3(1, 0, 0), new Vec3(0, 1, 0)));
        double high = assembly.places().stream()
                .mapToDouble(p -> Hung.of(assembly, p.placement()).high())
                .max()
                .orElseThrow();
        Lift.Balance balance =
                new Lift.Balance(flat.centre().x() - tip(assembly.member().solid()), 0);
        String mark = assembly.welded().isEmpty() ? assembly.member().mark() : assembly.mark();
        return new Lift(Lift.Kind.PIECE, mark, frames(assembly), assembly.quantity(), flat.massKg(), balance, high);
    }

    private static List<Integer> frames(Assembly assembly) {
        return assembly.member().kind().isOfFrame()
                ? assembly.places().stream()
                        .map(Place::frame)
                        .distinct()
                        .sorted()
                        .toList()
                : List.of();
    }

    private static double tip(Solid solid) {
        return solid.profile().outline().stream()
                .mapToDouble(solid::startStation)
                .min()
                .orElseThrow();
    }

    /** One bundle for each plane of roof or wall in a bay. */
    private List<Lift> packs() {
        List<Lift> lifts = new ArrayList<>();
        for (PartKind kind : BUNDLED) {
            Map<Integer, Map<List<Long>, List<Row>>> bays = new TreeMap<>();
            for (Part part : shed.parts(kind)) {
                for (Place place : part.places()) {
                    bays.computeIfAbsent(place.frame(), k -> new LinkedHashMap<>())
                            .computeIfAbsent(plane(place.placement()), k -> new ArrayList<>())
                            .add(new Row(part, place, Hung.of(part, place.placement())));
                }
            }
            bays.forEach((bay, planes) -> planes.values().forEach(rows -> lifts.add(pack(kind, bay, rows))));
        }
        return alike(lifts);
    }

    /** The plane that a row lies in, the same for all that lie in it: which way it faces and how far out it is. */
    private static List<Long> plane(Placement row) {
        Vec3 out = row.depth();
        boolean back = Math.abs(out.z()) > 0.01 ? out.z() < 0 : out.x() + out.y() < 0;
        Vec3 facing = back ? out.negated() : out;
        return List.of(
                Math.round(facing.x() * 100), Math.round(facing.y() * 100), Math.round(facing.dot(row.origin()) / 200));
    }

    private record Row(Part part, Place place, Hung hung) {}

    private static Lift pack(PartKind kind, int bay, List<Row> rows) {
        Hung all = Hung.together(rows.stream().map(Row::hung).toList());
        double longest = rows.stream()
                .mapToDouble(r -> r.part.solid().axisLength())
                .max()
                .orElseThrow();
        String name = rows.size() + " " + kind.label() + (rows.size() == 1 ? "" : "s");
        boolean end = Math.abs(rows.get(0).place.placement().depth().y()) > 0.5;
        return new Lift(
                end ? Lift.Kind.END_PACK : Lift.Kind.PACK,
                name,
                List.of(bay),
                1,
                all.massKg(),
                new Lift.Balance(longest / 2, 0),
                all.high());
    }

    /**
     * Lifts of like members that weigh the same to the kilogram and hang from the same place to the centimetre, counted
     * as one.
     */
    private static List<Lift> alike(List<Lift> lifts) {
        Function<Lift, List<Object>> key = l -> List.of(
                l.kind(),
                l.marks().replaceAll("-[A-Z]+", ""),
                Math.round(l.massKg()),
                Math.round(l.balance().along() / 10),
                Math.round(l.balance().up() / 10),
                Math.round(l.height() / 100));
        return lifts.stream()
                .collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(Lifts::joined)
                .toList();
    }

    private static Lift joined(List<Lift> alike) {
        Lift heaviest =
                alike.stream().max(Comparator.comparingDouble(Lift::massKg)).orElseThrow();
        List<Integer> places = alike.stream()
                .map(Lift::places)
                .flatMap(Collection::stream)
                .distinct()
                .sorted()
                .toList();
        String marks = alike.stream().map(Lift::marks).distinct().collect(Collectors.joining(", "));
        int count = alike.stream().mapToInt(Lift::count).sum();
        double high = alike.stream().mapToDouble(Lift::height).max().orElseThrow();
        return new Lift(heaviest.kind(), marks, places, count, heaviest.massKg(), heaviest.balance(), high);
    }
}
