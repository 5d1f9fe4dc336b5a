package org.baywright.model.parts;

import java.util.Optional;
import org.baywright.model.geometry.Vec2;

/**
 * What the roof's steel leaves to a row of girts: in a side wall all of a length or nothing, in an end wall the stretch
 * under the rake.
 *
 * @param bay the bay
 * @param flush whether girts stand between the columns
 */
record RakeRoom(WallBay bay, boolean flush) {
    /** What caps and apex plates take below the rafters. Common practice, no source. */
    private static final double PLATES_BELOW = 60;

    private static final double LEAST = 1;

    /** A stretch along the wall. */
    record Stretch(double from, double to) {}

    /** The stretch of a length over which there is room up to a height. */
    Optional<Stretch> under(double from, double to, double top) {
        return bay.face().wall().isEnd() ? underRake(from, to, top) : underEave(from, to, top);
    }

    /** Flush girts pass under the rafters, or beside them where a strip over a lean-to has no other room. */
    private Optional<Stretch> underEave(double from, double to, double top) {
        return top <= underRafters() || isBesideRafters(top) ? Optional.of(new Stretch(from, to)) : Optional.empty();
    }

    private double underRafters() {
        return bay.sideTop(flush ? PLATES_BELOW : 0, flush);
    }

    boolean isBesideRafters(double top) {
        return flush && bay.cover().low() > 0 && top > underRafters() && top <= bay.sideTop(0, false);
    }

    private Optional<Stretch> underRake(double from, double to, double top) {
        double a = room(from) < top ? meeting(from, to, top) : from;
        double b = room(to) < top ? meeting(to, a, top) : to;
        return Math.abs(b - a) < LEAST || room((a + b) / 2) < top ? Optional.empty() : Optional.of(new Stretch(a, b));
    }

    private double room(double u) {
        double inside = Math.max(0, Math.min(bay.face().length(), u));
        // Past a corner the roof goes on falling.
        return flush || bay.rafterStandsOut()
                ? Math.min(bay.underRafter(inside), bay.underRafter(u)) - PLATES_BELOW
                : Math.min(bay.face().heightAt(inside), bay.roofAt(u, 0));
    }

    /** Where the rake reaches a height on the way from a place below it; the roof is straight, or turns once. */
    private double meeting(double low, double towards, double top) {
        double outside = turnOr(low, towards);
        if (room(outside) < top) {
            return towards;
        }
        double inside = low;
        for (int i = 0; i < 60; i++) {
            double middle = (inside + outside) / 2;
            if (room(middle) < top) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return outside;
    }

    /** The highest place on the way: where the roof turns, or the far end. */
    private double turnOr(double low, double towards) {
        return bay.face().outline().stream()
                .map(Vec2::x)
                .filter(u -> (u - low) * (towards - u) > 0)
                .reduce(towards, (best, u) -> room(u) > room(best) ? u : best);
    }
}
