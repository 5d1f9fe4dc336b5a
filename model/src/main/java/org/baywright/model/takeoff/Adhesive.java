package org.baywright.model.takeoff;

import org.baywright.model.definition.Anchor;
import org.baywright.model.parts.Shed;

/**
 * What bonds the anchors.
 *
 * <pre>
 *   full hole  π/4 · dh² · h
 *   filled to two thirds, then the rod is pushed in; 15 % is lost
 *   cartridges = ⌈volume / (500 − priming of its nozzle)⌉, and one spare
 * </pre>
 *
 * @source hole and fill: published epoxy anchor data sheets; two thirds, losses and priming: common practice, no source
 * @param holes how many
 * @param holeDiameter of each
 * @param depth of each
 */
public record Adhesive(int holes, double holeDiameter, double depth) {
    private static final double FILL = 2.0 / 3;
    private static final double LOSS = 0.15;
    private static final double CARTRIDGE_ML = 500;
    private static final double PRIMING_ML = 15;

    /** Of a shed. */
    public static Adhesive of(Shed shed) {
        Anchor anchor = shed.definition().anchor();
        return new Adhesive(shed.anchorHoles().size(), anchor.holeDiameter(), anchor.embedment());
    }

    /** All holes together. */
    public double drillingM() {
        return holes * depth / 1000;
    }

    /** What goes into the holes, without losses. */
    public double fillMl() {
        return holes * FILL * Math.PI / 4 * holeDiameter * holeDiameter * depth / 1000;
    }

    /** Cartridges that the holes use up, losses and priming counted. */
    public int cartridgesUsed() {
        return Packs.holding(fillMl() * (1 + LOSS), CARTRIDGE_ML - PRIMING_ML);
    }

    /** Cartridges to buy: one spare. */
    public int cartridges() {
        return holes == 0 ? 0 : cartridgesUsed() + 1;
    }
}
