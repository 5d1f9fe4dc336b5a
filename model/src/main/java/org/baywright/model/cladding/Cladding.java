package org.baywright.model.cladding;

import java.util.List;
import org.baywright.model.parts.Shed;

/**
 * Everything that closes a shed.
 *
 * @param surfaces sheeted planes, roof first
 * @param flashings by mark
 * @param gutters one a run
 */
public record Cladding(List<Surface> surfaces, List<Flashing> flashings, List<GutterRun> gutters) {
    /** Copies the lists. */
    public Cladding {
        surfaces = List.copyOf(surfaces);
        flashings = List.copyOf(flashings);
        gutters = List.copyOf(gutters);
    }

    /** The cladding of a shed; empty for a bare frame. */
    public static Cladding of(Shed shed) {
        return new Cladding(List.of(), List.of(), List.of());
    }

    /** The surfaces of one role. */
    public List<Surface> surfaces(Surface.Role role) {
        return surfaces.stream().filter(s -> s.role() == role).toList();
    }
}
