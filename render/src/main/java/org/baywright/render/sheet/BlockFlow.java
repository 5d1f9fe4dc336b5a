package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Shift;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/**
 * Drawings beside and under each other on as many sheets as they need: in their order, but a row that no longer fits a
 * sheet lets one of the few after it go before.
 */
final class BlockFlow {
    /** Between two rows of drawings; a thin rule lies in the middle. */
    private static final double GAP = 6;

    /** The same where that brings one more row on a sheet. */
    private static final double TIGHT_GAP = 4;

    /** Out of so many waiting rows the first that fits is taken; more would leave marks hard to find. */
    private static final int AHEAD = 5;

    private final Envelope room = SheetFrame.room();
    private final List<Block> blocks;
    private final List<List<Row>> sheets;

    BlockFlow(List<Block> blocks) {
        this.blocks = List.copyOf(blocks);
        this.sheets = sheets(rows(), room.getHeight());
    }

    /** The last two sheets are shared out evenly when the last would have little on it. */
    private static List<List<Row>> sheets(List<Row> rows, double height) {
        List<List<Row>> full = new Dealt(rows, height).sheets;
        int kept = Math.max(0, full.size() - 2);
        List<Row> tail = full.subList(kept, full.size()).stream()
                .flatMap(List::stream)
                .sorted(Comparator.comparingInt(Row::first))
                .toList();
        List<List<Row>> sheets = new ArrayList<>(full.subList(0, kept));
        sheets.addAll(Filling.even(height, over -> new Dealt(tail, height - over)).sheets);
        return sheets;
    }

    /** Blocks beside each other: the first of them by its number among all, and how many. */
    private record Row(int first, List<Block> blocks) {
        double height() {
            return blocks.stream().mapToDouble(Block::height).max().orElseThrow();
        }
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        List<Block> row = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            row.add(blocks.get(i));
            double used = row.stream().mapToDouble(Block::width).sum();
            boolean last = i + 1 == blocks.size();
            if (last || used + blocks.get(i + 1).width() > room.getWidth() + 1e-6) {
                rows.add(new Row(i + 1 - row.size(), List.copyOf(row)));
                row.clear();
            }
        }
        return rows;
    }

    /** Rows dealt out to sheets of a height. */
    private static final class Dealt implements Filling.Filled {
        private final List<List<Row>> sheets = new ArrayList<>();

        Dealt(List<Row> rows, double height) {
            List<Row> waiting = new ArrayList<>(rows);
            while (!waiting.isEmpty()) {
                List<Row> sheet = new ArrayList<>(List.of(waiting.remove(0)));
                Optional<Row> next = next(waiting, height - used(sheet));
                while (next.isPresent()) {
                    sheet.add(next.get());
                    waiting.remove(next.get());
                    next = next(waiting, height - used(sheet));
                }
                sheets.add(sheet);
            }
        }

        private static Optional<Row> next(List<Row> waiting, double left) {
            return waiting.stream()
                    .limit(AHEAD)
                    .filter(r -> r.height() + TIGHT_GAP <= left)
                    .findFirst();
        }

        private static double used(List<Row> sheet) {
            return sheet.stream().mapToDouble(Row::height).sum() + (sheet.size() - 1) * TIGHT_GAP;
        }

        @Override
        public int sheets() {
            return sheets.size();
        }

        @Override
        public double lastUsed() {
            return used(sheets.get(sheets.size() - 1));
        }
    }

    private List<Mark> marks(List<Row> sheet) {
        double spare =
                room.getHeight() - sheet.stream().mapToDouble(Row::height).sum();
        double gap = Math.min(GAP, spare / Math.max(1, sheet.size() - 1));
        List<Mark> marks = new ArrayList<>();
        double top = room.getMaxY();
        for (Row row : sheet) {
            if (!marks.isEmpty()) {
                marks.add(rule(top + gap / 2));
            }
            double x = room.getMinX();
            for (Block block : row.blocks) {
                marks.addAll(Shift.by(new Vec2(x, top), block.marks()));
                x += block.width();
            }
            top -= row.height() + gap;
        }
        return marks;
    }

    private Mark rule(double y) {
        return Stroke.line(new Vec2(room.getMinX(), y), new Vec2(room.getMaxX(), y), Pen.DIMENSION, Layer.FRAME);
    }

    /** The sheets as drafts, numbered on from one after the letters of the series. */
    List<Draft> drafts(String series, String title) {
        return IntStream.range(0, sheets.size())
                .mapToObj(i -> new Draft(
                        series + (i + 1),
                        title + " " + range(sheets.get(i)),
                        "as shown @ A3",
                        marks(sheets.get(i)),
                        List.of()))
                .toList();
    }

    /** What is on a sheet, such as J1 to J2, J4: a run takes in nothing that is on another sheet. */
    private String range(List<Row> sheet) {
        List<String> runs = new ArrayList<>();
        int first = -1;
        int last = -1;
        for (int i : named(sheet)) {
            if (first >= 0 && i > last + 1) {
                runs.add(run(first, last));
                first = -1;
            }
            first = first < 0 ? i : first;
            last = i;
        }
        runs.add(run(first, last));
        return String.join(", ", runs);
    }

    private String run(int first, int last) {
        String name = blocks.get(first).name();
        return first == last ? name : name + " to " + blocks.get(last).name();
    }

    private List<Integer> named(List<Row> sheet) {
        return sheet.stream()
                .flatMap(
                        r -> IntStream.range(r.first, r.first + r.blocks.size()).boxed())
                .filter(i -> !blocks.get(i).name().isEmpty())
                .toList();
    }

    /** The names of the drawings on each sheet. */
    List<List<String>> names() {
        return sheets.stream()
                .map(s -> named(s).stream().map(i -> blocks.get(i).name()).collect(Collectors.toList()))
                .toList();
    }
}
