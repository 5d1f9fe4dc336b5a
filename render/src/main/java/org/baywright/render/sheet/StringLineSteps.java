package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.baywright.model.definition.Anchor;
import org.baywright.model.definition.Slab;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Figure;

/** The order of work with string lines, step by step, with a shed's own figures. Common practice, no source. */
final class StringLineSteps {
    /** Hurdles stand so far outside the slab, to be out of the way of digging and formwork. */
    private static final double CLEAR_OF_WORK = 1000;

    /** More frames than this are read off the plan. */
    private static final int LISTED = 10;

    /** Long tapes end here. */
    private static final double TAPE = 50_000;

    private final Shed shed;
    private final SetOut setOut;

    StringLineSteps(Shed shed) {
        this.shed = shed;
        this.setOut = shed.setOut();
    }

    List<String> words() {
        List<String> steps = new ArrayList<>();
        steps.add(hurdles());
        steps.add("Datum line. Stretch line A along the outside faces of its columns. Mark the datum A/1 on it, and "
                + corner("A") + " at " + mm(setOut.length()) + ". This line does not move again.");
        steps.add(rightAngle());
        steps.add("Line B. Mark B/1 at " + mm(setOut.span()) + " on line 1. Stretch line B parallel to line A: "
                + mm(setOut.span()) + " between them at both ends.");
        steps.add("Line " + setOut.frames() + ". Mark " + mm(setOut.length())
                + " from line 1 on line A and on line B, and stretch the end line through both marks.");
        steps.add(diagonals());
        setOut.leanTos().forEach(line -> steps.add(leanTo(line)));
        steps.add(frames());
        if (setOut.frames() > 2) {
            steps.add("Bays. Check the diagonal of every bay against the table.");
        }
        steps.add(levels());
        steps.add("Plates. Lay each plate or its template with the column's outside face on the string line of its row"
                + " and its middle on the frame's line; at the end lines its column stands inside. Outside of the plate"
                + " to the outside of the building. Mark every hole and the plate's mark on the concrete.");
        steps.add(
                "Check. Measure again from the datum to the middles that the plan gives, hole lines as on the plan or each"
                        + " plate's own drawing, and corner to corner of"
                        + " the four end plates. Take off the strings only when all agrees; leave the hurdles.");
        steps.add(bars());
        steps.add(drill());
        return steps;
    }

    /** How far hurdles stand outside the string lines. */
    double hurdlesOut() {
        Slab slab = shed.definition().ground().slab();
        return (slab.isPads() ? slab.padSide() / 2 : slab.beyond()) + CLEAR_OF_WORK;
    }

    private String hurdles() {
        Slab slab = shed.definition().ground().slab();
        String concrete = slab.isPads()
                ? "Pads " + mm(slab.padSide()) + " square lie under the plates."
                : "The slab's edge is " + mm(slab.beyond()) + " outside the lines.";
        return "Hurdles. Set a hurdle (profile) at both ends of every string line, at least "
                + mm(hurdlesOut())
                + " outside the lines, tops level with each other and just above the floor. " + concrete;
    }

    private String rightAngle() {
        RightAngle angle = RightAngle.of(setOut);
        return "Right angle. From A/1 mark " + mm(angle.onA()) + " on line A and " + mm(angle.onOne())
                + " on line 1. Swing line 1 until the two marks are " + mm(angle.across())
                + " apart (3-4-5 times " + mm(angle.unit()) + ").";
    }

    private String diagonals() {
        Rectangle main = Rectangle.main(setOut);
        return "Diagonals. A/1 to " + corner("B") + " and B/1 to " + corner("A") + " are both " + mm(main.diagonal())
                + ". They must agree within " + mm(main.allowed()) + ". When they differ by 10, line B's marks are "
                + mm(main.outOfSquare(10)) + " too far towards one end: slide B/1 and " + corner("B")
                + " by that towards the end where the shorter diagonal meets line B. Line A stays. Measure again.";
    }

    private String leanTo(ColumnLine line) {
        Rectangle floor = Rectangle.of(setOut, line);
        String from = setOut.main(line.side()).letter();
        return "Line " + line.letter() + ". Stretch it parallel to line " + from + ", " + mm(floor.across())
                + " outside it at frames " + line.firstFrame() + " and " + line.lastFrame()
                + "; both its diagonals are " + mm(floor.diagonal()) + ".";
    }

    private String frames() {
        String start = "Frames. Hook one tape at the datum and mark every frame on line A";
        String marks = setOut.frames() <= LISTED
                ? ": "
                        + IntStream.rangeClosed(1, setOut.frames())
                                .mapToObj(f -> f + " at " + mm(setOut.frameLine(f)))
                                .collect(Collectors.joining(", "))
                : ", as the plan gives them";
        return start + marks
                + ". Do not move the tape and do not add bays"
                + (setOut.length() > TAPE ? "; past its end carry on from one mark that was measured twice" : "")
                + ". The same on line B from line 1. Lines of frames between the"
                + " ends are the middles of their columns.";
    }

    private String levels() {
        double grout = shed.definition().plates().groutGap();
        String packed = grout > 0
                ? "pack every plate with steel at each anchor to " + mm(grout)
                        + " over the highest, so that all undersides are level"
                : "grind or pack until all undersides are level";
        return "Levels. Take the level of the concrete at every plate from one bench mark. FFL is the level of the drawings;"
                + " where the concrete is off, " + packed + ".";
    }

    private String bars() {
        return shed.definition().ground().slab().bars().isPresent()
                ? "Reinforcement. See the sheet of holes and bars, then locate the bars over every hole with a detector:"
                        + " they lie where they were tied, not where they were drawn."
                : "Reinforcement. Its place is not known to these sheets: locate bars and services over every hole with a"
                        + " detector before drilling.";
    }

    private String drill() {
        Anchor anchor = shed.definition().anchor();
        return "Drill. Bit " + mm(anchor.holeDiameter()) + ", depth mark at " + mm(anchor.embedment())
                + " in the concrete, upright, with on-tool extraction and a respirator. Drill one plate, set it and check"
                + " it before the rest. If the bit meets a bar, stop: cut no bar, bend no rod, ask the engineer.";
    }

    private String corner(String letter) {
        return letter + "/" + setOut.frames();
    }

    private static String mm(double length) {
        return Figure.length(length);
    }
}
