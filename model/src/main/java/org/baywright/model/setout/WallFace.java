package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;

/**
 * A wall on its string line, up to the top of rafter steel. Its axes lie in the wall: u to the right as seen from
 * outside, v up from the finished floor, the placement's width outward.
 *
 * <pre>
 *        /\            outline in (u, v), anticlockwise from its lower left corner
 *       /  \
 *      |    |   v
 *      |____|   ^-> u
 * </pre>
 *
 * @param wall which wall
 * @param leanTo the lean-to it belongs to, by its outer column line; empty for a main wall
 * @param axes along = u, depth = up, width = outward; zero at the wall's left end on the floor
 * @param outline its corners in (u, v)
 * @param bays from left to right as seen from outside
 */
public record WallFace(Wall wall, Optional<ColumnLine> leanTo, Placement axes, List<Vec2> outline, List<WallBay> bays) {
    /**
     * What lies between two neighbouring frames of a side wall, or the whole of an end wall.
     *
     * @param bay number of a side wall's bay, from 1; 0 in an end wall
     * @param from left edge, in u: a frame line, or an end string line
     * @param to right edge, in u
     */
    public record WallBay(int bay, double from, double to) {}

    /** Copies the lists. */
    public WallFace {
        outline = List.copyOf(outline);
        bays = List.copyOf(bays);
    }

    /** The walls of a building: main front, rear, left, right, then for each lean-to its outer, front and rear wall. */
    public static List<WallFace> of(Definition definition, SetOut setOut) {
        ColumnLine left = setOut.main(Side.LEFT);
        ColumnLine right = setOut.main(Side.RIGHT);
        boolean gable = definition.shape().roofShape() == RoofShape.GABLE;
        List<Double> turns = gable ? List.of(setOut.span() / 2) : List.of();
        List<WallFace> faces = new ArrayList<>();
        for (Wall wall : List.of(Wall.FRONT, Wall.REAR)) {
            double y = wall == Wall.FRONT ? 0 : setOut.length();
            faces.add(end(y, wall, Optional.empty(), 0, setOut.span(), turns, left.roof(), right.roof()));
        }
        faces.add(side(definition, setOut, left));
        faces.add(side(definition, setOut, right));
        for (ColumnLine lean : setOut.leanTos()) {
            double main = setOut.main(lean.side()).x();
            double low = Math.min(main, lean.x());
            double high = Math.max(main, lean.x());
            faces.add(side(definition, setOut, lean));
            for (Wall wall : List.of(Wall.FRONT, Wall.REAR)) {
                double y = endLine(definition, setOut, lean, wall == Wall.FRONT);
                faces.add(end(y, wall, Optional.of(lean), low, high, List.of(), lean.roof(), lean.roof()));
            }
        }
        return faces;
    }

    /**
     * Where a building or lean-to ends along the building: the end string line, or the outside of the steel where a
     * lean-to ends at a frame between.
     */
    static double endLine(Definition definition, SetOut setOut, ColumnLine line, boolean front) {
        int frame = front ? line.firstFrame() : line.lastFrame();
        double at = setOut.frameLine(frame);
        if (frame == 1 || frame == setOut.frames()) {
            return at;
        }
        double steel = Math.max(
                line.column(definition, frame).width(),
                line.rafter(definition, frame).width());
        return at + (front ? -1 : 1) * steel / 2;
    }

    private static WallFace side(Definition definition, SetOut setOut, ColumnLine line) {
        boolean left = line.side() == Side.LEFT;
        int first = line.firstFrame();
        int last = line.lastFrame();
        double from = endLine(definition, setOut, line, true);
        double to = endLine(definition, setOut, line, false);
        Vec3 u = left ? Vec3.ALONG.negated() : Vec3.ALONG;
        Placement axes = Placement.of(new Vec3(line.x(), left ? to : from, 0), u, Vec3.UP);
        List<WallBay> bays = new ArrayList<>();
        for (int i = 0; i < last - first; i++) {
            int bay = left ? last - 1 - i : first + i;
            double a = bay == first ? from : setOut.frameLine(bay);
            double b = bay + 1 == last ? to : setOut.frameLine(bay + 1);
            bays.add(left ? new WallBay(bay, to - b, to - a) : new WallBay(bay, a - from, b - from));
        }
        double top = line.eaveHeight();
        List<Vec2> outline =
                List.of(new Vec2(0, 0), new Vec2(to - from, 0), new Vec2(to - from, top), new Vec2(0, top));
        return new WallFace(
                Wall.of(line.side()), line.leanTo() ? Optional.of(line) : Optional.empty(), axes, outline, bays);
    }

    private static WallFace end(
            double y,
            Wall wall,
            Optional<ColumnLine> lean,
            double low,
            double high,
            List<Double> turns,
            RoofLine leftRoof,
            RoofLine rightRoof) {
        boolean front = wall == Wall.FRONT;
        Vec3 u = front ? Vec3.ACROSS : Vec3.ACROSS.negated();
        Placement axes = Placement.of(new Vec3(front ? low : high, y, 0), u, Vec3.UP);
        List<Double> xs = new ArrayList<>(List.of(high));
        xs.addAll(turns);
        xs.add(low);
        List<Vec2> outline = new ArrayList<>(List.of(new Vec2(0, 0), new Vec2(high - low, 0)));
        List<Vec2> top = new ArrayList<>();
        for (double x : xs) {
            double z = Math.min(leftRoof.heightAt(x), rightRoof.heightAt(x));
            top.add(new Vec2(front ? x - low : high - x, z));
        }
        if (!front) {
            Collections.reverse(top);
        }
        outline.addAll(top);
        return new WallFace(wall, lean, axes, outline, List.of(new WallBay(0, 0, high - low)));
    }

    /** Whether it is the side wall at the eave of a slope. */
    public boolean isBelow(RoofSlope slope) {
        return wall == Wall.of(slope.side())
                && (slope.line().leanTo() ? leanTo.equals(Optional.of(slope.line())) : isMain());
    }

    /** Whether it belongs to the main building. */
    public boolean isMain() {
        return leanTo.isEmpty();
    }

    /** How long it is. */
    public double length() {
        return bays.get(bays.size() - 1).to();
    }

    /** Top of rafter steel above a place along it. */
    public double heightAt(double u) {
        for (int i = 1; i < outline.size(); i++) {
            Vec2 a = outline.get(i);
            Vec2 b = outline.get((i + 1) % outline.size());
            boolean roof = a.y() > 0 && b.y() > 0 && b.x() < a.x();
            if (roof && u <= a.x() + 1e-9 && u >= b.x() - 1e-9) {
                return a.y() + (b.y() - a.y()) * (u - a.x()) / (b.x() - a.x());
            }
        }
        throw new IllegalArgumentException("not along this wall: " + u);
    }

    /** A place of the wall, so far out from the string line, in the building. */
    public Vec3 toWorld(double u, double v, double outward) {
        return axes.toWorld(u, v, outward);
    }
}
