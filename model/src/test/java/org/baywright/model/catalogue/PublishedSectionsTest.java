package org.baywright.model.catalogue;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** The shipped rows against figures printed by others. */
class PublishedSectionsTest {
    private static final Catalogue CATALOGUE = Catalogue.shipped();

    @ParameterizedTest
    @DisplayName("hollow sections agree with a manufacturer's AS 1163 table within 0.5 %")
    @CsvFileSource(resources = "published-rhs-as-1163.csv", useHeadersInDisplayName = true)
    void as1163(String depth, String width, String t, double massKg, double area, double inDepth, double inWidth) {
        Section section = shipped("RHS " + depth + "x" + width + "x" + t);
        assertAll(
                within(0.005, massKg, section.massKgPerM()),
                within(0.005, area, section.areaMm2()),
                within(0.005, inDepth * 1e6, section.profile().inertiaDepth()),
                within(0.005, inWidth * 1e6, section.profile().inertiaWidth()));
    }

    @ParameterizedTest
    @DisplayName("universal beams agree with HRSSP 3rd edition (December 2003), table 15, within 0.5 %")
    @CsvFileSource(resources = "published-ub.csv", useHeadersInDisplayName = true)
    void universalBeams(
            String designation,
            double depth,
            double width,
            double tf,
            double tw,
            double root,
            double area,
            double inertia,
            double modulus) {
        BeamSection beam = (BeamSection) shipped(designation);
        assertEquals(new BeamSection(designation, depth, width, tf, tw, root, beam.grade(), beam.source()), beam);
        double inDepth = beam.profile().inertiaDepth();
        assertAll(
                within(0.005, area, beam.areaMm2()),
                within(0.005, inertia * 1e6, inDepth),
                within(0.005, modulus * 1e3, inDepth / (beam.depth() / 2)));
    }

    @ParameterizedTest
    @DisplayName("hollow sections agree with EN 10219-2 within 0.5 %")
    @CsvFileSource(resources = "published-en-10219.csv", useHeadersInDisplayName = true)
    void en10219(String depth, String width, String t, double massKg, double areaCm2) {
        Section section = shipped(depth + "x" + width + "x" + t + " EN");
        assertAll(within(0.005, massKg, section.massKgPerM()), within(0.005, areaCm2 * 100, section.areaMm2()));
    }

    @Test
    @DisplayName("SHS 50x50x3 agrees with Structural hollow section dimensions and properties: 5.41 cm2, 0.190 m2/m")
    void small() {
        Section section = shipped("SHS 50x50x3");
        assertEquals(5.41, section.areaMm2() / 100, 0.005);
        assertEquals(0.190, section.surfaceM2PerM(), 0.0005);
    }

    @Test
    @DisplayName("SHS 100x100x5 worked by hand from 2t(b + h - 2t) - 0.858(ro2 - ri2): 14.2 kg/m, 0.379 m2/m")
    void common() {
        Section section = shipped("SHS 100x100x5");
        assertEquals(14.2, section.massKgPerM(), 0.05);
        assertEquals(0.379, section.surfaceM2PerM(), 0.0005);
    }

    /** A beam's designation ends in its nominal mass, which proofreads dimensions written from memory. */
    @ParameterizedTest
    @DisplayName("each universal beam and column has the mass in its designation within 1.5 %")
    @CsvSource({"universal-beams.csv", "universal-columns.csv"})
    void nominalMass(String file) {
        assertAll(Table.read(file, row -> row.text("designation")).stream().map(designation -> {
            double nominalKg = Double.parseDouble(designation.replaceFirst(".*[A-Z]", ""));
            return within(0.015, nominalKg, shipped(designation).massKgPerM());
        }));
    }

    private static Section shipped(String designation) {
        return CATALOGUE.section(designation).orElseThrow(() -> new AssertionError(designation + " is not shipped"));
    }

    private static Executable within(double share, double published, double ours) {
        return () -> assertEquals(published, ours, share * published);
    }
}
