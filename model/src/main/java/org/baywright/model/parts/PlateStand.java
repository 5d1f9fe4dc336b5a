package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;

/**
 * One base plate where it stands on the floor, with the upright on it.
 *
 * @param grid where it stands in the grid: {@code A/1} under a column, {@code A-B/1} or {@code A/1-2} between columns
 * @param plate the plate
 * @param platePlace which of its places
 * @param upright what stands on it
 * @param uprightPlace which of its places
 */
public record PlateStand(String grid, Part plate, Place platePlace, Part upright, Place uprightPlace) {
    private static final List<PartKind> UPRIGHTS =
            List.of(PartKind.COLUMN, PartKind.LEAN_TO_COLUMN, PartKind.MULLION, PartKind.JAMB);

    /** An upright by itself, to be matched with its plate. */
    private record Upright(Part part, Place place) {}

    /** Every plate of a shed, by its distance along the building and then from left to right. */
    public static List<PlateStand> of(Shed shed) {
        List<Upright> uprights = UPRIGHTS.stream()
                .flatMap(kind -> shed.parts(kind).stream())
                .flatMap(part -> part.places().stream().map(place -> new Upright(part, place)))
                .toList();
        List<PlateStand> stands = new ArrayList<>();
        for (Part plate : shed.parts(PartKind.BASE_PLATE)) {
            for (Place place : plate.places()) {
                Upright on = on(place, uprights);
                stands.add(new PlateStand(grid(shed.setOut(), on, place), plate, place, on.part, on.place));
            }
        }
        stands.sort(Comparator.comparingDouble(
                        (PlateStand s) -> Tolerance.fabricated(s.middle().y()))
                .thenComparingDouble(s -> s.middle().x()));
        return stands;
    }

    private static Upright on(Place plate, List<Upright> uprights) {
        Vec2 at = floor(plate);
        return uprights.stream()
                .filter(u -> u.place.frame() == plate.frame())
                .min(Comparator.comparingDouble(u -> floor(u.place).distance(at)))
                .orElseThrow();
    }

    private static Vec2 floor(Place place) {
        Vec3 at = place.placement().origin();
        return new Vec2(at.x(), at.y());
    }

    private static String grid(SetOut setOut, Upright on, Place plate) {
        Vec2 at = floor(plate);
        boolean column = on.part.kind() == PartKind.COLUMN || on.part.kind() == PartKind.LEAN_TO_COLUMN;
        boolean end = !column && Math.abs(plate.placement().depth().y()) > 0.5;
        int frame = on.place.frame();
        // Lean-tos of other bays may have lines of their own nearer by.
        List<ColumnLine> lines =
                setOut.columnLines().stream().filter(l -> l.has(frame)).toList();
        String letter = lines.stream()
                .min(Comparator.comparingDouble(l -> Math.abs(l.x() - at.x())))
                .orElseThrow()
                .letter();
        if (end) {
            return between(lines, at) + "/" + frame;
        }
        return letter + "/" + (column ? frame : frame + "-" + (frame + 1));
    }

    /** The lines left and right of a place. */
    private static String between(List<ColumnLine> lines, Vec2 at) {
        Stream<ColumnLine> left = lines.stream().filter(l -> l.x() <= at.x());
        Stream<ColumnLine> right = lines.stream().filter(l -> l.x() > at.x());
        Comparator<ColumnLine> byX = Comparator.comparingDouble(ColumnLine::x);
        return left.max(byX).orElseThrow().letter()
                + "-"
                + right.min(byX).orElseThrow().letter();
    }

    /** Whether a column of a frame stands on it, rather than a mullion or jamb of a wall. */
    public boolean isOfFrame() {
        return upright.kind() == PartKind.COLUMN || upright.kind() == PartKind.LEAN_TO_COLUMN;
    }

    /** Its grid place; where that does not tell plates of a wall apart, with their distance from the datum too. */
    public String name() {
        double at = grid.contains("-") && grid.indexOf('-') < grid.indexOf('/') ? middle().x() : middle().y();
        return isOfFrame() ? grid : grid + " (" + Math.round(at) + ")";
    }

    /** The middle of its underside. */
    public Vec3 middle() {
        return platePlace.placement().origin();
    }

    /** Its holes on the floor, across and along the building, in the order of the plate. */
    public List<Vec2> holes() {
        return plate.holes().stream().map(h -> onFloor(h.at())).toList();
    }

    private Vec2 onFloor(Vec2 inPlate) {
        Vec3 at = platePlace.placement().toWorld(0, inPlate.x(), inPlate.y());
        return new Vec2(at.x(), at.y());
    }

    /** A point of the upright's section on the plate: from the outside of the building inward, and along the wall. */
    public Vec2 onPlate(Vec2 inUpright) {
        Vec3 at = uprightPlace.placement().toWorld(0, inUpright.x(), inUpright.y());
        Vec3 local = platePlace.placement().toLocal(at);
        return new Vec2(local.y(), local.z());
    }

    /** Height of its underside above the finished floor. */
    public double underside() {
        return middle().z();
    }

    /** Height of its upper face above the finished floor. */
    public double top() {
        return underside() + plate.solid().axisLength();
    }

    /** How far it is turned from a plate of the left-hand side, anticlockwise seen from above, degrees. */
    public double turnDeg() {
        Vec3 inward = platePlace.placement().depth();
        double turn = Math.toDegrees(Math.atan2(inward.y(), inward.x()));
        return Math.round(turn < -1e-9 ? turn + 360 : turn);
    }
}
