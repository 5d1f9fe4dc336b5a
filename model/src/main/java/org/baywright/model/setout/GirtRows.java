package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Girts;
import org.baywright.model.definition.KneeJoint;
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

    /** Between a row and a lean-to's steel. Common practice, no source. */
    private static final double CLEAR = 15;

    /** A cleat over the row, and the plate under a rafter's end. Common practice, no source. */
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
        double low =
                cover.low() > 0 ? cover.low() + OVER_START + height(girts) : Math.max(girts.fromFloor(), height(girts));
        double high = highest(cover);
        List<Double> rows = new ArrayList<>();
        Optional<ColumnLine> lean = WallCover.leanToBefore(setOut, cover.face(), cover.bay());
        if (cover.low() == 0 && lean.isPresent() && !cover.face().wall().isEnd()) {
            double[] taken = taken(definition, lean.get(), cover, girts);
            rows.addAll(even(low, taken[0], girts.spacing(), true));
            rows.addAll(even(taken[1], high, girts.spacing(), false));
        } else {
            rows.addAll(even(low, high, girts.spacing(), cover.face().wall().isEnd()));
        }
        return new GirtRows(
                cover,
                rows.stream().filter(r -> r <= high - UNDER_ROOF || r == low).toList());
    }

    /** A row goes under the plates on top of the columns, which stand out past the string line. */
    private static double clearOfCaps(Definition definition, SetOut setOut, WallCover cover, double row) {
        double height = height(definition.envelope().walls().girts());
        double at = row;
        List<ColumnLine> lines = cover.face().wall().isEnd()
                ? setOut.columnLines()
                : List.of(cover.face().leanTo().orElseGet(() -> setOut.main(side(cover))));
        for (ColumnLine line : lines) {
            boolean butted = definition.shape().kneeJoint() == KneeJoint.BUTTED && !line.leanTo();
            double rafter =
                    butted ? 0 : line.rafter(definition, line.firstFrame()).depth();
            double across = line.column(definition, line.firstFrame()).depth() + 2 * PLATE;
            double fall = across * Math.abs(line.roof().rise());
            double top = line.heightBelowRoof(rafter) + fall;
            double low = top - 2 * fall - line.roof().plumb(definition.plates().capThickness()) - PLATE;
            if (at + PLATE > low && at - height < top) {
                at = low - PLATE;
            }
        }
        return at;
    }

    private static Side side(WallCover cover) {
        return cover.face().wall() == Wall.LEFT ? Side.LEFT : Side.RIGHT;
    }

    /** What a row takes of the wall's height. */
    private static double height(Girts girts) {
        return girts.member().width();
    }

    private static double highest(WallCover cover) {
        return cover.face().outline().stream().mapToDouble(p -> p.y()).max().orElseThrow();
    }

    /** From the lowest place to the highest that a lean-to's rafters, and the row between them, leave to no girt. */
    private static double[] taken(Definition definition, ColumnLine lean, WallCover cover, Girts girts) {
        double x = cover.face().axes().origin().x();
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
        return new double[] {under - PLATE - CLEAR, top + CLEAR + height(girts)};
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
