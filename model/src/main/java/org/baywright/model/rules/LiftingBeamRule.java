package org.baywright.model.rules;

import java.util.stream.IntStream;
import org.baywright.model.definition.LiftingBeam;
import org.baywright.model.definition.Side;
import org.baywright.model.parts.LiftingMaker;
import org.baywright.model.setout.ColumnLine;

/** A lifting beam lies inside the frame, under the rafters, its hook above a head. It says nothing of strength. */
final class LiftingBeamRule implements Rule {
    @Override
    public void check(Asked asked) {
        asked.definition().envelope().liftingBeam().ifPresent(beam -> {
            if (!asked.clad()) {
                asked.advice(
                        "lifting-beam-unused",
                        "liftingBeam",
                        "envelope is none: the bare frame is made without its lifting beam",
                        "set envelope to full, or delete liftingBeam");
            } else if (framesExist(asked, beam) && inside(asked, beam)) {
                under(asked, beam);
                hook(asked, beam);
            }
        });
    }

    private static boolean framesExist(Asked asked, LiftingBeam beam) {
        int last = asked.setOut().frames();
        boolean exist = beam.toFrame() <= last;
        if (!exist) {
            asked.error(
                    "no-such-frame",
                    "liftingBeam." + (beam.fromFrame() > last ? "fromFrame" : "toFrame"),
                    "the beam reaches frame " + beam.toFrame() + "; the frames are 1 to " + last,
                    "write frames of this shed");
        }
        return exist;
    }

    /** Whether it lies between the columns and under the rafters. */
    static boolean fits(Asked asked, LiftingBeam beam) {
        return isBetween(asked, beam) && top(beam) <= underRafters(asked, beam);
    }

    private static boolean isBetween(Asked asked, LiftingBeam beam) {
        double half = beam.member().width() / 2;
        return !beam.along() || beam.offset() - half >= low(asked, beam) && beam.offset() + half <= high(asked, beam);
    }

    private static double low(Asked asked, LiftingBeam beam) {
        return frames(beam).mapToDouble(f -> inner(asked, Side.LEFT, f)).max().orElseThrow();
    }

    private static double high(Asked asked, LiftingBeam beam) {
        return frames(beam).mapToDouble(f -> inner(asked, Side.RIGHT, f)).min().orElseThrow();
    }

    private static double over(LiftingBeam beam) {
        return beam.along() ? LiftingMaker.OVER_BEAM : 0;
    }

    private static double top(LiftingBeam beam) {
        return beam.underside() + height(beam);
    }

    /** From its underside to what must be over it: of a beam along its plate and shortest bracket are counted. */
    static double height(LiftingBeam beam) {
        return beam.member().depth() + over(beam);
    }

    private static double underRafters(Asked asked, LiftingBeam beam) {
        return frames(beam).mapToDouble(f -> underRafter(asked, beam, f)).min().orElseThrow();
    }

    private static boolean inside(Asked asked, LiftingBeam beam) {
        double half = beam.member().width() / 2;
        boolean inside = isBetween(asked, beam);
        if (!inside) {
            asked.error(
                    "lifting-beam-outside",
                    "liftingBeam.offset",
                    "the beam would lie " + Asked.mm(beam.offset()) + " mm from line A; between the columns are "
                            + Asked.mm(low(asked, beam) + half) + " to "
                            + Asked.mm(high(asked, beam) - half),
                    "change offset, or leave it out for the middle");
        }
        return inside;
    }

    private static IntStream frames(LiftingBeam beam) {
        return IntStream.rangeClosed(beam.fromFrame(), beam.toFrame());
    }

    private static double inner(Asked asked, Side side, int frame) {
        ColumnLine main = asked.setOut().main(side);
        return main.x() + main.inward() * asked.column(main, frame).depth();
    }

    private static void under(Asked asked, LiftingBeam beam) {
        double under = underRafters(asked, beam);
        double over = over(beam);
        double top = top(beam);
        if (top > under) {
            asked.error(
                    "lifting-beam-too-high",
                    "liftingBeam.underside",
                    "the top of the beam " + (over > 0 ? "with its plate and shortest bracket " : "") + "is "
                            + Asked.mm(top) + " above the floor; the rafter's underside there is " + Asked.mm(under),
                    "set underside to "
                            + Asked.mm(Math.floor(under - over - beam.member().depth())) + " or less");
        }
    }

    /** The lowest underside over the beam: at both columns of one frame, or at both edges of a beam along. */
    private static double underRafter(Asked asked, LiftingBeam beam, int frame) {
        double half = beam.member().width() / 2;
        double low = beam.along() ? beam.offset() - half : inner(asked, Side.LEFT, frame);
        double high = beam.along() ? beam.offset() + half : inner(asked, Side.RIGHT, frame);
        return Math.min(underside(asked, low, frame), underside(asked, high, frame));
    }

    private static double underside(Asked asked, double x, int frame) {
        Side half = x < asked.setOut().span() / 2 ? Side.LEFT : Side.RIGHT;
        ColumnLine main = asked.setOut().main(half);
        return main.roof().heightAt(x)
                - main.roof().plumb(asked.rafter(main, frame).depth());
    }

    private static void hook(Asked asked, LiftingBeam beam) {
        double hook = beam.underside() - beam.hookDrop();
        if (hook <= 0) {
            asked.error(
                    "hook-under-floor",
                    "liftingBeam.hookDrop",
                    "the hook at its highest would hang " + Asked.mm(-hook) + " mm under the floor",
                    "set hookDrop under " + Asked.mm(beam.underside()));
        } else if (hook < LeanToHeadRule.HEAD) {
            asked.advice(
                    "hook-low",
                    "liftingBeam.hookDrop",
                    "the hook at its highest is " + Asked.mm(hook) + " mm above the floor, lower than a head ("
                            + Asked.mm(LeanToHeadRule.HEAD) + ")",
                    "raise underside, or use a hoist that needs less room");
        }
    }
}
