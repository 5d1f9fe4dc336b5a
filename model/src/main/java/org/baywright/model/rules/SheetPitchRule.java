package org.baywright.model.rules;

import java.util.List;
import java.util.Locale;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.definition.LeanTo;

/** Advice: water stands on a roof that is flatter than its sheet allows. */
final class SheetPitchRule implements Rule {
    @Override
    public void check(Asked asked) {
        if (asked.clad()) {
            check(asked, "roofPitch", asked.definition().shape().roofPitchDeg());
            List<LeanTo> leanTos = asked.definition().leanTos();
            for (int i = 0; i < leanTos.size(); i++) {
                check(asked, "leanTos[" + i + "].pitch", leanTos.get(i).pitchDeg());
            }
        }
    }

    private static void check(Asked asked, String key, double pitchDeg) {
        SheetProfile sheet = asked.definition().envelope().sheeting().roof().profile();
        if (pitchDeg < sheet.minPitchDeg()) {
            asked.advice(
                    "pitch-under-sheet",
                    key,
                    String.format(
                            Locale.ROOT,
                            "a roof of %.1f° is flatter than the least pitch of %s, %.1f° (%s)",
                            pitchDeg,
                            sheet.name(),
                            sheet.minPitchDeg(),
                            sheet.source()),
                    "steepen it, or choose another roofSheets.profile; the maker's figure counts");
        }
    }
}
