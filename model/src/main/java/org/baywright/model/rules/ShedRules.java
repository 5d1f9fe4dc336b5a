package org.baywright.model.rules;

import java.util.List;
import java.util.function.Function;
import org.baywright.model.definition.Definition;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;

/** Every rule, in the order their findings are reported. */
public final class ShedRules {
    private static final List<Rule> RULES = List.of(
            new ColumnHeightRule(),
            new SpanRoomRule(),
            new LeanToHeadRule(),
            new LeanToDropRule(),
            new BasePlateHolesRule(),
            new BasePlateRoomRule(),
            new FramesApartRule(),
            new ClosingCapRule(),
            new WideRafterRule(),
            new FlushGirtRule(),
            new OpeningWallRule(),
            new OpeningRoomRule(),
            new OpeningsApartRule(),
            new OpeningHiddenRule(),
            new WayInRule(),
            new SlidingLeafRule(),
            new BraceInOpeningRule(),
            new BraceDepthRule(),
            new LeanToBracedRule(),
            new SheetPitchRule(),
            new SheetLengthRule(),
            new LiftingBeamRule(),
            new SiteRule(),
            new DownpipeRule(),
            new AnchorDepthRule(),
            new AnchorEdgeRule(),
            new AnchorSpacingRule(),
            new PadsApartRule(),
            new BarStrikeRule(),
            new LiftingRoomRule(),
            new SlidingTrackRule(),
            new LooseCleatRule());

    private ShedRules() {}

    /**
     * All that is wrong or worth knowing about a definition.
     *
     * @param where finds the place in the file of a dotted key
     */
    public static List<Problem> check(Definition definition, Function<String, Where> where) {
        Asked asked = new Asked(definition, where);
        RULES.forEach(rule -> rule.check(asked));
        return List.copyOf(asked.found());
    }
}
