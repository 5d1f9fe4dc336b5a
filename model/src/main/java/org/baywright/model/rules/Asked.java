package org.baywright.model.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.KneeJoint;
import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.Member;
import org.baywright.model.parts.BaseDesign;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.WallCover;
import org.baywright.model.setout.WallFace;

/** What a rule looks at, and where it puts what it finds. Each finding is reported once, however many frames have it. */
final class Asked {
    private final Definition definition;
    private final SetOut setOut;
    private final List<WallFace> walls;
    private final List<OpeningPlace> openings;
    private final Function<String, Where> where;
    private final List<Problem> found = new ArrayList<>();
    private Optional<Shed> shed = Optional.empty();
    private Optional<List<PlateStand>> stands = Optional.empty();

    Asked(Definition definition, Function<String, Where> where) {
        this.definition = definition;
        this.setOut = SetOut.of(definition);
        this.walls = WallFace.of(definition, setOut);
        this.openings = OpeningPlace.of(definition, walls).stream()
                .filter(place ->
                        place.face().wall().isEnd() || place.opening().bay().isPresent())
                .toList();
        this.where = where;
    }

    /** Whether anything goes on the frame. */
    boolean clad() {
        return definition.envelope().isFull();
    }

    List<WallFace> walls() {
        return walls;
    }

    /** The openings that have a place in a wall; none on a bare frame. */
    List<OpeningPlace> openings() {
        return clad() ? openings : List.of();
    }

    List<WallCover> covers() {
        return WallCover.of(definition, setOut, walls);
    }

    /**
     * The whole shed, for what only its parts can tell. None when an error was found before it was first asked for: only
     * what the other rules have passed can be built, so rules that ask for it come last.
     */
    Optional<Shed> shed() {
        if (shed.isEmpty() && isSound()) {
            shed = Optional.of(Shed.of(definition));
        }
        return shed;
    }

    /** Every base plate on the floor; none once an error was found. */
    List<PlateStand> stands() {
        if (stands.isEmpty() && isSound()) {
            stands = shed().map(PlateStand::of);
        }
        return isSound() ? stands.orElse(List.of()) : List.of();
    }

    private boolean isSound() {
        return found.stream().noneMatch(Problem::isError);
    }

    /** The key of an opening. */
    static String key(OpeningPlace place) {
        return "openings[" + (place.number() - 1) + "]";
    }

    Definition definition() {
        return definition;
    }

    SetOut setOut() {
        return setOut;
    }

    List<Problem> found() {
        return found;
    }

    boolean butted() {
        return definition.shape().kneeJoint() == KneeJoint.BUTTED;
    }

    IntStream frames() {
        return IntStream.rangeClosed(1, setOut.frames());
    }

    /** The lean-to that an outer column line belongs to, and its place in the list. */
    int leanToIndex(ColumnLine line) {
        List<LeanTo> all = definition.leanTos();
        return IntStream.range(0, all.size())
                .filter(i -> line.isOf(all.get(i)))
                .findFirst()
                .orElseThrow();
    }

    /** The key that speaks of a column line's height. */
    String heightKey(ColumnLine line) {
        return line.leanTo() ? "leanTos[" + leanToIndex(line) + "]" : "eaveHeight";
    }

    Member column(ColumnLine line, int frame) {
        return line.column(definition, frame);
    }

    Member rafter(ColumnLine line, int frame) {
        return line.rafter(definition, frame);
    }

    BaseDesign base(ColumnLine line, int frame) {
        return BaseDesign.of(
                line.leanTo()
                        ? definition.plates().leanToBase()
                        : definition.plates().base(),
                column(line, frame),
                definition.anchor());
    }

    /** How far below the top of rafter steel the column's steel ends, square to the slope. */
    double belowRoof(ColumnLine line, int frame) {
        double cap = definition.plates().capThickness();
        return butted() && !line.leanTo() ? cap : cap + rafter(line, frame).depth();
    }

    void error(String code, String key, String message, String remedy) {
        add(Problem.error(code, where.apply(key), message, remedy));
    }

    void advice(String code, String key, String message, String remedy) {
        add(Problem.advice(code, where.apply(key), message, remedy));
    }

    private void add(Problem problem) {
        boolean known = found.stream()
                .anyMatch(p -> p.code().equals(problem.code())
                        && p.where().equals(problem.where())
                        && p.severity() == problem.severity());
        if (!known) {
            found.add(problem);
        }
    }

    /** Whole millimetres that are at least a length, for what is needed. */
    static String mmUp(double length) {
        return mm(Math.ceil(length - 1e-6));
    }

    /** Whole millimetres, as messages print them. */
    static String mm(double length) {
        return String.format(Locale.ROOT, "%.0f", length);
    }
}
