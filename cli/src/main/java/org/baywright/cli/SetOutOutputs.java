package org.baywright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.baywright.model.cladding.Building;
import org.baywright.render.output.OutputFolder.Content;
import org.baywright.render.output.PdfWriter;
import org.baywright.render.output.SetOutTable;
import org.baywright.render.sheet.SetOutSet;

/** The files for setting out on the slab. */
final class SetOutOutputs {
    private SetOutOutputs() {}

    /** The set-out of a building. */
    static Map<String, Content> of(Building building) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("setout.pdf", out -> PdfWriter.write(SetOutSet.of(building), out));
        files.put("setout.csv", Outputs.text(out -> SetOutTable.write(building.shed(), out)));
        return files;
    }
}
