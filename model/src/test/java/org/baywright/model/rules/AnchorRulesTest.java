package org.baywright.model.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.DefinitionReader;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Reading;
import org.baywright.model.definition.Seeds;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told about concrete round anchors, just inside and just outside each limit. */
class AnchorRulesTest {
    private static final String FIVE = "span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n";

    private static List<Problem> found(String more) {
        Reading reading = DefinitionReader.read("test.yaml", FIVE + more, List.of(), Catalogue.shipped());
        return ShedRules.check(
                reading.definition().orElseThrow(() -> new AssertionError(reading.problems())),
                reading.places()::where);
    }

    private static String codes(String more) {
        return String.join(
                " ",
                found(more).stream()
                        .map(p -> p.isError() ? p.code() : "(" + p.code() + ")")
                        .toList());
    }

    private static Problem one(String more, String code) {
        return found(more).stream()
                .filter(p -> p.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(codes(more)));
    }

    /**
     * A 100 mm column, gauge 170, M16: the holes stand 35 outside its face, so the product's least edge of 80 asks 115
     * and the full 187.5 asks 222.5.
     */
    @ParameterizedTest
    @CsvSource({
        "114, anchor-off-edge",
        "115, (anchor-near-edge) (anchors-share-concrete)",
        "222, (anchor-near-edge) (anchors-share-concrete)",
        "222.5, (anchors-share-concrete)",
        "0, anchor-off-edge"
    })
    void theSlabsEdge(String beyond, String codes) {
        assertEquals(codes, codes("envelope: none\nslab: {beyond: " + beyond + "}\n"));
    }

    /** A door's jambs of 100 beside a clear 500 stand 600 apart: pads of 600 touch, wider ones overlap. */
    @ParameterizedTest
    @CsvSource({"600, 0", "602, 2", "700, 100"})
    void padsThatOverlapAreTold(int side, int overlap) {
        String door = "envelope: full\nopenings: [{type: door, wall: left, bay: 2, width: 500}]\n"
                + "slab: {floor: pads, padDepth: 400, padSide: " + side + "}\n";
        List<Problem> told = found(door).stream()
                .filter(p -> p.code().equals("pads-overlap"))
                .toList();
        assertEquals(overlap > 0 ? 1 : 0, told.size());
        if (overlap > 0) {
            assertTrue(told.get(0).message().endsWith("overlap by " + overlap + " mm"), told.get(0)::message);
            assertTrue(told.get(0).remedy().endsWith("slab.padSide of 600 or less"), told.get(0)::remedy);
            assertEquals("slab.padSide", told.get(0).where().path());
        }
        String slab = door.replace("floor: pads", "floor: slab");
        assertTrue(found(slab).stream().noneMatch(p -> p.code().equals("pads-overlap")));
    }

    @Test
    void bothFiguresAreGiven() {
        Problem usual = one("", "anchor-near-edge");
        assertTrue(usual.remedy().contains("115 mm for the product's least of 80"), usual::remedy);
        assertTrue(usual.remedy().contains("223 mm for the full distance"), usual::remedy);
        Problem off = one("slab: {beyond: 0}\n", "anchor-off-edge");
        assertTrue(off.message().contains("is off the slab"), off::message);
        assertEquals("slab.beyond", off.where().path());
        assertEquals(6, off.where().line());
    }

    /** A lean-to that ends between frames makes a corner that reaches back in; its columns stand as far from the edge. */
    @Test
    void aLeanToThatEndsOnTheWayHasTheSameEdge() {
        String leanTo = "envelope: none\nleanTos: [{side: left, width: 4000, toBay: 2}]\n";
        assertEquals("(anchor-near-edge) (anchors-share-concrete)", codes(leanTo + "slab: {beyond: 115}\n"));
        assertEquals("anchor-off-edge", codes(leanTo + "slab: {beyond: 114}\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "slab: {thickness: 165, padSide: 0}|",
                "slab: {thickness: 164, padSide: 0}|slab-too-thin",
                "slab: {padDepth: 164}|slab-too-thin",
                "slab: {padDepth: 165}|",
                "slab: {padSide: 170}|slab-too-thin",
                "slab: {padSide: 329}|(thickening-narrow)",
                "slab: {padSide: 330}|",
                "anchor: {minimumConcrete: 300}|",
                "anchor: {minimumConcrete: 301}|slab-too-thin",
                "anchor: {minimumSpacing: 170}|",
                "anchor: {minimumSpacing: 170}; basePlate: {gaugeX: 169}|anchors-close",
                "basePlate: {holes: 8}|",
                "basePlate: {holes: 8, gaugeX: 158, gaugeY: 170}|anchors-close",
                "anchor: {size: M20}; basePlate: {holes: 8}|",
                "column: SHS 89x89x5; anchor: {size: M20}; basePlate: {holes: 8}|(rafter-past-end-line) anchor-off-edge",
                "anchor: {size: M20}; basePlate: {holes: 8}; slab: {beyond: 170}|",
            })
    void depthAndSpacing(String more, String codes) {
        String found = codes("envelope: none\n" + more.replace("; ", "\n") + "\n")
                .replace("(anchor-near-edge)", "")
                .replace("(anchors-share-concrete)", "")
                .strip();
        assertEquals(codes == null ? "" : codes, found);
    }

    /** The thickening that is usual satisfies the usual anchors, so there is nothing to say about depth. */
    @Test
    void theUsualThickeningIsDeepEnough() {
        assertEquals("(anchor-near-edge) (anchors-share-concrete)", codes("envelope: none\n"));
    }

    @Test
    void spacingForFullCapacityIsAdvice() {
        Problem group = one("", "anchors-share-concrete");
        assertTrue(group.message().contains("stand 170 mm apart"), group::message);
        assertTrue(group.message().contains("375"), group::message);
        assertEquals("", codes("envelope: none\nanchor: {embedment: 50}\nslab: {beyond: 200}\n"));
    }

    /** The first column's holes lie 35 outside its faces and 135 inside; a bar at 135 both ways meets three of them. */
    @Test
    void strikingABarIsAdviceWithTheSmallestShift() {
        String bars = "envelope: none\nslab: {bars: {diameter: 12, spacing: 200, offset: 135}}\n";
        Problem strike = one(bars, "anchor-hits-bar");
        assertTrue(strike.message().contains("the first at A/1"), strike::message);
        assertEquals("slab.bars", strike.where().path());
        assertTrue(codes("anchor: {embedment: 40}\n" + bars).indexOf("anchor-hits-bar") < 0);
    }

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad();
    }

    /** What we choose ourselves never breaks our own rules. */
    @Property(tries = 60, seed = Seeds.SHEDS)
    void noRandomShedIsRefusedForItsAnchors(@ForAll("sheds") Definition shed) {
        List<Problem> errors = ShedRules.check(shed, path -> new Where("test", path, 1, 1)).stream()
                .filter(Problem::isError)
                .filter(p -> p.code().startsWith("anchor") || p.code().startsWith("slab"))
                .toList();
        assertEquals(List.of(), errors);
    }
}
