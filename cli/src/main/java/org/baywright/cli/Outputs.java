package org.baywright.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.nesting.ShedCutting;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.Costs;
import org.baywright.model.takeoff.PriceList;
import org.baywright.model.takeoff.Summary;
import org.baywright.render.output.BillTable;
import org.baywright.render.output.JsonWriter;
import org.baywright.render.output.OrderBook;
import org.baywright.render.output.OutputFolder.Content;
import org.baywright.render.output.PartsTable;
import org.baywright.render.output.PdfWriter;
import org.baywright.render.output.SvgWriter;
import org.baywright.render.sheet.DrawingSet;
import org.baywright.render.sheet.OrderSet;
import org.baywright.render.sheet.SetScope;
import org.baywright.render.sheet.Sheet;
import org.baywright.render.sheet.SheetSet;

/** The files that can be made from a shed, each named once. */
record Outputs(Building building, ShedCutting cutting, Bill bill, Optional<Costs> costs) {
    /** All sheets in one file. */
    static final String DRAWINGS = "drawings.pdf";

    /** The parts behind all documents. */
    static final String PARTS = "parts.csv";

    /** What is made from the parts, and so goes out of date with them. */
    static final List<String> DOCUMENTS = Stream.concat(
                    Stream.of(
                            DRAWINGS,
                            "order.pdf",
                            "order.xlsx",
                            "bill-of-materials.csv",
                            "setout.pdf",
                            "setout.csv",
                            PieceOutputs.PIECES,
                            PieceOutputs.TEMPLATES,
                            ShopOutputs.SHOP),
                    CutOutputs.NAMES.stream())
            .toList();

    private static final Pattern SHEET = Pattern.compile("sheet-S[0-9.]+\\.svg");

    /** The files of a building, costed when there are prices. */
    static Outputs of(Building building, ShedCutting cutting, Optional<PriceList> prices) {
        Bill bill = Bill.of(building, cutting);
        return new Outputs(building, cutting, bill, prices.map(list -> new Costs(bill, list)));
    }

    /** What every writing command leaves: the parts and the headline figures. */
    Map<String, Content> data() {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put(PARTS, text(out -> PartsTable.write(building.shed(), out)));
        files.put("summary.json", text(out -> JsonWriter.write(figures(), out)));
        return files;
    }

    private Map<String, Object> figures() {
        Summary summary = Summary.of(building);
        Map<String, Object> figures =
                new LinkedHashMap<>(costs.map(summary::with).orElse(summary).figures());
        figures.putAll(cutting.figures());
        return figures;
    }

    /** One set of drawings, and each sheet by itself if asked. */
    Map<String, Content> drawings(SetScope scope, boolean svg) {
        Map<String, Content> files = new LinkedHashMap<>();
        if (!svg) {
            files.put(DRAWINGS, out -> PdfWriter.write(DrawingSet.of(building, bill, scope), out));
        } else {
            SheetSet set = DrawingSet.of(building, bill, scope);
            files.put(DRAWINGS, out -> PdfWriter.write(set, out));
            for (Sheet sheet : set.sheets()) {
                files.put("sheet-" + sheet.number() + ".svg", text(out -> SvgWriter.write(sheet, out)));
            }
        }
        return files;
    }

    /** Whether a name is that of a single sheet. */
    static boolean isSheet(String name) {
        return SHEET.matcher(name).matches();
    }

    /** The order for the merchant and its bill. */
    Map<String, Content> order() {
        OrderBook book = new OrderBook(building.shed().definition().project(), bill, costs);
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("order.pdf", out -> PdfWriter.write(OrderSet.of(building, bill, costs), out));
        files.put("order.xlsx", book::write);
        files.put("bill-of-materials.csv", text(this::bill));
        return files;
    }

    private void bill(Writer out) throws IOException {
        if (costs.isPresent()) {
            BillTable.write(costs.get(), out);
        } else {
            BillTable.write(bill, out);
        }
    }

    /** Writes characters. */
    @FunctionalInterface
    interface TextContent {
        void writeTo(Writer out) throws IOException;
    }

    static Content text(TextContent content) {
        return (OutputStream bytes) -> {
            Writer out = new OutputStreamWriter(bytes, StandardCharsets.UTF_8);
            content.writeTo(out);
            out.flush();
        };
    }
}
