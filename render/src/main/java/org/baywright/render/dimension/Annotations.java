package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Hole;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.view.ViewPort;
import org.locationtech.jts.geom.Envelope;

/**
 * Everything that annotates one view, in one line each. All views of a sheet share one {@link LabelField}. Call the
 * inner rows first: each row takes the nearest free place off the view, so what is called later stands further out.
 * Points are view millimetres. The marks of the view itself must have been told to the field.
 */
public final class Annotations {
    private final LabelField field;
    private final ViewPort view;
    private final Envelope viewBox;
    private final Rows rows;
    private final List<Mark> lines = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();
    private final List<Dimension> dimensions = new ArrayList<>();
    private final List<Label> waiting = new ArrayList<>();

    /**
     * Annotations of a view.
     *
     * @param viewBox the paper that the view itself takes, off whose sides rows stack
     */
    public Annotations(LabelField field, ViewPort view, Envelope viewBox) {
        this.field = field;
        this.view = view;
        this.viewBox = new Envelope(viewBox);
        this.rows = new Rows(field);
    }

    /**
     * Marks in drawing order, text last, white behind text that lies on lines. Labels find their places now, once all
     * else is there; so ask for marks after every view of the sheet has got its rows.
     */
    public List<Mark> marks() {
        field.place(waiting).forEach(placed -> add(Ink.of(placed.marks())));
        waiting.clear();
        return field.drawing(lines, texts);
    }

    /** Every dimension printed so far. */
    public List<Dimension> dimensions() {
        return List.copyOf(dimensions);
    }

    /** A chain below the view through the given x, extension lines starting at height y. */
    public Annotations chainBelow(List<Double> xs, double y) {
        return chain(Side.BELOW, level(xs, y));
    }

    /** A chain above the view through the given x, extension lines starting at height y. */
    public Annotations chainAbove(List<Double> xs, double y) {
        return chain(Side.ABOVE, level(xs, y));
    }

    /** A chain left of the view through the given y, extension lines starting at x. */
    public Annotations chainLeft(List<Double> ys, double x) {
        return chain(Side.LEFT, upright(ys, x));
    }

    /** A chain right of the view through the given y, extension lines starting at x. */
    public Annotations chainRight(List<Double> ys, double x) {
        return chain(Side.RIGHT, upright(ys, x));
    }

    /** One dimension below the view. */
    public Annotations overallBelow(double x0, double x1, double y) {
        return chainBelow(List.of(x0, x1), y);
    }

    /** One dimension above the view. */
    public Annotations overallAbove(double x0, double x1, double y) {
        return chainAbove(List.of(x0, x1), y);
    }

    /** One dimension left of the view. */
    public Annotations overallLeft(double y0, double y1, double x) {
        return chainLeft(List.of(y0, y1), x);
    }

    /** One dimension right of the view. */
    public Annotations overallRight(double y0, double y1, double x) {
        return chainRight(List.of(y0, y1), x);
    }

    /** A chain of dimensions on a side, and when it has several parts an overall dimension outside it. */
    public Annotations chainWithOverall(Side side, List<Vec2> points) {
        int before = dimensions.size();
        chain(side, points);
        if (dimensions.size() == before + 1) {
            return this;
        }
        Dimension overall = DimensionChain.through(points, side.direction()).overall();
        return chain(side, List.of(overall.from(), overall.to()));
    }

    /** A chain of dimensions on a side through points in any order; extension lines start at them. */
    public Annotations chain(Side side, List<Vec2> points) {
        return chain(Rail.on(side, edge(side)), DimensionChain.through(points, side.direction()));
    }

    /** A dimension parallel to the line through two points, on the side a direction points to. */
    public Annotations aligned(Vec2 from, Vec2 to, Vec2 towards) {
        Rail rail = Rail.through(view.toPaper(from), view.toPaper(to), towards);
        return chain(rail, new DimensionChain(List.of(from, to), Direction.ALIGNED));
    }

    /**
     * A chain parallel to the line from its first point to its last, on the side a direction points to, where there is
     * room for its figures within some paper; else none.
     */
    public Annotations aligned(List<Vec2> points, Vec2 towards, Envelope within) {
        Vec2 from = view.toPaper(points.get(0));
        Rail rail = Rail.through(from, view.toPaper(points.get(points.size() - 1)), towards);
        List<Vec2> ordered = points.stream()
                .sorted(Comparator.comparingDouble(p -> rail.of(view.toPaper(p)).x()))
                .toList();
        List<Dimension> segments = new DimensionChain(ordered, Direction.ALIGNED).segments();
        double[] room = rail.room(within);
        new ChainPlan(rail, view, room[0], room[1])
                .of(segments)
                .flatMap(plan -> rows.placeWithin(
                        rail, plan, ordered.stream().map(view::toPaper).toList(), within))
                .ifPresent(ink -> {
                    add(ink);
                    dimensions.addAll(segments);
                });
        return this;
    }

    private Annotations chain(Rail rail, DimensionChain chain) {
        double[] room = rail.room(field.frame());
        List<Dimension> printed = chain.printed(d -> new ChainPlan(rail, view, room[0], room[1]).fits(d));
        Optional<RailPlan> plan = new ChainPlan(rail, view, room[0], room[1]).of(printed);
        List<Vec2> ends = new ArrayList<>();
        printed.forEach(d -> ends.add(view.toPaper(d.from())));
        ends.add(view.toPaper(printed.get(printed.size() - 1).to()));
        add(rows.place(rail, plan.orElseThrow(() -> tooMany(printed)), ends));
        dimensions.addAll(printed);
        return this;
    }

    private static IllegalStateException tooMany(List<Dimension> dimensions) {
        return new IllegalStateException("no room on the sheet for a row of " + dimensions.size() + " dimensions");
    }

    /**
     * Running dimensions from a datum on a side; extension lines start at the points. The datum may lie off the sheet,
     * as on the later strips of a long plan: the row then starts with the first point.
     */
    public Annotations running(Side side, Vec2 datum, List<Vec2> points) {
        return running(side, datum, points, new Vec2(1, 1));
    }

    /** The same where one way along the row counts as onwards; points the other way from the datum print a minus. */
    public Annotations running(Side side, Vec2 datum, List<Vec2> points, Vec2 onwards) {
        List<Vec2> ordered = DimensionChain.ordered(points, side.direction()).stream()
                .filter(p -> side.direction().distance(datum, p) > DimensionChain.NOTHING)
                .toList();
        if (ordered.isEmpty()) {
            return this;
        }
        List<Dimension> printed = ordered.stream()
                .map(p -> Dimension.running(datum, p, side.direction(), onwards))
                .toList();
        Rail rail = Rail.on(side, edge(side));
        double[] room = rail.room(field.frame());
        RailPlan plan =
                new RunningPlan(rail, view).of(datum, printed, room[0], room[1]).orElseThrow(() -> tooMany(printed));
        List<Vec2> ends = new ArrayList<>();
        if (RunningPlan.reaches(rail.of(view.toPaper(datum)).x(), room)) {
            ends.add(view.toPaper(datum));
        }
        ordered.forEach(p -> ends.add(view.toPaper(p)));
        add(rows.place(rail, plan, ends));
        dimensions.addAll(printed);
        return this;
    }

    /** A dimension on the line it measures, such as the diagonal of a set-out; words before the figure may be empty. */
    public Annotations diagonal(String words, Vec2 from, Vec2 to) {
        Dimension dimension = Dimension.of(from, to, Direction.ALIGNED);
        add(DiagonalDimension.place(dimension, words, view, field));
        dimensions.add(dimension);
        return this;
    }

    /** The angle at a corner, from one leg anticlockwise to the other; radius in paper mm. */
    public Annotations angle(Vec2 corner, Vec2 first, Vec2 second, double radius) {
        return add(AngleDimension.place(corner, first, second, radius, view, field));
    }

    /** Levels on the left or right of the view; heights from the view's zero. */
    public Annotations levels(Side side, List<Level> levels) {
        double edge = side == Side.LEFT ? viewBox.getMinX() : viewBox.getMaxX();
        return levels.isEmpty() ? this : add(LevelStack.place(levels, side, view, edge, field));
    }

    /** The pitch of the roof line from eave to apex. */
    public Annotations pitch(Vec2 eave, Vec2 apex) {
        return add(PitchMark.place(eave, apex, view, field));
    }

    /** Grid lines from a far end across the view, named in bubbles on a side. */
    public Annotations grid(Side side, List<GridLine> gridLines, double farEnd) {
        Rail rail = Rail.on(side, edge(side));
        return gridLines.isEmpty() ? this : add(new GridBubbles(rail, side, view, farEnd).place(gridLines, field));
    }

    /** Grid lines named 1, 2, 3 and so on, in bubbles on a side. */
    public Annotations numberedGrid(Side side, List<Double> at, double farEnd) {
        List<GridLine> named = IntStream.range(0, at.size())
                .mapToObj(i -> new GridLine(Integer.toString(i + 1), at.get(i)))
                .toList();
        return grid(side, named, farEnd);
    }

    /** Words beside a point of the view, or on a leader. */
    public Annotations label(Vec2 target, String... words) {
        return place(Label.of(view.toPaper(target), Label.Pointer.BESIDE, words));
    }

    /** Words on a leader that ends with an arrow at an edge. */
    public Annotations note(Vec2 target, String... words) {
        return place(Label.of(view.toPaper(target), Label.Pointer.ARROW, words));
    }

    /** Words on a leader that ends with a dot on a surface. */
    public Annotations mark(Vec2 target, String... words) {
        return place(Label.of(view.toPaper(target), Label.Pointer.DOT, words));
    }

    /** How many holes of what diameter, on a leader to one of them, with further words below. */
    public Annotations holes(Vec2 target, int count, double diameter, String... further) {
        List<String> words = new ArrayList<>(List.of(holeWords(count, diameter)));
        words.addAll(Arrays.asList(further));
        return note(target, words.toArray(String[]::new));
    }

    /** As {@code 4 holes ⌀22}, or {@code 2 slots 18 x 68} by width and length. */
    public static String holeWords(int count, Hole hole) {
        return hole.isSlot()
                ? count + (count == 1 ? " slot " : " slots ") + Figure.length(hole.diameter()) + " x "
                        + Figure.length(hole.length())
                : holeWords(count, hole.diameter());
    }

    /** As {@code 4 holes ⌀22}. */
    public static String holeWords(int count, double diameter) {
        return count + (count == 1 ? " hole " : " holes ") + "⌀" + Figure.length(diameter);
    }

    /** A label with wishes of its own; its target is in paper mm. */
    public Annotations place(Label label) {
        waiting.add(label);
        return this;
    }

    private Annotations add(Ink ink) {
        lines.addAll(ink.lines());
        texts.addAll(ink.texts());
        return this;
    }

    private Vec2 edge(Side side) {
        return new Vec2(
                side == Side.RIGHT ? viewBox.getMaxX() : viewBox.getMinX(),
                side == Side.ABOVE ? viewBox.getMaxY() : viewBox.getMinY());
    }

    private static List<Vec2> level(List<Double> xs, double y) {
        return xs.stream().map(x -> new Vec2(x, y)).toList();
    }

    private static List<Vec2> upright(List<Double> ys, double x) {
        return ys.stream().map(y -> new Vec2(x, y)).toList();
    }
}
