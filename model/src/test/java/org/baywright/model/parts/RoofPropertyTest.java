package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Purlins;
import org.baywright.model.definition.Seeds;
import org.baywright.model.geometry.Clearance;
import org.baywright.model.geometry.Convex;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RoofSlope;
import org.baywright.model.setout.RowStand;

/** Purlins carry the sheets and rest on the rafters, whatever the shed; measured on the solids. */
class RoofPropertyTest {
    private static final double TOLERANCE = 0.1;

    /** What is further apart than this does not meet, mm. */
    private static final double NEAR = 3;

    @Provide
    Arbitrary<Definition> sheds() {
        return RoofSheds.any();
    }

    /** One piece where it stands. */
    private record Stood(Part part, Place place, List<Convex> lumps, DoubleSummaryStatistics[] box) {
        Stood(Part part, Place place) {
            this(part, place, Convex.of(part.solid(), place.placement()));
        }

        private Stood(Part part, Place place, List<Convex> lumps) {
            this(part, place, lumps, new DoubleSummaryStatistics[] {
                new DoubleSummaryStatistics(), new DoubleSummaryStatistics(), new DoubleSummaryStatistics()
            });
            for (Convex lump : lumps) {
                for (Vec3 corner : lump.corners()) {
                    box[0].accept(corner.x());
                    box[1].accept(corner.y());
                    box[2].accept(corner.z());
                }
            }
        }

        static Stream<Stood> of(Shed shed, PartKind... kinds) {
            return Stream.of(kinds)
                    .flatMap(k -> shed.parts(k).stream())
                    .flatMap(p -> p.places().stream().map(at -> new Stood(p, at)));
        }

        private DoubleStream corners(ToDoubleFunction<Vec3> of) {
            return lumps.stream().flatMap(c -> c.corners().stream()).mapToDouble(of);
        }

        double from() {
            return box[1].getMin();
        }

        double to() {
            return box[1].getMax();
        }

        /** Lies on this slope: its lowest corner touches the top of rafter steel. */
        private static double middle(RoofRows rows, int row) {
            RowStand stand = rows.standOf(row);
            return rows.place(rows.at().get(row) + stand.centroidUp(), 0, stand.centroidHeight())
                    .x();
        }

        /** Whether it is one of a slope's rows; slopes in one plane have rows of their own. */
        boolean isOn(RoofRows rows) {
            double low = corners(rows.slope().roof().plane()::distance).min().orElseThrow();
            double x = corners(Vec3::x).average().orElseThrow();
            double first = middle(rows, 0);
            double last = middle(rows, rows.at().size() - 1);
            boolean between = x > Math.min(first, last) - NEAR_ROW && x < Math.max(first, last) + NEAR_ROW;
            return Math.abs(low) < 1e-6 && between;
        }

        double clearance(Stood other) {
            return lumps.stream()
                    .flatMap(a -> other.lumps.stream().map(b -> Clearance.between(a, b)))
                    .min(Comparator.naturalOrder())
                    .orElseThrow();
        }

        double overlap(Stood other) {
            return lumps.stream()
                    .flatMap(a -> other.lumps.stream().map(b -> Clearance.overlap(a, b)))
                    .max(Comparator.naturalOrder())
                    .orElseThrow();
        }

        @Override
        public String toString() {
            return part.mark() + " " + place;
        }

        boolean near(Stood other) {
            return IntStream.range(0, 3)
                    .allMatch(i -> box[i].getMin() < other.box[i].getMax() + NEAR
                            && other.box[i].getMin() < box[i].getMax() + NEAR);
        }
    }

    /** The corners of a section lie evenly about its middle to this. */
    private static final double NEAR_ROW = 60;

    /** Source: greatest spacings and first offsets as the definition asks for them. */
    @Property(tries = 40, seed = Seeds.SHEDS)
    void spacesAndOffsetsAreWithinTheirLimits(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        Purlins purlins = definition.envelope().purlins();
        for (RoofRows rows : RoofRows.of(definition, shed.setOut())) {
            List<Double> at = rows.at();
            for (int i = 1; i < at.size(); i++) {
                boolean end = i == 1 || i == at.size() - 1;
                double space = at.get(i) - at.get(i - 1);
                double most = end ? Math.min(purlins.endSpacing(), purlins.spacing()) : purlins.spacing();
                assertTrue(space > 0 && space <= most + 1e-6, () -> space + " over " + most);
            }
            double low = at.get(0) - rows.sheetLow();
            double high = rows.sheetHigh() - at.get(at.size() - 1);
            assertTrue(low >= purlins.fromEave() - 1e-6 && high >= 50 - 1e-6, () -> low + " and " + high);
            double steel = rows.slope().run() / rows.slope().roof().cosine();
            if (rows.slope().top() == RoofSlope.Top.RIDGE) {
                assertTrue(at.get(at.size() - 1) <= steel - purlins.fromRidge() + 1e-6);
            }
        }
    }

    /** The eave row lies as far in as asked, or just clears the plane of the wall sheets, or of a roof carried on. */
    @Property(tries = 25, seed = Seeds.SHEDS)
    void eaveRowIsAsAskedOrJustClearOfTheWall(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        List<RoofRows> all = RoofRows.of(definition, shed.setOut());
        for (RoofRows rows : all) {
            double asked = rows.sheetLow() + definition.envelope().purlins().fromEave();
            if (rows.at().size() < 2 || rows.at().get(0) < asked + 1e-6) {
                continue;
            }
            int inward = rows.slope().line().inward();
            double girts = definition.envelope().walls().girts().flush()
                    ? 0
                    : definition.envelope().walls().girts().member().depth();
            boolean butted = !rows.slope().line().leanTo()
                    && definition.shape().kneeJoint().name().equals("BUTTED");
            double face = Math.max(girts, butted ? 0 : definition.plates().rafterOverhang());
            boolean carried = !rows.slope().line().leanTo()
                    && all.stream()
                            .anyMatch(o -> o.slope().top() == RoofSlope.Top.MAIN_ROOF
                                    && o.slope().side() == rows.slope().side());
            double outermost = row(on(shed, rows), rows, 0).stream()
                    .mapToDouble(p -> p.corners(c -> (c.x() - rows.slope().eave()) * inward)
                            .min()
                            .orElseThrow())
                    .min()
                    .orElseThrow();
            // It may stand past the knee's plate.
            double past = 8 + (butted ? definition.plates().kneeThickness() + 10 : 0);
            assertEquals(carried ? 0 : -face, outermost, past, "outermost steel of the eave row");
            assertTrue(outermost > (carried ? 0 : -face));
        }
    }

    @Property(tries = 20, seed = Seeds.SHEDS)
    void everyPurlinRestsOnEveryRafterItCrosses(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        double web = RoofRows.of(definition, shed.setOut()).get(0).stand().web();
        List<Stood> cleats = Stood.of(shed, PartKind.PURLIN_CLEAT)
                .filter(c -> !c.part().holes().isEmpty())
                .toList();
        for (Stood purlin : Stood.of(shed, PartKind.PURLIN)
                .filter(p -> p.place().frame() <= 3)
                .toList()) {
            for (int frame : List.of(purlin.place().frame(), purlin.place().frame() + 1)) {
                List<Stood> near = cleats.stream()
                        .filter(c ->
                                c.place().frame() == frame && purlin.near(c) && purlin.clearance(c) < web + TOLERANCE)
                        .toList();
                assertEquals(1, near.size(), () -> "cleats of " + purlin + " at frame " + frame);
                assertTrue(purlin.clearance(near.get(0)) > -TOLERANCE, () -> purlin + " runs into its cleat");
            }
        }
    }

    /** The cleat, or the bracket that carries it, stands on the rafter or on the butted column. */
    @Property(tries = 25, seed = Seeds.SHEDS)
    void everyCleatStandsOnTheFrame(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        List<Stood> frames = Stood.of(
                        shed,
                        PartKind.RAFTER,
                        PartKind.LEAN_TO_RAFTER,
                        PartKind.COLUMN,
                        PartKind.CAP_PLATE,
                        PartKind.KNEE_PLATE)
                .toList();
        List<Stood> cleats = Stood.of(shed, PartKind.PURLIN_CLEAT)
                .filter(c -> c.place().frame() <= 2)
                .toList();
        for (Stood cleat : cleats) {
            double toFrame = least(cleat, frames);
            double toBracket =
                    least(cleat, cleats.stream().filter(c -> c != cleat).toList());
            // A closing cap is cut to whole millimetres.
            assertTrue(Math.min(toFrame, toBracket) < 1 + TOLERANCE, () -> cleat + " hangs " + toFrame);
            assertTrue(toFrame > -TOLERANCE, () -> cleat + " runs " + -toFrame + " into the frame");
        }
    }

    private static double least(Stood one, List<Stood> others) {
        return others.stream()
                .filter(o -> o.place().frame() == one.place().frame() && o.near(one))
                .mapToDouble(one::clearance)
                .min()
                .orElse(Double.MAX_VALUE);
    }

    @Property(tries = 25, seed = Seeds.SHEDS)
    void theLengthsOfARowCoverTheBuilding(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        int counted = 0;
        for (RoofRows rows : RoofRows.of(definition, shed.setOut())) {
            int bays = rows.slope().lastFrame() - rows.slope().firstFrame();
            counted += rows.at().size() * bays;
            boolean goesOn = shed.slopes().stream()
                    .filter(o ->
                            !o.equals(rows.slope()) && o.side() == rows.slope().side())
                    .anyMatch(o -> Math.abs(o.roof().heightAt(0)
                                            - rows.slope().roof().heightAt(0))
                                    < 1
                            && Math.abs(o.roof().rise() - rows.slope().roof().rise()) < 1e-9);
            if (goesOn) {
                // Two slopes in one plane: whose row a purlin is cannot be told from where it lies.
                continue;
            }
            List<Stood> purlins = on(shed, rows);
            for (int number = 0; number < rows.at().size(); number++) {
                List<Stood> row = row(purlins, rows, number);
                assertEquals(bays, row.size(), "lengths of a row");
                assertEquals(rows.from(), row.get(0).from(), 1e-6);
                assertEquals(rows.to(), row.get(bays - 1).to(), 1e-6);
                for (int i = 1; i < bays; i++) {
                    double over = row.get(i - 1).to() - row.get(i).from();
                    assertTrue(rows.stand().isLapped() ? over > 0 : Math.abs(over + 10) < 1e-6, "joint of " + over);
                    shareTheirHoles(row.get(i - 1), row.get(i), over);
                }
            }
        }
        assertEquals(counted, shed.count(PartKind.PURLIN));
    }

    private static List<Stood> on(Shed shed, RoofRows rows) {
        return Stood.of(shed, PartKind.PURLIN)
                .filter(p -> p.place().side() == rows.slope().side() && p.isOn(rows))
                .toList();
    }

    /** The pieces of a row, in order along the building; a lapped one lies a thickness aside. */
    private static List<Stood> row(List<Stood> purlins, RoofRows rows, int number) {
        RowStand stand = rows.standOf(number);
        Vec3 line = rows.place(rows.at().get(number) + stand.centroidUp(), 0, 0);
        return purlins.stream()
                .filter(p -> {
                    Vec3 step = p.place().placement().origin().minus(line);
                    return Math.abs(step.dot(rows.up())) < stand.web() + TOLERANCE;
                })
                .sorted(Comparator.comparingDouble(Stood::from))
                .toList();
    }

    private static void shareTheirHoles(Stood a, Stood b, double over) {
        if (over > 0) {
            assertEquals(holes(a, b.from(), a.to()), holes(b, b.from(), a.to()), "holes of a lap");
            assertEquals(3, holes(a, b.from(), a.to()).size());
        }
    }

    private static List<Long> holes(Stood purlin, double from, double to) {
        Vec3 along = purlin.place().placement().along();
        List<Long> at = new ArrayList<>();
        for (double p : purlin.part().punched()) {
            assertTrue(p > 0 && p < purlin.part().stockLength(), "a hole past the end");
            double y = purlin.place().placement().origin().y() + along.y() * p;
            if (y > from && y < to) {
                at.add(Math.round(y * 1000));
            }
        }
        return at.stream().sorted().toList();
    }

    /** Steel of the walls is the walls' own property's business. */
    private static double lowestRoof(Shed shed) {
        return shed.slopes().stream()
                        .mapToDouble(s -> s.line().eaveHeight())
                        .min()
                        .orElseThrow()
                - 250;
    }

    /** Nothing of the roof runs into anything; lapped Zs share one thickness of their flanges. */
    @Property(tries = 20, seed = Seeds.SHEDS, shrinking = ShrinkingMode.OFF)
    void roofSteelKeepsClear(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        double web = RoofRows.of(definition, shed.setOut()).get(0).stand().web();
        List<Stood> all = shed.parts().stream()
                .flatMap(p -> p.places().stream().map(at -> new Stood(p, at)))
                .filter(s -> s.place().frame() <= 2)
                .toList();
        List<Stood> roof = all.stream()
                .filter(s -> s.part().kind().group() == PartKind.Group.ROWS
                        || s.part().kind().group() == PartKind.Group.BRACING
                        || s.part().kind().group() == PartKind.Group.CLEATS)
                .filter(s -> s.place().placement().origin().z() > lowestRoof(shed))
                .toList();
        for (Stood a : roof) {
            for (Stood b : all) {
                if (a == b || !a.near(b)) {
                    continue;
                }
                boolean lap = a.part().kind() == PartKind.PURLIN && b.part().kind() == PartKind.PURLIN;
                double into = a.overlap(b);
                assertTrue(into < TOLERANCE + (lap ? web : 0), () -> a + " runs " + into + " into " + b);
            }
        }
    }
}
