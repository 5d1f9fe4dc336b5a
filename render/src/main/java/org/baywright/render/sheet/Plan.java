package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Convex;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.GridLine;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.Item;
import org.baywright.render.view.Silhouette;
import org.locationtech.jts.geom.Envelope;

/** What every plan of the building shows: string lines, grid, columns cut above the floor and their base plates. */
final class Plan {
    /** Height of the cut above the foot of a column; the rules leave no column shorter. */
    private static final double CUT_ABOVE_FOOT = 200;

    /** Room for base plates round the string lines, mm. */
    static final double BEYOND = 300;

    private final SetOut setOut;
    private final PlanAxes axes;
    private final List<PlateStand> columns;
    private final List<Item> posts;
    private final List<Item> postPlates;

    Plan(Shed shed) {
        this.setOut = shed.setOut();
        this.axes = PlanAxes.of(setOut);
        this.columns =
                PlateStand.of(shed).stream().filter(PlateStand::isOfFrame).toList();
        this.posts =
                Steelwork.items(shed, (part, place) -> part.kind() == PartKind.MULLION || part.kind() == PartKind.JAMB);
        this.postPlates = Steelwork.items(
                shed,
                (part, place) -> part.kind() == PartKind.BASE_PLATE
                        && columns.stream().noneMatch(c -> c.platePlace().equals(place)));
    }

    PlanAxes axes() {
        return axes;
    }

    /** The columns of a strip on their plates. */
    List<PlateStand> columns(Strip strip) {
        return columns.stream().filter(c -> strip.has(c.uprightPlace().frame())).toList();
    }

    /** The strips that a plan takes in a room; a building wider than long is never parted. */
    Strips strips(Envelope room, Margins margins) {
        if (axes.turned()) {
            return Strips.of(setOut.frameLines(), BEYOND, right() - left() + 2 * BEYOND, room, margins);
        }
        Envelope bounds = bounds(1, setOut.frames());
        Strip whole = new Strip(1, setOut.frames(), 0, room);
        return new Strips(PlacedView.fitting(room, bounds, margins), List.of(whole));
    }

    /** Margins that leave more paper for rows, unless tighter ones draw the plan larger beside its notes. */
    Margins margins(List<Paragraph> notes, Margins roomy, Margins tight) {
        return noted(notes, tight).strips().betterThan(noted(notes, roomy).strips()) ? tight : roomy;
    }

    /** The room of a plan's sheets, parted between its strips and its notes. */
    NotedRoom noted(List<Paragraph> notes, Margins margins) {
        return NotedRoom.of(notes, room -> strips(room, margins));
    }

    /** The floor that a strip shows. */
    Envelope bounds(Strip strip) {
        return bounds(strip.firstFrame(), strip.lastFrame());
    }

    private Envelope bounds(int first, int last) {
        Envelope bounds = new Envelope();
        for (double x : new double[] {left() - BEYOND, right() + BEYOND}) {
            for (double y : new double[] {setOut.frameLine(first) - BEYOND, setOut.frameLine(last) + BEYOND}) {
                Vec2 at = axes.at(x, y);
                bounds.expandToInclude(at.x(), at.y());
            }
        }
        return bounds;
    }

    /** The string line furthest left. */
    double left() {
        return setOut.left();
    }

    /** The string line furthest right. */
    double right() {
        return setOut.right();
    }

    /** The frames of a strip. */
    static IntStream frames(Strip strip) {
        return IntStream.rangeClosed(strip.firstFrame(), strip.lastFrame());
    }

    /** Plates in thin outline, columns black. */
    void steel(PlacedView view, Strip strip) {
        for (PlateStand stand : columns(strip)) {
            Item plate = item(stand.plate(), stand.platePlace());
            for (List<Vec2> ring : Silhouette.outline(plate, axes.projection())) {
                view.draw(List.of(outline(view, ring, Pen.DIMENSION, Layer.PLATE, plate.part())));
            }
            column(view, item(stand.upright(), stand.uprightPlace()));
        }
    }

    /** Mullions and jambs on their plates, in thin outline: they are set out with the framing of their walls. */
    void posts(PlacedView view, Strip strip) {
        double from = setOut.frameLine(strip.firstFrame()) - BEYOND;
        double to = setOut.frameLine(strip.lastFrame()) + BEYOND;
        for (List<Item> items : List.of(postPlates, posts)) {
            items.stream()
                    .filter(i ->
                            i.place().origin().y() >= from && i.place().origin().y() <= to)
                    .forEach(i -> Silhouette.outline(i, axes.projection())
                            .forEach(ring ->
                                    view.draw(List.of(outline(view, ring, Pen.DIMENSION, Layer.PLATE, i.part())))));
        }
    }

    private static Item item(Part part, Place place) {
        return new Item(part.mark(), part.solid(), place.placement());
    }

    private void column(PlacedView view, Item column) {
        double foot = Convex.of(column.solid(), column.place()).stream()
                .flatMap(lump -> lump.corners().stream())
                .mapToDouble(Vec3::z)
                .min()
                .orElseThrow();
        Plane cut = new Plane(Vec3.UP, foot + CUT_ABOVE_FOOT);
        List<List<Vec2>> rings = Silhouette.cut(column, cut, axes.projection()).stream()
                .map(ring -> onPaper(view, ring))
                .toList();
        view.draw(List.of(new Fill(rings, 0, Layer.STEEL, column.part())));
        view.draw(rings.stream()
                .map(ring -> new Stroke(ring, true, Pen.DIMENSION, Layer.STEEL, column.part()))
                .toList());
    }

    private static List<Vec2> onPaper(PlacedView view, List<Vec2> ring) {
        return ring.stream().map(view.port()::toPaper).toList();
    }

    private static Stroke outline(PlacedView view, List<Vec2> ring, Pen pen, Layer layer, String part) {
        return new Stroke(onPaper(view, ring), true, pen, layer, part);
    }

    /** The string lines on the outside faces, both ways, and the grid lines of the frames between. */
    void strings(PlacedView view, Strip strip) {
        double past = 4.0 * view.port().scale().n();
        for (ColumnLine line : setOut.columnLines()) {
            int first = Math.max(line.firstFrame(), strip.firstFrame());
            int last = Math.min(line.lastFrame(), strip.lastFrame());
            if (first < last) {
                double from = setOut.frameLine(first) - past;
                double to = setOut.frameLine(last) + past;
                view.line(axes.at(line.x(), from), axes.at(line.x(), to), Pen.STRING, Layer.GRID);
            }
        }
        frames(strip).forEach(frame -> {
            boolean end = frame == 1 || frame == setOut.frames();
            List<Double> xs = lines(frame).stream().map(ColumnLine::x).sorted().toList();
            double y = setOut.frameLine(frame);
            Vec2 from = axes.at(xs.get(0) - past, y);
            Vec2 to = axes.at(xs.get(xs.size() - 1) + past, y);
            view.line(from, to, end ? Pen.STRING : Pen.GRID, Layer.GRID);
        });
    }

    /** The column lines that a frame has. */
    List<ColumnLine> lines(int frame) {
        return setOut.columnLines().stream().filter(l -> l.has(frame)).toList();
    }

    /** The lines that have a column in a strip. */
    List<ColumnLine> lines(Strip strip) {
        return setOut.columnLines().stream()
                .filter(l -> l.firstFrame() < strip.lastFrame() && l.lastFrame() > strip.firstFrame())
                .toList();
    }

    /** The bubbles of frames and column lines; call it after the rows that stand inside them. */
    void grid(PlacedView view, Strip strip) {
        Envelope bounds = bounds(strip);
        List<GridLine> numbers = frames(strip)
                .mapToObj(f -> new GridLine(String.valueOf(f), setOut.frameLine(f)))
                .toList();
        TreeMap<Double, GridLine> letters = new TreeMap<>();
        lines(strip).forEach(l -> letters.put(l.x(), new GridLine(l.letter(), axes.across(l.x()))));
        view.annotate()
                .grid(axes.frameNames(), numbers, axes.turned() ? bounds.getMaxY() : bounds.getMinX())
                .grid(
                        axes.lineNames(),
                        new ArrayList<>(letters.values()),
                        axes.turned() ? bounds.getMinX() : bounds.getMaxY());
    }

    /** The widths between string lines and the whole, on the side that measures across. */
    void widths(PlacedView view, Strip strip) {
        double y = setOut.frameLine(axes.turned() ? strip.lastFrame() : strip.firstFrame());
        List<Vec2> points = lines(strip).stream().map(l -> axes.at(l.x(), y)).toList();
        view.annotate().chainWithOverall(axes.crosswise(), points);
    }

    /** Says at the ends of a strip where the building goes on. */
    void matchLines(PlacedView view, Strip strip) {
        if (strip.firstFrame() > 1) {
            matchLine(view, strip.firstFrame(), strip.firstFrame() - 1, Spot.ABOVE_LEFT);
        }
        if (strip.lastFrame() < setOut.frames()) {
            matchLine(view, strip.lastFrame(), strip.lastFrame() + 1, Spot.ABOVE_RIGHT);
        }
    }

    private void matchLine(PlacedView view, int frame, int next, Spot spot) {
        double tick = 6.0 * view.port().scale().n();
        double y = setOut.frameLine(frame);
        double outside = BEYOND;
        view.line(axes.at(left() - outside, y), axes.at(left() - outside - tick, y), Pen.CUT, Layer.GRID);
        view.line(axes.at(right() + outside, y), axes.at(right() + outside + tick, y), Pen.CUT, Layer.GRID);
        Vec2 at = view.port().toPaper(axes.at(left() - outside - tick / 2, y));
        view.annotate()
                .place(Label.of(at, Label.Pointer.BESIDE, "Match line " + frame + ", goes on to " + next)
                        .preferring(spot));
    }
}
