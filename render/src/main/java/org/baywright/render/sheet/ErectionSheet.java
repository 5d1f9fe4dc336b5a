package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.BracedBays;
import org.baywright.model.takeoff.BoltUse;
import org.baywright.model.takeoff.Lift;
import org.baywright.model.takeoff.Lifts;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/**
 * Where welded pieces and bolts go, and in which order the steel is stood: a braced bay first, which then holds what follows on both sides. Common practice,
 * no source; whoever plans the lifts may choose another.
 */
final class ErectionSheet {
    private static final List<Column> COLUMNS = List.of(
            Column.numbers("Step"),
            Column.words("What"),
            Column.words("Marks"),
            Column.numbers("Pieces"),
            Column.numbers("Lift as, kg"),
            Column.words("Before going on"));

    private static final List<Column> PIECES = List.of(
            Column.words("Mark"),
            Column.words("What"),
            Column.words("Section"),
            Column.numbers("How many"),
            Column.numbers("Steel each, kg"),
            Column.words("Goes to"));

    private static final List<Column> BOLTS = List.of(
            Column.words("Bolt"),
            Column.words("Holds"),
            Column.words("Marks"),
            Column.numbers("Grip, mm"),
            Column.numbers("How many"));

    private static final Set<PartKind> FRAME = Set.of(PartKind.COLUMN, PartKind.RAFTER);
    private static final Set<PartKind> LEAN_TO = Set.of(PartKind.LEAN_TO_COLUMN, PartKind.LEAN_TO_RAFTER);
    private static final Set<PartKind> TIES =
            Set.of(PartKind.PURLIN, PartKind.STRUT, PartKind.BRACE, PartKind.FLY_BRACE, PartKind.BRIDGING);

    private final Shed shed;
    private final List<Lift> wholeFrames;
    private final List<Row> rows = new ArrayList<>();

    private ErectionSheet(Shed shed) {
        this.shed = shed;
        this.wholeFrames = Lifts.frames(shed);
    }

    static List<Draft> of(Shed shed, int first) {
        ErectionSheet sheet = new ErectionSheet(shed);
        sheet.steps();
        SheetFlow flow = new SheetFlow();
        flow.columns(List.of(Paragraph.of(GridPlaces.MEANING)), 1);
        flow.table(
                "Where each welded piece goes",
                new Table(PIECES, pieces(shed), SheetFrame.room().getWidth()).filling());
        List<Row> bolts = bolts(shed);
        if (!bolts.isEmpty()) {
            flow.table(
                    "Bolts, with nut and washers: how many go where, without spares",
                    new Table(BOLTS, bolts, SheetFrame.room().getWidth()).filling());
        }
        flow.table(
                "Order of erection",
                new Table(COLUMNS, sheet.rows, SheetFrame.room().getWidth()).filling());
        List<Paragraph> notes = new ArrayList<>(List.of(Paragraph.heading("While it stands unfinished")));
        cautions().forEach(words -> notes.add(Paragraph.bullet(words)));
        flow.columns(notes, 3);
        return flow.drafts(
                "S8.", first, bolts.isEmpty() ? "Pieces and order of erection" : "Pieces, bolts and order of erection");
    }

    /** Every way in which a member is made up with plates, and where it goes. */
    static List<Row> pieces(Shed shed) {
        Assemblies assemblies = Assemblies.of(shed);
        GridPlaces places = new GridPlaces(shed.setOut());
        return shed.parts().stream()
                .flatMap(part -> assemblies.of(part).stream())
                .filter(assembly -> !assembly.welded().isEmpty())
                .map(assembly -> Row.of(
                        assembly.mark(),
                        assembly.member().kind().label(),
                        assembly.member().material().description(),
                        String.valueOf(assembly.quantity()),
                        Figure.decimal(assembly.massKg(), 1),
                        places.of(assembly)))
                .toList();
    }

    /** Where each bolt goes, with what it grips. */
    static List<Row> bolts(Shed shed) {
        return BoltUse.of(shed).stream()
                .map(use -> Row.of(
                        use.bolt(),
                        use.joint().label(),
                        MarkRuns.of(use.marks()),
                        Figure.decimal(use.grip(), 1),
                        String.valueOf(use.count())))
                .toList();
    }

    /** One row a step. */
    static List<Row> rows(Shed shed) {
        ErectionSheet sheet = new ErectionSheet(shed);
        sheet.steps();
        return sheet.rows;
    }

    /** Pieces of some kinds that stand at frames or in bays. */
    private record Lot(Set<String> marks, int pieces) {}

    private Lot lot(Set<PartKind> kinds, Predicate<Place> at) {
        Set<String> marks = new LinkedHashSet<>();
        int pieces = 0;
        for (Part part : shed.parts()) {
            int here = kinds.contains(part.kind())
                    ? (int) part.places().stream()
                            .filter(at)
                            .filter(place -> part.kind() != PartKind.BRIDGING || isOfRoof(place) == (kinds == TIES))
                            .count()
                    : 0;
            if (here > 0) {
                marks.add(part.mark());
                pieces += here;
            }
        }
        return new Lot(marks, pieces);
    }

    private void step(String what, Set<PartKind> kinds, String before) {
        step(what, kinds, place -> true, before);
    }

    /** A step at some frames or bays of the main building. */
    private void mainStep(String what, Set<PartKind> kinds, IntPredicate at, String before) {
        step(what, kinds, place -> at.test(place.frame()) && (kinds == FRAME || !isOfLeanTo(place)), before);
    }

    /** Bridging of a roof lies in its slope, that of a wall hangs plumb. */
    private static boolean isOfRoof(Place bridging) {
        return Math.abs(bridging.placement().along().z()) < 0.9;
    }

    /** Outside the main string lines on a side with a lean-to; elsewhere only eaves overhang. */
    private boolean isOfLeanTo(Place place) {
        double x = place.placement().origin().x();
        return shed.setOut().leanTos().stream()
                .map(line -> shed.setOut().main(line.side()))
                .anyMatch(main -> (x - main.x()) * main.inward() < -Tolerance.COINCIDENT);
    }

    private void step(String what, Set<PartKind> kinds, Predicate<Place> at, String before) {
        Lot lot = lot(kinds, at);
        if (lot.pieces > 0) {
            row(what, MarkRuns.of(lot.marks), String.valueOf(lot.pieces), kinds == FRAME ? liftedKg(at) : "", before);
        }
    }

    /** The heaviest of some frames lifted whole, with plates and cleats, welds and zinc. */
    private String liftedKg(Predicate<Place> at) {
        Set<Integer> frames = shed.parts(PartKind.COLUMN).stream()
                .flatMap(part -> part.places().stream())
                .filter(at)
                .map(Place::frame)
                .collect(Collectors.toSet());
        return String.valueOf(wholeFrames.stream()
                .filter(lift -> lift.places().stream().anyMatch(frames::contains))
                .mapToLong(Lift::liftedKg)
                .max()
                .orElseThrow());
    }

    private void row(String what, String marks, String pieces, String mass, String before) {
        rows.add(Row.of(String.valueOf(rows.size() + 1), what, marks, pieces, mass, before));
    }

    private void steps() {
        int first = firstBay();
        int last = shed.setOut().frames();
        String guyed = "plumb, guyed both ways, all its anchors cured and tight on packers; only then let go";
        mainStep("frame " + first, FRAME, f -> f == first, guyed);
        mainStep("frame " + (first + 1), FRAME, f -> f == first + 1, guyed);
        mainStep(
                "purlins and braces of bay " + first + "-" + (first + 1),
                TIES,
                b -> b == first || b > first && first + 1 == last,
                "square by its diagonals in roof and walls, braces tight; it holds all that follows");
        onwards(first + 2, last);
        backwards(first);
        step("lean-to frames", LEAN_TO, "plumb, joined to the main columns, guyed until tied");
        step(
                "purlins and braces of lean-tos",
                TIES,
                this::isOfLeanTo,
                "braces of a bay as soon as both its frames stand");
        step(
                "lifting beam",
                Set.of(PartKind.LIFTING_BEAM),
                "welded as the engineer sets; nothing hung from it before that is certified");
        step("end walls", Set.of(PartKind.MULLION), "their top cleats let the rafter move");
        step(
                "door and window frames",
                Set.of(PartKind.JAMB, PartKind.HEADER, PartKind.SILL),
                "clear widths and heights measured");
        step("girts and bridging", Set.of(PartKind.GIRT, PartKind.BRIDGING), "rows straight, bolts snug");
        row(
                "the whole frame",
                "",
                "",
                "",
                "plumb and square once more, every bolt tight, base plates grouted on their full bed; guys off last");
        if (shed.definition().envelope().isFull()) {
            row(
                    "roof",
                    "",
                    "",
                    "",
                    "edge protection and mesh up first; no packs on purlins without bridging; sheets laid as the roof sheeting plan shows");
            row("walls, flashings, doors", "", "", "", "no wall sheeted before the frame is braced: wind");
        }
    }

    private static String frames(int from, int to) {
        return from == to ? "frame " + from : "frames " + from + " to " + to + ", one by one";
    }

    private void onwards(int from, int last) {
        if (from <= last) {
            String tied = "each tied to the one before by the purlins of its bay before the hook is off";
            mainStep(frames(from, last), FRAME, f -> f >= from, tied);
            mainStep(
                    "purlins and braces of those bays",
                    TIES,
                    b -> b >= from - 1,
                    "braces of a bay as soon as both its frames stand");
        }
    }

    private void backwards(int first) {
        if (first > 1) {
            String what = first == 2 ? "frame 1" : "frames " + (first - 1) + " to 1, one by one";
            mainStep(what, FRAME, f -> f < first, "the same, away from the braced bay");
            mainStep(
                    "purlins and braces of those bays",
                    TIES,
                    b -> b < first,
                    "braces of a bay as soon as both its frames stand");
        }
    }

    /** The first bay whose walls are braced, else the first. */
    private int firstBay() {
        return shed.walls().stream()
                .filter(face -> !face.wall().isEnd() && face.leanTo().isEmpty())
                .flatMap(face -> BracedBays.of(shed.definition(), face, shed.openings()).bays().stream())
                .filter(bay -> shed.count(PartKind.BRACE) > 0)
                .min(Integer::compare)
                .orElse(1);
    }

    private static List<String> cautions() {
        return List.of(
                "Lift as: the heaviest of the frames, whole, with plates, cleats, welds and zinc. What every other lift weighs"
                        + " is on the lifting sheet of the shop set.",
                "The order is a draft. Whoever erects plans lifts, temporary bracing and guys, with the engineer, for the"
                        + " machine, the ground and the weather of the day.",
                "A frame that stands by itself falls along the building. Guys or props both ways from the first frame until"
                        + " roof and wall bracing of a bay are tight.",
                "Nobody under a load or on steel that is not tied. Work from platforms. No walking on sheets that are not"
                        + " fixed, or on translucent ones.",
                "Stop for wind. Leave nothing at day's end that only a hook or a single bolt holds.");
    }
}
