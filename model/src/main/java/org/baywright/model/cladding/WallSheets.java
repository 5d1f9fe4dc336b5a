package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.GirtRows;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RoofBreak;
import org.baywright.model.setout.RoofSlope;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.WallCover;
import org.baywright.model.setout.WallFace;

/**
 * The sheets of a run of sheeted bays: upright, side by side, from below the floor to under the roof.
 *
 * @param definition what was asked for
 * @param setOut lines and levels
 * @param run the bays
 * @param openings of the wall, those in open bays left out
 */
record WallSheets(Definition definition, SetOut setOut, WallRun run, List<OpeningPlace> openings) {
    /** Left under the roof sheet. @source 10 to 15 under the roof sheet: common practice */
    private static final double UNDER_ROOF = 12;

    /** Left over a lean-to's roof for its apron. Common practice, no source. */
    private static final double OVER_ROOF = 50;

    /** A sheet under a rake is cut on site from one so much longer. @source 20 to 50: common practice */
    private static final double RAKE_TRIM = 20;

    /** A sheet over the one below it. @source end laps 150: common practice, from memory */
    private static final double END_LAP = 150;

    private static final int MOST_BANDS = 4;

    /** A shorter piece over or under an opening is a flashing's business. */
    private static final double LEAST_PIECE = 30;

    /** From the string line to the plane that wall sheets rest on. */
    static double plane(Definition definition) {
        var girts = definition.envelope().walls().girts();
        return girts.flush() ? 0 : girts.member().depth();
    }

    private WallFace face() {
        return run.face();
    }

    /** What the surface is called. */
    private String name() {
        WallFace face = face();
        String wall = face.wall().name().toLowerCase(Locale.ROOT);
        String of = face.leanTo()
                .map(l -> (l.side() == Side.LEFT ? "left" : "right") + " lean-to "
                        + (face.wall().isEnd() ? wall + " wall" : "wall") + ", line " + l.letter())
                .orElse(wall + " wall");
        return run.isWhole()
                ? of
                : of + ", bays " + run.first().bay().bay() + " to "
                        + run.last().bay().bay();
    }

    Surface surface() {
        double low = low();
        List<Vec2> outline = new ArrayList<>(List.of(new Vec2(from(), low), new Vec2(to(), low)));
        TreeSet<Double> turns = new TreeSet<>(List.of(from(), to()));
        turns().stream()
                .filter(u -> face().wall().isEnd() && u > from() + 1 && u < to() - 1 && isTurn(u))
                .forEach(turns::add);
        turns.descendingSet().forEach(u -> outline.add(new Vec2(u, top(u))));
        List<List<Vec2>> holes = openings.stream().map(this::hole).toList();
        Placement axes = face().axes();
        Vec3 origin = axes.origin().plus(axes.width().times(plane(definition)));
        SheetProfile profile = definition.envelope().sheeting().walls().profile();
        return new Surface(
                name(),
                Surface.Role.WALL,
                profile,
                Placement.of(origin, axes.along(), axes.depth()),
                outline,
                holes,
                sheets(profile));
    }

    /** A ridge, or the string line where a lean-to that carries the roof on falls another way. */
    private boolean isTurn(double u) {
        double bend = top(u) - (top(u - 1) + top(u + 1)) / 2;
        return Math.abs(bend) > 1e-6;
    }

    private double from() {
        return run.startsAtCorner() ? -corner(true) : run.start(definition, setOut);
    }

    private double to() {
        return run.endsAtCorner() ? face().length() + corner(false) : run.end(definition, setOut);
    }

    /** Walls meet in the planes of their sheets; a lean-to's end wall starts at the plane of the main wall's sheets. */
    private double corner(boolean left) {
        boolean main = face().wall().isEnd()
                && face().leanTo()
                        .map(l -> (l.side() == Side.RIGHT)
                                == left
                                == face().axes().along().x() > 0)
                        .orElse(false);
        return main ? -plane(definition) : plane(definition);
    }

    private double low() {
        return run.first().low() > 0
                ? run.first().low() + OVER_ROOF
                : -definition.envelope().sheeting().walls().belowFloor();
    }

    /** The upper edge under the roof sheets at a place along the wall; the roof runs on past the string lines. */
    private double top(double u) {
        double length = face().length();
        double inside = Math.max(0, Math.min(length, u));
        double height = face().heightAt(inside) + (u - inside) * slope(inside < length / 2);
        if (!face().wall().isEnd()) {
            height += lowestFall();
        }
        double purlin = definition.envelope().purlins().member().depth();
        return carriedOn(u, height + purlin / cosine()) - UNDER_ROOF;
    }

    /** Past a main wall's end the sheets of a lean-to that carries the main roof on there; they break where they meet. */
    private double carriedOn(double u, double mainRoof) {
        if (u >= 0 && u <= face().length()) {
            return mainRoof;
        }
        double x = face().toWorld(u, 0, 0).x();
        double purlin = definition.envelope().purlins().member().depth();
        return carrier(x < 0 ? Side.LEFT : Side.RIGHT)
                .map(lean -> {
                    double there = lean.roof().heightAt(x) + lean.roof().plumb(purlin);
                    return breakAt(lean).flatter() ? Math.max(mainRoof, there) : Math.min(mainRoof, there);
                })
                .orElse(mainRoof);
    }

    private RoofBreak breakAt(ColumnLine lean) {
        return RoofBreak.of(definition, setOut.main(lean.side()), lean);
    }

    /** The lean-to that carries the main roof on beyond an end of a main end wall. */
    private Optional<ColumnLine> carrier(Side side) {
        if (!face().wall().isEnd() || !face().isMain()) {
            return Optional.empty();
        }
        int frame = face().wall() == Wall.FRONT ? 1 : setOut.frames();
        return RoofSlope.of(definition, setOut).stream()
                .filter(s -> s.top() == RoofSlope.Top.MAIN_ROOF && s.side() == side)
                .map(RoofSlope::line)
                .filter(line -> line.has(frame))
                .findFirst();
    }

    /** Places along the wall where its upper edge may turn. */
    private List<Double> turns() {
        List<Double> turns =
                new ArrayList<>(face().outline().stream().map(Vec2::x).toList());
        for (Side side : Side.values()) {
            boolean atLeft = (side == Side.LEFT) == (face().wall() == Wall.FRONT);
            carrier(side)
                    .map(lean -> breakAt(lean).out())
                    .ifPresent(out -> turns.add(atLeft ? -out : face().length() + out));
        }
        return turns;
    }

    /** Rise of the top edge along u at an end of the wall. */
    private double slope(boolean atLeft) {
        double d = face().length() / 100;
        double at = atLeft ? 0 : face().length() - d;
        return face().wall().isEnd() ? (face().heightAt(at + d) - face().heightAt(at)) / d : 0;
    }

    /** In a side wall, what the roof falls from the string line to the outside of the wall sheets; never a rise. */
    private double lowestFall() {
        var line = face().leanTo().orElseGet(() -> setOut.main(sideOf()));
        double out = plane(definition)
                + definition.envelope().sheeting().walls().profile().depth();
        double fall = -line.riseInward() * out;
        return Math.min(fall, -line.riseInward() * plane(definition));
    }

    private Side sideOf() {
        return face().wall() == Wall.LEFT ? Side.LEFT : Side.RIGHT;
    }

    private double cosine() {
        return face().leanTo()
                .map(l -> l.roof().cosine())
                .orElseGet(() -> setOut.main(Side.LEFT).roof().cosine());
    }

    /** The clear opening; one that reaches the floor cuts the sheets down to their lower ends. */
    private List<Vec2> hole(OpeningPlace opening) {
        double low = opening.sill() > 0 ? Math.max(opening.sill(), low()) : low();
        return List.of(
                new Vec2(opening.left(), low),
                new Vec2(opening.right(), low),
                new Vec2(opening.right(), opening.head()),
                new Vec2(opening.left(), opening.head()));
    }

    private List<Surface.Sheet> sheets(SheetProfile profile) {
        int n = SheetRun.count(to() - from(), profile);
        List<Double> tops = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            tops.add(highest(from() + i * profile.cover(), from() + (i + 1) * profile.cover()));
        }
        boolean raked = face().wall().isEnd();
        List<Double> cut = raked && definition.envelope().sheeting().walls().banded() ? banded(tops) : tops;
        List<Surface.Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double left = from() + i * profile.cover();
            double top = cut.get(i) + (raked ? RAKE_TRIM : 0);
            pieces(left, left + profile.cover(), top, sheets);
        }
        return sheets;
    }

    /** The highest point of the upper edge that a sheet must reach. */
    private double highest(double left, double right) {
        TreeSet<Double> at = new TreeSet<>(List.of(left, Math.min(right, to())));
        turns().stream().filter(u -> u > left && u < right).forEach(at::add);
        return at.stream().mapToDouble(this::top).max().orElseThrow();
    }

    /** At most four lengths: each sheet takes the next of four even steps up. */
    static List<Double> banded(List<Double> tops) {
        double low = tops.stream().mapToDouble(t -> t).min().orElseThrow();
        double high = tops.stream().mapToDouble(t -> t).max().orElseThrow();
        double step = (high - low) / MOST_BANDS;
        return tops.stream()
                .map(t -> {
                    double band = step > 0 ? Math.max(1, Math.ceil((t - low) / step - 1e-9)) : 0;
                    double limit = low + band * step;
                    return tops.stream()
                            .filter(o -> o <= limit + 1e-6)
                            .max(Comparator.naturalOrder())
                            .orElse(t);
                })
                .toList();
    }

    /** A sheet, or what is left of it above and below openings that take its whole width. */
    private void pieces(double left, double right, double top, List<Surface.Sheet> sheets) {
        double low = low();
        List<OpeningPlace> whole = openings.stream()
                .filter(o -> o.left() <= left + 1e-6 && o.right() >= Math.min(right, to()) - 1e-6)
                .sorted(Comparator.comparingDouble(OpeningPlace::sill))
                .toList();
        for (OpeningPlace opening : whole) {
            piece(left, right, low, opening.sill() > 0 ? opening.sill() : low, sheets);
            low = opening.head();
        }
        piece(left, right, low, top, sheets);
    }

    /** One sheet, or several lapped over girts where one would be longer than can be carried. */
    private void piece(double left, double right, double low, double high, List<Surface.Sheet> sheets) {
        if (high - low > LEAST_PIECE) {
            double longest = definition.envelope().sheeting().longest();
            List<Double> rows = high - low > longest ? rows((left + Math.min(right, to())) / 2) : List.of();
            SheetRun.lengths(low, high, rows, END_LAP, longest)
                    .forEach(l -> sheets.add(new Surface.Sheet("", left, right, l[0], l[1], false)));
        }
    }

    /** The heights of the girts at a place along the wall. */
    private List<Double> rows(double u) {
        WallFace.WallBay bay = face().bays().stream()
                .filter(b -> u <= b.to())
                .findFirst()
                .orElseGet(() -> run.last().bay());
        return GirtRows.of(
                        definition,
                        setOut,
                        new WallCover(face(), bay, run.first().low()))
                .at();
    }
}
