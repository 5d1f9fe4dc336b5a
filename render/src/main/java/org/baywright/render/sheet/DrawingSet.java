package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Project;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Bill;

/** The drawings of a shed, framed and numbered. */
public final class DrawingSet {
    private DrawingSet() {}

    /** The set for council and engineer. */
    public static SheetSet of(Building building, Bill bill) {
        Project project = building.shed().definition().project();
        return new SheetSet(
                project.name() + ": drawings",
                project.drawnBy(),
                "Draft drawings, not for construction until certified",
                Framing.framed(project, drafts(building, bill)));
    }

    /** The sheets before framing, with every dimension they print. */
    static List<Draft> drafts(Building building, Bill bill) {
        Shed shed = building.shed();
        List<Draft> drafts = new ArrayList<>();
        drafts.addAll(SiteSheet.of(shed));
        drafts.addAll(PlanSheet.of(shed));
        drafts.addAll(ElevationSheets.of(shed));
        drafts.addAll(SectionSheets.of(shed));
        drafts.addAll(BaseSheet.of(shed));
        drafts.addAll(BillSheets.of(shed, bill));
        // Joints come with their sections but are numbered, and so bound, after the set-out.
        drafts.sort(Comparator.comparing(d -> d.number().charAt(1)));
        // The cover lists the others, so it comes last here and first in the set.
        drafts.add(0, CoverSheet.of(shed, drafts));
        return drafts;
    }
}
