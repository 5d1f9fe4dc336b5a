package org.baywright.model.catalogue;

import org.baywright.model.geometry.Profile;

/** A steel section that a member is cut from. The depth is its first dimension, in the plane of the frame. */
public sealed interface Section permits HollowSection, BeamSection, ColdFormedSection, BarSection {
    /** Density of steel, kg/m³. @source AS/NZS 1163, EN 10219-2 (nominal mass rule), EN 1991-1-1 table A.4 */
    double DENSITY_KG_PER_M3 = 7850;

    /** The trade's name of the section, such as {@code SHS 100x100x5}. */
    String designation();

    /** The grade and product standard it is ordered to. */
    String grade();

    /** Where the row comes from. */
    String source();

    /** First dimension, mm. */
    double depth();

    /** Second dimension, mm. */
    double width();

    /** The cross-section that is swept: exact area and second moments, drawn with sharp corners. */
    Profile profile();

    /** Painted surface of a metre, m²/m; outside only for a hollow section. */
    double surfaceM2PerM();

    /** Cross-section area, mm². */
    default double areaMm2() {
        return profile().area();
    }

    /** Mass of a metre, kg/m. */
    default double massKgPerM() {
        return areaMm2() * DENSITY_KG_PER_M3 * 1e-6;
    }
}
