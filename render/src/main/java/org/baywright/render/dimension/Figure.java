package org.baywright.render.dimension;

import java.util.Locale;
import org.baywright.model.geometry.Tolerance;

/** How numbers are printed on drawings. One formatter, so that a drawing and a bill cannot round differently. */
public final class Figure {
    private Figure() {}

    /** A length in millimetres: no unit, no thousands mark, and a decimal only when it is not whole to 0.1. */
    public static String length(double mm) {
        return plain(Tolerance.fabricated(mm));
    }

    /** A height above the finished floor, with its sign. */
    public static String level(double mm) {
        double rounded = Tolerance.fabricated(mm);
        return rounded == 0 ? "±0" : (rounded > 0 ? "+" : "") + plain(rounded);
    }

    /** An angle in degrees, one decimal at most. */
    public static String angle(double degrees) {
        return plain(Math.round(degrees * 10) / 10.0) + "°";
    }

    /** A length in metres for scale bars. */
    static String metres(double mm) {
        double thousandths = Math.round(mm);
        String text = String.format(Locale.ROOT, "%.3f", thousandths / 1000);
        return text.replaceAll("\\.?0+$", "");
    }

    /** A quantity other than a length, with so many decimals. */
    public static String decimal(double value, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", value);
    }

    private static String plain(double tenths) {
        boolean whole = tenths == Math.rint(tenths);
        return whole ? Long.toString((long) tenths) : String.format(Locale.ROOT, "%.1f", tenths);
    }
}
