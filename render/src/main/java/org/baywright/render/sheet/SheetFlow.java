package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Table;
import org.baywright.render.dimension.TablePart;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.locationtech.jts.geom.Envelope;

/**
 * Tables and notes under each other, running on over as many sheets as they need. When little would be left for the last
 * sheet, rows stand closer if that saves it; else all sheets are filled less, so that the last has its share.
 */
final class SheetFlow {
    private static final double TITLE = 3.5;

    /** From the top of a table's title to the table. */
    private static final double HEAD = Lettering.ascent(TITLE, Face.BOLD) + 3;

    private static final double GAP = 8;

    /** A table is begun low on a sheet only when this much of it still fits. */
    private static final double LEAST = 60;

    private final Envelope room = SheetFrame.room();
    private final List<Consumer<Run>> pieces = new ArrayList<>();

    /** A table under its title; parts on further sheets say that they go on. */
    void table(String title, Table table) {
        pieces.add(run -> run.table(title, table));
    }

    /** Whether two tables stand beside each other on one sheet. */
    boolean fitsBeside(Table table, Table other) {
        return height(table, other) <= room.getHeight() && table.width() + other.width() + GAP <= room.getWidth();
    }

    private static double height(Table table, Table other) {
        return HEAD
                + Math.max(
                        table.pages(1e6).get(0).height(),
                        other.pages(1e6).get(0).height());
    }

    /** Two tables beside each other when both fit the sheet, else under each other. */
    void pair(String title, Table table, String otherTitle, Table other) {
        if (fitsBeside(table, other)) {
            pieces.add(run -> run.pair(title, table, otherTitle, other));
        } else {
            table(title, table);
            table(otherTitle, other);
        }
    }

    /** Notes as wide as they ask. */
    void notes(Notes notes) {
        drawing(notes.height(), notes::draw);
    }

    /** Paragraphs in columns of one height beside each other. */
    void columns(List<Paragraph> paragraphs, int columns) {
        double width = (room.getWidth() - (columns - 1) * GAP) / columns;
        Notes.Columns parted = Notes.of(paragraphs, width).inColumns(columns);
        drawing(parted.height(), corner -> {
            List<Mark> marks = new ArrayList<>();
            for (int i = 0; i < parted.notes().size(); i++) {
                marks.addAll(parted.notes().get(i).draw(corner.plus(new Vec2(i * (width + GAP), 0))));
            }
            return marks;
        });
    }

    /** A drawing of its own, from its upper left corner. */
    void drawing(double height, Function<Vec2, List<Mark>> drawing) {
        pieces.add(run -> run.drawing(height, drawing));
    }

    /** One way to fill the sheets: down to a height over the foot of their room, tables tight or not. */
    private final class Run implements Filling.Filled {
        private final double foot;
        private final boolean tight;
        private final List<List<Mark>> sheets = new ArrayList<>();
        private double top;

        Run(double over, boolean tight) {
            this.foot = room.getMinY() + over;
            this.tight = tight;
            turn();
            pieces.forEach(piece -> piece.accept(this));
        }

        private void turn() {
            sheets.add(new ArrayList<>());
            top = room.getMaxY();
        }

        private double left() {
            return top - foot;
        }

        void table(String title, Table asked) {
            Table table = tight ? asked.tightly() : asked;
            double full = room.getMaxY() - foot - HEAD;
            boolean fits = table.pages(1e6).get(0).height() <= left() - HEAD;
            if (!fits && left() < LEAST) {
                turn();
            }
            List<TablePart> parts = table.pages(left() - HEAD, full);
            for (int i = 0; i < parts.size(); i++) {
                if (i > 0) {
                    turn();
                }
                part(i == 0 ? title : title + ", continued", parts.get(i), room.getMinX());
                top -= HEAD + parts.get(i).height() + GAP;
            }
        }

        void pair(String title, Table table, String otherTitle, Table other) {
            double height = height(table, other);
            if (height > left() && !marks().isEmpty()) {
                turn();
            }
            part(title, table.pages(1e6).get(0), room.getMinX());
            part(otherTitle, other.pages(1e6).get(0), room.getMaxX() - other.width());
            top -= height + GAP;
        }

        private void part(String title, TablePart part, double x) {
            Vec2 at = new Vec2(x, top - Lettering.ascent(TITLE, Face.BOLD));
            marks().add(new Text(title, at, TITLE, Text.Align.LEFT, 0, Face.BOLD, Layer.TABLE, ""));
            marks().addAll(part.draw(new Vec2(x, top - HEAD)));
        }

        void drawing(double height, Function<Vec2, List<Mark>> drawing) {
            if (left() < height && !marks().isEmpty()) {
                turn();
            }
            marks().addAll(drawing.apply(new Vec2(room.getMinX(), top)));
            top -= height + GAP;
        }

        private List<Mark> marks() {
            return sheets.get(sheets.size() - 1);
        }

        @Override
        public int sheets() {
            return sheets.size();
        }

        @Override
        public double lastUsed() {
            return room.getMaxY() - top;
        }
    }

    private List<List<Mark>> sheets() {
        Run usual = new Run(0, false);
        Run tight = Filling.endsNearlyEmpty(usual, room.getHeight()) ? new Run(0, true) : usual;
        return tight.sheets() < usual.sheets()
                ? tight.sheets
                : Filling.even(room.getHeight(), over -> new Run(over, false)).sheets;
    }

    /** The sheets as drafts, numbered on from one after the letters of the series. */
    List<Draft> drafts(String series, String title) {
        return drafts(series, 1, title);
    }

    /** The sheets as drafts, numbered on from a number after the letters of the series. */
    List<Draft> drafts(String series, int first, String title) {
        List<List<Mark>> sheets = sheets();
        return IntStream.range(0, sheets.size())
                .mapToObj(i -> new Draft(series + (first + i), title, "none", sheets.get(i), List.of()))
                .toList();
    }
}
