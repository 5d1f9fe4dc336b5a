package org.baywright.model.definition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class SpellingTest {
    @Test
    void aSwapIsOneEdit() {
        assertEquals(1, Spelling.distance("haevier", "heavier"));
        assertEquals(1, Spelling.distance("span", "spam"));
        assertEquals(3, Spelling.distance("kitten", "sitting"));
        assertEquals(4, Spelling.distance("", "span"));
    }

    @Test
    void nothingNearIsAnsweredWithAll() {
        assertEquals("allowed: left, right", Spelling.remedy("upwards", List.of("left", "right")));
        assertEquals("did you mean left?", Spelling.remedy("Lfet", List.of("left", "right")));
    }

    @Test
    void messagesHoldNoControlCharactersAndNoLongText() {
        assertEquals("a\\u001bb", Spelling.shown("a\u001bb"));
        assertEquals(61, Spelling.shown("x".repeat(1000)).length());
    }

    @Property(tries = 200)
    void distanceIsSymmetricAndNoMoreThanTheLongerWord(
            @ForAll @AlphaChars @StringLength(max = 12) String a,
            @ForAll @AlphaChars @StringLength(max = 12) String b) {
        int d = Spelling.distance(a, b);
        assertEquals(d, Spelling.distance(b, a));
        assertTrue(d <= Math.max(a.length(), b.length()) && d == 0 == a.equals(b));
    }
}
