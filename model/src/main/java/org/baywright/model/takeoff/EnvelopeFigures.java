package org.baywright.model.takeoff;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Cladding;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.cladding.Surface;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;

/** The headline figures of what goes on the frame and under it. Counts are net; packs and litres are as bought. */
final class EnvelopeFigures {
    private EnvelopeFigures() {}

    static Map<String, Number> of(Building building) {
        Map<String, Number> to = new LinkedHashMap<>();
        sheets(building.cladding(), to);
        rows(building.shed(), to);
        fixings(building, to);
        return to;
    }

    /** What any shed takes on its ground and in the shop, closed or bare. */
    static Map<String, Number> ofGround(Shed shed) {
        Map<String, Number> to = new LinkedHashMap<>();
        ground(shed, to);
        return to;
    }

    private static void sheets(Cladding cladding, Map<String, Number> to) {
        for (Surface.Role role : Surface.Role.values()) {
            List<Surface> surfaces = cladding.surfaces(role);
            String name = role == Surface.Role.ROOF ? "roof" : "wall";
            to.put(
                    name + "Sheets",
                    surfaces.stream().mapToInt(s -> s.sheets().size()).sum());
            to.put(
                    name + "SheetAreaM2",
                    surfaces.stream().mapToDouble(Areas::ordered).sum());
            to.put(
                    name + "AreaM2",
                    surfaces.stream().mapToDouble(Areas::sheeted).sum());
        }
    }

    private static void rows(Shed shed, Map<String, Number> to) {
        to.put("purlinM", metres(shed, PartKind.PURLIN));
        to.put("girtM", metres(shed, PartKind.GIRT));
        to.put("bracingM", metres(shed, PartKind.BRACE));
    }

    private static double metres(Shed shed, PartKind kind) {
        return shed.parts(kind).stream()
                .mapToDouble(p -> p.quantity() * p.stockLength() / 1000)
                .sum();
    }

    private static void fixings(Building building, Map<String, Number> to) {
        Cladding cladding = building.cladding();
        to.put(
                "screws",
                ScrewOrder.lines(building).stream().mapToInt(l -> (int) l.net()).sum());
        to.put(
                "bolts",
                BoltUse.of(building.shed()).stream().mapToInt(BoltUse::count).sum());
        to.put(
                "flashingM",
                cladding.flashings().stream().mapToDouble(Flashing::length).sum() / 1000);
        to.put(
                "guttersM",
                cladding.gutters().stream().mapToDouble(GutterRun::length).sum() / 1000);
        to.put("downpipes", RoofWaterOrder.pipes(cladding.gutters()));
        to.put("openings", building.shed().openings().size());
    }

    private static void ground(Shed shed, Map<String, Number> to) {
        Concrete concrete = Concrete.of(shed);
        Adhesive adhesive = Adhesive.of(shed);
        to.put("slabAreaM2", concrete.areaM2());
        to.put("concreteM3", concrete.orderM3());
        to.put("meshSheets", concrete.meshSheets());
        to.put("adhesiveMl", adhesive.fillMl());
        to.put("cartridges", adhesive.cartridges());
        to.put("electrodeKg", Welds.of(shed).electrodeKg());
        to.put("paintL", Paint.of(shed).litres());
    }
}
