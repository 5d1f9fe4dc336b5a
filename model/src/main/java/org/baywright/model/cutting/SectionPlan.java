package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;

/**
 * How the pieces of one section are cut.
 *
 * @param section its name; may be empty
 * @param plan the bars
 */
public record SectionPlan(String section, CuttingPlan plan) {
    /** What stands in the way of planning a list: each piece longer than every stock length. */
    public static List<Problem> problems(String source, PieceList list, List<Stock> stocks, Saw saw) {
        List<Problem> problems = new ArrayList<>();
        list.bySection().forEach((section, pieces) -> {
            List<Integer> lines = list.lines().get(section);
            problems.addAll(new CuttingJob(pieces, stocks, saw)
                    .problems(k -> new Where(source, PieceList.LENGTH, lines.get(k), 1)));
        });
        return problems;
    }

    /** Plans a list section by section, all together until a deadline. */
    public static List<SectionPlan> of(PieceList list, List<Stock> stocks, Saw saw, Deadline deadline) {
        List<SectionPlan> plans = new ArrayList<>();
        int left = list.bySection().size();
        for (Map.Entry<String, List<Piece>> section : list.bySection().entrySet()) {
            CuttingJob job = new CuttingJob(section.getValue(), stocks, saw);
            plans.add(new SectionPlan(section.getKey(), Cutter.plan(job, deadline.share(left--))));
        }
        return plans;
    }
}
