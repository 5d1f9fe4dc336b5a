package org.baywright.model.rules;

import java.util.List;
import java.util.Locale;
import org.baywright.model.parts.BarCheck;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.setout.BarGrid;
import org.baywright.model.setout.BarGrid.Meeting;
import org.baywright.model.setout.OneWayShift;

/** Advice: an anchor hole meets a bar of the slab's reinforcement. */
final class BarStrikeRule implements Rule {
    @Override
    public void check(Asked asked) {
        BarGrid.of(asked.definition())
                .map(grid -> new BarCheck(grid, asked.stands()))
                .ifPresent(c -> tell(asked, c));
    }

    private static void tell(Asked asked, BarCheck check) {
        List<PlateStand> hit = check.with(Meeting.HIT);
        if (!hit.isEmpty()) {
            long holes = check.count(Meeting.HIT);
            asked.advice(
                    "anchor-hits-bar",
                    "slab.bars",
                    holes + (holes == 1 ? " anchor hole meets" : " anchor holes meet") + " a bar, the first at "
                            + hit.get(0).name() + ", and " + check.count(Meeting.CLOSE) + " come close",
                    remedy(check));
        }
    }

    private static String remedy(BarCheck check) {
        return check.barShift()
                .map(s -> "the smallest shift of the bars that "
                        + (s.clear() ? "clears all holes" : "misses all holes, but only just") + ": along "
                        + signed(s.along()) + ", across " + signed(s.across()))
                .or(() -> check.oneWayShift().map(BarStrikeRule::remedy))
                .orElse("no shift of the whole grid misses every hole: see the set-out for each plate");
    }

    private static String remedy(OneWayShift shift) {
        return "no shift of the whole grid misses every hole; the bars that lie "
                + (shift.along() ? "across the building moved along it " : "along the building moved across it ")
                + signed(shift.shift()) + (shift.clear() ? " are clear of all" : " just miss all")
                + ", and the others still hit "
                + shift.stillHit() + ": see the set-out for each plate";
    }

    private static String signed(double mm) {
        return mm == 0 ? "0" : String.format(Locale.ROOT, "%+.1f mm", mm);
    }
}
