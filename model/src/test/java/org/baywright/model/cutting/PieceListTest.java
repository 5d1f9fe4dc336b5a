package org.baywright.model.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.baywright.model.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables as spreadsheets and people write them. @source RFC 4180 for quoting and line ends */
class PieceListTest {
    private static final Map<String, List<Piece>> TWO =
            Map.of("", List.of(Piece.square(2400, 3), Piece.square(1800.5, 1)));

    private static PieceList read(String text) {
        return PieceList.read("list.csv", text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "length_mm,quantity\n2400,3\n1800.5,1\n",
                "length_mm,quantity\r\n2400,3\r\n1800.5,1",
                "\uFEFFlength_mm,quantity\n2400,3\n1800.5,1\n",
                "Quantity, Length_mm\n3,2400\n\n1 , 1800.5\n",
                "\"length_mm\",\"quantity\"\n\"2400\",\"3\"\n\"1800.5\",1\n"
            })
    void theSameListInManyForms(String text) {
        PieceList list = read(text);
        assertEquals(List.of(), list.problems());
        assertEquals(TWO, list.bySection());
        assertEquals(4, list.count());
    }

    @Test
    void marksAndSections() {
        PieceList list = read("mark,section,length_mm,quantity\n\"C1, left\",SHS 100,4000,2\nR1,RHS 200,6000,1\n");
        assertEquals(List.of(), list.problems());
        assertEquals(
                List.of(Piece.square("C1, left", 4000, 2)), list.bySection().get("SHS 100"));
        assertEquals(List.of(Piece.square("R1", 6000, 1)), list.bySection().get("RHS 200"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            length,quantity;2400,3            | wrong-header | 1
            length_mm;quantity;2400;3         | wrong-header | 1
            length_mm,quantity,colour;1,2,red | wrong-header | 1
            length_mm,quantity,quantity;1,2,3 | wrong-header | 1
            length_mm,quantity;long,3         | not-a-number | 2
            length_mm,quantity;2400,3;1e3,2   | not-a-number | 3
            length_mm,quantity;2400,3;NaN,2   | not-a-number | 3
            length_mm,quantity;-2400,3        | out-of-range | 2
            length_mm,quantity;0,3            | out-of-range | 2
            length_mm,quantity;1000001,3      | out-of-range | 2
            length_mm,quantity;2400,0         | not-whole    | 2
            length_mm,quantity;2400,2.5       | not-whole    | 2
            length_mm,quantity;2400,          | not-whole    | 2
            length_mm,quantity;2,400,3        | wrong-width  | 2
            length_mm,quantity;"2,400",3      | not-a-number | 2
            length_mm,quantity                | empty-list   | 0
            """)
    void whatIsWrongIsToldWithItsLine(String rows, String code, int line) {
        String text = code.equals("wrong-header") && rows.contains("length_mm;quantity")
                ? "length_mm;quantity\n2400;3\n"
                : rows.strip().replace(';', '\n');
        PieceList list = read(text);
        assertEquals(1, list.problems().size(), () -> list.problems().toString());
        Problem problem = list.problems().get(0);
        assertEquals(code, problem.code());
        assertEquals(line, problem.where().line());
    }

    @Test
    void allProblemsAtOnceButNotEndlessly() {
        String rows = "x,1\n".repeat(1000);
        assertEquals(20, read("length_mm,quantity\n" + rows).problems().size());
        PieceList two = read("length_mm,quantity\nx,1\n2400,y\n");
        assertEquals(List.of("not-a-number", "not-whole"), codes(two));
    }

    private static List<String> codes(PieceList list) {
        return list.problems().stream().map(Problem::code).collect(Collectors.toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\"", "length_mm,quantity\n\"2400,3", "\0\0\0", "length_mm,quantity\n\0,1\n"})
    void noTextMakesItThrow(String text) {
        assertTrue(read(text).problems().stream().anyMatch(Problem::isError));
    }
}
