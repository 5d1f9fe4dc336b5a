package org.baywright.render.dimension;

import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Text;
import org.locationtech.jts.geom.Envelope;

/**
 * A convex patch of paper that is taken: usually the box of a text, turned with it.
 *
 * @param corners in turn; two corners make a line
 */
public record TurnedBox(List<Vec2> corners) {
    /** What may touch without counting as overlap, mm. */
    private static final double TOUCH = 1e-6;

    /** Copies the corners. */
    public TurnedBox {
        corners = List.copyOf(corners);
    }

    /** The box of a text. */
    public static TurnedBox of(Text text) {
        return new TurnedBox(Bounds.corners(text));
    }

    /** An upright box. */
    public static TurnedBox of(Envelope box) {
        return upright(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
    }

    /** An upright box from its lower left to its upper right corner. */
    public static TurnedBox upright(double x0, double y0, double x1, double y1) {
        return new TurnedBox(List.of(new Vec2(x0, y0), new Vec2(x1, y0), new Vec2(x1, y1), new Vec2(x0, y1)));
    }

    /** A line. */
    static TurnedBox line(Vec2 a, Vec2 b) {
        return new TurnedBox(List.of(a, b));
    }

    /** The box made longer at both ends of its reading direction. */
    TurnedBox longer(double by) {
        Vec2 step = corners.get(1).minus(corners.get(0)).unit().times(by);
        return new TurnedBox(List.of(
                corners.get(0).minus(step),
                corners.get(1).plus(step),
                corners.get(2).plus(step),
                corners.get(3).minus(step)));
    }

    /** The upright box round this. */
    public Envelope envelope() {
        Envelope box = new Envelope();
        corners.forEach(c -> box.expandToInclude(c.x(), c.y()));
        return box;
    }

    /** Whether all its sides are level or upright, so that the upright box round it is the patch itself. */
    boolean isUpright() {
        for (int i = 0; i < corners.size(); i++) {
            Vec2 a = corners.get(i);
            Vec2 b = corners.get((i + 1) % corners.size());
            if (a.x() != b.x() && a.y() != b.y()) {
                return false;
            }
        }
        return true;
    }

    /** Whether the insides of two upright boxes share paper; a line counts as a box without breadth. */
    static boolean share(Envelope a, Envelope b) {
        return a.getMaxX() > b.getMinX() + TOUCH
                && b.getMaxX() > a.getMinX() + TOUCH
                && a.getMaxY() > b.getMinY() + TOUCH
                && b.getMaxY() > a.getMinY() + TOUCH;
    }

    boolean isLine() {
        return corners.size() == 2;
    }

    /**
     * True when an upright box lies wholly on one side of this line. Together with {@link #share} that is all there is
     * to ask of the two: the sum of a box and a line has no other sides.
     */
    boolean leavesAside(Envelope box) {
        Vec2 from = corners.get(0);
        Vec2 step = corners.get(1).minus(from);
        double middle = step.x() * ((box.getMinY() + box.getMaxY()) / 2 - from.y())
                - step.y() * ((box.getMinX() + box.getMaxX()) / 2 - from.x());
        double reach = (Math.abs(step.x()) * box.getHeight() + Math.abs(step.y()) * box.getWidth()) / 2;
        return Math.abs(middle) + TOUCH * step.length() >= reach;
    }

    /** True when the insides of the two share paper: no line square to a side parts them (separating axes). */
    public boolean overlaps(TurnedBox other) {
        return !partedBySideOf(this, other) && !partedBySideOf(other, this);
    }

    private static boolean partedBySideOf(TurnedBox sides, TurnedBox other) {
        int n = sides.corners.size();
        for (int i = 0; i < n; i++) {
            Vec2 side = sides.corners.get((i + 1) % n).minus(sides.corners.get(i));
            // A line also needs its own direction as an axis; for a box that is the next side's.
            if (side.length() > 0 && (parts(side.left().unit(), sides, other) || parts(side.unit(), sides, other))) {
                return true;
            }
        }
        return false;
    }

    private static boolean parts(Vec2 axis, TurnedBox a, TurnedBox b) {
        return a.most(axis) <= b.least(axis) + TOUCH || b.most(axis) <= a.least(axis) + TOUCH;
    }

    private double most(Vec2 axis) {
        double most = Double.NEGATIVE_INFINITY;
        for (Vec2 corner : corners) {
            most = Math.max(most, corner.dot(axis));
        }
        return most;
    }

    private double least(Vec2 axis) {
        double least = Double.POSITIVE_INFINITY;
        for (Vec2 corner : corners) {
            least = Math.min(least, corner.dot(axis));
        }
        return least;
    }
}
