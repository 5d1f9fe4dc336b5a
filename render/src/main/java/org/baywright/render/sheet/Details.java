package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.LiftingBeam;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.PartKind.Group;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.view.Item;
import org.baywright.render.view.Projection;
import org.baywright.render.view.Silhouette;
import org.locationtech.jts.geom.Envelope;

/** Finds the places where what goes on the frame meets it: eaves, ridge, cleats, a lifting beam. */
final class Details {
    private static final double EAVE = 330;
    private static final double RIDGE = 280;
    private static final double CLEAT = 150;

    /** Half of what is shown of a jamb's head and the row that it is bolted to. */
    private static final double HEAD = 250;

    /** A cleat on a column stands no further from where its lines cross. */
    private static final double AT_COLUMN = 400;

    /** From the top of rafter steel to the middle of what lies on it. */
    private static final double ON_ROOF = 60;

    private final Shed shed;
    private final SetOut setOut;
    private final int firstSheet;
    private final List<Detail> found = new ArrayList<>();

    /** Sections first, cleats on a sheet of their own, then a lifting beam. */
    private int sheet;

    private Details(Building building) {
        this.shed = building.shed();
        this.setOut = shed.setOut();
        // After the joints of every type of frame.
        this.firstSheet = FrameType.of(shed).size() + 1;
    }

    /** The details of a building; none for a bare frame. */
    static List<Detail> of(Building building) {
        Details details = new Details(building);
        if (building.shed().definition().envelope().isFull()) {
            details.eaves();
            details.top();
            details.jamb();
            details.sheet = 1;
            details.cleat(PartKind.PURLIN_CLEAT, "PURLIN CLEAT", PartKind.PURLIN);
            details.cleat(PartKind.GIRT_CLEAT, "GIRT CLEAT", PartKind.GIRT);
            details.brace();
            details.mullion();
            details.sheet = 2;
            building.shed().definition().envelope().liftingBeam().ifPresent(details::lifting);
        }
        return details.found;
    }

    private void add(String title, Detail.Look look, Detail.Parts parts, boolean clad, Set<Integer> frames) {
        Callout callout = new Callout(found.size() + 1, "S7." + (firstSheet + sheet));
        found.add(new Detail(callout, title, look, parts, clad, frames));
    }

    /** All but the bracing, which would hide what is shown. */
    private static Set<PartKind> all() {
        return EnumSet.complementOf(EnumSet.of(
                PartKind.BRACE,
                PartKind.BRACE_CLEAT,
                PartKind.BRACE_LUG,
                PartKind.STRUT,
                PartKind.BRIDGING,
                PartKind.FLY_BRACE));
    }

    /** A frame inside the building, so that nothing stands before what is shown. */
    private int frame(ColumnLine line) {
        int first = line.firstFrame();
        return line.lastFrame() - first > 1 ? first + 1 : first;
    }

    /** The side of the main roof that is free of lean-tos there, else the left. */
    private ColumnLine freeSide() {
        ColumnLine left = setOut.main(Side.LEFT);
        boolean hidden = setOut.leanTos().stream().anyMatch(l -> l.side() == Side.LEFT && l.has(frame(left)));
        boolean gable = shed.definition().shape().roofShape() == RoofShape.GABLE;
        return hidden && gable ? setOut.main(Side.RIGHT) : left;
    }

    private void eaves() {
        ColumnLine main = freeSide();
        eave(main, "EAVE, LINE " + main.letter());
        setOut.leanTos().stream().findFirst().ifPresent(lean -> {
            eave(lean, "LEAN-TO EAVE, LINE " + lean.letter());
            ColumnLine wall = setOut.main(lean.side());
            double z = lean.roof().heightAt(wall.x()) + 2 * ON_ROOF;
            section("LEAN-TO AT LINE " + wall.letter(), new Vec3(wall.x(), y(lean), z), EAVE, lean);
        });
    }

    private double y(ColumnLine line) {
        return setOut.frameLine(frame(line));
    }

    private void eave(ColumnLine line, String title) {
        section(title, new Vec3(line.x(), y(line), line.eaveHeight() - ON_ROOF), EAVE, line);
    }

    private void section(String title, Vec3 at, double reach, ColumnLine line) {
        List<PartKind> named = List.of(PartKind.PURLIN, PartKind.PURLIN_CLEAT, PartKind.GIRT, PartKind.GIRT_CLEAT);
        Set<Integer> frames = IntStream.rangeClosed(line.firstFrame(), line.lastFrame())
                .boxed()
                .collect(Collectors.toSet());
        add(title, Detail.Look.round(Projection.front(), at, reach), Detail.Parts.whole(all(), named), true, frames);
    }

    private void top() {
        ColumnLine left = setOut.main(Side.LEFT);
        boolean gable = shed.definition().shape().roofShape() == RoofShape.GABLE;
        double x = gable ? setOut.span() / 2 : setOut.span();
        section(gable ? "RIDGE" : "HIGH EAVE", new Vec3(x, y(left), setOut.apexHeight() + ON_ROOF / 2), RIDGE, left);
    }

    /** The first jamb of a side wall that is held to the eave purlin, from the end of the wall with its sheets. */
    private void jamb() {
        Set<PartKind> drawn = EnumSet.of(PartKind.JAMB, PartKind.JAMB_CLEAT, PartKind.PURLIN);
        List<PartKind> named = List.copyOf(drawn);
        // Seen from the side of the jamb that the leg lies on, which would hide it.
        shed.parts(PartKind.JAMB_CLEAT).stream()
                .filter(Part::isSeat)
                .flatMap(leg -> leg.places().stream().map(Place::placement))
                .min(Comparator.comparingDouble(leg -> leg.along().y()))
                .map(Placement::origin)
                .ifPresent(at -> add(
                        "JAMB HEAD",
                        Detail.Look.round(Projection.front(), at, HEAD),
                        Detail.Parts.whole(drawn, named),
                        true,
                        Set.of()));
    }

    /** The cleat nearest the middle of the roof's or wall's run, at a frame inside. */
    private Optional<Place> middlePlace(PartKind kind) {
        List<Place> places = shed.parts(kind).stream()
                .filter(part -> kind == PartKind.PURLIN_CLEAT || !part.holes().isEmpty())
                .flatMap(part -> part.places().stream())
                .filter(p -> kind != PartKind.GIRT_CLEAT || isAtColumn(p))
                .sorted(Comparator.comparingInt((Place p) -> Math.abs(p.frame() - Math.min(2, setOut.frames())))
                        .thenComparing(p -> p.side())
                        .thenComparingDouble(p -> p.placement().origin().x())
                        .thenComparingDouble(p -> p.placement().origin().z()))
                .toList();
        List<Place> alike = places.stream()
                .filter(p -> p.frame() == places.get(0).frame()
                        && p.side() == places.get(0).side())
                .toList();
        return alike.isEmpty() ? Optional.empty() : Optional.of(alike.get(alike.size() / 2));
    }

    private boolean isAtColumn(Place place) {
        double x = place.placement().origin().x();
        double y = place.placement().origin().y();
        return setOut.columnLines().stream().anyMatch(l -> Math.abs(l.x() - x) < AT_COLUMN)
                && setOut.frameLines().stream().anyMatch(f -> Math.abs(f - y) < AT_COLUMN);
    }

    private void cleat(PartKind kind, String title, PartKind row) {
        middlePlace(kind).ifPresent(place -> {
            Set<PartKind> drawn = EnumSet.of(kind, row);
            for (PartKind other : PartKind.values()) {
                if (other.group() == Group.FRAME || other.group() == Group.WALL) {
                    drawn.add(other);
                }
            }
            Projection view = kind == PartKind.PURLIN_CLEAT ? Projection.front() : Projection.above();
            add(
                    title,
                    Detail.Look.round(view, place.placement().origin(), CLEAT),
                    Detail.Parts.whole(drawn, List.of(kind, row)),
                    false,
                    Set.of());
        });
    }

    /** A brace at the cleat that holds its end, looked at square to the cleat. */
    private void brace() {
        middlePlace(PartKind.BRACE_CLEAT).ifPresent(place -> {
            Set<PartKind> drawn = EnumSet.of(PartKind.BRACE_CLEAT, PartKind.BRACE_LUG, PartKind.BRACE, PartKind.STRUT);
            for (PartKind other : PartKind.values()) {
                if (other.group() == Group.FRAME) {
                    drawn.add(other);
                }
            }
            add(
                    "BRACE CLEAT",
                    Detail.Look.round(
                            square(place.placement()), place.placement().origin(), 2 * CLEAT),
                    Detail.Parts.whole(
                            drawn, List.of(PartKind.BRACE_CLEAT, PartKind.BRACE_LUG, PartKind.BRACE, PartKind.STRUT)),
                    false,
                    Set.of());
        });
    }

    /** The slotted cleat that holds a mullion or jamb under the rafter: from inside, and cut through from the side. */
    private void mullion() {
        middlePlace(PartKind.MULLION_CLEAT).ifPresent(place -> {
            Placement at = place.placement();
            List<PartKind> named = List.of(PartKind.MULLION_CLEAT, PartKind.MULLION, PartKind.JAMB, PartKind.RAFTER);
            Set<PartKind> uprights = EnumSet.of(PartKind.MULLION_CLEAT, PartKind.MULLION, PartKind.JAMB);
            Set<PartKind> rafters = EnumSet.of(PartKind.RAFTER, PartKind.LEAN_TO_RAFTER);
            Set<PartKind> all = EnumSet.copyOf(uprights);
            all.addAll(rafters);
            all.add(PartKind.APEX_PLATE);
            Detail.Look inside = Detail.Look.round(square(at), at.origin(), CLEAT);
            add("SLOTTED TOP CLEAT", inside, Detail.Parts.whole(all, named), false, Set.of());
            Detail.Look side = Detail.Look.round(Projection.of(at.along(), Vec3.UP), at.origin(), CLEAT);
            add("SLOTTED TOP CLEAT, SIDE", side, new Detail.Parts(uprights, rafters, named), false, Set.of());
        });
    }

    /** What carries a lifting beam, as the section shows it and square to that. */
    private void lifting(LiftingBeam beam) {
        Set<PartKind> lifting = EnumSet.of(PartKind.LIFTING_BEAM, PartKind.LIFTING_BRACKET, PartKind.LIFTING_PLATE);
        Set<Integer> frames =
                IntStream.rangeClosed(beam.fromFrame(), beam.toFrame()).boxed().collect(Collectors.toSet());
        List<PartKind> named = List.of(
                PartKind.LIFTING_BRACKET,
                PartKind.LIFTING_PLATE,
                PartKind.LIFTING_BEAM,
                beam.along() ? PartKind.RAFTER : PartKind.COLUMN);
        shed.parts(PartKind.LIFTING_BRACKET).stream()
                .flatMap(part ->
                        part.places().stream().map(place -> new Item(part.mark(), part.solid(), place.placement())))
                .min(Comparator.comparingDouble((Item i) -> i.place().origin().y())
                        .thenComparingDouble(i -> i.place().origin().x()))
                .ifPresent(bracket -> {
                    Detail.Look front = hung(beam, bracket, Projection.front());
                    Set<PartKind> framed = EnumSet.copyOf(lifting);
                    framed.addAll(EnumSet.of(PartKind.COLUMN, PartKind.RAFTER, PartKind.APEX_PLATE));
                    add("LIFTING BEAM", front, Detail.Parts.whole(framed, named), false, frames);
                    Detail.Look side = hung(beam, bracket, Projection.rightSide());
                    Set<PartKind> behind = EnumSet.copyOf(lifting);
                    if (!beam.along()) {
                        behind.add(PartKind.COLUMN);
                    }
                    Set<PartKind> cut = beam.along() ? EnumSet.of(PartKind.RAFTER) : EnumSet.noneOf(PartKind.class);
                    add("LIFTING BEAM, SIDE", side, new Detail.Parts(behind, cut, named), false, Set.of());
                });
    }

    /** From the hook at its highest to above the bracket. */
    private static Detail.Look hung(LiftingBeam beam, Item bracket, Projection view) {
        Envelope seen = Silhouette.bounds(List.of(bracket), view);
        double top = Math.max(seen.getMaxY(), beam.underside() + beam.member().depth()) + CLEAT;
        double low = Math.min(seen.getMinY(), beam.underside() - beam.hookDrop()) - CLEAT / 2;
        Vec3 origin = bracket.place().origin();
        double middle = view.towards().y() == 0
                ? origin.x()
                : Silhouette.bounds(List.of(bracket), Projection.front()).centre().x;
        return new Detail.Look(
                view, new Vec3(middle, origin.y(), (top + low) / 2), new Vec2(2 * CLEAT, (top - low) / 2));
    }

    /** Square to a plate, from above or outside; level runs level on paper. */
    private static Projection square(Placement plate) {
        Vec3 towards = plate.along().z() < 0 ? plate.along().negated() : plate.along();
        Vec3 right = Math.abs(towards.z()) > 0.99
                ? Vec3.ACROSS
                : Vec3.UP.cross(towards).unit();
        return Projection.of(right, towards.cross(right));
    }
}
