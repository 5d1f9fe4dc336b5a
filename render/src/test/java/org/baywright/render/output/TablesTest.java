package org.baywright.render.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import org.junit.jupiter.api.Test;

class TablesTest {
    private static String csv(List<String> header, List<List<Cell>> rows) throws IOException {
        StringBuilder out = new StringBuilder();
        CsvWriter.write(header, rows, out);
        return out.toString();
    }

    @Test
    void awkwardWordsComeBackAsTheyWere() throws IOException {
        List<String> words = List.of("a,b", "say \"so\"", "two\r\nlines", "Ø22 – é", "", " padded ", "\"");
        String text = csv(words, List.of(words.stream().map(Cell::of).toList()));
        CsvMapper mapper = new CsvMapper();
        mapper.enable(CsvParser.Feature.WRAP_AS_ARRAY);
        try (MappingIterator<String[]> rows = mapper.readerFor(String[].class).readValues(text)) {
            assertEquals(words, Arrays.asList(rows.next()));
            assertEquals(words, Arrays.asList(rows.next()));
            assertEquals(false, rows.hasNext());
        }
    }

    @Test
    void formulasAreDisarmedButNumbersStayNumbers() throws IOException {
        List<Cell> row = List.of(
                Cell.of("=1+1"),
                Cell.of("+1"),
                Cell.of("-C1"),
                Cell.of("@x"),
                Cell.of("\tx"),
                Cell.of(-3.5, 1),
                Cell.of(-7));
        String text = csv(List.of("a", "b", "c", "d", "e", "f", "g"), List.of(row));
        assertEquals("a,b,c,d,e,f,g\r\n'=1+1,'+1,'-C1,'@x,'\tx,-3.5,-7\r\n", text);
        assertEquals("\"'\rx\"\r\n", csv(List.of("\rx"), List.of()));
    }

    @Test
    void figuresHaveTheirDecimals() {
        assertEquals("3948.7", Cell.of(3948.65, 1).text());
        assertEquals("0.0", Cell.of(-0.04, 1).text());
        assertEquals("12", Cell.of(12.0, 0).text());
        assertEquals("1000000000.00", Cell.of(1e9, 2).text());
        assertThrows(IllegalArgumentException.class, () -> Cell.of(Double.NaN, 1));
    }

    @Test
    void aRowOfTheWrongWidthIsABug() {
        assertThrows(IllegalArgumentException.class, () -> csv(List.of("a", "b"), List.of(List.of(Cell.of(1)))));
    }

    @Test
    void jsonKeepsOrderAndUnixLines() throws IOException {
        LinkedHashMap<String, Object> summary = new LinkedHashMap<>();
        summary.put("frames", 5);
        summary.put("areaM2", 288.5);
        summary.put("sheets", List.of("A-01", "é"));
        StringBuilder out = new StringBuilder();
        JsonWriter.write(summary, out);
        assertEquals(
                "{\n  \"frames\" : 5,\n  \"areaM2\" : 288.5,\n  \"sheets\" : [\n    \"A-01\",\n    \"é\"\n  ]\n}\n",
                out.toString());
        assertEquals(
                288.5, new ObjectMapper().readTree(out.toString()).get("areaM2").asDouble());
    }

    @Test
    void jsonHasNoInfinity() {
        LinkedHashMap<String, Object> summary = new LinkedHashMap<>();
        summary.put("nested", List.of(Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> JsonWriter.write(summary, new StringBuilder()));
    }
}
