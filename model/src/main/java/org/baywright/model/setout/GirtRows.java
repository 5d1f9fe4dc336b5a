package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Girts;
import org.baywright.model.definition.KneeJoint;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;

/**
 * The heights of the girts of a sheeted bay.
 *
 * <p>Rows start so far above the floor and go up in even spaces. In a side wall the eave purlin takes the upper ends of
 * the sheets; in an end wall rows go on under the rake, and the sheets' upper ends are fixed to the ends of the purlins.
 * Where a lean-to's rafters meet the wall, a row below and a row above them stand clear. Common practice, no source.
 *
 * @param cover the bay
 * @param at the height of each row's back, from the floor up
 */
public record GirtRows(WallCover cover, List<Double> at) {
    /** Over the start of sheets that do not reach the floor. Common practice, no source. */
    private static final double OVER_START = 75;

    /** The sheets of such a strip start so far over the lean-to's steel, at least. Common practice, no source. */
    private static final double SHEET_OVER = 50;

    /** Between a row and a lean-to's steel. Common practice, no source. */
    private static final double CLEAR = 15;

    /** Rows closer than this become one. Common practice, no source. */
    public static final double LEAST_SPACE = 200;

    /** Room for a cleat over the row, and for what a plate on a rafter's end reaches below it. Common practice. */
    private static final double PLATE = 20;

    /** Closer to the roof than this there is no row. Common practice, no source. */
    private static final double UNDER_ROOF = 250;

    /** Copies the list. */
    public GirtRows {
        at = List.copyOf(at);
    }

    /** The rows of one bay. */
    public static GirtRows of(Definition definition, SetOut setOut, WallCover cover) {
        Girts girts = definition.envelope().walls().girts();
        if (cover.low() > 0) {
            return new GirtRows(cover, strip(definition, setOut, cover));
        }
        double low = Math.max(girts.fromFloor(), height(girts));
        double high = highest(cover);
        List<double[]> leanTos = leanTos(definition, setOut, cover);
        List<double[]> taken = taken(definition, setOut, cover);
        boolean end = cover.face().wall().isEnd();
        List<Double> rows = new ArrayList<>();
        if (!leanTos.isEmpty()) {
            double from = leanTos.stream().mapToDouble(t -> t[0]).min().orElseThrow();
            double to = leanTos.stream().mapToDouble(t -> t[1]).max().orElseThrow();
            rows.addAll(even(low, from, girts.spacing(), true));
            rows.addAll(even(to, high, girts.spacing(), end));
        } else {
            rows.addAll(even(low, high, girts.spacing(), end));
        }
        List<Double> apart = apart(rows.stream()
                .filter(r -> r <= high - UNDER_ROOF || r == low)
                .map(r -> clear(r, taken))
                .sorted()
                .toList());
        List<Double> filled = filled(apart, girts.spacing() + LEAST_SPACE, taken);
        List<Double> topped = end ? topped(filled, high, girts.spacing(), taken) : filled;
        return new GirtRows(cover, apart(inLine(definition, setOut, cover, topped, taken)));
    }

    /**
     * A row of a lean-to's end wall that would come into one of the main wall's, round the corner, goes on at the height of
     * that: its cleats pass over a back, or between two ends, and nowhere else.
     */
    private static List<Double> inLine(
            Definition definition, SetOut setOut, WallCover cover, List<Double> rows, List<double[]> taken) {
        if (!cover.face().wall().isEnd() || cover.face().isMain()) {
            return rows;
        }
        RowStand stand = stand(definition);
        double near = stand.reachUp() + stand.reachDown() + PLATE + CLEAR;
        List<Double> main = roundTheCorner(definition, setOut, cover);
        return rows.stream()
                .map(row -> main.stream()
                        .filter(m -> Math.abs(m - row) < near && clear(m, taken) == m)
                        .min(Comparator.comparingDouble(m -> Math.abs(m - row)))
                        .orElse(row))
                .toList();
    }

    /** The rows of the main side wall that a lean-to's end wall meets. */
    private static List<Double> roundTheCorner(Definition definition, SetOut setOut, WallCover cover) {
        Wall side = Wall.of(cover.face().leanTo().orElseThrow().side());
        int frame = frame(setOut, cover);
        return WallCover.of(definition, setOut, WallFace.of(definition, setOut)).stream()
                .filter(c -> c.face().isMain() && c.face().wall() == side)
                .filter(c -> c.bay().bay() == frame || c.bay().bay() + 1 == frame)
                .flatMap(c -> of(definition, setOut, c).at().stream())
                .distinct()
                .toList();
    }

    /** Whether the steel of lean-tos and the caps of columns leave a height of a bay to a girt. */
    public static boolean isFree(Definition definition, SetOut setOut, WallCover cover, double row) {
        return taken(definition, setOut, cover).stream().noneMatch(t -> row > t[0] && row < t[1]);
    }

    private static List<double[]> taken(Definition definition, SetOut setOut, WallCover cover) {
        List<double[]> taken = new ArrayList<>(leanTos(definition, setOut, cover));
        taken.addAll(caps(definition, setOut, cover));
        return taken;
    }

    private static List<double[]> leanTos(Definition definition, SetOut setOut, WallCover cover) {
        return leanTosAt(setOut, cover).stream()
                .map(lean -> taken(definition, setOut, lean))
                .toList();
    }

    /** Where the row that would hold the wall under the ridge went down, one more is put half way up when that is free. */
    private static List<Double> topped(List<Double> rows, double high, double widest, List<double[]> taken) {
        double last = rows.isEmpty() ? high : rows.get(rows.size() - 1);
        double middle = clear((last + high) / 2, taken);
        if (high - last <= widest + 1e-6 || middle - last < LEAST_SPACE) {
            return rows;
        }
        List<Double> topped = new ArrayList<>(rows);
        topped.add(middle);
        return topped;
    }

    /** Where rows that went down left a wide space, one more is put into its middle when that is free. */
    private static List<Double> filled(List<Double> rows, double widest, List<double[]> taken) {
        List<Double> filled = new ArrayList<>();
        for (double row : rows) {
            if (!filled.isEmpty() && row - filled.get(filled.size() - 1) > widest) {
                double below = filled.get(filled.size() - 1);
                double middle = clear((below + row) / 2, taken);
                if (middle - below >= LEAST_SPACE) {
                    filled.add(middle);
                }
            }
            filled.add(row);
        }
        return filled;
    }

    /** The rows of a strip over a lean-to: the lowest as far under the eave's purlins as it must, where there is room. */
    private static List<Double> strip(Definition definition, SetOut setOut, WallCover cover) {
        Girts girts = definition.envelope().walls().girts();
        ColumnLine line = setOut.main(cover.face().wall() == Wall.LEFT ? Side.LEFT : Side.RIGHT);
        double out = girts.flush() ? 0 : girts.member().depth();
        RowStand stand = stand(definition);
        double highest =
                line.eaveHeight() - Math.max(0, line.riseInward() * out) - Math.max(PLATE, stand.reachUp() + CLEAR);
        double lowest = cover.low() + SHEET_OVER + stand.reachDown();
        double row = Math.min(cover.low() + OVER_START + height(girts), highest);
        if (row < lowest) {
            return List.of();
        }
        List<Double> rows = even(row, line.eaveHeight(), girts.spacing(), false);
        return rows.stream().filter(r -> r == row || r <= highest - UNDER_ROOF).toList();
    }

    /** A row under whatever takes its place: out of the way of one thing it may come into that of another. */
    private static double clear(double row, List<double[]> taken) {
        return taken.stream()
                .filter(t -> row > t[0] && row < t[1])
                .findFirst()
                .map(t -> clear(t[0], taken))
                .orElse(row);
    }

    /** Rows that came too close to the one below are left out. */
    private static List<Double> apart(List<Double> rows) {
        List<Double> apart = new ArrayList<>();
        for (double row : rows) {
            if (apart.isEmpty() || row - apart.get(apart.size() - 1) >= LEAST_SPACE) {
                apart.add(row);
            }
        }
        return apart;
    }

    /** The lean-tos whose rafters meet a main wall at its frames. */
    private static List<ColumnLine> leanTosAt(SetOut setOut, WallCover cover) {
        boolean end = cover.face().wall().isEnd();
        int first = end ? frame(setOut, cover) : cover.bay().bay();
        int last = end ? first : first + 1;
        return setOut.leanTos().stream()
                .filter(l -> cover.face().isMain())
                .filter(l -> end || Wall.of(l.side()) == cover.face().wall())
                .filter(l -> l.has(first) || l.has(last))
                .toList();
    }

    /** In an end wall rows go under the plates on top of the columns, which stand out past the string line there. */
    private static List<double[]> caps(Definition definition, SetOut setOut, WallCover cover) {
        if (!cover.face().wall().isEnd()) {
            return List.of();
        }
        int frame = frame(setOut, cover);
        return setOut.columnLines().stream()
                .filter(l -> l.has(frame))
                .map(line -> cap(definition, line, frame))
                .toList();
    }

    /** The frame that an end wall stands at. */
    private static int frame(SetOut setOut, WallCover cover) {
        boolean front = cover.face().wall() == Wall.FRONT;
        Optional<ColumnLine> lean = cover.face().leanTo();
        return front
                ? lean.map(ColumnLine::firstFrame).orElse(1)
                : lean.map(ColumnLine::lastFrame).orElse(setOut.frames());
    }

    /** From the lowest place to the highest that a column's cap leaves to no girt. */
    private static double[] cap(Definition definition, ColumnLine line, int frame) {
        double above = Math.max(PLATE, stand(definition).reachUp() + CLEAR);
        boolean butted = definition.shape().kneeJoint() == KneeJoint.BUTTED && !line.leanTo();
        double rafter = butted ? 0 : line.rafter(definition, frame).depth();
        double across = line.column(definition, frame).depth() + 2 * PLATE;
        double fall = across * Math.abs(line.roof().rise());
        double top = line.heightBelowRoof(rafter) + fall + PLATE;
        double low =
                top - PLATE - 2 * fall - line.roof().plumb(definition.plates().capThickness()) - PLATE;
        return new double[] {
            low - above, top + height(definition.envelope().walls().girts())
        };
    }

    /** How the rows stand: a channel has its back up, so that nothing lies in it. */
    public static RowStand stand(Definition definition) {
        Member girt = definition.envelope().walls().girts().member();
        return RowStand.of(girt, RowStand.of(girt, false).isChannel());
    }

    /** What a row takes of the wall's height. */
    private static double height(Girts girts) {
        return girts.member().width();
    }

    private static double highest(WallCover cover) {
        return cover.face().outline().stream().mapToDouble(p -> p.y()).max().orElseThrow();
    }

    /** From the lowest place to the highest that a lean-to's rafters, and the row between them, leave to no girt. */
    private static double[] taken(Definition definition, SetOut setOut, ColumnLine lean) {
        Girts girts = definition.envelope().walls().girts();
        double x = setOut.main(lean.side()).x();
        double out = girts.member().depth();
        double top = lean.roof().heightAt(x)
                + lean.roof().plumb(definition.envelope().purlins().member().depth());
        double rafter = 0;
        for (int frame = lean.firstFrame(); frame <= lean.lastFrame(); frame++) {
            rafter = Math.max(rafter, lean.rafter(definition, frame).depth());
        }
        double under = lean.roof().heightAt(x)
                - lean.roof().plumb(rafter)
                - out * Math.abs(lean.roof().rise());
        RowStand stand = stand(definition);
        return new double[] {
            under - PLATE - Math.max(PLATE, stand.reachUp()) - CLEAR,
            top + CLEAR + Math.max(height(girts), stand.reachDown())
        };
    }

    /** Rows in even spaces no wider than allowed; the upper end is one of them when it is asked for. */
    static List<Double> even(double low, double high, double spacing, boolean withHigh) {
        List<Double> rows = new ArrayList<>();
        if (high <= low) {
            return List.of();
        }
        int spaces = (int) Math.max(1, Math.ceil((high - low) / spacing - 1e-9));
        for (int i = 0; i < (withHigh ? spaces + 1 : spaces); i++) {
            rows.add(low + (high - low) * i / spaces);
        }
        return rows;
    }
}
