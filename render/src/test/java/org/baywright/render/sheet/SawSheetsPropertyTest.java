package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.Saw;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.nesting.CutList;
import org.baywright.model.nesting.ShedCutting;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;
import org.baywright.render.dimension.Figure;
import org.baywright.render.mark.Text;
import org.baywright.render.output.CutListTable;
import org.baywright.render.output.CuttingTable;

/** Cut lists and cutting plans of random sheds. */
class SawSheetsPropertyTest {
    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad();
    }

    private static ShedCutting cutting(Shed shed) {
        return ShedCutting.of(shed, ShedCutting::catalogueLengths, Saw.USUAL, Deadline.after(500_000_000));
    }

    @Property(tries = 12, seed = Seeds.SHEDS)
    void everyMarkIsListedAndPlannedAndNothingOverlaps(@ForAll("sheds") Definition definition) throws IOException {
        Shed shed = Shed.of(definition);
        ShedCutting cutting = cutting(shed);
        CutList list = CutList.of(shed, cutting);
        Set<String> printed = CutListSheets.drafts(list).stream()
                .peek(Sheds::assertReadable)
                .flatMap(Sheds::texts)
                .map(Text::content)
                .collect(Collectors.toSet());
        String plan = CuttingSheets.drafts(cutting).stream()
                .peek(Sheds::assertReadable)
                .flatMap(Sheds::texts)
                .map(Text::content)
                .collect(Collectors.joining(" "));
        StringBuilder listed = new StringBuilder();
        CutListTable.write(list, listed);
        StringBuilder planned = new StringBuilder();
        CuttingTable.write(cutting, planned);
        for (Part part : shed.parts()) {
            if (ShedCutting.isSawn(part)) {
                String length = Figure.length(part.stockLength());
                assertTrue(printed.contains(part.mark()), part.mark());
                assertTrue(printed.contains(length) || printed.contains("tip to tip " + length), length);
                assertTrue(plan.contains(part.mark() + " " + length), part.mark() + " in the plan");
                String row = "," + part.mark() + ",";
                long rows = Stream.of(planned.toString().split("\r\n"))
                        .filter(line -> line.contains(row))
                        .count();
                assertTrue(rows == part.quantity(), part.mark() + " is cut " + rows + " times");
                assertTrue(listed.toString().contains(row), part.mark());
            }
        }
    }
}
