package org.baywright.model.rules;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.baywright.model.definition.Slab;
import org.baywright.model.parts.PlateStand;

/**
 * Advice: pads that run into each other are one hole and one pour, and drawn as one outline; whoever digs is told, and the
 * engineer, who may have taken each pad by itself.
 */
final class PadsApartRule implements Rule {
    /** Pads overlap from so much on, mm. */
    private static final double LEAST = 1;

    /** Two pads that overlap, and how far apart their middles are along the axis that parts them most. */
    private record Pair(PlateStand one, PlateStand other, double apart) {
        Pair(PlateStand one, PlateStand other) {
            this(
                    one,
                    other,
                    Math.max(
                            Math.abs(one.middle().x() - other.middle().x()),
                            Math.abs(one.middle().y() - other.middle().y())));
        }
    }

    @Override
    public void check(Asked asked) {
        Slab slab = asked.definition().ground().slab();
        List<Pair> pairs = slab.isPads() ? pairs(asked.stands(), slab.padSide()) : List.of();
        pairs.stream().min(Comparator.comparingDouble(Pair::apart)).ifPresent(worst -> {
            String more = switch (pairs.size()) {
                case 1 -> "";
                case 2 -> ", and so does another pair";
                default -> ", and so do " + (pairs.size() - 1) + " other pairs";
            };
            asked.advice(
                    "pads-overlap",
                    "slab.padSide",
                    "pads of " + Asked.mm(slab.padSide()) + " mm at "
                            + worst.one().name() + " and at "
                            + worst.other().name() + " overlap by " + Asked.mmUp(slab.padSide() - worst.apart()) + " mm"
                            + more,
                    remedy(worst));
        });
    }

    private static String remedy(Pair worst) {
        String ask = "dig and pour such pads as one, as the engineer says";
        return worst.apart() < LEAST
                ? ask + ", or move the opening or the post"
                : ask + ", move the opening or the post, or have the engineer agree to slab.padSide of "
                        + Asked.mm(Math.floor(worst.apart())) + " or less";
    }

    private static List<Pair> pairs(List<PlateStand> stands, double side) {
        return IntStream.range(0, stands.size())
                .boxed()
                .flatMap(
                        i -> stands.subList(i + 1, stands.size()).stream().map(other -> new Pair(stands.get(i), other)))
                .filter(pair -> pair.apart() < side - LEAST)
                .toList();
    }
}
