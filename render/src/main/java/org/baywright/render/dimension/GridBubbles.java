package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.ViewPort;

/**
 * The names of grid lines in circles at their ends. A few close ones part on kinked lines; many close ones thin out to
 * every 2nd, 5th, 10th and so on, the first and the last always named.
 */
final class GridBubbles {
    private static final double RADIUS = 4;
    private static final double PITCH = 2 * RADIUS + 0.8;
    private static final double STEP = 4;

    /** A bubble moved further than this no longer reads as the end of its line. */
    private static final double FURTHEST_MOVE = 12;

    private static final int[] EVERY = {1, 2, 5, 10, 20, 50, 100};

    private final Rail rail;
    private final Side side;
    private final ViewPort view;
    private final double farEnd;

    /** Bubbles on a side of a view whose lines come from a far end, given in view mm. */
    GridBubbles(Rail rail, Side side, ViewPort view, double farEnd) {
        this.rail = rail;
        this.side = side;
        this.view = view;
        this.farEnd = farEnd;
    }

    private record Bubble(GridLine line, double s, double centre) {}

    Ink place(List<GridLine> given, LabelField field) {
        List<GridLine> lines =
                given.stream().sorted(Comparator.comparingDouble(GridLine::at)).toList();
        double[] room = rail.room(field.frame());
        List<Bubble> bubbles = spread(lines, room[0], room[1]).orElseGet(() -> thinned(lines));
        for (double off = Drafting.FIRST_ROW; off < field.frame().getWidth(); off += STEP) {
            double v = rail.outSign() * off;
            if (bubbles.stream().allMatch(b -> field.free(box(b, v)))) {
                return taken(bubbles, v, field);
            }
        }
        return bySelves(bubbles, field);
    }

    private double station(GridLine line) {
        return rail.of(onPaper(line.at(), farEnd)).x();
    }

    private Vec2 onPaper(double at, double across) {
        return view.toPaper(side.level() ? new Vec2(at, across) : new Vec2(across, at));
    }

    private Optional<List<Bubble>> spread(List<GridLine> lines, double low, double high) {
        double[] wished = lines.stream().mapToDouble(this::station).toArray();
        double[] sizes = lines.stream().mapToDouble(l -> PITCH).toArray();
        List<Bubble> bubbles = new ArrayList<>();
        Spread.apart(wished, sizes, low, high).ifPresent(centres -> {
            for (int i = 0; i < centres.length; i++) {
                bubbles.add(new Bubble(lines.get(i), wished[i], centres[i]));
            }
        });
        boolean near = bubbles.stream().allMatch(b -> Math.abs(b.centre() - b.s()) <= FURTHEST_MOVE);
        return near && !bubbles.isEmpty() ? Optional.of(bubbles) : Optional.empty();
    }

    private List<Bubble> thinned(List<GridLine> lines) {
        for (int every : EVERY) {
            List<Bubble> kept = every(lines, every);
            if (apart(kept)) {
                return kept;
            }
        }
        return greedy(lines);
    }

    /** Every so many, counted so that round numbers stay when the first is number one. */
    private List<Bubble> every(List<GridLine> lines, int every) {
        List<Bubble> kept = new ArrayList<>();
        int last = lines.size() - 1;
        for (int i = 0; i <= last; i++) {
            boolean end = i == 0 || i == last;
            if (end || (i + 1) % every == 0 && clearOfEnds(lines, i)) {
                double s = station(lines.get(i));
                kept.add(new Bubble(lines.get(i), s, s));
            }
        }
        return kept;
    }

    private boolean clearOfEnds(List<GridLine> lines, int i) {
        double s = station(lines.get(i));
        return s - station(lines.get(0)) >= PITCH && station(lines.get(lines.size() - 1)) - s >= PITCH;
    }

    private static boolean apart(List<Bubble> bubbles) {
        for (int i = 1; i < bubbles.size(); i++) {
            if (bubbles.get(i).s() - bubbles.get(i - 1).s() < PITCH) {
                return false;
            }
        }
        return true;
    }

    /** For lines so uneven that no regular count parts them: each one that clears those before it. */
    private List<Bubble> greedy(List<GridLine> lines) {
        List<Bubble> kept = new ArrayList<>();
        for (GridLine line : lines) {
            double s = station(line);
            if (kept.isEmpty() || s - kept.get(kept.size() - 1).s() >= PITCH) {
                kept.add(new Bubble(line, s, s));
            }
        }
        return kept;
    }

    private TurnedBox box(Bubble bubble, double v) {
        Vec2 c = centre(bubble, v);
        return TurnedBox.upright(c.x() - RADIUS, c.y() - RADIUS, c.x() + RADIUS, c.y() + RADIUS);
    }

    private Vec2 centre(Bubble bubble, double v) {
        return rail.at(bubble.centre(), v + rail.outSign() * RADIUS);
    }

    private Ink taken(List<Bubble> bubbles, double v, LabelField field) {
        List<Mark> lines = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        for (Bubble bubble : bubbles) {
            Vec2 centre = centre(bubble, v);
            lines.add(gridLine(bubble, v));
            lines.add(Ink.ring(centre, RADIUS, Layer.GRID));
            texts.add(name(bubble.line().name(), centre));
            field.obstacle(box(bubble, v));
        }
        Ink ink = new Ink(lines, texts);
        field.drawn(ink.lines().stream().filter(m -> m instanceof Stroke).toList());
        return ink;
    }

    private Mark gridLine(Bubble bubble, double v) {
        double bend = v - rail.outSign() * (bubble.centre() == bubble.s() ? 0 : 5);
        Vec2 far = onPaper(bubble.line().at(), farEnd);
        List<Vec2> path = List.of(far, rail.at(bubble.s(), bend), rail.at(bubble.centre(), v));
        return new Stroke(path, false, Pen.GRID, Layer.GRID, "");
    }

    private static Text name(String name, Vec2 centre) {
        Vec2 at = centre.minus(new Vec2(0, Drafting.TEXT / 2));
        return new Text(name, at, Drafting.TEXT, Text.Align.CENTRE, 0, Face.BOLD, Layer.GRID, "");
    }

    /** No row has room for all: each name finds its own place at the end of its line. */
    private Ink bySelves(List<Bubble> bubbles, LabelField field) {
        List<Mark> marks = new ArrayList<>();
        for (Bubble bubble : bubbles) {
            marks.add(gridLine(bubble, 0));
            Label label = Label.of(
                    rail.at(bubble.s(), 0), Label.Pointer.BESIDE, bubble.line().name());
            marks.addAll(field.place(label).marks());
        }
        return Ink.of(marks);
    }
}
