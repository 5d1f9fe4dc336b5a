package org.baywright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Shape;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.takeoff.Summary;

/** The headline figures of a shed, in words. */
record Headline(Shed shed, Summary summary) {
    Headline(Building building) {
        this(building.shed(), Summary.of(building));
    }

    List<String> lines() {
        Shape shape = shed.definition().shape();
        List<String> lines = new ArrayList<>();
        lines.add(shed.definition().project().name());
        lines.add(row("size", mm("spanMm") + " span x " + mm("lengthMm") + " long, out to out of columns"));
        lines.add(row(
                "across",
                mm("centreToCentreMm") + " centre to centre, " + mm("clearBetweenColumnsMm")
                        + " clear between columns"));
        lines.add(row(
                "roof",
                word(shape.roofShape()) + ", " + number(shape.roofPitchDeg()) + " degrees, " + word(shape.kneeJoint())
                        + " knee"));
        lines.add(row(
                "heights",
                mm("eaveHeightMm") + " floor to top of rafter steel at the eave, "
                        + mm("apexHeightMm")
                        + (shape.roofShape() == RoofShape.GABLE ? " at the apex, " : " at the high side, ")
                        + mm("clearUnderRafterMm") + " clear under the rafter at the column"));
        leanTos(lines);
        lines.add(row("floor", number(summary.get("floorAreaM2")) + " m2"));
        lines.add(row("frames", count("frames") + " frames, " + count("bays") + " bays"));
        lines.add(row(
                "members",
                count("columns") + " columns, " + count("rafters") + " rafters, " + count("leanToColumns")
                        + " lean-to columns, " + count("leanToRafters") + " lean-to rafters"));
        lines.add(row("plates", count("basePlates") + " base plates"));
        lines.add(row(
                "anchors",
                count("anchors") + " anchors, " + number(summary.get("anchorDrillingM")) + " m of drilling"));
        lines.add(row("steel", number(summary.get("steelMassKg")) + " kg"));
        return lines;
    }

    private void leanTos(List<String> lines) {
        for (LeanTo leanTo : shed.definition().leanTos()) {
            ColumnLine line = shed.setOut().leanTos().stream()
                    .filter(l -> l.isOf(leanTo))
                    .findFirst()
                    .orElseThrow();
            lines.add(row(
                    "lean-to",
                    word(leanTo.side()) + ", " + number(leanTo.width()) + " wide, "
                            + number(leanTo.pitchDeg()) + " degrees, bays " + leanTo.fromBay() + " to " + leanTo.toBay()
                            + ", outer eave " + number(line.eaveHeight())));
        }
    }

    private static String row(String name, String value) {
        return String.format(Locale.ROOT, "  %-9s%s", name, value);
    }

    private String mm(String figure) {
        return number(summary.get(figure));
    }

    private String count(String figure) {
        return String.valueOf(Math.round(summary.get(figure)));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    /** Without decimals when whole, else with one. */
    private static String number(double value) {
        return Math.abs(value - Math.rint(value)) < 0.05
                ? String.valueOf(Math.round(value))
                : String.format(Locale.ROOT, "%.1f", value);
    }
}
