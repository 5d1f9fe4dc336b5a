package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.geometry.Clearance;
import org.baywright.model.geometry.Convex;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.baywright.model.rules.ShedRules;

/** Steel meets steel with no gap and no overlap, measured on the solids. */
class JointsPropertyTest {
    /** Rounding a part to its mark's length may move a face by this much, mm. */
    private static final double TOLERANCE = 0.1;

    /** Left at the ridge for a butt weld when there are no apex plates, mm. */
    private static final double ROOT_GAP = 3;

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.valid()
                .filter(d -> ShedRules.check(d, Where::whole).stream().noneMatch(Problem::isError));
    }

    @Property(tries = 150, seed = Seeds.SHEDS)
    void partsOfAFrameMeetWithoutOverlapAndAllHangTogether(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        for (int frame = 1; frame <= Math.min(shed.setOut().frames(), 4); frame++) {
            List<Lump> lumps = lumps(shed, frame);
            double reach = definition.plates().apexThickness() == 0 ? ROOT_GAP + TOLERANCE : TOLERANCE;
            assertEquals(
                    lumps.size(), reached(touching(lumps, reach)), "lumps of frame " + frame + " that hang together");
        }
    }

    private record Lump(String mark, int part, Convex convex) {}

    private static List<Lump> lumps(Shed shed, int frame) {
        List<Lump> lumps = new ArrayList<>();
        int[] number = {0};
        shed.parts()
                .forEach(part -> part.places().stream()
                        .filter(p -> p.frame() == frame)
                        .forEach(place -> {
                            number[0]++;
                            Convex.of(part.solid(), place.placement())
                                    .forEach(c -> lumps.add(new Lump(part.mark(), number[0], c)));
                        }));
        return lumps;
    }

    private static boolean[][] touching(List<Lump> lumps, double reach) {
        boolean[][] touching = new boolean[lumps.size()][lumps.size()];
        for (int i = 0; i < lumps.size(); i++) {
            for (int j = i + 1; j < lumps.size(); j++) {
                Lump a = lumps.get(i);
                Lump b = lumps.get(j);
                double clearance = Clearance.between(a.convex, b.convex);
                if (a.part != b.part) {
                    assertTrue(clearance > -TOLERANCE, () -> a.mark + " runs " + -clearance + " into " + b.mark);
                }
                touching[i][j] = touching[j][i] = clearance < reach;
            }
        }
        return touching;
    }

    private static int reached(boolean[][] touching) {
        Set<Integer> seen = new HashSet<>(Set.of(0));
        Deque<Integer> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            int at = open.remove();
            IntStream.range(0, touching.length)
                    .filter(next -> touching[at][next] && seen.add(next))
                    .forEach(open::add);
        }
        return seen.size();
    }
}
