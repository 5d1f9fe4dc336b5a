package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Other sections at named frames.
 *
 * @param frames frame numbers from 1
 * @param sides left, right or both
 * @param column in place of the ordinary column
 * @param rafter in place of the ordinary rafter
 * @param leanToColumn in place of the ordinary lean-to column
 * @param leanToRafter in place of the ordinary lean-to rafter
 */
public record Heavier(
        List<Integer> frames,
        Set<Side> sides,
        Optional<Member> column,
        Optional<Member> rafter,
        Optional<Member> leanToColumn,
        Optional<Member> leanToRafter) {
    /** Copies the collections. */
    public Heavier {
        frames = List.copyOf(frames);
        sides = Set.copyOf(sides);
    }

    /** Whether it speaks of a side of a frame. */
    public boolean covers(int frame, Side side) {
        return frames.contains(frame) && sides.contains(side);
    }
}
