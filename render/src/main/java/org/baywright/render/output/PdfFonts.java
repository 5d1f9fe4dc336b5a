package org.baywright.render.output;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;

/** The faces embedded in one document; only letters that are used end up in the file. */
final class PdfFonts {
    private final PDDocument document;
    private final PDResources resources = new PDResources();
    private final Map<Face, PDType0Font> fonts = new EnumMap<>(Face.class);

    PdfFonts(PDDocument document) {
        this.document = document;
    }

    /** Name by which page content calls the face. */
    static String name(Face face) {
        return "F" + face.ordinal();
    }

    /** Shared by all pages. */
    PDResources resources() {
        return resources;
    }

    /** The glyph numbers of printable text, each letter noted for embedding. No ligatures: widths must add up. */
    byte[] glyphs(String printable, Face face) {
        try {
            PDType0Font font = font(face);
            printable.codePoints().forEach(font::addToSubset);
            return font.encode(printable);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot set text in " + face, e);
        }
    }

    /** Puts the letters used into the document; the last step before saving. */
    void embed() throws IOException {
        for (PDType0Font font : fonts.values()) {
            font.subset();
        }
    }

    private PDType0Font font(Face face) throws IOException {
        PDType0Font font = fonts.get(face);
        if (font == null) {
            try (InputStream file = Lettering.open(face)) {
                font = PDType0Font.load(document, file, true);
            }
            fonts.put(face, font);
            resources.put(COSName.getPDFName(name(face)), font);
        }
        return font;
    }
}
