package org.baywright.model.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The catalogue in the data files beside this class; read once, when first asked for. */
final class Shipped {
    static final Catalogue CATALOGUE = new Catalogue(
            sections(),
            Table.read("anchors.csv", Shipped::anchor),
            Table.read("stock-lengths.csv", Shipped::stockLengths),
            Table.read("sheets.csv", Shipped::sheet));

    static final RainwaterGoods RAINWATER = new RainwaterGoods(
            Table.read("gutters.csv", Shipped::gutter), Table.read("downpipes.csv", Shipped::downpipe));

    private Shipped() {}

    private static List<Section> sections() {
        return Stream.of(
                        Table.<Section>read("shs-as-nzs-1163.csv", Shipped::asNzs1163),
                        Table.<Section>read("rhs-as-nzs-1163.csv", Shipped::asNzs1163),
                        Table.<Section>read("universal-beams.csv", Shipped::beam),
                        Table.<Section>read("universal-columns.csv", Shipped::beam),
                        Table.<Section>read("cold-formed.csv", Shipped::coldFormed),
                        Table.<Section>read("bars.csv", Shipped::bar),
                        Table.<Section>read("shs-en-10219.csv", Shipped::en10219),
                        Table.<Section>read("rhs-en-10219.csv", Shipped::en10219))
                .flatMap(List::stream)
                .toList();
    }

    private static Section asNzs1163(Table.Row row) {
        return HollowSection.asNzs1163(
                row.text("designation"),
                row.number("depth"),
                row.number("width"),
                row.number("thickness"),
                row.text("grade"),
                row.text("source"));
    }

    private static Section en10219(Table.Row row) {
        return HollowSection.en10219(
                row.text("designation"),
                row.number("depth"),
                row.number("width"),
                row.number("thickness"),
                row.text("grade"),
                row.text("source"));
    }

    private static Section beam(Table.Row row) {
        return new BeamSection(
                row.text("designation"),
                row.number("depth"),
                row.number("width"),
                row.number("flangeThickness"),
                row.number("webThickness"),
                row.number("rootRadius"),
                row.text("grade"),
                row.text("source"));
    }

    private static AnchorType anchor(Table.Row row) {
        return new AnchorType(
                row.text("size"),
                row.number("rodDiameter"),
                row.number("holeDiameter"),
                row.number("embedment"),
                row.number("minimumEdge"),
                row.number("minimumSpacing"),
                row.number("minimumConcrete"),
                row.number("plateHole"),
                row.number("stressAreaMm2"),
                row.text("source"));
    }

    private static StockLengths stockLengths(Table.Row row) {
        return new StockLengths(
                Family.valueOf(row.text("family").toUpperCase(Locale.ROOT)),
                row.number("usualMm"),
                Arrays.stream(row.text("lengthsMm").split(" "))
                        .map(Double::valueOf)
                        .toList(),
                row.text("source"));
    }

    private static Section coldFormed(Table.Row row) {
        return new ColdFormedSection(
                row.text("designation"),
                ColdFormedSection.Form.valueOf(row.text("form")),
                row.number("depth"),
                row.number("flange"),
                row.number("lip"),
                row.number("thickness"),
                row.text("grade"),
                row.text("source"));
    }

    private static Section bar(Table.Row row) {
        return new BarSection(
                row.text("designation"),
                BarSection.Form.valueOf(row.text("form")),
                row.number("depth"),
                row.number("thickness"),
                row.text("grade"),
                row.text("source"));
    }

    private static SheetProfile sheet(Table.Row row) {
        return new SheetProfile(
                row.text("name"),
                SheetProfile.Form.valueOf(row.text("form")),
                row.number("cover"),
                row.number("ribPitch"),
                row.number("depth"),
                row.number("thickness"),
                row.number("massKgPerM2"),
                row.number("minPitchDeg"),
                new SheetProfile.Screws((int) row.number("screwsAtEnds"), (int) row.number("screwsBetween"), (int)
                        row.number("screwsOnWalls")),
                row.text("source"));
    }

    private static RainwaterGoods.GutterSize gutter(Table.Row row) {
        return new RainwaterGoods.GutterSize(
                row.text("name"), row.number("depth"), row.number("width"), row.number("areaMm2"), row.text("source"));
    }

    private static RainwaterGoods.DownpipeSize downpipe(Table.Row row) {
        return new RainwaterGoods.DownpipeSize(row.text("name"), row.number("areaMm2"), row.text("source"));
    }
}
