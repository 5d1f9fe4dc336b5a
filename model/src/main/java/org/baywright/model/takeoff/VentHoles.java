package org.baywright.model.takeoff;

import java.util.List;
import java.util.Optional;
import org.baywright.model.catalogue.HollowSection;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Attached;
import org.baywright.model.parts.Material;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;

/**
 * The holes that a hollow member needs before it is dipped in zinc: two at each end that a plate closes, at opposite
 * corners, so that air leaves and zinc runs out.
 *
 * @param member the member
 * @param closedEnds how many of its ends a plate closes
 * @param diagonal of its section, mm
 */
public record VentHoles(Part member, int closedEnds, double diagonal) {
    /** @source structural sections, galvanizing design manual: at least 25 % of the diagonal, and 10 mm */
    private static final double SHARE = 0.25;

    private static final double LEAST = 10;

    /** Every hollow member of a shed. */
    public static List<VentHoles> of(Shed shed) {
        Assemblies assemblies = Assemblies.of(shed);
        return shed.parts().stream()
                .flatMap(part -> hollow(part).stream()
                        .map(section -> new VentHoles(
                                part, closed(part, assemblies), Math.hypot(section.depth(), section.width()))))
                .toList();
    }

    private static Optional<HollowSection> hollow(Part part) {
        return part.material() instanceof Material.Bar bar && bar.section() instanceof HollowSection section
                ? Optional.of(section)
                : Optional.empty();
    }

    /** The most that any of the member's make-ups closes; a bracket is closed where it meets its member or plate. */
    private static int closed(Part part, Assemblies assemblies) {
        if (part.kind().isWeldedOn()) {
            boolean hung = assemblies.holding(part).stream()
                    .flatMap(a -> a.welded().stream())
                    .anyMatch(w -> w.plate() == part && w.isHung());
            return hung ? 2 : 1;
        }
        return assemblies.of(part).stream().mapToInt(VentHoles::closed).max().orElse(0);
    }

    private static int closed(Assembly assembly) {
        double half = assembly.member().solid().axisLength() / 2;
        return (int) assembly.welded().stream()
                .filter(Attached::isOnAnEnd)
                .map(plate -> plate.middle().x() < half)
                .distinct()
                .count();
    }

    /** The least diameter of each hole, in whole millimetres. */
    public long diameter() {
        return (long) Math.ceil(Math.max(LEAST, SHARE * diagonal));
    }

    /** Holes in one member. */
    public int holes() {
        return 2 * closedEnds;
    }
}
