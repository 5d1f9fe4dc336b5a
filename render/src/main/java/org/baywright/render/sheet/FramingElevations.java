package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.WallFace;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.GridLine;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Level;
import org.baywright.render.dimension.Side;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.baywright.render.view.Silhouette;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.Window;
import org.locationtech.jts.geom.Envelope;

/** Every wall as framing, from outside, two to a sheet while that can be read; long walls in strips. */
final class FramingElevations {
    private static final Margins END = new Margins(26, 54, 38, 6);
    private static final Margins LONG = new Margins(26, 54, 40, 6);

    /** How far the floor line is drawn past the steel. */
    private static final double FLOOR = 500;

    /** Marks of girts, bridging and braces crowd each other on a view smaller than this. */
    private static final Scale SMALLEST = new Scale(100);

    /** Members that are thinner than this on paper are drawn as one line, mm. */
    private static final double LEAST_BREADTH = 0.9;

    /** Always one line: round or slender, and crossing others. */
    private static final Set<PartKind> LINES = EnumSet.of(PartKind.BRACE, PartKind.BRIDGING);

    private static final Set<PartKind> FRAMES =
            EnumSet.of(PartKind.COLUMN, PartKind.LEAN_TO_COLUMN, PartKind.RAFTER, PartKind.LEAN_TO_RAFTER);

    private final Shed shed;
    private final SetOut setOut;
    private final List<WallView> walls;

    private FramingElevations(Shed shed) {
        this.shed = shed;
        this.setOut = shed.setOut();
        this.walls = WallView.of(shed);
    }

    static List<Draft> of(Shed shed) {
        FramingElevations elevations = new FramingElevations(shed);
        List<Draft> drafts = new ArrayList<>();
        drafts.addAll(elevations.ends());
        drafts.addAll(elevations.sides());
        return drafts;
    }

    private List<Draft> ends() {
        List<WallView> ends = walls.stream().filter(WallView::isEnd).toList();
        List<Draft> drafts = new ArrayList<>();
        int most = ends.stream().anyMatch(FramingElevations::wantsItsOwnSheet) ? 1 : 2;
        for (int i = 0; i < ends.size(); i += most) {
            SheetBuilder sheet = new SheetBuilder("S6", "Wall framing, ends");
            List<WallView> two = ends.subList(i, Math.min(i + most, ends.size()));
            boolean beside = beside(two);
            for (int k = 0; k < two.size(); k++) {
                Envelope room = SheetFrame.room();
                int n = two.size();
                end(sheet, two.get(k), beside ? Cells.column(room, k, n) : Cells.row(room, k, n));
            }
            drafts.add(sheet.build());
        }
        return drafts;
    }

    /** Whether it is crowded on half a sheet and larger on a whole one. */
    private static boolean wantsItsOwnSheet(WallView wall) {
        Envelope room = SheetFrame.room();
        double half = Math.min(
                PlacedView.fitting(Cells.row(room, 0, 2), bounds(wall), END).n(),
                PlacedView.fitting(Cells.column(room, 0, 2), bounds(wall), END).n());
        return half > SMALLEST.n()
                && PlacedView.fitting(room, bounds(wall), END).n() < half;
    }

    /** Whether two views are drawn at least as large beside each other as above each other. */
    private static boolean beside(List<WallView> two) {
        Envelope room = SheetFrame.room();
        Envelope bounds = new Envelope();
        two.forEach(v -> bounds.expandToInclude(0, 0));
        two.forEach(v -> bounds.expandToInclude(bounds(v).getWidth(), bounds(v).getHeight()));
        Scale beside = PlacedView.fitting(Cells.column(room, 0, two.size()), bounds, END);
        return beside.n()
                <= PlacedView.fitting(Cells.row(room, 0, two.size()), bounds, END)
                        .n();
    }

    private static Envelope bounds(WallView wall) {
        Envelope bounds = wall.bounds();
        bounds.expandToInclude(bounds.getMinX() - FLOOR, 0);
        bounds.expandToInclude(bounds.getMaxX() + FLOOR, 0);
        return bounds;
    }

    private void end(SheetBuilder sheet, WallView wall, Envelope cell) {
        int frame = frameOf(wall.wall());
        String name = title(wall) + ", LINE " + frame;
        Envelope bounds = bounds(wall);
        PlacedView view = sheet.view(name, cell, bounds, END);
        content(view, wall, bounds);
        TreeMap<Double, GridLine> lines = new TreeMap<>();
        for (WallFace face : wall.faces()) {
            for (ColumnLine line : setOut.columnLines()) {
                double x = wall.projection().flat(new Vec3(line.x(), 0, 0)).x();
                double from = wall.x(face, 0);
                if (line.has(frame) && x > from - 1 && x < from + face.length() + 1) {
                    lines.put(x, new GridLine(line.letter(), x));
                }
            }
        }
        List<Double> grid = List.copyOf(lines.keySet());
        stations(view, wall, grid, bounds);
        view.annotate()
                .chainWithOverall(
                        Side.BELOW, grid.stream().map(x -> new Vec2(x, 0)).toList())
                .grid(Side.BELOW, List.copyOf(lines.values()), 0)
                .levels(Side.RIGHT, levels(wall, bounds));
    }

    /** The frame that an end wall stands at; the end of a lean-to may stand beside its frame's line. */
    private int frameOf(WallFace end) {
        double y = end.axes().origin().y();
        // The end of a lean-to at a frame between stands outside its steel, off the frame's line.
        return IntStream.rangeClosed(1, setOut.frames())
                .boxed()
                .min(Comparator.comparingDouble(f -> Math.abs(setOut.frameLine(f) - y)))
                .orElseThrow();
    }

    private static String title(WallView wall) {
        String side = wall.wall().wall().name().toUpperCase(Locale.ROOT);
        String of =
                wall.wall().leanTo().map(l -> "LEAN-TO " + l.letter() + ", ").orElse("");
        return of + side + " WALL FRAMING";
    }

    private List<Draft> sides() {
        List<WallView> sides = walls.stream().filter(w -> !w.isEnd()).toList();
        Envelope room = SheetFrame.room();
        List<Draft> drafts = new ArrayList<>();
        List<WallView> waiting = new ArrayList<>();
        for (WallView wall : sides) {
            Strips half = strips(wall, Cells.row(room, 0, 2));
            Strips whole = strips(wall, room);
            boolean crowded = half.scale().n() > SMALLEST.n()
                    && whole.scale().n() < half.scale().n();
            if (half.parted() || crowded) {
                drafts.addAll(parted(wall, whole));
            } else {
                waiting.add(wall);
            }
        }
        int most = waiting.stream().allMatch(this::asLargeInThirds) ? 3 : 2;
        for (int i = 0; i < waiting.size(); i += most) {
            SheetBuilder sheet = new SheetBuilder("S6", "Wall framing, sides");
            int n = Math.min(most, waiting.size() - i);
            for (int k = 0; k < n; k++) {
                WallView wall = waiting.get(i + k);
                Envelope cell = Cells.row(room, k, n);
                side(sheet, wall, new Strip(1, frames(wall).size(), 0, cell));
            }
            drafts.add(sheet.build());
        }
        return drafts;
    }

    /** Whether three views on a sheet leave this one as large as two do. */
    private boolean asLargeInThirds(WallView wall) {
        Envelope room = SheetFrame.room();
        Strips thirds = strips(wall, Cells.row(room, 0, 3));
        return !thirds.parted() && !strips(wall, Cells.row(room, 0, 2)).betterThan(thirds);
    }

    private List<Draft> parted(WallView wall, Strips strips) {
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < strips.sheets(); i++) {
            SheetBuilder sheet = new SheetBuilder("S6", "Wall framing, sides");
            strips.on(i).forEach(strip -> side(sheet, wall, strip));
            drafts.add(sheet.build());
        }
        return drafts;
    }

    /** The frame numbers of a side wall, in order along the building. */
    private List<Integer> frames(WallView wall) {
        int first = wall.wall().bays().stream().mapToInt(b -> b.bay()).min().orElseThrow();
        int last = wall.wall().bays().stream().mapToInt(b -> b.bay()).max().orElseThrow() + 1;
        return IntStream.rangeClosed(first, last).boxed().toList();
    }

    private Strips strips(WallView wall, Envelope room) {
        List<Double> lines = frames(wall).stream().map(setOut::frameLine).toList();
        return Strips.of(lines, beyond(wall), bounds(wall).getHeight(), room, LONG, SMALLEST);
    }

    private static double beyond(WallView wall) {
        Envelope bounds = bounds(wall);
        return (bounds.getWidth() - wall.wall().length()) / 2;
    }

    private void side(SheetBuilder sheet, WallView wall, Strip strip) {
        List<Integer> all = frames(wall);
        boolean whole = strip.firstFrame() == 1 && strip.lastFrame() == all.size();
        List<Integer> shown = all.subList(strip.firstFrame() - 1, strip.lastFrame());
        int first = shown.get(0);
        int last = shown.get(shown.size() - 1);
        String line = wall.wall().leanTo().map(ColumnLine::letter).orElseGet(() -> lineOf(wall));
        String name = title(wall) + ", LINE " + line + (whole ? "" : ", FRAMES " + first + " TO " + last);
        double a = wall.along(setOut.frameLine(first));
        double b = wall.along(setOut.frameLine(last));
        Envelope bounds = bounds(wall);
        double beyond = beyond(wall);
        Envelope window =
                new Envelope(Math.min(a, b) - beyond, Math.max(a, b) + beyond, bounds.getMinY(), bounds.getMaxY());
        PlacedView view = sheet.view(name, strip.cell(), window, LONG);
        content(view, wall, window);
        List<GridLine> grid = shown.stream()
                .map(f -> new GridLine(String.valueOf(f), wall.along(setOut.frameLine(f))))
                .toList();
        List<Double> at = grid.stream().map(GridLine::at).sorted().toList();
        stations(view, wall, at, window);
        view.annotate()
                .chainWithOverall(
                        Side.BELOW, at.stream().map(x -> new Vec2(x, 0)).toList())
                .grid(Side.BELOW, grid, 0)
                .levels(Side.RIGHT, levels(wall, window));
    }

    /** The levels that a view reaches: a side wall does not show the apex. */
    private List<Level> levels(WallView wall, Envelope window) {
        return Levels.of(shed, wall::has).stream()
                .filter(l -> l.height() < window.getMaxY() + 1)
                .toList();
    }

    private String lineOf(WallView wall) {
        double x = wall.wall().axes().origin().x();
        return setOut.columnLines().stream()
                .filter(l -> !l.leanTo() && Math.abs(l.x() - x) < 1)
                .map(ColumnLine::letter)
                .findFirst()
                .orElseThrow();
    }

    /** From line to line through uprights and clear edges of openings, when there are any. */
    private static void stations(PlacedView view, WallView wall, List<Double> grid, Envelope window) {
        List<Double> between = wall.stations().stream()
                .filter(x -> x > grid.get(0) && x < grid.get(grid.size() - 1))
                .toList();
        if (!between.isEmpty()) {
            List<Double> all = new ArrayList<>(grid);
            all.addAll(between);
            view.annotate().chainBelow(all.stream().sorted().toList(), window.getMinY());
        }
    }

    private void content(PlacedView view, WallView wall, Envelope window) {
        view.line(new Vec2(window.getMinX(), 0), new Vec2(window.getMaxX(), 0), Pen.CUT, Layer.GROUND);
        for (MemberAxis member : wall.members()) {
            member(view, wall, member, window);
        }
        wall.openings().forEach(o -> opening(view, wall, o, window));
        Map<Boolean, List<MemberAxis>> named = wall.members().stream()
                .filter(m -> m.part().kind().isMember())
                .collect(Collectors.partitioningBy(m -> m.part().kind() == PartKind.BRIDGING));
        MarkNames.place(view, named.get(false), wall.projection(), window);
        MarkNames.placeShort(view, named.get(true), wall.projection(), window);
        for (List<Double> heights : wall.girtHeights(shed)) {
            List<Double> rows = new ArrayList<>(heights);
            rows.add(0, 0.0);
            view.annotate().chainLeft(rows, window.getMinX());
        }
    }

    private static void member(PlacedView view, WallView wall, MemberAxis member, Envelope window) {
        PartKind kind = member.part().kind();
        ViewLine axis = member.line(wall.projection());
        Envelope reach = new Envelope(
                axis.from().x(), axis.to().x(), axis.from().y(), axis.to().y());
        if (!reach.intersects(window)) {
            return;
        }
        if (LINES.contains(kind)) {
            Pen pen = kind == PartKind.BRACE ? Pen.OUTLINE : Pen.DIMENSION;
            view.draw(Window.cut(List.of(axis), window), pen, Layer.STEEL);
            return;
        }
        for (List<Vec2> ring : Silhouette.outline(member.item(), wall.projection())) {
            if (kind == PartKind.GIRT && breadth(ring) / view.port().scale().n() < LEAST_BREADTH) {
                view.draw(Window.cut(List.of(axis), window), Pen.VISIBLE, Layer.STEEL);
            } else {
                outline(view, ring, member, window);
            }
        }
    }

    private static double breadth(List<Vec2> ring) {
        var heights = ring.stream().mapToDouble(Vec2::y).summaryStatistics();
        return heights.getMax() - heights.getMin();
    }

    /** White over what is behind, and its edge. */
    private static void outline(PlacedView view, List<Vec2> ring, MemberAxis member, Envelope window) {
        String mark = member.part().mark();
        Pen pen =
                FRAMES.contains(member.part().kind()) || member.part().kind().isMember() ? Pen.VISIBLE : Pen.DIMENSION;
        List<Vec2> inside = ring.stream()
                .map(p -> new Vec2(Math.max(window.getMinX(), Math.min(window.getMaxX(), p.x())), p.y()))
                .map(view.port()::toPaper)
                .toList();
        double grey = FRAMES.contains(member.part().kind()) ? 0.88 : 1;
        view.draw(List.of(
                new Fill(List.of(inside), grey, Layer.STEEL, mark), new Stroke(inside, true, pen, Layer.STEEL, mark)));
    }

    /** The clear opening in thin outline with its name and size. */
    private static void opening(PlacedView view, WallView wall, OpeningPlace opening, Envelope window) {
        double left = wall.x(opening.face(), opening.left());
        double right = wall.x(opening.face(), opening.right());
        Vec2 middle = new Vec2((left + right) / 2, (opening.sill() + opening.head()) / 2);
        if (!window.contains(middle.x(), middle.y())) {
            return;
        }
        if (!opening.isWholeBay()) {
            List<Vec2> ring = List.of(
                    new Vec2(left, opening.sill()),
                    new Vec2(right, opening.sill()),
                    new Vec2(right, opening.head()),
                    new Vec2(left, opening.head()));
            List<Vec2> paper = ring.stream().map(view.port()::toPaper).toList();
            view.draw(List.of(new Stroke(paper, true, Pen.DIMENSION, Layer.LABEL, "")));
        }
        Label words = Label.of(view.port().toPaper(middle), Label.Pointer.BESIDE, words(opening));
        view.annotate()
                .place(new Label(
                        words.lines(),
                        words.target(),
                        words.pointer(),
                        List.of(Spot.ABOVE, Spot.BELOW, Spot.RIGHT),
                        2.5,
                        Face.BOLD,
                        ""));
    }

    private static String[] words(OpeningPlace opening) {
        String type = opening.opening().type().label();
        String name = type.substring(0, 1).toUpperCase(Locale.ROOT) + type.substring(1);
        if (opening.isWholeBay()) {
            return new String[] {"Bay left open"};
        }
        String size = Figure.length(opening.right() - opening.left()) + " × "
                + Figure.length(opening.head() - opening.sill()) + " clear";
        return opening.sill() > 0
                ? new String[] {name + " " + opening.number(), size, "sill at " + Figure.level(opening.sill())}
                : new String[] {name + " " + opening.number(), size};
    }
}
