package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.WallFace;
import org.baywright.render.dimension.GridLine;
import org.baywright.render.dimension.Level;
import org.baywright.render.dimension.Side;
import org.locationtech.jts.geom.Envelope;

/** One wall on a framing elevation: its steel, and the dimensions, grid and levels about it. */
final class FramingView {
    /** From a cleat to the middle of its detail at most, mm. */
    private static final double REACH = 100;

    private final Shed shed;
    private final SetOut setOut;
    private final WallView wall;
    private final List<Detail> details;

    /** A wall, with the details of the building that it calls out. */
    FramingView(Shed shed, WallView wall, List<Detail> details) {
        this.shed = shed;
        this.setOut = shed.setOut();
        this.wall = wall;
        this.details = details;
    }

    /** The whole of an end wall. */
    void end(SheetBuilder sheet, Envelope cell, Margins margins) {
        int frame = frameOf(wall.wall());
        String name = title() + ", LINE " + frame;
        Envelope bounds = FramingElevations.bounds(wall);
        PlacedView view = sheet.view(name, cell, bounds, margins);
        WallFraming.draw(view, shed, wall, bounds);
        callouts(view, bounds);
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
        stations(view, grid, bounds);
        view.annotate()
                .chainWithOverall(
                        Side.BELOW, grid.stream().map(x -> new Vec2(x, 0)).toList())
                .grid(Side.BELOW, List.copyOf(lines.values()), 0)
                .levels(Side.RIGHT, levels(bounds));
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

    private String title() {
        String side = wall.wall().wall().name().toUpperCase(Locale.ROOT);
        String of =
                wall.wall().leanTo().map(l -> "LEAN-TO " + l.letter() + ", ").orElse("");
        return of + side + " WALL FRAMING";
    }

    /** A side wall between the frames of a strip. */
    void side(SheetBuilder sheet, Strip strip, Margins margins) {
        List<Integer> all = FramingElevations.frames(wall);
        boolean whole = strip.firstFrame() == 1 && strip.lastFrame() == all.size();
        List<Integer> shown = all.subList(strip.firstFrame() - 1, strip.lastFrame());
        int first = shown.get(0);
        int last = shown.get(shown.size() - 1);
        String line = wall.wall().leanTo().map(ColumnLine::letter).orElseGet(this::lineOf);
        String name = title() + ", LINE " + line + (whole ? "" : ", FRAMES " + first + " TO " + last);
        double a = wall.along(setOut.frameLine(first));
        double b = wall.along(setOut.frameLine(last));
        Envelope bounds = FramingElevations.bounds(wall);
        double beyond = FramingElevations.beyond(wall);
        Envelope window =
                new Envelope(Math.min(a, b) - beyond, Math.max(a, b) + beyond, bounds.getMinY(), bounds.getMaxY());
        PlacedView view = sheet.view(name, strip.cell(), window, margins);
        WallFraming.draw(view, shed, wall, window);
        callouts(view, window);
        List<GridLine> grid = shown.stream()
                .map(f -> new GridLine(String.valueOf(f), wall.along(setOut.frameLine(f))))
                .toList();
        List<Double> at = grid.stream().map(GridLine::at).sorted().toList();
        stations(view, at, window);
        view.annotate()
                .chainWithOverall(
                        Side.BELOW, at.stream().map(x -> new Vec2(x, 0)).toList())
                .grid(Side.BELOW, grid, 0)
                .levels(Side.RIGHT, levels(window));
    }

    /** The levels that a view reaches: a side wall does not show the apex. */
    private List<Level> levels(Envelope window) {
        return Levels.of(shed, wall::has).stream()
                .filter(l -> l.height() < window.getMaxY() + 1)
                .toList();
    }

    private String lineOf() {
        double x = wall.wall().axes().origin().x();
        return setOut.columnLines().stream()
                .filter(l -> !l.leanTo() && Math.abs(l.x() - x) < 1)
                .map(ColumnLine::letter)
                .findFirst()
                .orElseThrow();
    }

    /** From line to line through uprights and clear edges of openings, when there are any. */
    private void stations(PlacedView view, List<Double> grid, Envelope window) {
        List<Double> between = wall.stations().stream()
                .filter(x -> x > grid.get(0) && x < grid.get(grid.size() - 1))
                .toList();
        if (!between.isEmpty()) {
            List<Double> all = new ArrayList<>(grid);
            all.addAll(between);
            view.annotate().chainBelow(all.stream().sorted().toList(), window.getMinY());
        }
    }

    /** Where details of what stands in the wall are drawn close up. */
    private void callouts(PlacedView view, Envelope window) {
        for (Detail detail : details) {
            Vec2 place = wall.flat(detail.at());
            boolean here = window.contains(place.x(), place.y())
                    && wall.members().stream()
                            .filter(m -> detail.isOfHead(m.part().kind()))
                            .anyMatch(m -> m.middle().distance(detail.at()) < REACH);
            if (here) {
                detail.callout().point(view, view.port().toPaper(place), new Vec2(0.3, 1));
            }
        }
    }
}
