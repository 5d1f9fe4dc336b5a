package org.baywright.model.cladding;

import java.util.List;
import org.baywright.model.geometry.Vec2;

/**
 * Folded sections of flashings, each as its outside line from edge to edge, x level and y up; walked so that the
 * weather side lies on the left.
 *
 * <p>Cover over roof ribs 150 to 200, upstand 75 to 100, barge over one or two ribs. @source NZ roofing code of practice,
 * flashing cover; the other legs are common practice, no source
 */
final class Folds {
    /** Turned-down edge that stiffens and drips. */
    private static final double LIP = 12;

    private static final double COVER = 175;
    private static final double UPSTAND = 100;
    private static final double APRON = 150;
    private static final double BARGE_TOP = 150;
    private static final double BARGE_DROP = 150;
    private static final double CORNER = 100;
    private static final double TRIM = 75;
    private static final double RETURN = 40;
    private static final double BASE = 60;

    private Folds() {}

    private static Vec2 down(double rise, double side, double length) {
        double c = 1 / Math.hypot(1, rise);
        return new Vec2(side * length * c, -rise * length * c);
    }

    /** Over the ridge, a leg down each slope. */
    static List<Vec2> ridge(double leftRise, double rightRise) {
        Vec2 left = down(leftRise, -1, COVER);
        Vec2 right = down(rightRise, 1, COVER);
        return List.of(left.plus(new Vec2(0, -LIP)), left, new Vec2(0, 0), right, right.plus(new Vec2(0, -LIP)));
    }

    /** Over the edge of the roof, as far as the crest of a rib, and down the end wall. */
    static List<Vec2> barge(double ribPitch) {
        double over = Math.ceil(BARGE_TOP / ribPitch) * ribPitch;
        return List.of(
                new Vec2(LIP, -BARGE_DROP - LIP),
                new Vec2(0, -BARGE_DROP),
                new Vec2(0, 0),
                new Vec2(over, 0),
                new Vec2(over, -LIP));
    }

    /** Up a wall and out over the roof below it. */
    static List<Vec2> apron(double rise) {
        Vec2 out = down(rise, 1, APRON);
        return List.of(new Vec2(0, UPSTAND), new Vec2(0, 0), out, out.plus(new Vec2(0, -LIP)));
    }

    /** Over the upper edge of a skillion and down its high wall. */
    static List<Vec2> highEave(double rise) {
        Vec2 over = down(rise, -1, COVER);
        return List.of(
                over.plus(new Vec2(0, -LIP)),
                over,
                new Vec2(0, 0),
                new Vec2(0, -UPSTAND),
                new Vec2(LIP, -UPSTAND - LIP));
    }

    /** Behind the head of a wall sheet and in under the eave purlin, which it is screwed to. Common practice, no source. */
    static List<Vec2> eaveAngle(double rise) {
        return List.of(down(rise, 1, TRIM).times(-1), new Vec2(0, 0), new Vec2(0, -TRIM));
    }

    /** Under the main roof and over the flatter or steeper one below. */
    static List<Vec2> roofStep(double above, double below) {
        Vec2 up = down(above, 1, COVER).times(-1);
        Vec2 out = down(below, 1, COVER);
        return List.of(up, new Vec2(0, 0), out, out.plus(new Vec2(0, -LIP)));
    }

    /** Round the corner of two walls. */
    static List<Vec2> corner() {
        return List.of(
                new Vec2(-LIP, CORNER),
                new Vec2(0, CORNER),
                new Vec2(0, 0),
                new Vec2(-CORNER, 0),
                new Vec2(-CORNER, LIP));
    }

    /** Into the corner of a wall that runs up against another. */
    static List<Vec2> innerCorner() {
        return List.of(
                new Vec2(-LIP, CORNER),
                new Vec2(0, CORNER),
                new Vec2(0, 0),
                new Vec2(CORNER, 0),
                new Vec2(CORNER, -LIP));
    }

    /** Over the head of an opening: up behind the sheet, out and down. */
    static List<Vec2> head(double rib) {
        return List.of(new Vec2(0, TRIM), new Vec2(0, 0), new Vec2(rib + LIP, 0), new Vec2(rib + LIP, -RETURN));
    }

    /** Beside an opening: over the sheet's edge and back to the jamb. */
    static List<Vec2> jamb(double rib) {
        return List.of(new Vec2(-TRIM, rib), new Vec2(0, rib), new Vec2(0, -RETURN), new Vec2(RETURN / 2, -RETURN));
    }

    /** Under a window: out over the sheet below. */
    static List<Vec2> sill(double rib) {
        return List.of(new Vec2(0, RETURN), new Vec2(0, 0), new Vec2(rib + LIP, -LIP), new Vec2(rib + LIP, -TRIM));
    }

    /** Along the foot of the sheets, against mice. */
    static List<Vec2> base() {
        return List.of(new Vec2(0, BASE), new Vec2(0, 0), new Vec2(RETURN, 0), new Vec2(RETURN, -LIP));
    }
}
