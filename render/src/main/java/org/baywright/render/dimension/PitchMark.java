package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.ViewPort;
import org.locationtech.jts.geom.Envelope;

/** The pitch of a roof: a right triangle floating over the roof line, its long side parallel to it, and the angle. */
final class PitchMark {
    private static final double LEG = 12;
    private static final double FLOAT = 2;

    /** Where along the roof line to try, middle first. */
    private static final double[] STATIONS = {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9};

    private PitchMark() {}

    /** Draws over the line from the eave to the apex, given in view mm. */
    static Ink place(Vec2 eave, Vec2 apex, ViewPort view, LabelField field) {
        Vec2 rise = apex.minus(eave);
        double pitchDeg = Math.toDegrees(Math.atan2(Math.abs(rise.y()), Math.abs(rise.x())));
        String text = Figure.angle(pitchDeg);
        for (double off = FLOAT; off < 30; off += 4) {
            for (double station : STATIONS) {
                Ink ink = ink(view.toPaper(eave.plus(rise.times(station))), rise, pitchDeg, text, off);
                if (field.free(TurnedBox.of(box(ink)))) {
                    field.take(ink);
                    return ink;
                }
            }
        }
        Label label = Label.of(view.toPaper(eave.plus(rise.times(0.5))), Label.Pointer.ARROW, text);
        return Ink.of(field.place(label.preferring(Spot.ABOVE)).marks());
    }

    private static Envelope box(Ink ink) {
        Envelope box = Bounds.of(ink.lines());
        box.expandToInclude(Bounds.of(ink.texts()));
        return box;
    }

    private static Ink ink(Vec2 onRoof, Vec2 rise, double pitchDeg, String text, double off) {
        double way = rise.x() < 0 ? -1 : 1;
        double height = Math.min(LEG, LEG * Math.tan(Math.toRadians(pitchDeg)));
        double run = pitchDeg > 45 ? height / Math.tan(Math.toRadians(pitchDeg)) : LEG;
        double lift = off / Math.cos(Math.toRadians(pitchDeg));
        Vec2 low = onRoof.plus(new Vec2(-way * run / 2, lift - height / 2));
        Vec2 high = low.plus(new Vec2(way * run, height));
        Vec2 corner = new Vec2(low.x(), high.y());
        List<Mark> lines = new ArrayList<>();
        lines.add(
                pitchDeg > 0.05
                        ? new Stroke(List.of(low, high, corner), true, Pen.DIMENSION, Layer.DIMENSION, "")
                        : Ink.thin(low, high, Layer.DIMENSION));
        Vec2 at = new Vec2((low.x() + high.x()) / 2, high.y() + Drafting.BASELINE);
        return new Ink(lines, List.of(Text.level(text, at, Drafting.TEXT, Text.Align.CENTRE, Layer.DIMENSION)));
    }
}
