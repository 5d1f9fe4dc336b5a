package org.baywright.model.rules;

import org.baywright.model.definition.Plates;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;

/** The span must leave the rafters some length between the columns. */
final class SpanRoomRule implements Rule {
    private static final double SHORTEST = 300;

    @Override
    public void check(Asked asked) {
        asked.frames().forEach(frame -> check(asked, frame));
    }

    private static void check(Asked asked, int frame) {
        double span = asked.definition().shape().span();
        boolean gable = asked.definition().shape().roofShape() == RoofShape.GABLE;
        Plates plates = asked.definition().plates();
        double left = taken(asked, Side.LEFT, frame, plates.kneeThickness());
        double right = taken(asked, Side.RIGHT, frame, plates.kneeThickness());
        double clear = gable ? span / 2 - plates.apexThickness() - Math.max(left, right) : span - left - right;
        if (clear < SHORTEST) {
            asked.error(
                    "span-too-small",
                    "span",
                    "a span of " + Asked.mm(span) + " mm leaves " + Asked.mm(clear)
                            + " mm of rafter between columns and plates; at least " + Asked.mm(SHORTEST)
                            + " is needed",
                    "widen the span or use smaller columns");
        }
    }

    private static double taken(Asked asked, Side side, int frame, double kneePlate) {
        double column = asked.column(asked.setOut().main(side), frame).depth();
        return asked.butted() ? column + kneePlate : column;
    }
}
