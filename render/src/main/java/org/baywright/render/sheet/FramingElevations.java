package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.baywright.model.cladding.Building;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.SetOut;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/** Every wall as framing, from outside, two to a sheet while that can be read; long walls in strips. */
final class FramingElevations {
    private static final Margins END = new Margins(26, 54, 38, 6);
    private static final Margins LONG = new Margins(26, 54, 40, 6);

    /** How far the floor line is drawn past the steel. */
    private static final double FLOOR = 500;

    /** Marks of girts, bridging and braces crowd each other on a view smaller than this. */
    private static final Scale SMALLEST = new Scale(100);

    private final Shed shed;
    private final SetOut setOut;
    private final List<WallView> walls;
    private final List<Detail> details;

    private FramingElevations(Building building) {
        this.shed = building.shed();
        this.setOut = shed.setOut();
        this.walls = WallView.of(shed);
        this.details = Details.of(building);
    }

    static List<Draft> of(Building building) {
        FramingElevations elevations = new FramingElevations(building);
        List<Draft> drafts = new ArrayList<>();
        drafts.addAll(elevations.ends());
        drafts.addAll(elevations.sides());
        return drafts;
    }

    private FramingView view(WallView wall) {
        return new FramingView(shed, wall, details);
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
                view(two.get(k)).end(sheet, beside ? Cells.column(room, k, n) : Cells.row(room, k, n), END);
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

    /** What a wall takes, with the floor line. */
    static Envelope bounds(WallView wall) {
        Envelope bounds = wall.bounds();
        bounds.expandToInclude(bounds.getMinX() - FLOOR, 0);
        bounds.expandToInclude(bounds.getMaxX() + FLOOR, 0);
        return bounds;
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
                view(wall).side(sheet, new Strip(1, frames(wall).size(), 0, cell), LONG);
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
            strips.on(i).forEach(strip -> view(wall).side(sheet, strip, LONG));
            drafts.add(sheet.build());
        }
        return drafts;
    }

    /** The frame numbers of a side wall, in order along the building. */
    static List<Integer> frames(WallView wall) {
        int first = wall.wall().bays().stream().mapToInt(b -> b.bay()).min().orElseThrow();
        int last = wall.wall().bays().stream().mapToInt(b -> b.bay()).max().orElseThrow() + 1;
        return IntStream.rangeClosed(first, last).boxed().toList();
    }

    private Strips strips(WallView wall, Envelope room) {
        List<Double> lines = frames(wall).stream().map(setOut::frameLine).toList();
        return Strips.of(lines, beyond(wall), bounds(wall).getHeight(), room, LONG, SMALLEST);
    }

    /** How far a side wall reaches past its frames, with the floor line. */
    static double beyond(WallView wall) {
        Envelope bounds = bounds(wall);
        return (bounds.getWidth() - wall.wall().length()) / 2;
    }
}
