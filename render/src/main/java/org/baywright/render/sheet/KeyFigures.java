package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.baywright.model.definition.Anchor;
import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Shape;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.takeoff.Summary;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** The headline figures of a shed in words and units, each saying from where to where. */
final class KeyFigures {
    /** Bays of different length are listed one by one up to this many. */
    private static final int LISTED = 5;

    private final Shed shed;
    private final Shape shape;
    private final Summary summary;
    private final List<Row> rows = new ArrayList<>();

    private KeyFigures(Shed shed) {
        this.shed = shed;
        this.shape = shed.definition().shape();
        this.summary = Summary.of(shed);
    }

    static Table of(Shed shed, double width) {
        KeyFigures figures = new KeyFigures(shed);
        figures.sizes();
        figures.heights();
        figures.roof();
        figures.counts();
        return new Table(List.of(Column.words("Key figures"), Column.numbers("")), figures.rows, width).filling();
    }

    private void row(String words, String value) {
        rows.add(Row.of(words, value));
    }

    private void millimetres(String words, String figure) {
        row(words, mm(summary.get(figure)));
    }

    private void sizes() {
        millimetres("Span, out to out of columns", "spanMm");
        millimetres("Span, least centre to centre of columns", "centreToCentreMm");
        millimetres("Span, least clear between columns", "clearBetweenColumnsMm");
        millimetres("Length, out to out of end columns", "lengthMm");
        List<Double> bays = shape.baySpacings();
        row("Bays of " + spacing(bays), String.valueOf(bays.size()));
        row("Floor area" + (shed.definition().leanTos().isEmpty() ? "" : ", with lean-tos"), area("floorAreaM2"));
    }

    private static String spacing(List<Double> bays) {
        double least = bays.stream().mapToDouble(s -> s).min().orElseThrow();
        double most = bays.stream().mapToDouble(s -> s).max().orElseThrow();
        if (most - least < Tolerance.COINCIDENT) {
            return mm(most);
        }
        return bays.size() <= LISTED
                ? String.join(", ", bays.stream().map(Figure::length).toList()) + " mm"
                : Figure.length(least) + " to " + mm(most);
    }

    private void heights() {
        boolean gable = shape.roofShape() == RoofShape.GABLE;
        String to = ", floor to top of rafter steel";
        millimetres((gable ? "Eave" : "Low eave") + to, "eaveHeightMm");
        millimetres((gable ? "Apex" : "High eave") + to, "apexHeightMm");
        millimetres("Clear, floor to under rafter at outside face", "clearUnderRafterMm");
        for (ColumnLine line : shed.setOut().leanTos()) {
            row("Lean-to outer eave, line " + line.letter() + to, mm(line.eaveHeight()));
        }
    }

    private void roof() {
        row("Roof pitch, " + shape.roofShape().name().toLowerCase(Locale.ROOT), Figure.angle(shape.roofPitchDeg()));
        for (LeanTo leanTo : shed.definition().leanTos()) {
            String below = leanTo.drop() < Tolerance.COINCIDENT
                    ? "carrying on from the eave line"
                    : mm(leanTo.drop()) + " below the eave line";
            row(
                    "Lean-to " + word(leanTo.side()) + ", " + bays(leanTo) + ", " + below,
                    mm(leanTo.width()) + ", " + Figure.angle(leanTo.pitchDeg()));
        }
    }

    private static String bays(LeanTo leanTo) {
        return leanTo.fromBay() == leanTo.toBay()
                ? "bay " + leanTo.fromBay()
                : "bays " + leanTo.fromBay() + " to " + leanTo.toBay();
    }

    private static String word(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    private void counts() {
        row("Frames", count("frames"));
        row("Columns", count("columns"));
        row("Rafters", count("rafters"));
        if (!shed.definition().leanTos().isEmpty()) {
            row("Lean-to columns", count("leanToColumns"));
            row("Lean-to rafters", count("leanToRafters"));
        }
        row("Base plates", count("basePlates"));
        Anchor anchor = shed.definition().anchor();
        row("Chemical anchors " + anchor.size(), count("anchors"));
        String bit = "Drilling Ø" + Figure.length(anchor.holeDiameter()) + ", " + Figure.length(anchor.embedment())
                + " mm deep each";
        row(bit, String.format(Locale.ROOT, "%.1f m", summary.get("anchorDrillingM")));
        row("Steel, members and plates as modelled", BillSheets.kg(summary.get("steelMassKg")) + " kg");
    }

    private String count(String figure) {
        return String.valueOf(Math.round(summary.get(figure)));
    }

    private String area(String figure) {
        return String.format(Locale.ROOT, "%.1f m²", summary.get(figure));
    }

    private static String mm(double length) {
        return Figure.length(length) + " mm";
    }
}
