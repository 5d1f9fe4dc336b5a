package org.baywright.render.sheet;

import java.util.List;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Part;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/**
 * A base plate seen from above in the left of a cell: its outline, what stands on it, its holes. Words take the rest.
 *
 * @param view the drawing
 * @param plate whose face it is
 */
record PlateFace(PlacedView view, Part plate) {
    private static final List<Scale> SCALES = List.of(new Scale(2), new Scale(5), new Scale(10), new Scale(20));

    /** The share of the cell that the drawing takes; words take the rest. */
    private static final double DRAWN = 0.64;

    /** The view of a plate so wide across and so deep along, its middle at zero, at a scale of the trade. */
    static PlateFace of(SheetBuilder sheet, String name, Envelope cell, Margins round, Part plate, Vec2 size) {
        Envelope bounds = new Envelope(-size.x() / 2, size.x() / 2, -size.y() / 2, size.y() / 2);
        Margins margins =
                new Margins(round.left(), round.right() + (1 - DRAWN) * cell.getWidth(), round.below(), round.above());
        Scale fitting = PlacedView.fitting(cell, bounds, margins);
        Scale scale =
                SCALES.stream().filter(s -> s.n() >= fitting.n()).findFirst().orElse(fitting);
        return new PlateFace(sheet.view(name, cell, bounds, margins, scale), plate);
    }

    /** Words beside the drawing, so far from the top of the cell. */
    static void words(SheetBuilder sheet, List<Paragraph> words, Envelope cell, double down) {
        Envelope room = Cells.across(cell, DRAWN, 1);
        sheet.draw(Notes.of(words, room.getWidth() - 4).draw(new Vec2(room.getMinX() + 1, room.getMaxY() - down)));
    }

    void outline(double width, double depth) {
        view.draw(List.of(
                new Stroke(onPaper(Profile.corners(width, depth)), true, Pen.OUTLINE, Layer.PLATE, plate.mark())));
    }

    /** The section of what stands on it, by its rings. */
    void upright(List<List<Vec2>> rings, String mark) {
        List<List<Vec2>> drawn = rings.stream().map(this::onPaper).toList();
        view.draw(List.of(new Fill(drawn, 0.35, Layer.STEEL, mark)));
        view.draw(drawn.stream()
                .map(ring -> new Stroke(ring, true, Pen.VISIBLE, Layer.STEEL, mark))
                .toList());
    }

    private List<Vec2> onPaper(List<Vec2> ring) {
        return ring.stream().map(view.port()::toPaper).toList();
    }

    void hole(Hole hole) {
        double radius = hole.diameter() / 2;
        view.draw(List.of(Arc.circle(
                view.port().toPaper(hole.at()), view.port().toPaper(radius), Pen.VISIBLE, Layer.ANCHOR, plate.mark())));
        double arm = radius + 1.2 * view.port().scale().n();
        view.line(hole.at().plus(new Vec2(-arm, 0)), hole.at().plus(new Vec2(arm, 0)), Pen.DIMENSION, Layer.ANCHOR);
        view.line(hole.at().plus(new Vec2(0, -arm)), hole.at().plus(new Vec2(0, arm)), Pen.DIMENSION, Layer.ANCHOR);
    }
}
