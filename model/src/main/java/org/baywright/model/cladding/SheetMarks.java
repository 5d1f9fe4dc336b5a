package org.baywright.model.cladding;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gives sheets their marks: equal sheets share one, and they are numbered longest first. */
final class SheetMarks {
    private SheetMarks() {}

    static List<Surface> marked(List<Surface> surfaces) {
        Map<Likeness, String> marks = new HashMap<>();
        for (Surface.Role role : Surface.Role.values()) {
            List<Likeness> alike = surfaces.stream()
                    .filter(s -> s.role() == role)
                    .flatMap(s -> s.sheets().stream().map(sheet -> Likeness.of(s, sheet)))
                    .distinct()
                    .sorted(Comparator.comparing(Likeness::translucent).thenComparing(l -> -l.length))
                    .toList();
            for (int i = 0; i < alike.size(); i++) {
                marks.put(alike.get(i), (role == Surface.Role.ROOF ? "RS" : "WS") + (i + 1));
            }
        }
        return surfaces.stream().map(s -> marked(s, marks)).toList();
    }

    private static Surface marked(Surface s, Map<Likeness, String> marks) {
        List<Surface.Sheet> sheets = s.sheets().stream()
                .map(sheet -> new Surface.Sheet(
                        marks.get(Likeness.of(s, sheet)),
                        sheet.left(),
                        sheet.right(),
                        sheet.low(),
                        sheet.length(),
                        sheet.translucent()))
                .toList();
        return new Surface(s.name(), s.role(), s.profile(), s.axes(), s.outline(), s.holes(), sheets);
    }

    /** What sheets of one mark share. */
    private record Likeness(Surface.Role role, String profile, double length, boolean translucent) {
        static Likeness of(Surface surface, Surface.Sheet sheet) {
            return new Likeness(surface.role(), surface.profile().name(), sheet.length(), sheet.translucent());
        }
    }
}
