package org.baywright.model.rules;

import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.WallFace;

/**
 * The room that a wall has for an opening: between the columns at either end of its bay, and below the rafter.
 *
 * @param asked what is looked at
 * @param place the opening
 */
record OpeningRoom(Asked asked, OpeningPlace place) {
    private WallFace face() {
        return place.face();
    }

    private Definition definition() {
        return asked.definition();
    }

    private SetOut setOut() {
        return asked.setOut();
    }

    /** A jamb and a header take as much of the wall as an upright is wide. */
    double jamb() {
        return definition().envelope().walls().mullions().member().width();
    }

    /** The face of the column at the left, in the wall's u. */
    double from() {
        return place.bay().from()
                + (face().wall().isEnd()
                        ? endColumn(true)
                        : sideColumn(leftFrame(), place.bay().from()));
    }

    /** The face of the column at the right, in the wall's u. */
    double to() {
        return place.bay().to()
                - (face().wall().isEnd()
                        ? endColumn(false)
                        : sideColumn(
                                2 * place.bay().bay() + 1 - leftFrame(),
                                place.bay().to()));
    }

    /** Seen from outside, frames count from right to left along a left wall. */
    private int leftFrame() {
        return face().wall() == Wall.LEFT ? place.bay().bay() + 1 : place.bay().bay();
    }

    private ColumnLine line() {
        return face().leanTo().orElseGet(() -> setOut().main(face().wall() == Wall.LEFT ? Side.LEFT : Side.RIGHT));
    }

    /** How much of the bay the column at a frame of a side wall takes, from the bay's edge to its inner face. */
    private double sideColumn(int frame, double edge) {
        double width = asked.column(line(), frame).width();
        return Math.abs(setOut().middle(frame, width)
                        - face().toWorld(edge, 0, 0).y())
                + width / 2;
    }

    /** How much of an end wall the column at one end of it takes; a lean-to starts at the main column's face. */
    private double endColumn(boolean left) {
        Side side = (face().wall() == Wall.FRONT) == left ? Side.LEFT : Side.RIGHT;
        ColumnLine line = face().leanTo().orElseGet(() -> setOut().main(side));
        return line.side() == side ? asked.column(line, endFrame()).depth() : 0;
    }

    private int endFrame() {
        boolean front = face().wall() == Wall.FRONT;
        int last = face().leanTo().map(ColumnLine::lastFrame).orElse(setOut().frames());
        return front ? face().leanTo().map(ColumnLine::firstFrame).orElse(1) : last;
    }

    /** The lowest underside of a rafter over the opening: at the eave of a side wall, along the rake of an end wall. */
    double underRafter() {
        if (face().wall().isEnd()) {
            double left = Math.max(place.left(), place.bay().from());
            double right = Math.min(place.right(), place.bay().to());
            return Math.min(underRake(left), underRake(right));
        }
        int bay = place.bay().bay();
        return Math.min(underEave(bay), underEave(bay + 1));
    }

    private double underEave(int frame) {
        return line().heightBelowRoof(asked.rafter(line(), frame).depth());
    }

    private double underRake(double u) {
        Side half = face().toWorld(u, 0, 0).x() < setOut().span() / 2 ? Side.LEFT : Side.RIGHT;
        ColumnLine line = face().leanTo().orElseGet(() -> setOut().main(half));
        double rafter = asked.rafter(line, endFrame()).depth();
        return face().heightAt(u) - line.roof().plumb(rafter);
    }
}
