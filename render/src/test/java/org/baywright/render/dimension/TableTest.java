package org.baywright.render.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

class TableTest {
    private static final Vec2 TOP_LEFT = new Vec2(30, 280);

    private static List<Text> texts(List<Mark> marks) {
        return marks.stream().filter(m -> m instanceof Text).map(m -> (Text) m).toList();
    }

    private static Table random(long seed, int rows, double width) {
        Random random = new Random(seed);
        List<Row> all = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            if (random.nextInt(6) == 0) {
                all.add(Row.heading("Heading before row" + i));
            }
            String words = "word ".repeat(random.nextInt(25)) + "end";
            all.add(Row.of("row" + i, words, Integer.toString(random.nextInt(100000))));
        }
        all.add(Row.total("total", "", "1"));
        Table table = new Table(
                List.of(Column.words("Mark"), Column.words("What it is"), Column.numbers("Mass each kg")), all, width);
        return random.nextBoolean() ? table.tightly() : table;
    }

    /** How often the words of the long column occur. */
    private static long tokens(Stream<String> texts) {
        return texts.flatMap(t -> Stream.of(t.split(" ")))
                .filter(w -> w.matches("word|end"))
                .count();
    }

    @Property(tries = 60)
    void everyRowIsThereOnceAndInItsPart(
            @ForAll @LongRange(min = 0) long seed,
            @ForAll @IntRange(max = 60) int rows,
            @ForAll @IntRange(min = 60, max = 200) int width,
            @ForAll @IntRange(min = 25, max = 240) int room) {
        Table table = random(seed, rows, width);
        List<String> words = new ArrayList<>();
        for (TablePart part : table.pages(room)) {
            assertTrue(part.height() <= room + 1e-6 && part.width() <= width + 1e-6);
            List<Mark> marks = part.draw(TOP_LEFT);
            Envelope box = new Envelope(
                    TOP_LEFT.x(),
                    TOP_LEFT.x() + part.width() + 1e-6,
                    TOP_LEFT.y() - part.height() - 1e-6,
                    TOP_LEFT.y());
            Overlaps.assertNone(marks, box);
            texts(marks).forEach(t -> words.add(t.content()));
        }
        for (int i = 0; i < rows; i++) {
            String mark = "row" + i;
            assertEquals(1, words.stream().filter(mark::equals).count(), mark);
        }
        assertEquals(1, words.stream().filter("total"::equals).count());
        assertEquals(tokens(table.rows().stream().flatMap(r -> r.cells().stream())), tokens(words.stream()));
        assertEquals(
                table.pages(room).size(), words.stream().filter("Mark"::equals).count());
    }

    @Test
    void numbersStandFlushRightAndWordsFlushLeft() {
        TablePart part = random(3, 5, 150).pages(250).get(0);
        for (Text text : texts(part.draw(TOP_LEFT))) {
            Envelope box = Bounds.of(text);
            boolean number = text.content().matches("[0-9]+");
            if (number) {
                assertEquals(TOP_LEFT.x() + part.width() - Table.PAD, box.getMaxX(), 1e-6);
            }
            assertEquals(number || text.content().matches("Mass.*|each|kg"), text.align() == Text.Align.RIGHT);
        }
    }

    @Test
    void aHeadingIsNeverLastOnAPage() {
        for (int room = 60; room < 160; room++) {
            List<TablePart> parts = random(11, 40, 100).pages(room);
            for (TablePart part : parts.subList(0, parts.size() - 1)) {
                List<Text> texts = texts(part.draw(TOP_LEFT));
                assertTrue(!texts.get(texts.size() - 1).content().startsWith("Heading"), "room " + room);
            }
        }
    }

    @Test
    void aWordWiderThanItsColumnIsBroken() {
        Table table = new Table(
                List.of(Column.words("Mark"), Column.words("Note")), List.of(Row.of("A", "x".repeat(200))), 40);
        List<Mark> marks = table.pages(200).get(0).draw(TOP_LEFT);
        Overlaps.assertNone(marks, new Envelope(30, 70 + 1e-6, 0, 280));
        assertEquals(
                200,
                texts(marks).stream()
                        .mapToLong(
                                t -> t.content().chars().filter(c -> c == 'x').count())
                        .sum());
    }

    @Test
    void rowsMustMatchTheColumns() {
        List<Column> columns = List.of(Column.words("Mark"), Column.words("Note"));
        assertThrows(IllegalArgumentException.class, () -> new Table(columns, List.of(Row.of("A")), 100));
    }

    @Test
    void notesStayInTheirColumnAndLoseNoWord() {
        List<Paragraph> paragraphs = Paragraph.numbered(List.of(
                "Not for construction until certified by a licensed engineer.", "Verify on site before cutting."));
        Notes notes = Notes.of(paragraphs, 50);
        List<Mark> marks = notes.draw(TOP_LEFT);
        Overlaps.assertNone(marks, new Envelope(30, 80 + 1e-6, 280 - notes.height(), 280));
        String all = String.join(" ", texts(marks).stream().map(Text::content).toList());
        assertEquals(
                "1. " + paragraphs.get(0).words() + " 2. " + paragraphs.get(1).words(), all);
        assertEquals(2, notes.columns(notes.height() - 1).size());
    }

    @Test
    void theFirstPartFitsARoomOfItsOwn() {
        List<TablePart> parts = random(7, 50, 150).pages(40, 200);
        assertTrue(parts.size() > 1 && parts.get(0).height() <= 40, "first part");
        assertTrue(parts.get(1).height() > 40 && parts.get(1).height() <= 200, "second part");
    }

    @Test
    void aFillingTableTakesItsWholeWidth() {
        Table table = new Table(List.of(Column.words("Mark"), Column.numbers("kg")), List.of(Row.of("C1", "2")), 120);
        assertTrue(table.pages(100).get(0).width() < 60);
        assertEquals(120, table.filling().pages(100).get(0).width(), 1e-9);
    }
}
