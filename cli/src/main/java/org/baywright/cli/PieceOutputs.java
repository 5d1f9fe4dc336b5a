package org.baywright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.baywright.model.cladding.Building;
import org.baywright.model.parts.Part;
import org.baywright.render.output.DxfWriter;
import org.baywright.render.output.OutputFolder.Content;
import org.baywright.render.output.PdfWriter;
import org.baywright.render.sheet.PieceSheets;
import org.baywright.render.sheet.TemplateSheets;

/** The files for the shop: piece drawings, drill templates, and each plate for profile cutting. */
final class PieceOutputs {
    /** A drawing for every mark. */
    static final String PIECES = "piece-drawings.pdf";

    /** Drill templates at full size. */
    static final String TEMPLATES = "templates.pdf";

    private static final Pattern PLATE = Pattern.compile("plate-[A-Z]+[0-9]+\\.dxf");

    private PieceOutputs() {}

    /** The files of a building. */
    static Map<String, Content> of(Building building) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put(PIECES, out -> PdfWriter.write(PieceSheets.of(building), out));
        files.put(TEMPLATES, out -> PdfWriter.write(TemplateSheets.of(building), out));
        for (Part part : building.shed().parts()) {
            if (!part.kind().isMember()) {
                files.put("plate-" + part.mark() + ".dxf", Outputs.text(out -> DxfWriter.write(part, out)));
            }
        }
        return files;
    }

    /** Whether a name is that of a single plate. */
    static boolean isPlate(String name) {
        return PLATE.matcher(name).matches();
    }
}
