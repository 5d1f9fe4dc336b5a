package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.cladding.Surface;

/** Screws in boxes, with one in twenty spare. */
final class ScrewOrder {
    /** @source 5 to 10 % spare: common practice */
    private static final double SPARE = 0.05;

    /** Screws in a box. Common practice, no source. */
    private static final int BOX = 100;

    /** Grip of the rows' flange and of the seal, under a crest. From memory: 35 long through a crest 17 high. */
    private static final double PAST_CREST = 18;

    private static final List<Integer> LENGTHS = List.of(35, 45, 55, 65, 75, 90, 115);

    /** Most between the screws along each edge of a flashing. Common practice, no source. */
    private static final double ALONG_FLASHING = 500;

    private static final String FINISH = "class 4, head as the sheet's colour";

    private ScrewOrder() {}

    static List<BillLine> lines(Building building) {
        List<BillLine> lines = new ArrayList<>();
        int stitching = 0;
        List<String> stitched = new ArrayList<>();
        for (Surface.Role role : Surface.Role.values()) {
            int sheeting = 0;
            List<String> names = new ArrayList<>();
            for (Surface surface : building.cladding().surfaces(role)) {
                ScrewCount count = ScrewCount.of(surface, building);
                sheeting += count.sheeting();
                stitching += count.stitching();
                names.add(surface.name());
            }
            if (sheeting > 0) {
                lines.add(line(article(building, role), names, sheeting, note(role)));
            }
            stitched.addAll(names);
        }
        if (stitching > 0) {
            lines.add(line("stitching screw 10-16x16 with seal", stitched, stitching, "side laps at 600"));
        }
        lines.addAll(flashings(building.cladding().flashings()));
        return lines;
    }

    /** Gauge, threads to the inch and length. From memory, as all screw sizes here. */
    private static String article(Building building, Surface.Role role) {
        if (role == Surface.Role.WALL) {
            return "wall screw 12-14x20 with seal";
        }
        double deep = building.cladding().surfaces(role).stream()
                .mapToDouble(s -> s.profile().depth())
                .max()
                .orElseThrow();
        int length = LENGTHS.stream()
                .filter(l -> l >= deep + PAST_CREST)
                .findFirst()
                .orElse(LENGTHS.get(LENGTHS.size() - 1));
        return "roof screw 12-14x" + length + " with seal";
    }

    private static String note(Surface.Role role) {
        return role == Surface.Role.ROOF
                ? "through crests; the maker's wind table governs"
                : "through valleys; the maker's wind table governs";
    }

    private static List<BillLine> flashings(List<Flashing> flashings) {
        int screws = flashings.stream()
                .flatMap(f -> f.runs().stream())
                .mapToInt(r -> 2 * ((int) Math.ceil(r.length() / ALONG_FLASHING - 1e-9) + 1))
                .sum();
        List<String> marks = flashings.stream().map(Flashing::mark).toList();
        return screws == 0
                ? List.of()
                : List.of(line("flashing screw 10-16x16 with seal", marks, screws, "both edges at 500"));
    }

    private static BillLine line(String article, List<String> marks, int net, String note) {
        int order = Packs.count(net, SPARE, BOX);
        String boxes = order / BOX + (order == BOX ? " box of " : " boxes of ") + BOX;
        return BillLine.counted(
                BillGroup.FIXINGS, BillItem.of(article, FINISH, marks, boxes + "; " + note), net, order);
    }
}
