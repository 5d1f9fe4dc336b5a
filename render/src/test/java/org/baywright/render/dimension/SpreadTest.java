package org.baywright.render.dimension;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SpreadTest {
    @Test
    void thingsThatAreApartStay() {
        assertArrayEquals(
                new double[] {0, 10, 30},
                Spread.apart(new double[] {0, 10, 30}, new double[] {4, 8, 2}, -50, 50)
                        .orElseThrow(),
                1e-9);
    }

    @Test
    void twoThatTouchMoveAlike() {
        assertArrayEquals(
                new double[] {-2, 2},
                Spread.apart(new double[] {0, 0}, new double[] {4, 4}, -50, 50).orElseThrow(),
                1e-9);
    }

    @Test
    void theRoomPushesBack() {
        assertArrayEquals(
                new double[] {2, 6},
                Spread.apart(new double[] {0, 0}, new double[] {4, 4}, 0, 8).orElseThrow(),
                1e-9);
        assertTrue(
                Spread.apart(new double[] {0, 0}, new double[] {4, 4}, 0, 7.9).isEmpty());
    }

    @Property(tries = 200)
    void noneOverlapsAndNoneLeaves(@ForAll @Size(min = 1, max = 40) List<@DoubleRange(max = 300) Double> places) {
        double[] wished = places.stream().mapToDouble(p -> p).sorted().toArray();
        double[] sizes = Arrays.stream(wished).map(w -> 1 + w % 6).toArray();
        double[] centres = Spread.apart(wished, sizes, 0, 300).orElseThrow();
        for (int i = 0; i < centres.length; i++) {
            assertTrue(centres[i] - sizes[i] / 2 >= -1e-9 && centres[i] + sizes[i] / 2 <= 300 + 1e-9);
            assertTrue(i == 0 || centres[i] - centres[i - 1] >= (sizes[i] + sizes[i - 1]) / 2 - 1e-9);
        }
    }
}
