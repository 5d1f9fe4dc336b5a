package org.baywright.render.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.xml.DomXmpParser;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.sheet.SheetSet;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

class PdfWriterTest {
    static byte[] pdf(SheetSet set) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfWriter.write(set, out);
        return out.toByteArray();
    }

    @Test
    void pagesHaveTheTrueSizeOfThePaper() throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf(SampleSheets.set()))) {
            double hundredthMm = 0.01 * 72 / 25.4;
            assertEquals(1190.551, read.getPage(0).getMediaBox().getWidth(), hundredthMm);
            assertEquals(841.890, read.getPage(0).getMediaBox().getHeight(), hundredthMm);
            assertEquals(841.890, read.getPage(1).getMediaBox().getWidth(), hundredthMm);
            assertEquals(595.276, read.getPage(1).getMediaBox().getHeight(), hundredthMm);
        }
    }

    @Test
    void eachSheetHasABookmarkAndALabel() throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf(SampleSheets.set()))) {
            List<String> titles = new ArrayList<>();
            List<Integer> pages = new ArrayList<>();
            for (PDOutlineItem item :
                    read.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(item.getTitle());
                pages.add(read.getPages().indexOf(item.findDestinationPage(read)));
            }
            assertEquals(List.of("A-01 Every mark", "A-02 Schedule"), titles);
            assertEquals(List.of(0, 1), pages);
            assertArrayEquals(
                    new String[] {"A-01", "A-02"},
                    read.getDocumentCatalog().getPageLabels().getLabelsByPageIndices());
        }
    }

    @Test
    void theDocumentSaysWhatItIs() throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf(SampleSheets.set()))) {
            assertEquals("Tallow Flat shed", read.getDocumentInformation().getTitle());
            assertEquals("A. Drafter", read.getDocumentInformation().getAuthor());
            assertEquals(
                    "Sample <&> of every mark", read.getDocumentInformation().getSubject());
            assertEquals("en", read.getDocumentCatalog().getLanguage());
            assertTrue(read.getDocumentCatalog().getViewerPreferences().displayDocTitle());
            assertTrue(!read.isEncrypted());
        }
    }

    @Test
    void bothDescriptionsAgree() throws Exception {
        try (PDDocument read = Loader.loadPDF(pdf(SampleSheets.set()))) {
            XMPMetadata xmp = new DomXmpParser()
                    .parse(read.getDocumentCatalog().getMetadata().toByteArray());
            PDDocumentInformation info = read.getDocumentInformation();
            assertEquals(info.getTitle(), xmp.getDublinCoreSchema().getTitle());
            assertEquals(List.of(info.getAuthor()), xmp.getDublinCoreSchema().getCreators());
            assertEquals(info.getSubject(), xmp.getDublinCoreSchema().getDescription());
            assertEquals(info.getCreator(), xmp.getXMPBasicSchema().getCreatorTool());
            assertEquals(
                    info.getCreationDate().toInstant(),
                    xmp.getXMPBasicSchema().getCreateDate().toInstant());
            assertEquals(
                    info.getModificationDate().toInstant(),
                    xmp.getXMPBasicSchema().getModifyDate().toInstant());
        }
    }

    @Test
    void textCanBeSearchedAndItsFontsAreEmbedded() throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf(SampleSheets.set()))) {
            String text = new PDFTextStripper().getText(read);
            assertTrue(text.contains(SampleSheets.CAUTION), text);
            assertTrue(text.contains("Ø22 ±5 10° m² × – ½ é ā missing: ?"), text);
            assertTrue(text.contains("Office flat 123"), text);
            int fonts = 0;
            for (var name : read.getPage(0).getResources().getFontNames()) {
                PDFont font = read.getPage(0).getResources().getFont(name);
                assertTrue(font.isEmbedded() && font.getName().matches("[A-Z]{6}\\+DejaVuSansCondensed.*"));
                fonts++;
            }
            assertEquals(2, fonts);
        }
    }

    @Test
    void twoRunsGiveTheSameBytes() throws IOException {
        assertArrayEquals(pdf(SampleSheets.set()), pdf(SampleSheets.set()));
    }

    @Test
    void theFileIsAnArchivePdf() throws Exception {
        assertArchive(pdf(SampleSheets.set()));
    }

    @Test
    void aSetWithoutAuthorOrTextIsAnArchivePdfToo() throws Exception {
        var sheet = new org.baywright.render.sheet.Sheet(org.baywright.render.paper.Paper.A3, "1", "Empty", List.of());
        assertArchive(pdf(new SheetSet("Empty", "", "", List.of(sheet))));
    }

    private static void assertArchive(byte[] pdf) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf));
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFA_2_B, false)) {
            ValidationResult result = validator.validate(parser);
            assertTrue(result.getTotalAssertions() > 100, "rules were tried");
            assertTrue(result.isCompliant(), () -> result.getFailedChecks().toString());
        }
    }

    @Test
    void letteringMeasuresWhatThePdfLibraryMeasures() throws IOException {
        String[] samples = {"Office flat 123", "SHS 100x100x5 – 6115.6", "WAVE Ø22 ±5 ½ é", SampleSheets.CAUTION};
        try (PDDocument document = new PDDocument()) {
            for (Face face : Face.values()) {
                PDFont font = PDType0Font.load(document, Lettering.open(face), false);
                for (String sample : samples) {
                    double size = Lettering.fontSize(2.5, face);
                    double expected = font.getStringWidth(sample) / 1000 * size;
                    assertEquals(expected, Lettering.width(sample, 2.5, face), expected * 0.001, sample);
                }
            }
        }
    }

    @Test
    void theProfileReadsAsSrgb() {
        var profile = java.awt.color.ICC_Profile.getInstance(SrgbProfile.bytes());
        var ours = new java.awt.color.ICC_ColorSpace(profile);
        for (float[] colour :
                new float[][] {{0, 0, 0}, {1, 1, 1}, {0.5f, 0.5f, 0.5f}, {1, 0.2f, 0}, {0.1f, 0.6f, 0.9f}}) {
            float[] back = ours.toRGB(colour);
            assertArrayEquals(colour, back, 0.01f);
        }
        assertNotNull(profile.getData(java.awt.color.ICC_Profile.icSigRedTRCTag));
    }
}
