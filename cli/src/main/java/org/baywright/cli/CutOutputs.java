package org.baywright.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.cutting.SectionPlan;
import org.baywright.model.definition.Project;
import org.baywright.render.output.CuttingTable;
import org.baywright.render.output.OutputFolder.Content;
import org.baywright.render.output.PdfWriter;
import org.baywright.render.sheet.CuttingSheets;
import org.baywright.render.sheet.SheetSet;

/** The files that can be made from a cutting plan. */
final class CutOutputs {
    private CutOutputs() {}

    /** The plan of a list that belongs to no shed. */
    static Map<String, Content> plan(List<SectionPlan> plans, String source) {
        return plan(plans, new Project("Cutting plan of " + Path.of(source).getFileName(), "", "", "", "", "", "A"));
    }

    /** The plan of a shed's members. */
    static Map<String, Content> plan(List<SectionPlan> plans, Project project) {
        SheetSet set = CuttingSheets.of(project, plans);
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("cutting-plan.pdf", out -> PdfWriter.write(set, out));
        files.put("cutting-plan.csv", Outputs.text(out -> CuttingTable.write(plans, out)));
        return files;
    }
}
