package org.baywright.model.parts;

import org.baywright.model.catalogue.BarSection;

/**
 * What pulls the two rods of a brace together: threaded left-hand on the longer rod and right-hand on the shorter one,
 * with a lock nut on each.
 *
 * <p>Common practice, no source; or as the engineer says. A body of about 10 d holds 3 d of either thread when set half
 * way, which leaves 4 d between the rods; a thread of 8 d has that, its nut of 0.9 d and 4 d to take up.
 *
 * @param rod diameter of the rods, mm
 */
public record Turnbuckle(double rod) {
    private static final double BODY = 10;
    private static final double BETWEEN = 4;
    private static final double THREAD = 8;

    /** Of a rod; the part must be one. */
    public static Turnbuckle on(Part part) {
        if (part.material() instanceof Material.Bar bar && part.isRod()) {
            return new Turnbuckle(bar.section().depth());
        }
        throw new IllegalArgumentException("no rod: " + part.mark());
    }

    static Turnbuckle on(BarSection section) {
        return new Turnbuckle(section.depth());
    }

    /** Thread, such as {@code M16}. */
    public String size() {
        return "M" + Math.round(rod);
    }

    /** Of its body. */
    double length() {
        return BODY * rod;
    }

    /** Between the rods' ends when it is set half way. */
    double between() {
        return BETWEEN * rod;
    }

    /** Threaded length of either rod. */
    public double thread() {
        return PlateRoom.upTo5(THREAD * rod);
    }
}
