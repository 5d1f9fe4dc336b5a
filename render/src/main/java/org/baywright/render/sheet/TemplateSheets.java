package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Project;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;

/** Full-size drill templates of the base plates, one for each member that stands on one in its own way. */
public final class TemplateSheets {
    private TemplateSheets() {}

    /** The templates of a building; without sheets when it has no base plate. */
    public static SheetSet of(Building building) {
        Shed shed = building.shed();
        Project project = shed.definition().project();
        return new SheetSet(
                project.name() + ": drill templates",
                project.drawnBy(),
                "Drill templates at full size; print at 100 %, measure before you drill",
                sheets(shed));
    }

    private static List<Sheet> sheets(Shed shed) {
        Assemblies assemblies = Assemblies.of(shed);
        List<Sheet> sheets = new ArrayList<>();
        int number = 0;
        for (Part plate : shed.parts(PartKind.BASE_PLATE)) {
            for (PlateOutline outline : PlateOutline.of(plate, assemblies.holding(plate))) {
                sheets.addAll(new Template(plate, outline, shed.definition().anchor()).sheets("T" + ++number));
            }
        }
        return sheets;
    }
}
