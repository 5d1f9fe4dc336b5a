package org.baywright.render.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class NumbersTest {
    @Test
    void numbersAreShort() {
        assertEquals("0", Numbers.plain(-0.0004));
        assertEquals("-0.005", Numbers.plain(-0.005));
        assertEquals("12.05", Numbers.plain(12.05));
        assertEquals("100", Numbers.plain(99.9999));
        assertEquals("-1.5 ", new Numbers().exact(-1.5).toString());
        assertThrows(IllegalArgumentException.class, () -> Numbers.plain(Double.NaN));
    }

    @Property(tries = 200)
    void numbersReadBackToAThousandth(@ForAll @DoubleRange(min = -1e4, max = 1e4) double value) {
        assertEquals(value, Double.parseDouble(Numbers.plain(value)), 0.0005000001);
        assertEquals(
                value, Double.parseDouble(new Numbers().exact(value).toString().strip()), 0.00000005001);
    }
}
