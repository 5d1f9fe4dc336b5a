package org.baywright.model.parts;

import java.util.Locale;
import org.baywright.model.catalogue.Section;

/** What a part is cut from. */
public sealed interface Material {
    /** As it is ordered, such as {@code SHS 100x100x5} or {@code PL 16x240}. */
    String designation();

    /** As drawings and schedules name it, saying when it stands turned. */
    default String description() {
        return designation();
    }

    /** Grade and product standard. */
    String grade();

    /** Painted surface of a part cut from it, m², given its length along the bar or plate. */
    double surfaceM2(double lengthMm);

    /**
     * A bar of rolled or formed section.
     *
     * @param turned true when its second dimension lies in the plane of the frame
     */
    record Bar(Section section, boolean turned) implements Material {
        @Override
        public String designation() {
            return section.designation();
        }

        @Override
        public String description() {
            return designation() + (turned ? " turned" : "");
        }

        @Override
        public String grade() {
            return section.grade();
        }

        @Override
        public double surfaceM2(double lengthMm) {
            return section.surfaceM2PerM() * lengthMm / 1000;
        }
    }

    /**
     * Flat plate, cut to a width; its length is the part's longer side.
     *
     * @param thickness mm
     * @param width the shorter side, mm
     */
    record Plate(double thickness, double width) implements Material {
        @Override
        public String designation() {
            return "PL " + number(thickness) + "x" + number(width);
        }

        /** @source AS/NZS 3678 grade 250 (from memory); trade default */
        @Override
        public String grade() {
            return "250 AS/NZS 3678";
        }

        /** Both faces and the four edges. */
        @Override
        public double surfaceM2(double lengthMm) {
            return 2 * (width * lengthMm + thickness * (width + lengthMm)) / 1e6;
        }

        private static String number(double mm) {
            return Math.abs(mm - Math.rint(mm)) < 0.05
                    ? String.valueOf(Math.round(mm))
                    : String.format(Locale.ROOT, "%.1f", mm);
        }
    }
}
