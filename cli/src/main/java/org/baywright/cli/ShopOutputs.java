package org.baywright.cli;

import java.util.Map;
import org.baywright.model.cladding.Building;
import org.baywright.render.output.OutputFolder.Content;
import org.baywright.render.output.PdfWriter;
import org.baywright.render.sheet.SheetSet;
import org.baywright.render.sheet.ShopSet;

/** The file for drill, welder, brush and machine. */
final class ShopOutputs {
    /** Its name. */
    static final String SHOP = "shop.pdf";

    private ShopOutputs() {}

    /** The shop sheets of a building. */
    static Map<String, Content> of(Building building) {
        SheetSet set = ShopSet.of(building);
        return Map.of(SHOP, out -> PdfWriter.write(set, out));
    }
}
