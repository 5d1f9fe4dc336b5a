package org.baywright.render.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;

/**
 * What layout needs of one font file, in font units, read from the file itself.
 *
 * <p>@source OpenType specification: tables head (units per em), glyf (height of a capital H; these files' OS/2 table is too
 * old to state it), hhea (ascent, descent), hmtx
 * (advance widths), cmap (characters)
 */
final class FaceMetrics {
    /** Characters of the Basic Multilingual Plane; those beyond it count as missing. */
    private static final int CHARACTERS = 0x10000;

    private static final int ABSENT = -1;

    private final int unitsPerEm;
    private final int capHeight;
    private final int ascent;
    private final int descent;
    private final int[] advances = new int[CHARACTERS];

    private FaceMetrics(TrueTypeFont font) throws IOException {
        unitsPerEm = font.getUnitsPerEm();
        capHeight = capHeight(font);
        ascent = font.getHorizontalHeader().getAscender();
        descent = -font.getHorizontalHeader().getDescender();
        Arrays.fill(advances, ABSENT);
        CmapLookup glyphs = font.getUnicodeCmapLookup();
        for (int glyph = 1; glyph < font.getNumberOfGlyphs(); glyph++) {
            List<Integer> characters = glyphs.getCharCodes(glyph);
            int advance = font.getAdvanceWidth(glyph);
            for (int c : characters == null ? List.<Integer>of() : characters) {
                if (c < CHARACTERS) {
                    advances[c] = advance;
                }
            }
        }
    }

    static FaceMetrics read(Face face) {
        try (TrueTypeFont font = new TTFParser().parseEmbedded(Lettering.open(face))) {
            return new FaceMetrics(font);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read font file " + face.file(), e);
        }
    }

    private static int capHeight(TrueTypeFont font) throws IOException {
        int capital = font.getUnicodeCmapLookup().getGlyphId('H');
        return font.getGlyph().getGlyph(capital).getYMaximum();
    }

    boolean has(int character) {
        return character < CHARACTERS && advances[character] != ABSENT;
    }

    int advance(int character) {
        return advances[character];
    }

    int unitsPerEm() {
        return unitsPerEm;
    }

    int capHeight() {
        return capHeight;
    }

    int ascent() {
        return ascent;
    }

    int descent() {
        return descent;
    }
}
