package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Sheeting;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RoofBreak;
import org.baywright.model.setout.RoofLine;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RoofSlope;
import org.baywright.model.setout.SetOut;

/**
 * The sheets of each slope, side by side along the building and from end to end up the slope.
 *
 * <p>Where a flatter lean-to carries a slope on, the slope's sheets end at the lean-to's; elsewhere they run into the
 * gutter. What they leave there is a hole of the surface.
 *
 * @param definition what was asked for
 * @param setOut lines and levels
 * @param roofs all slopes
 */
record RoofSheets(Definition definition, SetOut setOut, List<RoofRows> roofs) {
    /** The roof runs so far past the sheets of the end walls. Common practice, no source. */
    private static final double PAST_WALL = 10;

    /** End laps by pitch. @source 150, or 200 with sealant below 10 degrees: common practice, from memory */
    private static final double LAP = 150;

    private static final double LAP_FLAT = 200;
    private static final double FLAT_DEG = 10;

    /** What a sheet laps over another at a pitch. */
    static double lap(double pitchDeg) {
        return pitchDeg < FLAT_DEG ? LAP_FLAT : LAP;
    }

    /** How far the roof runs past the purlins' ends. */
    private double beyond() {
        return definition.envelope().sheeting().walls().profile().depth() + PAST_WALL;
    }

    Surface surface(RoofRows rows, String name) {
        Sheeting sheeting = definition.envelope().sheeting();
        boolean left = rows.slope().side() == Side.LEFT;
        double from = rows.from() - beyond();
        double to = rows.to() + beyond();
        // Seen from outside with the slope upward, the left slope runs from the rear to the front.
        Vec3 u = left ? Vec3.ALONG.negated() : Vec3.ALONG;
        Vec3 origin = rows.place(rows.sheetLow(), left ? to : from, rows.sheetPlane());
        double width = to - from;
        double height = rows.sheetHigh() - rows.sheetLow();
        return new Surface(
                name,
                Surface.Role.ROOF,
                sheeting.roof().profile(),
                Placement.of(origin, u, rows.up()),
                List.of(new Vec2(0, 0), new Vec2(width, 0), new Vec2(width, height), new Vec2(0, height)),
                cuts(rows, width),
                sheets(rows, width, height));
    }

    /** Along the building, a slope with what runs past its ends. */
    private double[] reach(RoofRows rows) {
        return new double[] {rows.from() - beyond(), rows.to() + beyond()};
    }

    /** What flatter lean-tos that carry a slope on leave out of it, along its lower edge. */
    private List<List<Vec2>> cuts(RoofRows rows, double width) {
        List<List<Vec2>> cuts = new ArrayList<>();
        for (RoofRows lean : roofs) {
            RoofSlope below = lean.slope();
            boolean on = below.top() == RoofSlope.Top.MAIN_ROOF
                    && below.side() == rows.slope().side()
                    && !rows.slope().line().leanTo();
            if (on
                    && RoofBreak.of(definition, rows.slope().line(), below.line())
                            .flatter()) {
                double high = cutHeight(rows, lean);
                if (high <= 0) {
                    // The sheets end before they reach the lean-to's.
                    continue;
                }
                double[] all = reach(rows);
                double[] part = reach(lean);
                double from = Math.max(0, part[0] - all[0]);
                double to = Math.min(width, part[1] - all[0]);
                boolean left = rows.slope().side() == Side.LEFT;
                double u0 = left ? width - to : from;
                double u1 = left ? width - from : to;
                cuts.add(List.of(new Vec2(u0, 0), new Vec2(u1, 0), new Vec2(u1, high), new Vec2(u0, high)));
            }
        }
        return cuts;
    }

    /** From a slope's lower edge up to where its plane meets that of a lean-to. */
    private double cutHeight(RoofRows rows, RoofRows lean) {
        RoofLine roof = rows.slope().roof();
        double out = RoofBreak.of(definition, rows.slope().line(), lean.slope().line())
                .out();
        return rows.sheetPlane() * Math.abs(roof.rise()) - out / roof.cosine() - rows.sheetLow();
    }

    private List<Surface.Sheet> sheets(RoofRows rows, double width, double height) {
        Sheeting sheeting = definition.envelope().sheeting();
        SheetProfile profile = sheeting.roof().profile();
        List<Double> supports = rows.at().stream().map(a -> a - rows.sheetLow()).toList();
        double lap = lap(rows.slope().roof().pitchDeg());
        List<List<Vec2>> cuts = cuts(rows, width);
        int every = sheeting.roof().translucentEvery();
        List<Surface.Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < SheetRun.count(width, profile); i++) {
            boolean light = every > 0 && (i + 1) % every == 0;
            double left = i * profile.cover();
            double right = Math.min(width, left + profile.cover());
            double low = cuts.stream()
                    .filter(c -> c.get(0).x() <= left + 1e-6 && c.get(1).x() >= right - 1e-6)
                    .mapToDouble(c -> c.get(2).y())
                    .findFirst()
                    .orElse(0);
            for (double[] length : SheetRun.lengths(low, height, supports, lap, sheeting.longest())) {
                sheets.add(new Surface.Sheet("", left, left + profile.cover(), length[0], length[1], light));
            }
        }
        return sheets;
    }

    /** What a slope is called. */
    static String name(RoofSlope slope) {
        String side = slope.side() == Side.LEFT ? "left" : "right";
        String line = slope.line().leanTo()
                ? side + " lean-to roof, line " + slope.line().letter()
                : side + " roof";
        return slope.top() == RoofSlope.Top.HIGH_EAVE ? "roof" : line;
    }
}
