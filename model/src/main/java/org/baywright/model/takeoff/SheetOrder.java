package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.Sheeting;

/** Sheets by profile, colour and length, longest first, those that let light in apart. */
final class SheetOrder {
    private SheetOrder() {}

    static List<BillLine> lines(Building building) {
        Map<String, List<Sheet>> alike = new LinkedHashMap<>();
        for (Surface surface : building.cladding().surfaces()) {
            for (Surface.Sheet sheet : surface.sheets()) {
                Sheet one = new Sheet(surface, sheet, colour(building, surface));
                alike.computeIfAbsent(one.likeness(), k -> new ArrayList<>()).add(one);
            }
        }
        return alike.values().stream()
                .sorted(Comparator.comparing((List<Sheet> s) -> s.get(0).sheet.translucent())
                        .thenComparing(s -> s.get(0).surface.role())
                        .thenComparing(s -> -s.get(0).sheet.length()))
                .map(SheetOrder::line)
                .toList();
    }

    /** Colour of a surface, or what is said when none was given. */
    static String colour(Building building, Surface surface) {
        Sheeting sheeting = building.shed().definition().envelope().sheeting();
        String colour = surface.role() == Surface.Role.ROOF
                ? sheeting.roof().colour()
                : sheeting.walls().colour();
        return colour.isBlank() ? "colour as chosen" : colour;
    }

    private record Sheet(Surface surface, Surface.Sheet sheet, String colour) {
        String likeness() {
            return String.join(
                    "|",
                    sheet.mark(),
                    surface.profile().name(),
                    surface.role().name(),
                    colour,
                    String.valueOf(Math.round(sheet.length() * 10)),
                    String.valueOf(sheet.translucent()));
        }
    }

    private static BillLine line(List<Sheet> sheets) {
        Sheet first = sheets.get(0);
        SheetProfile profile = first.surface.profile();
        double metres = sheets.size() * first.sheet.length() / 1000;
        boolean light = first.sheet.translucent();
        String role = first.surface.role() == Surface.Role.ROOF ? "roof" : "wall";
        BillItem item = new BillItem(
                profile.name() + (light ? " translucent" : ""),
                light ? "translucent, profile to match" : profile.thickness() + " BMT, " + first.colour,
                first.sheet.length(),
                List.of(first.sheet.mark()),
                role + ", cover " + Math.round(profile.cover()));
        double mass = light ? 0 : metres * profile.cover() / 1000 * profile.massKgPerM2();
        return new BillLine(BillGroup.SHEETS, item, sheets.size(), BillLine.Unit.METRES, metres, 0, mass);
    }
}
