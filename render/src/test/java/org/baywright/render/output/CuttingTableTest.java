package org.baywright.render.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.baywright.model.cutting.Cutter;
import org.baywright.model.cutting.CuttingJob;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.Piece;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.SectionPlan;
import org.baywright.model.cutting.Stock;
import org.baywright.model.nesting.ShedCutting;
import org.junit.jupiter.api.Test;

class CuttingTableTest {
    private static List<String> list() throws IOException {
        CuttingJob job = new CuttingJob(
                List.of(Piece.square("A", 1000, 2), Piece.square("B", 900, 1)),
                List.of(Stock.offcut(2500, 1), Stock.length(6000)),
                new Saw(3, 10));
        StringBuilder out = new StringBuilder();
        CuttingTable.write(List.of(new SectionPlan("X", Cutter.plan(job, Deadline.in(10)))), out);
        return out.toString().lines().toList();
    }

    @Test
    void aListHasTheColumnsOfAShed() throws IOException {
        StringBuilder shed = new StringBuilder();
        CuttingTable.write(new ShedCutting(List.of(), Saw.USUAL), shed);
        assertEquals(shed.toString().lines().findFirst(), list().stream().findFirst());
        int columns = list().get(0).split(",", -1).length;
        assertTrue(list().stream().allMatch(row -> row.split(",", -1).length == columns));
    }

    /** The bar from the yard first; behind the trim of 10, a saw cut of 3 apart. */
    @Test
    void piecesOfAListHaveTheirPlace() throws IOException {
        assertTrue(
                list().stream().anyMatch(row -> row.startsWith("X,1,1,2500.0,yard,1,A,1000.0,10.0,1010.0,")),
                list().toString());
        assertTrue(list().stream().anyMatch(row -> row.contains(",2,A,1000.0,1013.0,2013.0,")), list().toString());
    }
}
