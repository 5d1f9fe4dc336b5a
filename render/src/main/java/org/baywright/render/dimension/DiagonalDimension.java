package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.view.ViewPort;

/** A dimension on the very line it measures, its text broken into the line; for the diagonals of a set-out. */
final class DiagonalDimension {
    /** Where along the line the text may stand; off the middle, where two diagonals cross. */
    private static final double[] STATIONS = {0.3, 0.7, 0.25, 0.75, 0.35, 0.65, 0.2, 0.8, 0.15, 0.85, 0.4, 0.6, 0.5};

    private DiagonalDimension() {}

    static Ink place(Dimension dimension, String prefix, ViewPort view, LabelField field) {
        Vec2 a = view.toPaper(dimension.from());
        Vec2 b = view.toPaper(dimension.to());
        Rail rail = Rail.through(a, b, new Vec2(0, 1));
        double end = rail.of(b).x();
        List<Mark> lines =
                List.of(Ink.thin(a, b, Layer.DIMENSION), RailPlan.oblique(rail, 0, 0), RailPlan.oblique(rail, end, 0));
        String words = prefix.isEmpty() ? dimension.text() : prefix + " " + dimension.text();
        Ink ink = new Ink(lines, text(rail, end, words, field));
        if (ink.texts().isEmpty()) {
            Label label = Label.of(rail.at(end * 0.3, 0), Label.Pointer.DOT, words);
            ink = new Ink(lines, List.of());
            field.take(ink);
            PlacedLabel placed = field.place(label);
            List<Mark> all = new ArrayList<>(lines);
            all.addAll(placed.marks());
            return Ink.of(all);
        }
        field.take(ink);
        return ink;
    }

    private static List<Text> text(Rail rail, double end, String words, LabelField field) {
        // The box of a line is higher above the capitals than below the baseline; capitals are centred on the line.
        for (double station : STATIONS) {
            Vec2 at = rail.at(end * station, -Drafting.TEXT / 2);
            Text text = new Text(
                    words, at, Drafting.TEXT, Text.Align.CENTRE, rail.turnDeg(), Face.REGULAR, Layer.DIMENSION, "");
            if (field.free(TurnedBox.of(text))) {
                return List.of(text);
            }
        }
        return List.of();
    }
}
