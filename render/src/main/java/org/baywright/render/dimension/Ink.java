package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Pen;

/**
 * What one annotation puts on paper, text apart from the rest so that text can be drawn last and on white.
 *
 * @param lines everything but text
 * @param texts the text
 */
record Ink(List<Mark> lines, List<Text> texts) {
    Ink {
        lines = List.copyOf(lines);
        texts = List.copyOf(texts);
    }

    static Ink of(List<? extends Mark> marks) {
        List<Mark> lines = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Text text) {
                texts.add(text);
            } else {
                lines.add(mark);
            }
        }
        return new Ink(lines, texts);
    }

    static Stroke thin(List<Vec2> points, Layer layer) {
        return new Stroke(points, false, Pen.DIMENSION, layer, "");
    }

    static Stroke thin(Vec2 a, Vec2 b, Layer layer) {
        return Stroke.line(a, b, Pen.DIMENSION, layer);
    }

    static Arc ring(Vec2 centre, double radius, Layer layer) {
        return Arc.circle(centre, radius, Pen.DIMENSION, layer, "");
    }

    /** A filled arrow of 15 degrees with its point at a place, pointing along a unit direction. */
    static Fill arrow(Vec2 point, Vec2 direction, Layer layer) {
        Vec2 tail = point.minus(direction.times(Drafting.ARROW));
        Vec2 half = direction.left().times(Drafting.ARROW * Math.tan(Math.toRadians(7.5)));
        return new Fill(List.of(List.of(point, tail.plus(half), tail.minus(half))), 0, layer, "");
    }

    /** A filled dot. */
    static Fill dot(Vec2 centre, double radius, Layer layer) {
        List<Vec2> rim = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            double a = Math.PI * i / 8;
            rim.add(centre.plus(new Vec2(radius * Math.cos(a), radius * Math.sin(a))));
        }
        return new Fill(List.of(rim), 0, layer, "");
    }
}
