package org.baywright.model.takeoff;

import org.baywright.model.catalogue.CoarseThread;
import org.baywright.model.definition.Anchor;
import org.baywright.model.parts.Shed;

/**
 * What bonds the anchors.
 *
 * <pre>
 *   full hole  π/4 · dh² · h
 *   least      (π/4 · dh² − tensile stress area of the rod) · h: what the ring round the rod holds
 *   filled to two thirds, then the rod is pushed in; 15 % is lost
 *   cartridges = ⌈volume / (nominal − priming of its nozzle)⌉, and one spare
 * </pre>
 *
 * @source hole and fill: published epoxy anchor data sheets; two thirds, losses and priming: common practice, no source
 * @param holes how many
 * @param anchor in each of them
 */
public record Adhesive(int holes, Anchor anchor) {
    /** Of a hole, before the rod goes in. */
    public static final double FILL = 2.0 / 3;

    /** Of the fill: the nozzle's dribble, what wells out round the rod, what sets in the nozzle. */
    public static final double LOSS = 0.15;

    /** New nozzles after pauses. Common practice, no source. */
    private static final int SPARE_NOZZLES = 2;

    /** A brush is worn after so many holes. Common practice, no source. */
    private static final int HOLES_A_BRUSH = 50;

    /** What a hand gun gives at a stroke, mL; guns differ. Common practice, no source. */
    private static final double STROKE_ML = 11;

    /** A bit is blunt after so many metres. Common practice, no source. */
    private static final double METRES_A_BIT = 15;

    /** Of a shed. */
    public static Adhesive of(Shed shed) {
        return new Adhesive(shed.anchorHoles().size(), shed.definition().anchor());
    }

    /** All holes together. */
    public double drillingM() {
        return holes * anchor.embedment() / 1000;
    }

    /** What one empty hole holds. */
    public double holeMl() {
        double d = anchor.holeDiameter();
        return Math.PI / 4 * d * d * anchor.embedment() / 1000;
    }

    /** The least that one hole takes: the ring round the rod and the grooves of its thread. */
    public double ringMl() {
        return holeMl() - CoarseThread.stressArea(anchor.rodDiameter()) * anchor.embedment() / 1000;
    }

    /** Strokes of a usual hand gun for one hole. */
    public long strokes() {
        return Math.max(1, Math.round(FILL * holeMl() / STROKE_ML));
    }

    /** Holes that one cartridge fills. */
    public int holesACartridge() {
        double each = anchor.cartridge().volumeMl() - anchor.cartridge().primingMl();
        return (int) Math.floor(each / (FILL * holeMl() * (1 + LOSS)) + 1e-9);
    }

    /** What goes into the holes, without losses. */
    public double fillMl() {
        return holes * FILL * holeMl();
    }

    /** How many cartridges holes use up that are filled to a part of their depth, not rounded. */
    public double cartridgesAt(double fill) {
        double each = anchor.cartridge().volumeMl() - anchor.cartridge().primingMl();
        return holes * fill * holeMl() * (1 + LOSS) / each;
    }

    /** Cartridges that the holes use up, losses and priming counted. */
    public int cartridgesUsed() {
        return Packs.holding(cartridgesAt(FILL), 1);
    }

    /** Cartridges to buy: one spare. */
    public int cartridges() {
        return holes == 0 ? 0 : cartridgesUsed() + 1;
    }

    /** Nozzles to buy: one a cartridge, and more for pauses longer than the adhesive can be worked. */
    public int nozzles() {
        return holes == 0 ? 0 : cartridges() + SPARE_NOZZLES;
    }

    /** Bits that are worn out. */
    public int bitsUsed() {
        return Packs.holding(drillingM(), METRES_A_BIT);
    }

    /** Brushes that are worn out. */
    public int brushesUsed() {
        return Packs.holding(holes, HOLES_A_BRUSH);
    }

    /** Brushes to buy: one spare. */
    public int brushes() {
        return holes == 0 ? 0 : brushesUsed() + 1;
    }
}
