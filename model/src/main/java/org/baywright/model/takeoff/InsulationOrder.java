package org.baywright.model.takeoff;

import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Surface;

/** Blanket under the roof sheets and the mesh that carries it, where it was asked for. */
final class InsulationOrder {
    /** A roll of blanket, and of safety mesh. Common practice, no source. */
    private static final double BLANKET_M2 = 18;

    private static final double MESH_M2 = 90;

    /** Laps and ends. Common practice, no source. */
    private static final double LAPS = 0.05;

    private InsulationOrder() {}

    static List<BillLine> lines(Building building) {
        List<Surface> roofs = building.cladding().surfaces(Surface.Role.ROOF);
        if (roofs.isEmpty()
                || !building.shed().definition().envelope().sheeting().roof().blanket()) {
            return List.of();
        }
        double area = roofs.stream().mapToDouble(Areas::sheeted).sum();
        List<String> names = roofs.stream().map(Surface::name).toList();
        return List.of(
                line("insulation blanket 55 mm, foil faced", names, area, BLANKET_M2, "rolls 1.2x15 m"),
                line("safety mesh 150x300", names, area, MESH_M2, "rolls 1.8x50 m; fixed before the blanket is laid"));
    }

    private static BillLine line(String article, List<String> names, double area, double roll, String note) {
        int rolls = Packs.holding(area * (1 + LAPS), roll);
        return BillLine.measured(
                BillGroup.INSULATION,
                BillItem.of(article, "", names, note),
                rolls,
                BillLine.Unit.SQUARE_METRES,
                area,
                rolls * roll);
    }
}
