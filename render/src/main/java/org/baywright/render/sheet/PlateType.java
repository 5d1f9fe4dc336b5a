package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.setout.SetOut;

/**
 * Plates that are laid to their string lines in one way: the same plate under the same upright, at an end line or at a
 * line between. Places are in the plate: x from the outside of the building inward, y along the wall.
 *
 * @param stands all of them
 * @param end whether an end string line runs along the upright's face rather than a frame's line through its middle
 */
record PlateType(List<PlateStand> stands, boolean end) {
    /** Copies the list. */
    PlateType {
        stands = List.copyOf(stands);
    }

    /** The types of a shed, by mark. */
    static List<PlateType> of(List<PlateStand> stands, SetOut setOut) {
        Map<String, List<PlateStand>> alike = new LinkedHashMap<>();
        stands.stream()
                .sorted(Comparator.comparing((PlateStand s) -> s.plate().mark().length())
                        .thenComparing(s -> s.plate().mark()))
                .forEach(s -> alike.computeIfAbsent(key(s, setOut), k -> new ArrayList<>())
                        .add(s));
        return alike.values().stream()
                .map(all -> new PlateType(all, atEnd(all.get(0), setOut)))
                .toList();
    }

    private static String key(PlateStand stand, SetOut setOut) {
        return String.join(
                "|",
                stand.plate().mark(),
                stand.upright().material().designation(),
                String.valueOf(outline(stand).stream()
                        .mapToDouble(Vec2::x)
                        .map(Math::rint)
                        .min()
                        .orElse(0)),
                String.valueOf(stand.isOfFrame()),
                String.valueOf(atEnd(stand, setOut)));
    }

    private static boolean atEnd(PlateStand stand, SetOut setOut) {
        int frame = stand.uprightPlace().frame();
        return stand.isOfFrame() && (frame == 1 || frame == setOut.frames());
    }

    /** The upright's outline on the plate. */
    private static List<Vec2> outline(PlateStand stand) {
        return stand.upright().solid().profile().outline().stream()
                .map(stand::onPlate)
                .toList();
    }

    Part plate() {
        return stands.get(0).plate();
    }

    Part upright() {
        return stands.get(0).upright();
    }

    boolean ofFrame() {
        return stands.get(0).isOfFrame();
    }

    /** From outside to inside. */
    double width() {
        return plate().solid().profile().depth();
    }

    /** Along the wall. */
    double depth() {
        return plate().solid().profile().width();
    }

    /** Outline and bore of the upright. */
    List<List<Vec2>> rings() {
        PlateStand stand = stands.get(0);
        List<List<Vec2>> rings = new ArrayList<>(List.of(outline(stand)));
        List<Vec2> bore = stand.upright().solid().profile().bore();
        if (!bore.isEmpty()) {
            rings.add(bore.stream().map(stand::onPlate).toList());
        }
        return rings;
    }

    /** Where the string line of its row lies: at the upright's outside face. */
    double row() {
        return outline(stands.get(0)).stream().mapToDouble(Vec2::x).min().orElseThrow();
    }

    /** Where the frame's line lies: through the middle, or an end line along the face. */
    double frame() {
        return end ? outline(stands.get(0)).stream().mapToDouble(Vec2::y).min().orElseThrow() : 0;
    }
}
