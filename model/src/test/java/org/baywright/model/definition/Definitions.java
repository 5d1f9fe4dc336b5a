package org.baywright.model.definition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.problem.Problem;
import org.baywright.model.setout.SetOut;
import org.opentest4j.AssertionFailedError;

/**
 * Random valid definitions for the properties of every module. They are written as text and read by the reader, so a
 * failing sample can be pasted into a file, and nothing is drawn that a user could not ask for.
 */
public final class Definitions {
    private static final List<String> COLUMNS = List.of(
            "SHS 89x89x5",
            "SHS 100x100x5",
            "{section: RHS 125x75x5, turned: true}",
            "RHS 150x100x5",
            "SHS 150x150x6",
            "200UB25.4",
            "150UC23.4");
    private static final List<String> RAFTERS = List.of(
            "RHS 150x100x4",
            "RHS 200x100x5",
            "{section: RHS 150x50x5, turned: true}",
            "RHS 250x150x6",
            "200UB25.4",
            "310UB40.4");
    private static final List<String> LEAN_TO_COLUMNS = List.of("SHS 75x75x4", "SHS 100x100x4", "RHS 125x75x4");
    private static final List<String> LEAN_TO_RAFTERS = List.of("RHS 125x75x4", "RHS 150x100x4", "150UB18.0");
    private static final List<String> HEAVIER_COLUMNS = List.of("SHS 150x150x9", "RHS 200x100x6", "200UB29.8");
    private static final List<String> HEAVIER_RAFTERS = List.of("RHS 250x150x8", "310UB46.2");
    /** The deepest rafter above at the steepest pitch below, with its cap and some room, plumb. */
    private static final int CLEAR_OF_COLUMN_TOP = 500;

    private Definitions() {}

    /** The definition that a text holds; the test fails when it holds none. */
    public static Definition of(String yaml) {
        Reading reading = DefinitionReader.read("test.yaml", yaml, List.of(), Catalogue.shipped());
        return reading.definition()
                .orElseThrow(() -> new AssertionFailedError(told(reading.problems()) + "\n--- in ---\n" + yaml));
    }

    /** A definition with another envelope, all else the same. */
    public static Definition with(Definition d, Envelope envelope) {
        return with(d, envelope, d.ground());
    }

    /** A definition on other ground, all else the same. */
    public static Definition with(Definition d, Ground ground) {
        return with(d, d.envelope(), ground);
    }

    private static Definition with(Definition d, Envelope envelope, Ground ground) {
        return new Definition(
                d.project(),
                d.shape(),
                d.leanTos(),
                d.steel(),
                d.heavier(),
                d.plates(),
                d.anchor(),
                envelope,
                ground,
                d.sawing());
    }

    private static String told(List<Problem> problems) {
        return problems.stream()
                .map(p -> p.where() + ": " + p.message() + "; " + p.remedy())
                .collect(Collectors.joining("\n"));
    }

    /** Random valid definitions of every shape, without an envelope. */
    public static Arbitrary<Definition> valid() {
        return texts().map(text -> of(text + "envelope: none\n"));
    }

    /** Random valid definitions with everything on the frame: {@link Envelopes} on the frames of {@link #valid}. */
    public static Arbitrary<Definition> clad() {
        return texts().flatMap(Envelopes::on).map(Definitions::of).filter(Definitions::girtsFit);
    }

    /** Flush girts are no deeper than any column. */
    private static boolean girtsFit(Definition d) {
        Girts girts = d.envelope().walls().girts();
        return !girts.flush()
                || SetOut.of(d).columnLines().stream()
                        .allMatch(line -> IntStream.rangeClosed(line.firstFrame(), line.lastFrame())
                                .mapToObj(f -> line.column(d, f))
                                .allMatch(c -> girts.member().depth() <= Math.min(c.depth(), c.width())));
    }

    /** The same as text, of the bare frame. */
    public static Arbitrary<String> texts() {
        Arbitrary<RoofShape> roofs = Arbitraries.of(RoofShape.class);
        return Arbitraries.integers()
                .between(1, 12)
                .flatMap(bays -> roofs.flatMap(roof -> texts(bays, roof)))
                .withoutEdgeCases();
    }

    private static Arbitrary<String> texts(int bays, RoofShape roof) {
        return Combinators.combine(main(bays, roof), leanTos(bays), steel(), heavier(bays, roof), plates())
                .as((main, leanTos, steel, heavier, plates) -> main + leanTos + steel + heavier + plates)
                .flatMap(Definitions::overhanging);
    }

    /** A rafter that ends at its column, or a seated one that passes it where no lean-to is in the way. */
    private static Arbitrary<String> overhanging(String text) {
        boolean may = text.contains("kneeJoint: seated") && text.contains("leanTos: []");
        return may
                ? Arbitraries.of(0, 0, 150, 300, 600).map(o -> text + "rafterOverhang: " + o + "\n")
                : Arbitraries.just(text);
    }

    private static Arbitrary<String> main(int bays, RoofShape roof) {
        boolean gable = roof == RoofShape.GABLE;
        return Combinators.combine(
                        Arbitraries.integers().between(60, gable ? 200 : 120),
                        spacing(bays),
                        Arbitraries.integers().between(37, 60),
                        Arbitraries.integers().between(0, gable ? 90 : 30),
                        Arbitraries.of(KneeJoint.class))
                .as((span, spacing, eave, pitch, knee) -> "span: " + span * 100 + "\nbays: " + bays + "\nbaySpacing: "
                        + spacing + "\neaveHeight: " + eave * 100 + "\nroofPitch: " + pitch / 2.0 + "\nroofShape: "
                        + word(roof) + "\nkneeJoint: " + word(knee) + "\n");
    }

    private static Arbitrary<String> spacing(int bays) {
        Arbitrary<Integer> one = Arbitraries.integers().between(30, 80).map(s -> s * 100);
        return Arbitraries.oneOf(
                one.map(String::valueOf), one.list().ofSize(bays).map(List::toString));
    }

    /** None, one on either side, one on each, or two along one side with a free bay between them. */
    private static Arbitrary<String> leanTos(int bays) {
        Arbitrary<String> left = leanTo("left", 1, bays);
        Arbitrary<String> right = leanTo("right", 1, bays);
        List<Arbitrary<String>> some = new ArrayList<>(List.of(
                Arbitraries.just("leanTos: []\n"),
                left.map(Definitions::entries),
                right.map(Definitions::entries),
                Combinators.combine(left, right).as((l, r) -> entries(l + r))));
        if (bays >= 3) {
            int gap = bays / 2 + 1;
            some.add(Combinators.combine(leanTo("right", 1, gap - 1), leanTo("right", gap + 1, bays))
                    .as((a, b) -> entries(a + b)));
        }
        return Arbitraries.oneOf(some);
    }

    private static String entries(String leanTos) {
        return "leanTos:\n" + leanTos;
    }

    /** The lowest: 3700 − 700 − 5000·tan 8° − 150/cos 8° is 2146 clear, above a head. A drop of 0 continues the roof. */
    private static Arbitrary<String> leanTo(String side, int first, int last) {
        Arbitrary<Integer> drops =
                Arbitraries.oneOf(Arbitraries.just(0), Arbitraries.integers().between(CLEAR_OF_COLUMN_TOP, 700));
        Arbitrary<int[]> along = Arbitraries.integers()
                .between(first, last)
                .flatMap(from -> Arbitraries.integers().between(from, last).map(to -> new int[] {from, to}));
        return Combinators.combine(
                        Arbitraries.integers().between(25, 50),
                        Arbitraries.integers().between(2, 16),
                        drops,
                        along)
                .as((width, pitch, drop, bay) -> "  - {side: " + side + ", width: " + width * 100 + ", pitch: "
                        + pitch / 2.0 + ", drop: " + drop + ", fromBay: " + bay[0] + ", toBay: " + bay[1] + "}\n");
    }

    private static Arbitrary<String> steel() {
        return Combinators.combine(
                        Arbitraries.of(COLUMNS),
                        Arbitraries.of(RAFTERS),
                        Arbitraries.of(LEAN_TO_COLUMNS),
                        Arbitraries.of(LEAN_TO_RAFTERS))
                .as((column, rafter, leanToColumn, leanToRafter) -> "column: " + column + "\nrafter: " + rafter
                        + "\nleanToColumn: " + leanToColumn + "\nleanToRafter: " + leanToRafter + "\n");
    }

    private static Arbitrary<String> heavier(int bays, RoofShape roof) {
        return heavierEntry(bays, roof)
                .list()
                .ofMaxSize(2)
                .map(entries -> entries.isEmpty() ? "" : "heavier:\n" + String.join("", entries));
    }

    private static Arbitrary<String> heavierEntry(int bays, RoofShape roof) {
        Arbitrary<String> one = Arbitraries.integers().between(1, bays + 1).map(f -> "[" + f + "]");
        Arbitrary<String> frames = Arbitraries.oneOf(one, Arbitraries.of("ends", "all"));
        Arbitrary<String> columns = Arbitraries.of(HEAVIER_COLUMNS);
        Arbitrary<String> sides = Arbitraries.of("left", "right", "both");
        Arbitrary<String> onlyColumn = Combinators.combine(frames, sides, columns)
                .as((f, side, column) -> "  - {frames: " + f + ", side: " + side + ", column: " + column + "}\n");
        Arbitrary<String> rafterSides = roof == RoofShape.GABLE ? sides : Arbitraries.just("both");
        Arbitrary<String> withRafter = Combinators.combine(
                        frames, rafterSides, columns, Arbitraries.of(HEAVIER_RAFTERS))
                .as((f, side, column, rafter) -> "  - {frames: " + f + ", side: " + side + ", column: " + column
                        + ", rafter: " + rafter + ", leanToColumn: SHS 125x125x6}\n");
        return Arbitraries.oneOf(onlyColumn, withRafter);
    }

    private static Arbitrary<String> plates() {
        return Combinators.combine(
                        Arbitraries.of(2, 4, 6, 8),
                        Arbitraries.of(0, 8, 12, 16),
                        Arbitraries.of(0, 12, 20),
                        Arbitraries.integers().between(0, 30),
                        Arbitraries.of(0, 10, 15),
                        Arbitraries.of("M12", "M16", "M20"))
                .as((holes, cap, end, grout, gap, anchor) -> "basePlate: {holes: " + holes + "}\ncapPlate: {thickness: "
                        + cap + "}\nkneePlate: {thickness: " + end + "}\napexPlate: {thickness: " + end
                        + "}\nslab: {beyond: 200}\ngroutGap: " + grout + "\nleanToGap: " + gap + "\nanchor: {size: "
                        + anchor + "}\n");
    }

    private static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }
}
