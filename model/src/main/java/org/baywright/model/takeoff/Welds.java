package org.baywright.model.takeoff;

import java.util.List;
import org.baywright.model.parts.Shed;

/**
 * Fillet welds of the shed: 6 mm all round the member on each of its end plates and round the brackets of a lifting
 * beam, along its plates and on site, 5 mm on both sides of each cleat, or as engineer. Common practice, no source.
 *
 * @param list those that are alike together, joint by joint
 */
public record Welds(List<Weld> list) {
    /** Sealed packs of electrodes. Common practice, no source. */
    public static final double PACK_KG = 5;

    /** What is bought unless the engineer says otherwise. */
    public static final String ELECTRODE = "E4918 3.2 mm";

    /** Copies the list. */
    public Welds {
        list = List.copyOf(list);
    }

    /** Of a shed. */
    public static Welds of(Shed shed) {
        return new Welds(new WeldFinder(shed).welds());
    }

    /** Metres of one leg. */
    public double metres(double leg) {
        return list.stream()
                .filter(w -> w.leg() == leg)
                .mapToDouble(Weld::metres)
                .sum();
    }

    /** Metres of all of them. */
    public double metres() {
        return list.stream().mapToDouble(Weld::metres).sum();
    }

    /**
     * Steel in a metre of fillet, kg: half of the leg squared.
     *
     * @source calculating filler metal consumption: area = leg²/2
     */
    public static double depositKgPerM(double leg) {
        return leg * leg / 2 * 7.85e-3;
    }

    /** Metal in all of them. */
    public double depositKg() {
        return list.stream().mapToDouble(Weld::depositKg).sum();
    }

    /** Electrodes to weld it all by hand. */
    public double electrodeKg() {
        return list.stream().mapToDouble(Weld::electrodeKg).sum();
    }

    /** The same with electrodes of another length or efficiency. */
    public double electrodeKg(Electrode electrode) {
        return electrodeKg() * Electrode.USUAL.usable() / electrode.usable();
    }

    /** Packs to buy. */
    public int packs() {
        return Packs.holding(electrodeKg(), PACK_KG);
    }
}
