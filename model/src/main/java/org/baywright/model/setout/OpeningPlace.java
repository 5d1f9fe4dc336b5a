package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Opening;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.WallFace.WallBay;

/**
 * An opening where it is in its wall, clear size, in the wall's axes.
 *
 * @param number its place in the list of openings, from 1
 * @param opening what was asked for
 * @param face the wall
 * @param bay the bay of the wall
 * @param left left edge, in u
 * @param right right edge, in u
 * @param sill bottom
 * @param head top; for a bay left open the top of rafter steel
 */
public record OpeningPlace(
        int number, Opening opening, WallFace face, WallBay bay, double left, double right, double sill, double head) {
    /** The openings that have a wall to be in; the others are the rules' to tell. */
    public static List<OpeningPlace> of(Definition definition, List<WallFace> faces) {
        List<OpeningPlace> places = new ArrayList<>();
        List<Opening> openings = definition.envelope().openings();
        for (int i = 0; i < openings.size(); i++) {
            of(i + 1, openings.get(i), SetOut.of(definition), faces).ifPresent(places::add);
        }
        return places;
    }

    private static Optional<OpeningPlace> of(int number, Opening opening, SetOut setOut, List<WallFace> faces) {
        return faces.stream()
                .filter(f -> f.wall() == opening.wall())
                .filter(f -> f.leanTo().map(l -> l.side()).equals(opening.leanTo()))
                .filter(f -> !f.wall().isEnd() || hasItsBay(f, opening))
                .flatMap(f -> f.bays().stream()
                        .filter(b ->
                                f.wall().isEnd() || b.bay() == opening.bay().orElse(1))
                        .map(b -> of(number, opening, setOut, f, b)))
                .findFirst();
    }

    /** Whether an end wall is the one asked for: where a side has two lean-tos, a bay says whose. */
    private static boolean hasItsBay(WallFace end, Opening opening) {
        return opening.bay().isEmpty()
                || end.leanTo()
                        .map(l -> l.has(opening.bay().getAsInt())
                                && l.has(opening.bay().getAsInt() + 1))
                        .orElse(true);
    }

    private static OpeningPlace of(int number, Opening opening, SetOut setOut, WallFace face, WallBay bay) {
        if (opening.size().isEmpty()) {
            double low = Math.min(face.heightAt(bay.from()), face.heightAt(bay.to()));
            return new OpeningPlace(number, opening, face, bay, bay.from(), bay.to(), 0, low);
        }
        Opening.Size size = opening.size().get();
        double width = bay.to() - bay.from();
        boolean fromRight = face.wall() == Wall.LEFT || face.wall() == Wall.REAR;
        double datum = datum(setOut, face, bay, fromRight ? bay.to() : bay.from());
        double left = opening.offset().isEmpty()
                ? bay.from() + (width - size.width()) / 2
                : fromRight
                        ? datum - opening.offset().getAsDouble() - size.width()
                        : datum + opening.offset().getAsDouble();
        return new OpeningPlace(
                number, opening, face, bay, left, left + size.width(), size.sill(), size.sill() + size.height());
    }

    /** What an offset counts from: a bay's lower frame line, or the end of an end wall. */
    private static double datum(SetOut setOut, WallFace face, WallBay bay, double end) {
        return face.wall().isEnd()
                ? end
                : face.axes()
                        .toLocal(Vec3.ALONG.times(setOut.frameLine(bay.bay())))
                        .x();
    }

    /** Its tag on drawings and schedules: the letter of what closes it and its number, such as {@code D1}. */
    public String tag() {
        return switch (opening.type()) {
                    case WINDOW -> "W";
                    case OPEN -> "O";
                    case ROLLER_DOOR, SLIDING_DOOR, DOOR -> "D";
                }
                + number;
    }

    /** Whether it stands right over another, between the same jambs. */
    public boolean isOver(OpeningPlace other) {
        return isBetweenSameJambs(other) && sill >= other.head;
    }

    /** Whether it has the edges of another of its bay, and so the same jambs. */
    public boolean isBetweenSameJambs(OpeningPlace other) {
        return face.equals(other.face)
                && bay.equals(other.bay)
                && Tolerance.same(left, other.left)
                && Tolerance.same(right, other.right);
    }

    /** Clear width. */
    public double width() {
        return right - left;
    }

    /** Whether it is a whole bay without jambs or header. */
    public boolean isWholeBay() {
        return opening.size().isEmpty();
    }
}
