package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.view.ViewPort;

/**
 * The levels on one side of a view: at each true height a line with a triangle standing on it, then the height in bold
 * over the name. Levels that are close keep their order and part on kinked lines.
 *
 * <pre>
 *            ▼      / +5258
 *  ----------------/  APEX
 *            ▼        +4200
 *  -----------------  EAVE
 * </pre>
 */
final class LevelStack {
    private static final double TRIANGLE = 2.6;
    private static final double STEM = 7;
    private static final double KINK = 5;
    /** Widths to which names are broken, the first one that finds room. */
    private static final double[] NAME_ROOMS = {60, 42, 28};

    private static final double APART = 1.2;

    private final List<Level> levels;
    private final List<List<String>> names;
    private final double[] truePlaces;
    private final double sign;

    /** Levels with the paper heights of their lines. */
    private LevelStack(List<Level> given, Side side, ViewPort view, double nameRoom) {
        this.levels =
                given.stream().sorted(Comparator.comparingDouble(Level::height)).toList();
        this.names = levels.stream()
                .map(l -> WrappedText.lines(l.name(), nameRoom, Drafting.TEXT, Face.REGULAR))
                .toList();
        this.truePlaces = levels.stream()
                .mapToDouble(l -> view.toPaper(new Vec2(0, l.height())).y())
                .toArray();
        this.sign = side.out().x();
    }

    private double above() {
        return Drafting.BASELINE + Drafting.ascent();
    }

    private double below(int i) {
        return 0.6 + Drafting.line() + (names.get(i).size() - 1) * Drafting.LINE_PITCH * Drafting.TEXT;
    }

    /** Draws beyond an edge of the view, as near as the field leaves room. */
    static Ink place(List<Level> levels, Side side, ViewPort view, double edge, LabelField field) {
        LevelStack stack = null;
        for (double nameRoom : NAME_ROOMS) {
            stack = new LevelStack(levels, side, view, nameRoom);
            Optional<Ink> ink = stack.place(edge, field);
            if (ink.isPresent()) {
                return ink.get();
            }
        }
        return stack.byThemselves(edge, field);
    }

    private Optional<Ink> place(double edge, LabelField field) {
        double[] places = places(field);
        double x = edge;
        for (double off = 0; off < field.frame().getWidth(); off += 2) {
            x = edge + sign * off;
            Ink ink = ink(edge, x, places);
            if (ink.texts().stream().map(TurnedBox::of).allMatch(field::free)) {
                field.take(ink);
                return Optional.of(ink);
            }
        }
        return Optional.empty();
    }

    /** Block centres spread, then turned back into line heights. */
    private double[] places(LabelField field) {
        int n = levels.size();
        double[] lift =
                IntStream.range(0, n).mapToDouble(i -> (above() - below(i)) / 2).toArray();
        double[] sizes = IntStream.range(0, n)
                .mapToDouble(i -> above() + below(i) + APART)
                .toArray();
        double[] wished =
                IntStream.range(0, n).mapToDouble(i -> truePlaces[i] + lift[i]).toArray();
        double[] centres = Spread.apart(
                        wished, sizes, field.frame().getMinY(), field.frame().getMaxY())
                .orElse(wished);
        return IntStream.range(0, n).mapToDouble(i -> centres[i] - lift[i]).toArray();
    }

    private Ink ink(double edge, double x, double[] places) {
        List<Mark> lines = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            double knee = x + sign * (STEM + stagger(i));
            double textStart = x + sign * (STEM + stagger() + KINK);
            lines.addAll(lines(i, edge, knee, textStart, places[i]));
            texts.addAll(texts(i, textStart + sign * 1, places[i]));
        }
        return new Ink(lines, texts);
    }

    /** Triangles of levels closer than a triangle stand side by side. */
    private double stagger(int i) {
        return i > 0 && truePlaces[i] - truePlaces[i - 1] < TRIANGLE + 1
                ? (stagger(i - 1) + TRIANGLE + 1) % (3 * (TRIANGLE + 1))
                : 0;
    }

    private double stagger() {
        return IntStream.range(0, levels.size())
                .mapToDouble(this::stagger)
                .max()
                .orElse(0);
    }

    private List<Mark> lines(int i, double edge, double knee, double textStart, double place) {
        double y = truePlaces[i];
        double end = textStart + sign * (1 + width(i));
        double tip = knee - sign * (TRIANGLE / 2 + 1);
        List<Vec2> path = List.of(
                new Vec2(edge + sign * Drafting.OFF, y),
                new Vec2(knee, y),
                new Vec2(textStart, place),
                new Vec2(end, place));
        Vec2 point = new Vec2(tip, y);
        Fill triangle = new Fill(
                List.of(List.of(
                        point,
                        point.plus(new Vec2(TRIANGLE / 2, TRIANGLE * 0.85)),
                        point.plus(new Vec2(-TRIANGLE / 2, TRIANGLE * 0.85)))),
                0,
                Layer.DIMENSION,
                "");
        return List.of(Ink.thin(path, Layer.DIMENSION), triangle);
    }

    private double width(int i) {
        double name = names.get(i).stream().mapToDouble(Drafting::width).max().orElse(0);
        return Math.max(name, Lettering.width(Figure.level(levels.get(i).height()), Drafting.TEXT, Face.BOLD));
    }

    private List<Text> texts(int i, double x, double place) {
        Text.Align align = sign > 0 ? Text.Align.LEFT : Text.Align.RIGHT;
        List<Text> texts = new ArrayList<>();
        texts.add(text(Figure.level(levels.get(i).height()), new Vec2(x, place + Drafting.BASELINE), align, Face.BOLD));
        double y = place - 0.6 - Drafting.ascent();
        for (String line : names.get(i)) {
            texts.add(text(line, new Vec2(x, y), align, Face.REGULAR));
            y -= Drafting.LINE_PITCH * Drafting.TEXT;
        }
        return texts;
    }

    private static Text text(String content, Vec2 at, Text.Align align, Face face) {
        return new Text(content, at, Drafting.TEXT, align, 0, face, Layer.DIMENSION, "");
    }

    /** No room for the stack as a whole: each level finds its own place. */
    private Ink byThemselves(double edge, LabelField field) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            List<String> words =
                    new ArrayList<>(List.of(Figure.level(levels.get(i).height())));
            words.addAll(names.get(i));
            Label label = Label.of(new Vec2(edge, truePlaces[i]), Label.Pointer.ARROW, words.toArray(String[]::new));
            marks.addAll(field.place(label).marks());
        }
        return Ink.of(marks);
    }
}
