package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Envelope;
import org.baywright.model.definition.Girts;
import org.baywright.model.definition.KneeJoint;
import org.baywright.model.definition.Purlins;
import org.baywright.model.geometry.Vec3;

/**
 * The rows of purlins on one slope and the ends of the sheets that lie on them.
 *
 * <p>All distances run up the slope on the top of rafter steel, from the outside face at the eave, and are carried
 * square to the slope from there to the plane of the sheets. A plumb line at the eave or the ridge meets the plane of
 * the sheets depth · tan θ further up the slope.
 *
 * @param slope the slope
 * @param sheetLow lower end of the sheets
 * @param sheetHigh upper end of the sheets
 * @param from where purlins and sheets start along the building
 * @param to where they end along the building
 * @param at the line of each row, from the eave up
 * @param stand how every row stands, save the lowest
 * @param lowest how the lowest row stands
 */
public record RoofRows(
        RoofSlope slope,
        double sheetLow,
        double sheetHigh,
        double from,
        double to,
        List<Double> at,
        RowStand stand,
        RowStand lowest) {
    /** Between a row and what it must clear. Common practice, no source. */
    private static final double CLEAR = 5;

    /** From a row's line to the end of the rafter that its cleat stands on. Common practice, no source. */
    private static final double STANDING = 25;

    /** Room for a cleat on either side of a row's line. Common practice, no source. */
    private static final double CLEAT = 10;

    /** A sheet passes the row at its end by no less. @source eave purlin 50 to 100 inside the sheet: common practice */
    private static final double LEAST_COVER = 50;

    /** Left between a lean-to's sheets and the sheets of the wall that they meet. Common practice, no source. */
    private static final double WALL_GAP = 15;

    /** Rows closer than this become one. Common practice, no source. */
    private static final double LEAST_SPACE = 200;

    /** Copies the list. */
    public RoofRows {
        at = List.copyOf(at);
        if (at.isEmpty() || !(sheetLow < sheetHigh) || !(from < to)) {
            throw new IllegalArgumentException("a slope has sheets and rows under them");
        }
    }

    /** The rows of every slope, in the order of {@link RoofSlope#of}. */
    public static List<RoofRows> of(Definition definition, SetOut setOut) {
        List<RoofSlope> slopes = RoofSlope.of(definition, setOut);
        return slopes.stream()
                .map(slope -> new Setter(definition, setOut, slopes, slope).rows())
                .toList();
    }

    /** A place: up the slope, along the building, and above the top of rafter steel, square to the slope. */
    public Vec3 place(double up, double y, double above) {
        RoofLine roof = slope.roof();
        double x = slope.eave() + slope.line().inward() * up * roof.cosine();
        return new Vec3(x, y, roof.heightAt(x)).plus(roof.outward().times(above));
    }

    /** Across the span, the back of the gutter: on what carries it, or before the sheets of the wall below. */
    public double gutterBack(Definition definition, List<WallCover> covers) {
        boolean sheeted = covers.stream().anyMatch(c -> c.face().isBelow(slope));
        double before =
                sheeted ? definition.envelope().sheeting().walls().profile().depth() : 0;
        double into = definition.envelope().sheeting().roof().intoGutter();
        double in = into * slope.roof().cosine() - before;
        return place(sheetLow, 0, sheetPlane()).x() + slope.line().inward() * in;
    }

    /** Up the slope. */
    public Vec3 up() {
        int inward = slope.line().inward();
        return new Vec3(inward, 0, inward * slope.roof().rise()).unit();
    }

    /** Square to the slope from the top of rafter steel to the plane that the sheets lie on. */
    public double sheetPlane() {
        return stand.member().depth();
    }

    /** How a row stands, counted from the eave. */
    public RowStand standOf(int row) {
        return row == 0 ? lowest : stand;
    }

    /** Where rafters, or butted columns, begin to bear cleats: rows below hang on brackets. */
    public static double supportLow(Definition definition, RoofSlope slope) {
        return CLEAT - Setter.overhang(definition, slope) / slope.roof().cosine();
    }

    /**
     * The rows between two end rows, both included.
     *
     * <p>Spaces = ⌈(distance − 2·end)/interior⌉ + 2, then every space is shortened alike, so that end spaces stay
     * closer in the same measure. @source common practice; end span at most two thirds: NZ roofing code of practice
     */
    static List<Double> spread(double low, double high, double interior, double end) {
        double reach = high - low;
        if (reach < LEAST_SPACE) {
            return List.of((low + high) / 2);
        }
        double first = Math.min(interior, end);
        int spaces = (int) Math.ceil((reach - 2 * first) / interior - 1e-9) + 2;
        List<Double> rows = new ArrayList<>(List.of(low));
        if (reach <= 2 * first + 1e-9) {
            int equal = reach <= first + 1e-9 ? 1 : 2;
            if (equal == 2) {
                rows.add((low + high) / 2);
            }
        } else {
            double share = reach / (2 * first + (spaces - 2) * interior);
            for (int i = 0; i < spaces - 1; i++) {
                rows.add(low + share * (first + i * interior));
            }
        }
        rows.add(high);
        return rows;
    }

    /** Works out the rows of one slope. */
    private record Setter(Definition definition, SetOut setOut, List<RoofSlope> slopes, RoofSlope slope) {
        RoofRows rows() {
            Purlins purlins = definition.envelope().purlins();
            RowStand stand = RowStand.of(purlins.member(), false);
            double sheetLow = sheetLow();
            double sheetHigh = sheetHigh();
            RowStand lowest = RowStand.of(purlins.member(), hangs(stand, lowRow(stand, sheetLow)));
            double low = clearOfKnees(lowest, lowRow(lowest, sheetLow));
            double high = highRow(stand, sheetHigh);
            List<Double> at = spread(low, high, purlins.spacing(), purlins.endSpacing());
            return new RoofRows(
                    slope,
                    sheetLow,
                    sheetHigh,
                    end(slope.firstFrame(), -1),
                    end(slope.lastFrame(), 1),
                    at,
                    stand,
                    lowest);
        }

        private boolean hangs(RowStand stand, double row) {
            return stand.isChannel() && row < supportLow(definition, slope);
        }

        private double rise() {
            return Math.abs(slope.roof().rise());
        }

        private double onSlope(double level) {
            return level / slope.roof().cosine();
        }

        /** What a plumb line gains up the slope between the rafter's top and the plane of the sheets. */
        private double lean() {
            return definition.envelope().purlins().member().depth() * rise();
        }

        static double overhang(Definition definition, RoofSlope slope) {
            boolean butted = definition.shape().kneeJoint() == KneeJoint.BUTTED;
            return butted && !slope.line().leanTo() ? 0 : definition.plates().rafterOverhang();
        }

        /** From the column's outside face to the outer face of what carries gutter and wall sheets. */
        private double face() {
            return Math.max(girtsOut(definition), overhang(definition, slope));
        }

        /** @source sheet = (run + f)/cos θ + into gutter − ridge gap: common practice */
        private double sheetLow() {
            return lean()
                    - onSlope(face())
                    - definition.envelope().sheeting().roof().intoGutter();
        }

        private double sheetHigh() {
            Envelope envelope = definition.envelope();
            double top = lean() + onSlope(slope.run());
            return switch (slope.top()) {
                case RIDGE -> top - envelope.sheeting().roof().ridgeGap();
                case HIGH_EAVE ->
                    top + onSlope(face()) + envelope.sheeting().roof().intoGutter();
                case WALL -> top - onSlope(girtsOut(definition)) - WALL_GAP;
                case MAIN_ROOF -> top - onSlope(breakOut());
            };
        }

        /** The top of a knee plate falls short of the roof plane, so a cleat over it alone is moved up onto the rafter. */
        private double clearOfKnees(RowStand stand, double row) {
            double plate = definition.plates().kneeThickness();
            boolean plated = definition.shape().kneeJoint() == KneeJoint.BUTTED
                    && !slope.line().leanTo()
                    && plate > 0;
            if (!plated) {
                return row;
            }
            double cleatLow = stand.isCleatAbove() ? 0 : -CLEAT;
            return IntStream.rangeClosed(slope.firstFrame(), slope.lastFrame())
                    .mapToDouble(f -> slope.line().column(definition, f).depth())
                    .sorted()
                    .reduce(row, (at, depth) -> {
                        double from = onSlope(depth);
                        double to = onSlope(depth + plate);
                        double low = at + cleatLow;
                        return low > from - 1 && low + CLEAT < to + 1 ? to - cleatLow : at;
                    });
        }

        /** How far outside the main string line a lean-to's sheets meet those of the roof that it carries on. */
        private double breakOut() {
            return RoofBreak.of(definition, setOut.main(slope.side()), slope.line())
                    .out();
        }

        /** As asked inside the sheet's end, or further in: its flange clears wall sheets and a roof carried on below. */
        private double lowRow(RowStand stand, double sheetLow) {
            double asked = sheetLow + definition.envelope().purlins().fromEave();
            double outer = carriedOn() ? 0 : -onSlope(face());
            double lapped = stand.isLapped() ? stand.web() : 0;
            return Math.max(asked, outer + stand.roomBelow(rise()) + lapped + CLEAR);
        }

        private boolean carriedOn() {
            return slopes.stream()
                    .anyMatch(s -> s.top() == RoofSlope.Top.MAIN_ROOF
                            && s.side() == slope.side()
                            && !slope.line().leanTo());
        }

        /** As asked from the upper edge, or lower: it stands on the rafter, under the sheet, clear of what is above. */
        private double highRow(RowStand stand, double sheetHigh) {
            double steel = onSlope(slope.run());
            double edge = switch (slope.top()) {
                case RIDGE, MAIN_ROOF -> steel;
                case HIGH_EAVE -> steel + onSlope(face());
                case WALL -> steel - onSlope(girtsOut(definition));
            };
            double rafterEnd = steel
                    + switch (slope.top()) {
                        case HIGH_EAVE -> onSlope(overhang(definition, slope));
                        case RIDGE -> -onSlope(definition.plates().apexThickness());
                        case WALL, MAIN_ROOF -> -onSlope(definition.plates().leanToGap());
                    };
            double asked = edge - definition.envelope().purlins().fromRidge();
            double clear = edge - stand.roomAbove(rise()) - CLEAR;
            return Math.min(Math.min(asked, clear), Math.min(rafterEnd - STANDING, sheetHigh - LEAST_COVER));
        }

        /** Past the end wall's girts, and at least over the whole of the rafter. */
        private double end(int frame, int outward) {
            double half = slope.line().rafter(definition, frame).width() / 2;
            double rafter = setOut.rafterMiddle(definition, slope.line(), frame) + outward * half;
            double wall = setOut.frameLine(frame) + outward * girtsOut(definition);
            return outward < 0 ? Math.min(rafter, wall) : Math.max(rafter, wall);
        }

        private static double girtsOut(Definition definition) {
            Girts girts = definition.envelope().walls().girts();
            return girts.flush() ? 0 : girts.member().depth();
        }
    }
}
