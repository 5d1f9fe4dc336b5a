package org.baywright.render.sheet;

import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import org.baywright.model.definition.Envelope;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.RoofLine;
import org.baywright.model.setout.SetOut;

/** Pitch marks on every slope that a view along the building shows. */
final class Pitches {
    private Pitches() {}

    /**
     * Marks the main slopes and those of the lean-tos that are wanted.
     *
     * @param across from a place across the building to where it appears in the view
     */
    static void mark(Shed shed, PlacedView view, Predicate<ColumnLine> wanted, DoubleUnaryOperator across) {
        SetOut setOut = shed.setOut();
        boolean gable = shed.definition().shape().roofShape() == RoofShape.GABLE;
        double over = over(shed.definition().envelope());
        mark(view, setOut.main(Side.LEFT).roof(), over, 0, gable ? setOut.span() / 2 : setOut.span(), across);
        if (gable) {
            mark(view, setOut.main(Side.RIGHT).roof(), over, setOut.span() / 2, setOut.span(), across);
        }
        for (ColumnLine line : setOut.leanTos()) {
            if (wanted.test(line)) {
                mark(view, line.roof(), over, line.x(), setOut.main(line.side()).x(), across);
            }
        }
    }

    /** From the rafters to the top of the sheets, which are seen instead. */
    private static double over(Envelope envelope) {
        return envelope.isFull()
                ? envelope.purlins().member().depth()
                        + envelope.sheeting().roof().profile().depth()
                : 0;
    }

    private static void mark(
            PlacedView view, RoofLine roof, double over, double xa, double xb, DoubleUnaryOperator across) {
        double up = roof.plumb(over);
        Vec2 a = new Vec2(across.applyAsDouble(xa), roof.heightAt(xa) + up);
        Vec2 b = new Vec2(across.applyAsDouble(xb), roof.heightAt(xb) + up);
        boolean aLower = a.y() <= b.y();
        view.annotate().pitch(aLower ? a : b, aLower ? b : a);
    }
}
