package org.baywright.render.output;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.baywright.model.definition.Project;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.BillGroup;
import org.baywright.model.takeoff.BillLine;
import org.baywright.model.takeoff.Costs;
import org.baywright.model.takeoff.PriceList;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * {@code order.xlsx}: a summary, then one sheet a section of the bill. Numbers are numbers, words never formulas, and
 * the same bill gives the same bytes.
 *
 * @param project what the job is called
 * @param bill what is ordered
 * @param costs what it costs, when there are prices
 */
public record OrderBook(Project project, Bill bill, Optional<Costs> costs) {
    private static final String CAUTION = "Quantities from model, buyer to verify";

    /** The writer stamps the time of day into its properties; this one is the same every day. */
    private static final String UNPRICED = "no price";

    private static final String MADE = "2026-01-01T00:00:00Z";

    /** Least and most width of a column, in characters. */
    private static final int NARROW = 8;

    private static final int WIDE = 60;

    /** Writes the workbook to a stream that the caller closes. */
    public void write(OutputStream out) throws IOException {
        // The writer's local headers do not say how long an entry is, so the archive is read by its directory: a file.
        Path stamped = Files.createTempFile("order", ".xlsx");
        try {
            write(stamped);
            restamp(stamped, out);
        } finally {
            Files.delete(stamped);
        }
    }

    private void write(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                Workbook book = new Workbook(out, "Baywright", "1.0")) {
            new Page(book.newWorksheet("Summary")).write(summary());
            for (BillGroup group : BillGroup.values()) {
                if (!bill.lines(group).isEmpty()) {
                    new Page(book.newWorksheet(group.shortTitle())).write(section(group));
                }
            }
        }
    }

    /** What a sheet holds: its head, the line of column titles, and what stands under it. */
    private record Content(List<List<Cell>> head, List<String> titles, List<List<Cell>> rows, List<List<Cell>> totals) {
        List<List<Cell>> all() {
            List<List<Cell>> all = new ArrayList<>(head);
            all.add(List.of());
            all.add(titles.stream().map(Cell::of).toList());
            all.addAll(rows);
            all.addAll(totals);
            return all;
        }

        /** Counted from zero. */
        int titleRow() {
            return head.size() + 1;
        }
    }

    private List<List<Cell>> head(String title) {
        List<List<Cell>> head = new ArrayList<>();
        head.add(List.of(Cell.of(project.name() + ": " + title)));
        head.add(List.of(
                Cell.of("Revision " + project.revision() + (project.date().isBlank() ? "" : ", " + project.date()))));
        head.add(List.of(Cell.of(CAUTION)));
        return head;
    }

    private Content section(BillGroup group) {
        List<String> titles = new ArrayList<>(List.of(
                "Qty",
                "Item",
                "Grade and finish",
                "Length, mm",
                "Note",
                "Counted from",
                "Unit",
                "Net",
                "Allowance",
                "Order",
                "Mass, kg"));
        boolean priced = costs.isPresent() && group.isBought();
        if (priced) {
            titles.addAll(List.of("Price", "Price unit", money("Cost")));
        }
        List<BillLine> lines = bill.lines(group);
        List<List<Cell>> rows = lines.stream().map(l -> row(l, priced)).toList();
        return new Content(head(group.title()), titles, rows, List.of(total(group, titles.size())));
    }

    private String money(String word) {
        String currency = costs.map(Costs::currency).orElse("");
        return currency.isEmpty() ? word : word + ", " + currency;
    }

    private List<Cell> row(BillLine line, boolean priced) {
        int decimals = line.unit().decimals();
        double length = line.item().lengthMm();
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(line.quantity()),
                Cell.of(line.item().description()),
                Cell.of(line.item().grade()),
                length > 0 ? Cell.of(length, 1) : Cell.of(""),
                Cell.of(line.item().note()),
                Cell.of(String.join("; ", line.item().marks())),
                Cell.of(line.unit().symbol()),
                Cell.of(line.net(), decimals),
                Cell.of(line.allowance(), decimals),
                Cell.of(line.order(), decimals),
                line.massKg() > 0 ? Cell.of(line.massKg(), 1) : Cell.of("")));
        if (priced) {
            cells.addAll(costs(line));
        }
        return cells;
    }

    private List<Cell> costs(BillLine line) {
        Optional<BigDecimal> cost = costs.flatMap(c -> c.cost(line));
        Optional<PriceList.Price> price = costs.flatMap(c -> c.price(line)).filter(p -> cost.isPresent());
        return List.of(
                price.map(p -> Cell.of(p.amount().doubleValue(), p.amount().scale()))
                        .orElse(Cell.of("")),
                Cell.of(price.map(PriceList.Price::unit).orElse("")),
                cost.map(c -> Cell.of(c.doubleValue(), 2)).orElse(Cell.of(UNPRICED)));
    }

    private List<Cell> total(BillGroup group, int width) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(""));
        cells.add(Cell.of("Total"));
        while (cells.size() < 10) {
            cells.add(Cell.of(""));
        }
        cells.add(bill.mass(group) > 0 ? Cell.of(bill.mass(group), 1) : Cell.of(""));
        if (width > cells.size()) {
            cells.add(Cell.of(""));
            cells.add(Cell.of(""));
            cells.add(costs.map(c -> total(c, group)).orElse(Cell.of("")));
        }
        return cells;
    }

    private Content summary() {
        List<String> titles = new ArrayList<>(List.of("Section", "Lines", "Mass, kg"));
        costs.ifPresent(c -> titles.addAll(List.of("Without a price", money("Cost"))));
        List<List<Cell>> rows = new ArrayList<>();
        for (BillGroup group : BillGroup.values()) {
            if (!bill.lines(group).isEmpty()) {
                rows.add(sum(group));
            }
        }
        List<List<Cell>> totals = new ArrayList<>();
        totals.add(all());
        costs.filter(c -> !c.unpriced().isEmpty()).ifPresent(c -> {
            totals.add(List.of());
            totals.add(List.of(Cell.of("Without a price, and so not in the total:")));
            c.unpriced().forEach(name -> totals.add(List.of(Cell.of(name))));
        });
        return new Content(head("order"), titles, rows, totals);
    }

    private List<Cell> sum(BillGroup group) {
        List<BillLine> lines = bill.lines(group);
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(group.title()),
                Cell.of(lines.size()),
                bill.mass(group) > 0 ? Cell.of(bill.mass(group), 1) : Cell.of("")));
        costs.filter(c -> group.isBought()).ifPresent(c -> {
            cells.add(Cell.of(lines.stream().filter(l -> c.cost(l).isEmpty()).count()));
            cells.add(total(c, group));
        });
        return cells;
    }

    private static Cell total(Costs costs, BillGroup group) {
        return costs.isPriced(group) ? Cell.of(costs.total(group).doubleValue(), 2) : Cell.of(UNPRICED);
    }

    /** Mass is what is delivered: the cut list is of the bars above it. */
    private List<Cell> all() {
        double mass = bill.lines().stream()
                .filter(l -> l.group().isBought())
                .mapToDouble(BillLine::massKg)
                .sum();
        boolean part = costs.map(c -> !c.unpriced().isEmpty()).orElse(false);
        String words = part ? "To buy; cost of the priced lines only" : "To buy";
        List<Cell> cells = new ArrayList<>(List.of(Cell.of(words), Cell.of(""), Cell.of(mass, 1)));
        costs.ifPresent(c -> {
            cells.add(Cell.of(c.unpriced().size()));
            cells.add(Cell.of(c.total().doubleValue(), 2));
        });
        return cells;
    }

    /** One sheet being written. */
    private record Page(Worksheet sheet) {
        void write(Content content) {
            List<List<Cell>> all = content.all();
            for (int r = 0; r < all.size(); r++) {
                for (int c = 0; c < all.get(r).size(); c++) {
                    put(r, c, all.get(r).get(c));
                }
            }
            int titles = content.titleRow();
            sheet.range(titles, 0, titles, content.titles().size() - 1)
                    .style()
                    .bold()
                    .set();
            sheet.style(0, 0).bold().set();
            sheet.freezePane(0, titles + 1);
            for (int c = 0; c < content.titles().size(); c++) {
                sheet.width(c, width(content, c));
            }
            sheet.pageOrientation("landscape");
            sheet.setFitToPage(true);
            sheet.fitToWidth((short) 1);
            sheet.fitToHeight((short) 0);
        }

        private void put(int row, int column, Cell cell) {
            if (cell instanceof Cell.Words words) {
                if (!words.words().isEmpty()) {
                    sheet.value(row, column, words.text());
                }
            } else if (cell instanceof Cell.Count count) {
                sheet.value(row, column, count.number());
            } else if (cell instanceof Cell.Figure figure) {
                sheet.value(row, column, new BigDecimal(figure.text()));
                sheet.style(row, column)
                        .format(figure.decimals() == 0 ? "0" : "0." + "0".repeat(figure.decimals()))
                        .set();
            }
        }

        private static double width(Content content, int column) {
            int longest = content.rows().stream()
                    .filter(r -> r.size() > column)
                    .mapToInt(r -> r.get(column).text().length())
                    .max()
                    .orElse(0);
            int title = content.titles().get(column).length();
            return Math.min(WIDE, Math.max(NARROW, Math.max(longest, title) + 2));
        }
    }

    /** Copies an archive with one fixed time in it. */
    private static void restamp(Path archive, OutputStream out) throws IOException {
        ZipOutputStream copy = new ZipOutputStream(out);
        try (ZipFile in = new ZipFile(archive.toFile())) {
            for (ZipEntry entry : Collections.list(in.entries())) {
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTimeLocal(LocalDateTime.of(1980, 1, 1, 0, 0));
                copy.putNextEntry(same);
                byte[] content = in.getInputStream(entry).readAllBytes();
                copy.write(entry.getName().equals("docProps/core.xml") ? undated(content) : content);
                copy.closeEntry();
            }
        }
        copy.finish();
    }

    private static byte[] undated(byte[] properties) {
        String text = new String(properties, StandardCharsets.UTF_8);
        return text.replaceAll("(?<tag><dcterms:created[^>]*>)[^<]*", "${tag}" + MADE)
                .getBytes(StandardCharsets.UTF_8);
    }
}
