package org.baywright.model.parts;

import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.KneeJoint;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RoofLine;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.WallCover;
import org.baywright.model.setout.WallFace;
import org.baywright.model.setout.WallPosts;

/**
 * A sheeted bay of a wall with all that stands in it. Directions are those of the wall: u to the right seen from
 * outside, v up, out away from the building.
 *
 * @param definition what was asked for
 * @param setOut lines and levels
 * @param cover the bay
 * @param posts its uprights
 * @param openings its openings, from left to right
 * @param covers every sheeted bay of the building
 */
record WallBay(
        Definition definition,
        SetOut setOut,
        WallCover cover,
        WallPosts posts,
        List<OpeningPlace> openings,
        List<WallCover> covers) {
    private static final double AT_END = 1;

    /** Whether its left or right end is that of the wall. */
    boolean isAtCorner(boolean left) {
        return left ? cover.bay().from() <= AT_END : cover.bay().to() >= face().length() - AT_END;
    }

    /** Whether the wall's sheets go on past its left or right end. */
    boolean goesOn(boolean left) {
        return covers.stream()
                .filter(c -> c.face().equals(face()))
                .anyMatch(c -> left
                        ? c.bay().to() == cover.bay().from()
                        : c.bay().from() == cover.bay().to());
    }

    WallFace face() {
        return cover.face();
    }

    Vec3 u() {
        return face().axes().along();
    }

    Vec3 out() {
        return face().axes().width();
    }

    /** Section of uprights and trimmers. */
    Member post() {
        return definition.envelope().walls().mullions().member();
    }

    /** The frame that what stands in the bay is counted with. */
    int frame() {
        if (cover.bay().bay() > 0) {
            return cover.bay().bay();
        }
        int first = face().leanTo().map(ColumnLine::firstFrame).orElse(1);
        int last = face().leanTo().map(ColumnLine::lastFrame).orElse(setOut.frames());
        return face().wall() == Wall.FRONT ? first : last;
    }

    /** The side of the building it is counted with; end walls of the main building with the left. */
    Side side() {
        return face().leanTo().map(ColumnLine::side).orElse(face().wall() == Wall.RIGHT ? Side.RIGHT : Side.LEFT);
    }

    Place place(Placement at) {
        return new Place(at, frame(), side());
    }

    /** Top of rafter steel over a place of the wall, that many millimetres inside its string line. */
    double roofAt(double u, double inside) {
        Vec3 at = face().toWorld(u, 0, -inside);
        if (face().leanTo().isPresent()) {
            return face().leanTo().get().roof().heightAt(at.x());
        }
        double left = setOut.main(Side.LEFT).roof().heightAt(at.x());
        return Math.min(left, setOut.main(Side.RIGHT).roof().heightAt(at.x()));
    }

    /** The roof line over a place across the span. */
    RoofLine roof(double x) {
        RoofLine left = setOut.main(Side.LEFT).roof();
        RoofLine right = setOut.main(Side.RIGHT).roof();
        return face().leanTo().map(ColumnLine::roof).orElse(left.heightAt(x) <= right.heightAt(x) ? left : right);
    }

    /** The rafter's underside over a place of an end wall. */
    double underRafter(double u) {
        Vec3 at = face().toWorld(u, 0, 0);
        RoofLine roof = roof(at.x());
        return roof.heightAt(at.x()) - roof.plumb(rafterDepth());
    }

    /** The rafter over a place of an end wall. */
    Member rafter(double u) {
        double x = face().toWorld(u, 0, 0).x();
        Side slope = roof(x).equals(setOut.main(Side.LEFT).roof()) ? Side.LEFT : Side.RIGHT;
        return face().leanTo()
                .map(line -> line.rafter(definition, frame()))
                .orElseGet(() -> definition.rafterAt(frame(), slope));
    }

    /** How far inside the string line the middle of that rafter lies. */
    double rafterInside(double u) {
        ColumnLine line = face().leanTo().orElseGet(() -> setOut.main(Side.LEFT));
        double middle = setOut.rafterMiddle(definition, line, frame());
        return (face().axes().origin().y() - middle) * out().y();
    }

    /** The underside of that rafter. */
    double underSteel(double u) {
        double x = face().toWorld(u, 0, 0).x();
        return roof(x).heightAt(x) - roof(x).plumb(rafter(u).depth());
    }

    private double rafterDepth() {
        if (face().leanTo().isPresent()) {
            return face().leanTo().get().rafter(definition, frame()).depth();
        }
        return Math.max(
                definition.rafterAt(frame(), Side.LEFT).depth(),
                definition.rafterAt(frame(), Side.RIGHT).depth());
    }

    /** Whether the end rafters or their plates reach out past the string line of an end wall. */
    boolean rafterStandsOut() {
        ColumnLine line = face().leanTo().orElseGet(() -> setOut.main(Side.LEFT));
        double half = Math.max(
                        line.rafter(definition, frame()).width(),
                        definition.rafterAt(frame(), Side.RIGHT).width())
                / 2;
        boolean plates = definition.shape().kneeJoint() == KneeJoint.BUTTED
                || face().leanTo().isPresent();
        double middle = setOut.rafterMiddle(definition, line, frame());
        double room = Math.abs(middle - face().axes().origin().y());
        return half + (plates ? PlateRoom.WELD + 5 : 0) > room;
    }

    /** How high rows of a side wall may reach: to the roof's steel plane, or so far below the rafters. */
    double sideTop(double clear, boolean belowRafters) {
        ColumnLine line = face().leanTo().orElseGet(() -> setOut.main(side()));
        double inside =
                line.x() + line.inward() * line.column(definition, frame()).depth();
        double lowest = Math.min(line.eaveHeight(), line.roof().heightAt(inside));
        double rafter = Math.max(
                line.rafter(definition, frame()).depth(),
                line.rafter(definition, frame() + 1).depth());
        return belowRafters ? lowest - line.roof().plumb(rafter) - clear : line.eaveHeight();
    }
}
