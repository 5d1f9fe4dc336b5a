package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.GridLine;
import org.baywright.render.dimension.Level;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.baywright.render.view.Projection;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.Window;
import org.locationtech.jts.geom.Envelope;

/** The four elevations on two sheets: the ends beside each other, the long sides above each other. */
final class ElevationSheets {
    private static final Margins END = new Margins(12, 54, 27, 4);
    private static final Margins LONG = new Margins(12, 54, 32, 4);

    /** A scale at which there are few ribs, to measure by. */
    private static final double FAR = 10_000;

    /** How far the ground is drawn past the steel. */
    private static final double GROUND = 800;

    private final Shed shed;
    private final SetOut setOut;
    private final Building building;
    private final Scene rough;
    private final Map<List<Object>, List<ViewLine>> seen = new HashMap<>();

    private ElevationSheets(Building building) {
        this.building = building;
        this.shed = building.shed();
        this.setOut = shed.setOut();
        this.rough = Envelopes.scene(building, FAR, (part, place) -> true);
    }

    static List<Draft> of(Building building) {
        ElevationSheets sheets = new ElevationSheets(building);
        List<Draft> drafts = new ArrayList<>(List.of(sheets.ends()));
        drafts.addAll(sheets.sides());
        return drafts;
    }

    private Draft ends() {
        SheetBuilder sheet = new SheetBuilder("S3.1", "End elevations");
        Envelope room = SheetFrame.room();
        Envelope bounds = bounds(Projection.front());
        Envelope upper = new Envelope(room);
        if (shed.definition().envelope().isFull()) {
            upper = new Envelope(room.getMinX(), room.getMaxX(), room.getMinY() + FinishesKey.MOST, room.getMaxY());
        }
        boolean beside = larger(bounds, END, Cells.column(upper, 0, 2), Cells.row(room, 0, 2));
        FinishesKey key = new FinishesKey(building, false);
        if (beside) {
            end(sheet, Projection.front(), 1, Cells.column(upper, 0, 2));
            PlacedView rear = end(sheet, Projection.rear(), setOut.frames(), Cells.column(upper, 1, 2));
            key.drawIn(room, sheet, rear, o -> o.face().wall().isEnd());
        } else {
            Envelope low = Cells.row(room, 1, 2);
            end(sheet, Projection.front(), 1, Cells.row(room, 0, 2));
            key.draw(
                    sheet,
                    end(sheet, Projection.rear(), setOut.frames(), low),
                    low,
                    o -> o.face().wall().isEnd());
        }
        return sheet.build();
    }

    /** Whether a view is drawn at least as large in the first cell as in the second. */
    private static boolean larger(Envelope bounds, Margins margins, Envelope first, Envelope second) {
        Scale inFirst = PlacedView.fitting(first, bounds, margins);
        return inFirst.n() <= PlacedView.fitting(second, bounds, margins).n();
    }

    private Envelope bounds(Projection projection) {
        Envelope all = rough.bounds(projection);
        all.expandBy(1);
        // Sheets run past the edge of the slab; what is under the floor is not seen.
        Envelope bounds = new Envelope(all.getMinX(), all.getMaxX(), 0, all.getMaxY());
        bounds.expandToInclude(bounds.getMinX() - GROUND, 0);
        bounds.expandToInclude(bounds.getMaxX() + GROUND, 0);
        return bounds;
    }

    private PlacedView end(SheetBuilder sheet, Projection projection, int frame, Envelope cell) {
        String name = (frame == 1 ? "FRONT" : "REAR") + " ELEVATION, LINE " + frame;
        PlacedView view = drawn(sheet, name, cell, projection, bounds(projection), END);
        List<GridLine> grid = setOut.columnLines().stream()
                .map(l -> new GridLine(l.letter(), across(projection, l.x())))
                .toList();
        Annotations annotate = view.annotate();
        annotate.chainBelow(grid.stream().map(GridLine::at).toList(), 0);
        annotate.grid(org.baywright.render.dimension.Side.BELOW, grid, 0);
        List<Level> levels = new ArrayList<>(Levels.of(shed, l -> true));
        top().ifPresent(z -> levels.add(new Level("Highest of the roof sheets", z)));
        annotate.levels(org.baywright.render.dimension.Side.RIGHT, levels);
        Pitches.mark(shed, view, line -> true, x -> across(projection, x));
        new Finishes(building, rough.blinds(), projection, bounds(projection)).name(view);
        return view;
    }

    /** The overall height of a sheeted building, which a council asks for. */
    private OptionalDouble top() {
        return building.cladding().surfaces(Surface.Role.ROOF).stream()
                .flatMap(roof -> roof.outline().stream()
                        .map(p ->
                                roof.axes().toWorld(p.x(), p.y(), roof.profile().depth())))
                .mapToDouble(Vec3::z)
                .max();
    }

    private static double across(Projection projection, double x) {
        return projection.flat(new Vec3(x, 0, 0)).x();
    }

    /** Both sides on one sheet while that can be read, else strips of each, one under the other. */
    private List<Draft> sides() {
        Envelope room = SheetFrame.room();
        Envelope bounds = bounds(Projection.rightSide());
        double beyond = Math.max(-bounds.getMinX(), bounds.getMaxX() - setOut.length());
        double tall = bounds.getHeight();
        if (!strips(beyond, tall, Cells.row(room, 0, 2)).parted()) {
            SheetBuilder sheet = new SheetBuilder("S3.2", "Side elevations");
            Strip whole = new Strip(1, setOut.frames(), 0, room);
            side(sheet, Side.LEFT, whole.in(Cells.row(room, 0, 2)), beyond);
            Envelope lower = Cells.row(room, 1, 2);
            PlacedView right = side(sheet, Side.RIGHT, whole.in(lower), beyond);
            boolean through = Stream.of(Side.values())
                    .anyMatch(s -> seesThrough(from(s), right.port().scale()));
            new FinishesKey(building, through)
                    .draw(sheet, right, lower, o -> !o.face().wall().isEnd());
            return List.of(sheet.build());
        }
        Strips strips = strips(beyond, tall, room);
        List<Draft> drafts = new ArrayList<>();
        for (Side side : Side.values()) {
            String name = side == Side.LEFT ? "Left side elevation" : "Right side elevation";
            for (int i = 0; i < strips.sheets(); i++) {
                SheetBuilder sheet = new SheetBuilder("S3." + (drafts.size() + 2), name);
                strips.on(i).forEach(strip -> strip(sheet, side, strip, beyond));
                drafts.add(sheet.build());
            }
        }
        return drafts;
    }

    private Strips strips(double beyond, double tall, Envelope room) {
        return Strips.of(setOut.frameLines(), beyond, tall, room, LONG);
    }

    private void strip(SheetBuilder sheet, Side side, Strip strip, double beyond) {
        PlacedView view = side(sheet, side, strip, beyond);
        new FinishesKey(building, seesThrough(from(side), view.port().scale()))
                .draw(sheet, view, strip.cell(), o -> o.face().wall() == (side == Side.LEFT ? Wall.LEFT : Wall.RIGHT));
    }

    private PlacedView side(SheetBuilder sheet, Side side, Strip strip, double beyond) {
        Projection projection = from(side);
        boolean whole = strip.firstFrame() == 1 && strip.lastFrame() == setOut.frames();
        String name = side + " SIDE ELEVATION, "
                + new Foreground(setOut, projection).lines(strip.firstFrame(), strip.lastFrame())
                + (whole ? "" : ", FRAMES " + strip.firstFrame() + " TO " + strip.lastFrame());
        double first = along(projection, setOut.frameLine(strip.firstFrame()));
        double last = along(projection, setOut.frameLine(strip.lastFrame()));
        Envelope window = bounds(projection);
        window = new Envelope(
                Math.min(first, last) - beyond, Math.max(first, last) + beyond, window.getMinY(), window.getMaxY());
        PlacedView view = drawn(sheet, name, strip.cell(), projection, window, LONG);
        List<GridLine> grid = IntStream.rangeClosed(strip.firstFrame(), strip.lastFrame())
                .mapToObj(f -> new GridLine(String.valueOf(f), along(projection, setOut.frameLine(f))))
                .toList();
        Annotations annotate = view.annotate();
        annotate.chainWithOverall(
                org.baywright.render.dimension.Side.BELOW,
                grid.stream().map(g -> new Vec2(g.at(), 0)).toList());
        annotate.grid(org.baywright.render.dimension.Side.BELOW, grid, 0);
        annotate.levels(org.baywright.render.dimension.Side.RIGHT, Levels.of(shed, l -> l.side() == side));
        new Finishes(building, rough.blinds(), projection, window).name(view);
        return view;
    }

    private static Projection from(Side side) {
        return side == Side.LEFT ? Projection.leftSide() : Projection.rightSide();
    }

    private static double along(Projection projection, double y) {
        return projection.flat(new Vec3(0, y, 0)).x();
    }

    private PlacedView drawn(
            SheetBuilder sheet, String name, Envelope cell, Projection projection, Envelope bounds, Margins margins) {
        PlacedView view = sheet.view(name, cell, bounds, margins);
        Scene.draw(view, Window.cut(seen(projection, view.port().scale()), bounds));
        view.line(new Vec2(bounds.getMinX(), 0), new Vec2(bounds.getMaxX(), 0), Pen.CUT, Layer.GROUND);
        return view;
    }

    /** What is seen from a side at a scale; strips of one side share it. */
    private List<ViewLine> seen(Projection projection, Scale scale) {
        return seen.computeIfAbsent(
                List.of(projection, scale),
                key -> new Foreground(setOut, projection)
                        .parted(Envelopes.scene(building, scale.n(), shown(projection)))
                        .seen(projection));
    }

    /** Whether doors or windows of a wall further back are seen. */
    private boolean seesThrough(Projection projection, Scale scale) {
        return seen(projection, scale).stream()
                .map(ViewLine::part)
                .anyMatch(part ->
                        Foreground.isBack(part) && Foreground.plain(part).equals(Scene.LEAF));
    }

    /** Purlins show their ends only: those of the first and last bay hide the others. */
    private BiPredicate<Part, Place> shown(Projection projection) {
        boolean end = Math.abs(projection.towards().y()) > 0.5;
        int last = setOut.frames() - 1;
        boolean bare = !shed.definition().envelope().isFull();
        return (part, place) ->
                bare || part.kind() != PartKind.PURLIN || end && (place.frame() == 1 || place.frame() == last);
    }
}
