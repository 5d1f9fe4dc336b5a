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
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RoofSlope;

/**
 * The sheets of each slope, side by side along the building and from end to end up the slope.
 *
 * @param definition what was asked for
 */
record RoofSheets(Definition definition) {
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
                List.of(),
                sheets(rows, width, height));
    }

    private List<Surface.Sheet> sheets(RoofRows rows, double width, double height) {
        Sheeting sheeting = definition.envelope().sheeting();
        SheetProfile profile = sheeting.roof().profile();
        List<Double> supports = rows.at().stream().map(a -> a - rows.sheetLow()).toList();
        double lap = lap(rows.slope().roof().pitchDeg());
        List<double[]> lengths = SheetRun.lengths(0, height, supports, lap, sheeting.longest());
        int every = sheeting.roof().translucentEvery();
        List<Surface.Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < SheetRun.count(width, profile); i++) {
            boolean light = every > 0 && (i + 1) % every == 0;
            double left = i * profile.cover();
            for (double[] length : lengths) {
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
