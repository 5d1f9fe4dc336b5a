package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.PartKind;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Figure;

/**
 * Where a piece goes, by the grid: columns and rafters at {@code A/2}, rafters by the line at their foot; whatever stands
 * between lines at {@code A+4850/1}, its middle so far from a line towards the next letter or number.
 */
record GridPlaces(SetOut setOut) {
    /** What a grid place means, for the head of a list. */
    static final String MEANING =
            "A/2: line A, frame 2; of a rafter its foot. A+4850/1: its middle so far from line A towards the next letter, in"
                    + " frame 1. B/2+1500: in the wall on line B, so far past frame 2. B/2-3, A to B/1: in that wall between"
                    + " these frames or lines.";

    /** Girts and their bridging stand no further from the frame line of their end wall. Millimetres. */
    private static final double AT_END = 500;

    /** All places of an assembly, each once. */
    String of(Assembly assembly) {
        List<MemberAxis> axes = assembly.places().stream()
                .map(place -> MemberAxis.of(assembly.member(), place))
                .toList();
        return assembly.member().kind().isOfFrame()
                ? frames(axes)
                : axes.stream().map(this::between).distinct().collect(Collectors.joining("; "));
    }

    private String frames(List<MemberAxis> axes) {
        List<String> words = new ArrayList<>();
        setOut.columnLines().stream().map(ColumnLine::letter).distinct().forEach(letter -> {
            TreeSet<Integer> frames = axes.stream()
                    .filter(axis -> foot(axis).letter().equals(letter))
                    .map(axis -> axis.place().frame())
                    .collect(Collectors.toCollection(TreeSet::new));
            if (!frames.isEmpty()) {
                words.add(letter + "/" + PlateUse.runs(List.copyOf(frames)));
            }
        });
        return String.join("; ", words);
    }

    /** The line that a column stands on, or that the lower end of a rafter is at. */
    private ColumnLine foot(MemberAxis axis) {
        PartKind kind = axis.part().kind();
        boolean lean = kind == PartKind.LEAN_TO_COLUMN || kind == PartKind.LEAN_TO_RAFTER;
        Vec3 low = axis.from().z() <= axis.to().z() ? axis.from() : axis.to();
        return nearest(
                low.x(), line -> line.leanTo() == lean && line.has(axis.place().frame()));
    }

    private ColumnLine nearest(double x, Predicate<ColumnLine> wanted) {
        return setOut.columnLines().stream()
                .filter(wanted)
                .min(Comparator.comparingDouble(line -> Math.abs(line.x() - x)))
                .orElseThrow();
    }

    private String between(MemberAxis axis) {
        Placement at = axis.place().placement();
        Vec3 middle = axis.middle();
        int frame = axis.place().frame();
        if (axis.part().kind() == PartKind.BRACE) {
            return across(axis) + "/" + frame + "-" + (frame + 1);
        }
        if (axis.part().kind() == PartKind.BRIDGING) {
            return bridged(axis);
        }
        String up = runsUp(at) ? "" : ", " + Figure.length(middle.z()) + " up";
        return (isInBay(at)
                        ? nearest(middle.x(), line -> true).letter() + "/" + fromFrame(middle.y())
                        : fromLetter(middle.x()) + "/" + frame)
                + up;
    }

    /** Bridging is told by what it is between: it stands in the middle of a bay of the roof, of a wall or of mullions. */
    private String bridged(MemberAxis bridging) {
        double y = bridging.middle().y();
        int near = IntStream.rangeClosed(1, setOut.frames())
                .boxed()
                .min(Comparator.comparingDouble(f -> Math.abs(setOut.frameLine(f) - y)))
                .orElseThrow();
        if (runsUp(bridging.place().placement()) && Math.abs(setOut.frameLine(near) - y) < AT_END) {
            return between(bridging.middle().x()) + "/" + near;
        }
        int before = setOut.frameLine(near) <= y && near < setOut.frames() ? near : near - 1;
        return across(bridging) + "/" + before + "-" + (before + 1);
    }

    /** The lines beside a place; an overhang belongs to the two next to it. */
    private String between(double x) {
        List<ColumnLine> lines = setOut.columnLines();
        int first = Math.min(lines.size() - 2, passed(x));
        return lines.get(first).letter() + " to " + lines.get(first + 1).letter();
    }

    /** The wall that a brace is in, or the lines between which it is in the roof. */
    private String across(MemberAxis brace) {
        double x = brace.middle().x();
        if (Math.abs(brace.to().x() - brace.from().x()) < 1) {
            return nearest(x, line -> true).letter();
        }
        return "roof " + between(x);
    }

    /** The line at or before a place, and how far past it. */
    private String fromLetter(double x) {
        ColumnLine line = before(x);
        return past(line.letter(), x - line.x());
    }

    private ColumnLine before(double x) {
        return setOut.columnLines().get(passed(x));
    }

    /** The last line at or before a place, counted from 0; the first for a place before it. */
    private int passed(double x) {
        long passed = setOut.columnLines().stream()
                .filter(line -> line.x() <= x + Tolerance.COINCIDENT)
                .count();
        return (int) Math.max(0, passed - 1);
    }

    private String fromFrame(double y) {
        int frame = IntStream.rangeClosed(1, setOut.frames())
                .filter(f -> setOut.frameLine(f) <= y + Tolerance.COINCIDENT)
                .max()
                .orElse(1);
        return past(String.valueOf(frame), y - setOut.frameLine(frame));
    }

    private static String past(String line, double by) {
        long whole = Math.round(by);
        return whole == 0 ? line : line + (whole < 0 ? "-" : "+") + Figure.length(Math.abs(whole));
    }

    private static boolean runsUp(Placement at) {
        return Math.abs(at.along().z()) > 0.99;
    }

    /**
     * Whether a piece reaches along the building, or stands in a side wall; else it lies or stands at a frame. The depth
     * of an upright runs along its wall.
     */
    static boolean isInBay(Placement at) {
        return Math.abs(at.along().y()) > 0.1
                || runsUp(at) && Math.abs(at.depth().y()) > 0.5;
    }
}
