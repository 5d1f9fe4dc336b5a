package org.baywright.render.sheet;

import java.util.List;
import org.baywright.model.definition.Project;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Bill;

/** The order for a steel merchant. */
public final class OrderSet {
    private OrderSet() {}

    /** The order of a shed. */
    public static SheetSet of(Shed shed, Bill bill) {
        Project project = shed.definition().project();
        return new SheetSet(
                project.name() + ": order",
                project.drawnBy(),
                "Material order, quantities for the buyer to verify",
                Framing.framed(project, List.of(new Draft("O1", "Material order", "none", List.of(), List.of()))));
    }
}
