package org.baywright.model.catalogue;

/**
 * A roofing and walling sheet.
 *
 * @param name trade name
 * @param form how it is folded
 * @param cover width that one sheet covers once lapped, mm
 * @param ribPitch from rib to rib, mm
 * @param depth over the ribs, mm
 * @param thickness base metal, mm
 * @param massKgPerM2 of covered area
 * @param minPitchDeg least roof pitch
 * @param screws at a sheet: at ends and edges, and between
 * @param source where the row comes from
 */
public record SheetProfile(
        String name,
        Form form,
        double cover,
        double ribPitch,
        double depth,
        double thickness,
        double massKgPerM2,
        double minPitchDeg,
        Screws screws,
        String source) {
    /** How a sheet is folded. */
    public enum Form {
        CORRUGATED,
        TRAPEZOIDAL
    }

    /** Screws to a sheet at one support. */
    public record Screws(int atEnds, int between, int onWalls) {}

    /** Checks the figures. */
    public SheetProfile {
        if (!(cover > 0) || !(ribPitch > 0) || !(depth > 0) || !(thickness > 0) || !(massKgPerM2 > 0)) {
            throw new IllegalArgumentException("a sheet has a cover, ribs, a depth, a thickness and a mass: " + name);
        }
    }
}
