package org.baywright.render.output;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import javax.xml.transform.TransformerException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.schema.DublinCoreSchema;
import org.apache.xmpbox.schema.PDFAIdentificationSchema;
import org.apache.xmpbox.schema.XMPBasicSchema;
import org.apache.xmpbox.type.BadFieldValueException;
import org.apache.xmpbox.xml.XmpSerializer;
import org.baywright.render.sheet.SheetSet;

/**
 * What a PDF says about itself, twice over as PDF/A asks (information dictionary and XMP), and which white and black
 * its greys mean. Time and file number are fixed so that the same drawing is the same file.
 */
final class PdfIdentity {
    private static final String PROGRAM = "Baywright";
    private static final String LANGUAGE = "en";
    private static final long FILE_NUMBER = 1;
    private static final int PDFA_PART = 2;
    private static final String PDFA_LEVEL = "B";

    private PdfIdentity() {}

    static void describe(PDDocument document, SheetSet set) throws IOException {
        document.setDocumentId(FILE_NUMBER);
        document.setDocumentInformation(information(set));
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setLanguage(LANGUAGE);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);
        catalog.setMetadata(new PDMetadata(document, new ByteArrayInputStream(xmp(set))));
        catalog.addOutputIntent(outputIntent(document));
    }

    private static PDDocumentInformation information(SheetSet set) {
        PDDocumentInformation info = new PDDocumentInformation();
        info.setTitle(set.title());
        if (!set.author().isBlank()) {
            info.setAuthor(set.author());
        }
        info.setSubject(set.subject());
        info.setCreator(PROGRAM);
        info.setCreationDate(time());
        info.setModificationDate(time());
        return info;
    }

    private static byte[] xmp(SheetSet set) throws IOException {
        try {
            XMPMetadata xmp = XMPMetadata.createXMPMetadata();
            PDFAIdentificationSchema level = xmp.createAndAddPDFAIdentificationSchema();
            level.setPart(PDFA_PART);
            level.setConformance(PDFA_LEVEL);
            titles(xmp.createAndAddDublinCoreSchema(), set);
            XMPBasicSchema basic = xmp.createAndAddXMPBasicSchema();
            basic.setCreatorTool(PROGRAM);
            basic.setCreateDate(time());
            basic.setModifyDate(time());
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            new XmpSerializer().serialize(xmp, bytes, true);
            return bytes.toByteArray();
        } catch (BadFieldValueException | TransformerException e) {
            throw new IOException("cannot describe the PDF", e);
        }
    }

    private static void titles(DublinCoreSchema core, SheetSet set) {
        core.setTitle(set.title());
        if (!set.author().isBlank()) {
            core.addCreator(set.author());
        }
        core.setDescription(set.subject());
        core.addLanguage(LANGUAGE);
        core.setFormat("application/pdf");
    }

    /** Built from its entries, because PDFBox's own way of reading the profile goes through the desktop's graphics. */
    private static PDOutputIntent outputIntent(PDDocument document) throws IOException {
        COSStream profile = new PDStream(document, new ByteArrayInputStream(SrgbProfile.bytes()), COSName.FLATE_DECODE)
                .getCOSObject();
        profile.setInt(COSName.N, SrgbProfile.CHANNELS);
        COSDictionary intent = new COSDictionary();
        intent.setItem(COSName.TYPE, COSName.OUTPUT_INTENT);
        intent.setItem(COSName.S, COSName.GTS_PDFA1);
        intent.setString(COSName.OUTPUT_CONDITION_IDENTIFIER, SrgbProfile.NAME);
        intent.setString(COSName.INFO, SrgbProfile.NAME);
        intent.setItem(COSName.DEST_OUTPUT_PROFILE, profile);
        return new PDOutputIntent(intent);
    }

    private static Calendar time() {
        Calendar time = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        time.clear();
        time.set(2000, Calendar.JANUARY, 1);
        return time;
    }
}
