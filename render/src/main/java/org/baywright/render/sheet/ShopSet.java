package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Project;
import org.baywright.model.parts.Shed;

/** The sheets for the hours with drill, welder, brush and hired machine. */
public final class ShopSet {
    private ShopSet() {}

    /** The shop sheets of a building. */
    public static SheetSet of(Building building) {
        Project project = building.shed().definition().project();
        return new SheetSet(
                project.name() + ": shop sheets",
                project.drawnBy(),
                "Drilling, adhesive, welds, paint and lifts; quantities to verify",
                Framing.framed(project, drafts(building.shed())));
    }

    /** The sheets before framing. */
    static List<Draft> drafts(Shed shed) {
        List<Draft> drafts = new ArrayList<>();
        drafts.addAll(DrillingSheet.of(shed));
        drafts.addAll(AdhesiveSheet.of(shed));
        drafts.addAll(WeldSheets.of(shed));
        drafts.addAll(CoatingSheets.of(shed));
        drafts.addAll(LiftSheets.of(shed));
        return drafts;
    }
}
