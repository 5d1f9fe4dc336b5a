package org.baywright.model.parts;

import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.OpeningPlace;
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
 */
record WallBay(Definition definition, SetOut setOut, WallCover cover, WallPosts posts, List<OpeningPlace> openings) {
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
}
