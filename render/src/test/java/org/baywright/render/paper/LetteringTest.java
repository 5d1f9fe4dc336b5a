package org.baywright.render.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class LetteringTest {
    @Test
    void capitalsHaveTheHeightAskedFor() {
        for (Face face : Face.values()) {
            assertEquals(2.5 * 2048 / 1493, Lettering.fontSize(2.5, face), 1e-9);
        }
    }

    @Test
    void widthGrowsWithHeightAndWithEachLetter() {
        double one = Lettering.width("C", 2.5, Face.REGULAR);
        assertEquals(2 * one, Lettering.width("C", 5, Face.REGULAR), 1e-9);
        assertEquals(3 * one, Lettering.width("CCC", 2.5, Face.REGULAR), 1e-9);
        assertTrue(Lettering.width("C", 2.5, Face.BOLD) > one);
    }

    @Test
    void tradeSignsAreInBothFaces() {
        String signs = "Ø ø ⌀ ± ° × – — ² ³ ½ ⅔ θ φ √ ≥ ≤ ≈ → ← ↑ ↓ • … āēīōū ß é ñ € ✓ △ ∠ Δ Σ";
        for (Face face : Face.values()) {
            assertEquals(signs, Lettering.printable(signs, face));
        }
    }

    @Test
    void whatCannotBeSetIsReplacedOrDropped() {
        assertEquals("a?b", Lettering.printable("a\uD83D\uDE9Cb", Face.REGULAR));
        assertEquals("a?b", Lettering.printable("a\uD83Db", Face.REGULAR));
        assertEquals("a b", Lettering.printable("a\tb", Face.REGULAR));
        assertEquals("ab", Lettering.printable("a\u0000\u202E\u00ADb", Face.REGULAR));
        assertEquals(Lettering.width("?", 3, Face.BOLD), Lettering.width("\uD83D\uDE9C\u0007", 3, Face.BOLD), 1e-9);
    }
}
