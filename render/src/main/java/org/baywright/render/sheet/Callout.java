package org.baywright.render.sheet;

import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;

/**
 * Where a detail is drawn: a bubble with its number over the number of its sheet.
 *
 * @param detail number of the detail, from 1
 * @param sheet number of the sheet it is on
 */
record Callout(int detail, String sheet) {
    /** Of the bubble, paper mm. */
    static final double RADIUS = 5.5;

    private static final double TEXT = 2.5;

    /** The bubble about a point of the paper. */
    List<Mark> marks(Vec2 centre) {
        return List.of(
                Arc.circle(centre, RADIUS, Pen.VISIBLE, Layer.LABEL, ""),
                Stroke.line(
                        centre.minus(new Vec2(RADIUS, 0)), centre.plus(new Vec2(RADIUS, 0)), Pen.VISIBLE, Layer.LABEL),
                words(String.valueOf(detail), centre.plus(new Vec2(0, 1)), Face.BOLD),
                words(sheet, centre.minus(new Vec2(0, 1 + TEXT)), Face.REGULAR));
    }

    private static Text words(String words, Vec2 at, Face face) {
        return new Text(words, at, TEXT, Text.Align.CENTRE, 0, face, Layer.LABEL, "");
    }
}
