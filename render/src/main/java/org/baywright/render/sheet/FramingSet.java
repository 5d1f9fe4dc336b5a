package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.parts.Shed;

/** Framing, bracing and roof drainage: all that goes on the frame, numbered through as one series. */
final class FramingSet {
    private FramingSet() {}

    /** All of it. */
    static List<Draft> of(Building building) {
        return of(building, SetScope.ALL);
    }

    /** What one set has of it; a council wants no schedule of every row's holes. */
    static List<Draft> of(Building building, SetScope scope) {
        Shed shed = building.shed();
        List<Draft> drafts = new ArrayList<>();
        if (shed.definition().envelope().isFull()) {
            drafts.addAll(RoofFramingPlan.of(shed, scope));
            drafts.addAll(RoofSheetingPlan.of(building));
            drafts.addAll(FramingElevations.of(building));
        }
        if (shed.definition().envelope().isFull() && scope == SetScope.ALL) {
            drafts.addAll(RowSchedule.of(shed));
        }
        List<Draft> numbered = new ArrayList<>();
        for (Draft draft : drafts) {
            numbered.add(new Draft(
                    "S6." + (numbered.size() + 1), draft.title(), draft.scale(), draft.marks(), draft.dimensions()));
        }
        return numbered;
    }
}
