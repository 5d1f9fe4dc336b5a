package org.baywright.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.cutting.SectionPlan;
import org.baywright.model.definition.Project;
import org.baywright.model.nesting.CutList;
import org.baywright.render.output.CutListTable;
import org.baywright.render.output.CuttingTable;
import org.baywright.render.output.OutputFolder.Content;
import org.baywright.render.output.PdfWriter;
import org.baywright.render.sheet.CutListSheets;
import org.baywright.render.sheet.CuttingSheets;
import org.baywright.render.sheet.SheetSet;

/** The files that can be made for the saw. */
final class CutOutputs {
    /** What is made for a shed. */
    static final List<String> NAMES = List.of("cut-list.pdf", "cut-list.csv", "cutting-plan.pdf", "cutting-plan.csv");

    private CutOutputs() {}

    /** The plan of a list that belongs to no shed. */
    static Map<String, Content> plan(List<SectionPlan> plans, String source) {
        Project project = new Project("Cutting plan of " + Path.of(source).getFileName(), "", "", "", "", "", "A");
        SheetSet set = CuttingSheets.of(project, plans);
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("cutting-plan.pdf", out -> PdfWriter.write(set, out));
        files.put("cutting-plan.csv", Outputs.text(out -> CuttingTable.write(plans, out)));
        return files;
    }

    /** The cut list and the cutting plan of a shed. */
    static Map<String, Content> of(Outputs outputs) {
        CutList list = CutList.of(outputs.building().shed(), outputs.cutting());
        Project project = outputs.building().shed().definition().project();
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("cut-list.pdf", out -> PdfWriter.write(CutListSheets.of(project, list), out));
        files.put("cut-list.csv", Outputs.text(out -> CutListTable.write(list, out)));
        files.put("cutting-plan.pdf", out -> PdfWriter.write(CuttingSheets.of(project, outputs.cutting()), out));
        files.put("cutting-plan.csv", Outputs.text(out -> CuttingTable.write(outputs.cutting(), out)));
        return files;
    }
}
