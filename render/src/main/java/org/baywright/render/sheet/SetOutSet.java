package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Project;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;

/** The sheets for setting out plates and anchors on the slab with string lines, tape and drill. */
public final class SetOutSet {
    private SetOutSet() {}

    /** The set-out of a building. */
    public static SheetSet of(Building building) {
        Project project = building.shed().definition().project();
        return new SheetSet(
                project.name() + ": set-out",
                project.drawnBy(),
                "Set-out of plates and anchors; check before you drill",
                Framing.framed(project, drafts(building.shed())));
    }

    /** The sheets before framing. */
    static List<Draft> drafts(Shed shed) {
        List<PlateStand> stands = PlateStand.of(shed);
        List<Draft> drafts = new ArrayList<>();
        drafts.addAll(SetOutWork.of(shed, stands));
        drafts.addAll(StringLinePlan.of(shed, stands));
        drafts.addAll(PlateSetting.of(shed, stands));
        drafts.addAll(BarSheets.of(shed));
        return drafts;
    }
}
