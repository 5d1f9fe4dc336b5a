package org.baywright.render.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.view.Item;
import org.baywright.render.view.Projection;
import org.baywright.render.view.Silhouette;
import org.baywright.render.view.ThinLine;
import org.locationtech.jts.geom.Envelope;

/**
 * What of an elevation stands in the wall nearest the eye, and what is seen further back through open bays. The wall
 * nearest the eye is a lean-to's where there is one, else the main building's.
 *
 * @param setOut lines and frames
 * @param view a level view, square to a wall
 */
record Foreground(SetOut setOut, Projection view) {
    /** No column with girts and sheets is as deep. Millimetres. */
    private static final double DEEP = 700;

    /** Goes before the names of what is further back. */
    private static final String BACK = "back ";

    /** A building whose things further back are known by their names. */
    Scene parted(Scene scene) {
        List<Item> items = scene.items().stream()
                .map(i -> isBack(i) ? new Item(BACK + i.part(), i.solid(), i.place()) : i)
                .toList();
        List<ThinLine> lines = scene.lines().stream()
                .map(l -> isBack(l) ? new ThinLine(l.from(), l.to(), BACK + l.part()) : l)
                .toList();
        return new Scene(items, scene.blinds(), lines);
    }

    static boolean isBack(String part) {
        return part.startsWith(BACK);
    }

    /** The name as it was. */
    static String plain(String part) {
        return isBack(part) ? part.substring(BACK.length()) : part;
    }

    /** By its side nearest the eye, at its middle. Gutters stand out from the roofs over the wall, which are outlines. */
    private boolean isBack(Item item) {
        Envelope plan = Silhouette.bounds(List.of(item), Projection.above());
        Vec3 middle = new Vec3(plan.centre().x, plan.centre().y, 0);
        double half = Math.abs(view.towards().x()) * plan.getWidth() / 2
                + Math.abs(view.towards().y()) * plan.getHeight() / 2;
        boolean overRoof = item.part().equals(Scene.SKIN)
                && item.place().origin().z() > line(middle).eaveHeight();
        return !overRoof && view.nearness(middle) + half < wall(middle) - DEEP;
    }

    /** Edges of sheets over the wall are roofs, which are outlines however far back. */
    private boolean isBack(ThinLine line) {
        Vec3 middle = line.from().plus(line.to()).times(0.5);
        return !line.part().equals(Scene.RIB)
                && Math.max(line.from().z(), line.to().z()) < line(middle).eaveHeight()
                && view.nearness(middle) < wall(middle) - DEEP;
    }

    /** How near the eye the nearest wall stands before a place. */
    private double wall(Vec3 at) {
        ColumnLine line = line(at);
        return view.nearness(new Vec3(line.x(), setOut.frameLine(endFrame(line)), 0));
    }

    /** The frame of a line that is nearest the eye of an end. */
    private int endFrame(ColumnLine line) {
        return view.towards().y() < 0 ? line.firstFrame() : line.lastFrame();
    }

    /** The line of columns that is nearest the eye before a place; of an end, the line whose frames stand there. */
    private ColumnLine line(Vec3 at) {
        return isEnd() ? over(at.x()) : outermost(at.y(), at.y());
    }

    private boolean isEnd() {
        return Math.abs(view.towards().y()) > 0.5;
    }

    /** A lean-to's line where its roof is, the first to be met, else a main line. */
    private ColumnLine over(double x) {
        return setOut.leanTos().stream()
                .filter(l -> (x - setOut.main(l.side()).x()) * l.inward() < 0)
                .max(Comparator.comparingDouble(l -> view.towards().y() * endFrame(l)))
                .orElse(setOut.main(Side.LEFT));
    }

    private ColumnLine outermost(double from, double to) {
        Side side = view.towards().x() < 0 ? Side.LEFT : Side.RIGHT;
        return setOut.leanTos().stream()
                .filter(l -> l.side() == side)
                .filter(l ->
                        setOut.frameLine(l.firstFrame()) - DEEP <= from && to <= setOut.frameLine(l.lastFrame()) + DEEP)
                .max(Comparator.comparingDouble(l -> -l.inward() * l.x()))
                .orElse(setOut.main(side));
    }

    /** The lines nearest the eye between two frames of a side, as {@code LINE C} or {@code LINES C AND B}. */
    String lines(int firstFrame, int lastFrame) {
        List<String> letters = Stream.iterate(firstFrame, f -> f + 1)
                .limit((long) lastFrame - firstFrame)
                .map(f -> (setOut.frameLine(f) + setOut.frameLine(f + 1)) / 2)
                .map(y -> outermost(y, y))
                .sorted(Comparator.comparingDouble(l -> l.inward() * l.x()))
                .map(ColumnLine::letter)
                .distinct()
                .toList();
        return (letters.size() == 1 ? "LINE " : "LINES ") + String.join(" AND ", letters);
    }
}
