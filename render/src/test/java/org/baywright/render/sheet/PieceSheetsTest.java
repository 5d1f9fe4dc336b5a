package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.output.PdfWriter;
import org.baywright.render.paper.Scale;
import org.junit.jupiter.api.Test;

/** Piece drawings. */
class PieceSheetsTest {
    private static final String SHED = "span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
            + "column: SHS 100x100x5\nrafter: RHS 200x100x5\ncapPlate: {thickness: 12}\ngroutGap: 20\n"
            + "basePlate: {thickness: 16}\nanchor: {size: M16}\nenvelope: full\n";

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad();
    }

    @Property(tries = 8, seed = Seeds.SHEDS)
    void noWordsOverlapAndNothingLeavesTheRoom(@ForAll("sheds") Definition definition) {
        Building building = Building.of(definition);
        List<Draft> drafts = PieceSheets.drafts(building);
        drafts.forEach(Sheds::assertReadable);
        List<String> said =
                drafts.stream().flatMap(Sheds::texts).map(Text::content).toList();
        for (Part part : building.shed().parts()) {
            String head = part.mark() + " ";
            assertTrue(said.stream().anyMatch(s -> s.startsWith(head)), () -> part.mark() + " is not drawn");
        }
    }

    /**
     * C1 by hand. It stands on 20 of grout and a 16 plate. Its outside face ends 212/cos 10° = 215.27 below the eave of
     * 4200, rafter and cap being 212 deep: 4200 − 215.27 − 36 = 3948.7. Inside it is 100·tan 10° = 17.6 longer: 3966.4.
     */
    @Test
    void columnByHand() {
        List<String> said = said(SHED);
        assertTrue(said.contains("3948.7 lower edge"), said::toString);
        assertTrue(said.contains("3966.4 upper edge"), said::toString);
        assertTrue(said.contains("-16 BP1"), said::toString);
        assertTrue(said.contains("3966.4 tip"), said::toString);
        // The lowest girt's cleat lies at 150 over the floor, 36 under the column's foot.
        assertTrue(said.stream().anyMatch(s -> s.startsWith("114 GC1")), said::toString);
        assertTrue(String.join(" ", said).contains("10° from square, long point on the upper edge"), said::toString);
        assertTrue(said.contains("z6") && said.contains("z5"), said::toString);
    }

    /**
     * BP1 by hand: gauge 100 + 2·(6 + 25 + 3) = 168, up to 170; edges of 35; so holes at 35 and 205 of 240, and a column
     * of 100 in the middle from 70 to 170.
     */
    @Test
    void basePlateByHand() {
        Shed shed = Shed.of(Definitions.of(SHED));
        Part plate = shed.parts().stream()
                .filter(p -> p.mark().equals("BP1"))
                .findFirst()
                .orElseThrow();
        Block block = PlateBlock.of(plate, Assemblies.of(shed).holding(plate), 0);
        List<String> said = block.marks().stream()
                .filter(Text.class::isInstance)
                .map(m -> ((Text) m).content())
                .toList();
        for (String figure : List.of("35", "205", "240")) {
            assertEquals(2, said.stream().filter(figure::equals).count(), () -> figure + " twice in " + said);
        }
        assertEquals(2, said.stream().filter("70"::equals).count(), said::toString);
        assertEquals(2, said.stream().filter("170"::equals).count(), said::toString);
        assertTrue(said.contains("t 16"), said::toString);
        assertTrue(String.join(" ", said).contains("4 holes ⌀22"), said::toString);
    }

    /** A rod with its lug shows both its edges in both views, each in two lengths beside the break, though a lug is wider. */
    @Test
    void aRodWithItsLugShowsItsEdges() {
        Shed shed = Shed.of(Definitions.of(SHED + "bracing: {section: ROD 16}\n"));
        Part rod = shed.parts(PartKind.BRACE).get(0);
        Assembly assembly = Assemblies.of(shed).of(rod).get(0);
        Block block = AssemblyBlock.of(assembly, new GridPlaces(shed.setOut()));
        long edges = block.marks().stream()
                .filter(Stroke.class::isInstance)
                .map(Stroke.class::cast)
                .filter(s -> s.part().equals(rod.mark()) && s.points().size() == 2)
                .filter(s -> s.points().get(0).distance(s.points().get(1)) > 30)
                .count();
        assertTrue(edges >= 8, "edges: " + edges);
    }

    /** With girts outside a cap ends flush with its column; a bare frame's cap has its 12 all round. */
    @Test
    void anEdgeWithoutALedgeIsSaidToBeAButtWeld() {
        String words = String.join(" ", said(SHED));
        assertTrue(words.contains("butt weld"), words);
        Shed bare = Shed.of(Definitions.of(SHED.replace("envelope: full", "envelope: none")));
        for (Part cap : bare.parts(PartKind.CAP_PLATE)) {
            List<PlateOutline> outlines =
                    PlateOutline.of(cap, Assemblies.of(bare).holding(cap));
            assertTrue(!outlines.isEmpty() && outlines.stream().noneMatch(o -> o.isButted(cap)));
        }
    }

    private static List<String> said(String yaml) {
        return PieceSheets.drafts(Building.of(Definitions.of(yaml))).stream()
                .flatMap(Sheds::texts)
                .map(Text::content)
                .toList();
    }

    /** What is kept is at true scale, plain stretches share what is left, and no order is changed. */
    @Test
    void longPiecesAreShortenedOnlyWhereTheyArePlain() {
        List<double[]> keep = List.of(new double[] {0, 10}, new double[] {2000, 2100}, new double[] {8000, 8000});
        Stretch stretch = Stretch.fit(keep, new Scale(10), 120).orElseThrow();
        assertEquals(120, stretch.width(), 1e-9);
        assertEquals(10, stretch.at(2100) - stretch.at(2000), 1e-9, "100 mm at 1:10");
        assertEquals(2, stretch.breaks().size());
        double before = -1;
        for (double s = 0; s <= 8000; s += 25) {
            assertTrue(stretch.at(s) > before, "at " + s);
            before = stretch.at(s);
        }
        assertTrue(Stretch.fit(keep, new Scale(10), 900).orElseThrow().breaks().isEmpty());
        assertTrue(Stretch.fit(keep, new Scale(10), 20).isEmpty());
    }

    @Test
    void everyDrawingHasABookmark() throws IOException {
        Building building = Building.of(Definitions.of(SHED));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PdfWriter.write(PieceSheets.of(building), bytes);
        List<String> titles = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(bytes.toByteArray())) {
            for (PDOutlineItem sheet :
                    pdf.getDocumentCatalog().getDocumentOutline().children()) {
                sheet.children().forEach(item -> titles.add(item.getTitle()));
            }
        }
        for (Part part : building.shed().parts()) {
            assertTrue(titles.contains(part.mark()), () -> part.mark() + " in " + titles);
        }
        assertTrue(titles.contains("C1-A"), titles::toString);
    }
}
