package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.catalogue.Section;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.BracedBays;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.GirtRows;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RowStand;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.TrackGirt;
import org.baywright.model.setout.WallFace;

/**
 * The crossed braces of a side wall, in the middle of its columns, with a cleat at each end. One brace lies on the
 * outside of the cleats, the other on their inside, so that they pass each other.
 *
 * <p>@source true length √(S² + H²): plane geometry; less end cleats of 100 to 150: common practice
 *
 * @param definition what was asked for
 * @param setOut lines and levels
 * @param face the wall
 * @param openings of all walls
 */
record WallBraceMaker(Definition definition, SetOut setOut, WallFace face, List<OpeningPlace> openings) {
    /** From the floor to the lower nodes, and from the rafter's underside to the upper ones. Common practice. */
    private static final double NODE_LOW = 300;

    private static final double NODE_UNDER = 150;

    private static final double END_CLEAT = 125;
    private static final double CLEAR = 10;
    private static final double EDGE = BraceLine.EDGE;
    private static final double PLATE = 8;

    /** The narrowest plate on edge that is welded on both of its edges. Common practice, no source. */
    private static final double LEAST_SEAT = 20;

    /** Left between a brace and the plane of the girts. */
    private static final double THIN = 2;

    private static final double HOLE = 18;
    private static final double LEAST_HEIGHT = 1000;

    /** The crossing lines of a bay: y of the columns' middles and the heights of the nodes. */
    private record Panel(int bay, double y0, double y1, double low, double high) {
        double length() {
            return Math.hypot(y1 - y0, high - low);
        }

        double cosine() {
            return (y1 - y0) / length();
        }

        double sine() {
            return (high - low) / length();
        }
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (int bay : BracedBays.of(definition, face, openings).bays()) {
            Panel panel = panel(bay);
            if (panel.high - panel.low >= LEAST_HEIGHT) {
                pieces.addAll(brace(panel, true));
                pieces.addAll(brace(panel, false));
                for (boolean upper : new boolean[] {false, true}) {
                    pieces.addAll(cleat(panel, bay, 1, upper));
                    pieces.addAll(cleat(panel, bay + 1, -1, upper));
                }
            }
        }
        return pieces;
    }

    private ColumnLine line() {
        return face.leanTo()
                .orElseGet(() -> setOut.columnLines().stream()
                        .filter(l ->
                                !l.leanTo() && l.x() == face.axes().origin().x())
                        .findFirst()
                        .orElseThrow());
    }

    private Member column(int frame) {
        return line().column(definition, frame);
    }

    private Panel panel(int bay) {
        double y0 = setOut.middle(bay, column(bay).width());
        double y1 = setOut.middle(bay + 1, column(bay + 1).width());
        double rafter = Math.max(
                line().rafter(definition, bay).depth(),
                line().rafter(definition, bay + 1).depth());
        double inside = Math.max(column(bay).depth(), column(bay + 1).depth());
        double x = line().x() + line().inward() * inside;
        double top = Math.min(line().eaveHeight(), line().roof().heightAt(x));
        double high = top - line().roof().plumb(rafter) - definition.plates().capThickness() - NODE_UNDER;
        return clearOfEndGirts(new Panel(bay, y0, y1, NODE_LOW, high));
    }

    /** Flush girts of an end wall run up to the column where the cleats are: nodes go under or over such a row. */
    private Panel clearOfEndGirts(Panel panel) {
        RowStand stand = GirtRows.stand(definition);
        Panel clear = panel;
        for (double row : endRows(panel.bay)) {
            double bottom = row - stand.reachDown() - CLEAR;
            double top = row + Math.max(CleatPlate.THICKNESS, stand.reachUp()) + CLEAR;
            double tall = cleatHeight(clear);
            if (top > clear.low - EDGE && bottom < clear.low - EDGE + tall) {
                clear = new Panel(panel.bay, panel.y0, panel.y1, top + EDGE, clear.high);
            }
            if (top > clear.high + EDGE - tall && bottom < clear.high + EDGE) {
                clear = new Panel(panel.bay, panel.y0, panel.y1, clear.low, bottom - EDGE);
            }
        }
        return clear;
    }

    /** The heights of flush girts in end walls that meet this wall at either frame of a bay, from the top down. */
    private List<Double> endRows(int bay) {
        if (!flush()) {
            return List.of();
        }
        return TrackGirt.withRows(definition, setOut, openings, f -> f.wall().isEnd() && endsAt(f, bay))
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    private boolean endsAt(WallFace end, int bay) {
        int first = end.leanTo().map(ColumnLine::firstFrame).orElse(1);
        int last = end.leanTo().map(ColumnLine::lastFrame).orElse(setOut.frames());
        return end.wall() == Wall.FRONT ? first == bay : last == bay + 1;
    }

    private Section section() {
        return definition.envelope().bracing().section();
    }

    private boolean flush() {
        return definition.envelope().walls().girts().flush();
    }

    private double girtDepth() {
        return definition.envelope().walls().girts().member().depth();
    }

    /** The columns of a bay, and flush girts between them, from the string line in. */
    private double deepest(int bay) {
        return Stream.concat(columnDepths(bay), Stream.of(flush() ? girtDepth() : 0))
                .max(Double::compare)
                .orElseThrow();
    }

    private Stream<Double> columnDepths(int bay) {
        return Stream.of(bay, bay + 1).map(f -> column(f).depth());
    }

    private double shallowest(int bay) {
        return columnDepths(bay).min(Double::compare).orElseThrow();
    }

    /** From the string line to the middle of cleats that have an outer brace before them and the girts before that. */
    private double room() {
        return (flush() ? girtDepth() : 0) + BraceLine.out(section()) + PLATE / 2 + THIN;
    }

    /** Whether both braces of a bay have cleats on the columns' sides, one plane between them. */
    private boolean isShared(int bay) {
        return !flush() || room() + PLATE / 2 <= shallowest(bay);
    }

    /**
     * How far inside the string line the middle of a brace's cleats lies: in the middle of the shallower column, or
     * further in behind flush girts. Columns that have no room there have each brace inside them, with cleats of its own,
     * those of the inner one clear of the outer brace. A column that such a cleat does not lie on carries it on a seat.
     */
    private double inside(int bay, boolean outer) {
        if (isShared(bay)) {
            return Math.max(room(), shallowest(bay) / 2);
        }
        double face = deepest(bay) + (columnDepths(bay).allMatch(d -> isSeatable(deepest(bay) - d)) ? 0 : LEAST_SEAT);
        return face + PLATE / 2 + (outer ? 0 : Math.max(LEAST_SEAT, BraceLine.out(section()) + CLEAR));
    }

    /** Whether there is no gap between a column and a cleat, or room for a seat. */
    private static boolean isSeatable(double gap) {
        return gap < Standing.TOUCH || gap >= LEAST_SEAT;
    }

    private double x(int bay, boolean outer) {
        return line().x() + line().inward() * inside(bay, outer);
    }

    /** From a node to the end of a brace: past its cleat, and clear of the column. */
    private double stop(Panel panel) {
        double widest =
                Math.max(column(panel.bay).width(), column(panel.bay + 1).width());
        double past = (widest / 2 + BraceLine.halfAcross(section()) * panel.sine() + CLEAR) / panel.cosine();
        return Math.max(END_CLEAT, past);
    }

    /** The outer brace rises along the building, the inner one falls. */
    private List<Piece> brace(Panel panel, boolean outer) {
        int out = -line().inward();
        int side = (outer && isShared(panel.bay) ? 1 : -1) * out;
        double x = x(panel.bay, outer) + side * PLATE / 2;
        Vec3 from = new Vec3(x, panel.y0, outer ? panel.low : panel.high);
        Vec3 to = new Vec3(x, panel.y1, outer ? panel.high : panel.low);
        Vec3 along = to.minus(from).unit();
        Vec3 width = new Vec3(side, 0, 0);
        double stop = stop(panel);
        Placement at = Placement.of(from.plus(along.times(stop)), along, width.cross(along));
        return new BraceLine(section(), panel.length() - 2 * stop)
                .pieces(at, p -> new Place(p, panel.bay, line().side()));
    }

    private double cleatHeight(Panel panel) {
        return PlateRoom.upTo5((stop(panel) + EDGE) * panel.sine() + 2 * EDGE);
    }

    /** From a column's middle to the face that looks along the wall: the web of an upright beam. */
    private static double side(Member column) {
        return column.section() instanceof BeamSection beam && !column.turned()
                ? beam.webThickness() / 2
                : column.width() / 2;
    }

    /** A plate in the plane of the wall on the side of a column, or inside it; there on a seat when it stands off it. */
    private List<Piece> cleat(Panel panel, int frame, int into, boolean upper) {
        double bolt = stop(panel) + EDGE;
        double face = isShared(panel.bay) ? side(column(frame)) : 0;
        double out = bolt * panel.cosine() - face;
        double rise = bolt * panel.sine();
        double width = PlateRoom.upTo5(out + 2 * EDGE);
        double height = cleatHeight(panel);
        double middle = frame == panel.bay ? panel.y0 : panel.y1;
        double y = middle + into * (face + width / 2);
        double node = upper ? panel.high : panel.low;
        int up = upper ? -1 : 1;
        double z = node + up * (height / 2 - EDGE);
        boolean outer = upper == (into < 0);
        double x = x(panel.bay, outer) - PLATE / 2;
        Placement at = Placement.of(new Vec3(x, y, z), Vec3.ACROSS, Vec3.UP);
        // Across × up points to the front, so that a place along the building counts backward.
        Hole hole = new Hole(new Vec2(up * (rise - height / 2 + EDGE), -into * (out - width / 2)), HOLE);
        Piece cleat = PlateMaker.plate(
                PartKind.BRACE_CLEAT, height, width, PLATE, List.of(hole), new Place(at, frame, line().side()));
        double gap = inside(panel.bay, outer) - PLATE / 2 - column(frame).depth();
        return isShared(panel.bay) || gap < Standing.TOUCH
                ? List.of(cleat)
                : List.of(cleat, seat(frame, into, gap, new Vec3(x(panel.bay, outer), middle, z), height));
    }

    /**
     * An upright plate on edge between the inner face of a column and a cleat that stands off it, over the web of a beam
     * or towards the side wall of a hollow section; the weld takes up what a whole number of millimetres leaves.
     */
    private Piece seat(int frame, int into, double gap, Vec3 cleat, double height) {
        Member column = column(frame);
        boolean beam = column.section() instanceof BeamSection;
        double off = !beam ? column.width() / 4 : column.turned() ? column.width() / 2 - PLATE : 0;
        double x = line().x() + line().inward() * (column.depth() + gap / 2);
        double y = cleat.y() + (into > 0 ? off : -off - PLATE);
        Placement at = Placement.of(new Vec3(x, y, cleat.z()), Vec3.ALONG, Vec3.UP);
        return PlateMaker.plate(
                PartKind.BRACE_CLEAT,
                height,
                Math.floor(gap + 1e-6),
                PLATE,
                List.of(),
                new Place(at, frame, line().side()));
    }
}
