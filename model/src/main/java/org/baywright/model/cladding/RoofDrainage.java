package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.definition.Opening;
import org.baywright.model.definition.RoofWater;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RoofSlope;
import org.baywright.model.setout.RoofSlope.Top;
import org.baywright.model.setout.SlidingLeaf;
import org.baywright.model.setout.WallCover;
import org.baywright.model.setout.WallFace;

/**
 * Gutters along the eaves, and as many downpipes as their water asks for.
 *
 * @param shed the building
 * @param roofs the slopes with the ends of their sheets, those of the main building first
 */
record RoofDrainage(Shed shed, List<RoofRows> roofs) {
    /**
     * What a roof catches, m²: its plan area, and half its rise for driven rain.
     *
     * <p>@source AS/NZS 3500.3:2018 clause 3.4.3.2: Ac = Ah(1 + 0.5 tan θ)
     */
    static double catchment(double planM2, double rise) {
        return planM2 * (1 + 0.5 * rise);
    }

    /** Litres a second. @source AS/NZS 3500.3:2018: Q = Ac·I/3600 */
    static double flow(double catchmentM2, double rainfallMmPerH) {
        return catchmentM2 * rainfallMmPerH / 3600;
    }

    /** In the order of the roofs, main roofs first: what their gutters spill, those of lean-tos catch. */
    List<GutterRun> gutters() {
        List<GutterRun> gutters = new ArrayList<>();
        roofs.forEach(roof -> gutters.addAll(gutters(roof, List.copyOf(gutters))));
        return gutters;
    }

    private List<GutterRun> gutters(RoofRows roof, List<GutterRun> above) {
        List<GutterRun> gutters = new ArrayList<>();
        int first = roof.slope().firstFrame();
        for (int frame = first; frame < roof.slope().lastFrame(); frame++) {
            boolean ends = frame + 1 == roof.slope().lastFrame() || carriedOn(roof, frame + 1);
            if (carriedOn(roof, frame)) {
                first = frame + 1;
            } else if (ends) {
                gutters.add(gutter(roof, first, frame + 1, above));
                first = frame + 1;
            }
        }
        return gutters;
    }

    /** Whether a lean-to carries a main slope on along a bay, so that it has no gutter there. */
    private boolean carriedOn(RoofRows main, int bay) {
        return !main.slope().line().leanTo()
                && roofs.stream()
                        .anyMatch(r -> r.slope().top() == Top.MAIN_ROOF && below(r.slope(), main.slope(), bay));
    }

    private static boolean below(RoofSlope lean, RoofSlope main, int bay) {
        return lean.line().leanTo() && lean.side() == main.side() && lean.firstFrame() <= bay && bay < lean.lastFrame();
    }

    private double start(RoofRows roof, int frame) {
        return frame == roof.slope().firstFrame() ? roof.from() : shed.setOut().frameLine(frame);
    }

    private double end(RoofRows roof, int frame) {
        return frame == roof.slope().lastFrame() ? roof.to() : shed.setOut().frameLine(frame);
    }

    private GutterRun gutter(RoofRows roof, int first, int last, List<GutterRun> upper) {
        double from = start(roof, first);
        double to = end(roof, last);
        double caught =
                catchment(planM2(roof, to - from), Math.abs(roof.slope().roof().rise()));
        caught += roof.slope().top() == Top.MAIN_ROOF
                ? above(roof.slope())
                : spilt(upper, roof.slope().line());
        RoofWater water = shed.definition().envelope().roofWater();
        return new GutterRun(
                roof.slope(),
                edge(roof, from),
                edge(roof, to),
                caught,
                flow(caught, water.rainfallMmPerH()),
                pipes(roof, first, last, caught).stream()
                        .map(y -> edge(roof, y))
                        .toList());
    }

    /** What the pipes of main gutters spill on a lean-to's roof: those at its end frames bring water from past it too. */
    private double spilt(List<GutterRun> upper, ColumnLine lean) {
        return upper.stream()
                .flatMap(run -> run.falls().stream()
                        .filter(f -> run.leanToBelow(shed, f.at()).equals(Optional.of(lean))))
                .mapToDouble(GutterRun.Fall::catchmentM2)
                .sum();
    }

    /** The main roof that a lean-to carries on. */
    private double above(RoofSlope lean) {
        return roofs.stream()
                .filter(r -> !r.slope().line().leanTo() && r.slope().side() == lean.side())
                .filter(r -> r.slope().top() != Top.HIGH_EAVE || r.slope().eave() == lean.upper())
                .mapToDouble(r -> catchment(
                        planM2(r, end(r, lean.lastFrame()) - start(r, lean.firstFrame())),
                        Math.abs(r.slope().roof().rise())))
                .sum();
    }

    private static double planM2(RoofRows roof, double length) {
        double level =
                (roof.sheetHigh() - roof.sheetLow()) * roof.slope().roof().cosine();
        return level * length / 1e6;
    }

    /** The top of the gutter's back, under the ends of the sheets. */
    private Vec3 edge(RoofRows roof, double y) {
        Vec3 sheetEnd = roof.place(roof.sheetLow(), y, roof.sheetPlane());
        return new Vec3(roof.gutterBack(shed.definition(), shed.wallCovers()), y, sheetEnd.z());
    }

    private List<Double> pipes(RoofRows roof, int first, int last, double caughtM2) {
        double from = start(roof, first);
        double to = end(roof, last);
        RoofWater water = shed.definition().envelope().roofWater();
        PipeLimits limits = PipeLimits.of(water);
        double flowPerMm = flow(caughtM2, water.rainfallMmPerH()) / (to - from);
        return new Downpipes(
                        from,
                        to,
                        limits.mostGutter(caughtM2 / (to - from)),
                        limits.sideLs() / flowPerMm,
                        IntStream.rangeClosed(first, last)
                                .mapToObj(shed.setOut()::frameLine)
                                .toList(),
                        openings(roof),
                        openBays(roof))
                .places();
    }

    /** Ends along the building of the openings in the wall below a gutter, with the way of a sliding leaf. */
    private List<double[]> openings(RoofRows roof) {
        return shed.openings().stream()
                .filter(o -> !o.isWholeBay() && o.face().isBelow(roof.slope()))
                .filter(o -> o.head() > foot(roof, o))
                .map(RoofDrainage::inTheWay)
                .toList();
    }

    private static double[] inTheWay(OpeningPlace place) {
        SlidingLeaf leaf = new SlidingLeaf(place);
        return place.opening().type() == Opening.Type.SLIDING_DOOR
                ? along(place.face(), leaf.trackFrom(), leaf.trackTo())
                : along(place.face(), place.left(), place.right());
    }

    /** How far down a pipe in an opening's bay would come: to the roof of a lean-to there, or to the floor. */
    private double foot(RoofRows main, OpeningPlace opening) {
        double purlin = shed.definition().envelope().purlins().member().depth();
        return roofs.stream()
                .map(RoofRows::slope)
                .filter(lean -> !main.slope().line().leanTo()
                        && below(lean, main.slope(), opening.bay().bay()))
                .mapToDouble(lean -> lean.roof().heightAt(main.slope().line().x())
                        + lean.roof().plumb(purlin))
                .findFirst()
                .orElse(0);
    }

    /** Whether a pipe in a bay ends on a lean-to's roof, above all that opens in the wall. */
    private boolean overLeanTo(RoofRows main, int bay) {
        return !main.slope().line().leanTo() && roofs.stream().anyMatch(r -> below(r.slope(), main.slope(), bay));
    }

    /** Bays without a wall to hang a pipe on below a gutter, by their frame lines. */
    private List<double[]> openBays(RoofRows roof) {
        return shed.walls().stream()
                .filter(f -> f.isBelow(roof.slope()))
                .flatMap(f -> openBays(roof, f))
                .toList();
    }

    private Stream<double[]> openBays(RoofRows roof, WallFace face) {
        Set<WallFace.WallBay> sheeted = shed.wallCovers().stream()
                .filter(c -> c.face().equals(face))
                .map(WallCover::bay)
                .collect(Collectors.toSet());
        return face.bays().stream()
                .filter(b -> !sheeted.contains(b) && !overLeanTo(roof, b.bay()))
                .map(b -> along(face, b.from(), b.to()));
    }

    private static double[] along(WallFace face, double left, double right) {
        double a = face.toWorld(left, 0, 0).y();
        double b = face.toWorld(right, 0, 0).y();
        return new double[] {Math.min(a, b), Math.max(a, b)};
    }
}
