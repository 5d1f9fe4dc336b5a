package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;

/**
 * How the pieces of a list are cut, section by section.
 *
 * @param sections their plans
 * @param problems what stood in the way of the others
 */
public record ListPlan(List<SectionPlan> sections, List<Problem> problems) {
    /** Copies the lists. */
    public ListPlan {
        sections = List.copyOf(sections);
        problems = List.copyOf(problems);
    }

    /** What is seen to stand in the way before any search: each piece longer than every stock length, or too many. */
    public static List<Problem> problems(String source, PieceList list, List<Stock> stocks, Saw saw) {
        List<Problem> problems = new ArrayList<>();
        list.bySection().forEach((section, pieces) -> {
            long count = pieces.stream().mapToLong(Piece::quantity).sum();
            if (count > CuttingJob.MOST_PIECES) {
                problems.add(tooMany(source, count));
            } else {
                problems.addAll(new CuttingJob(pieces, stocks, saw).problems(k -> place(source, list, section, k)));
            }
        });
        return problems;
    }

    private static Problem tooMany(String source, long count) {
        return Problem.error(
                "too-many-pieces",
                Where.whole(source),
                count + " pieces of one section were read; up to " + CuttingJob.MOST_PIECES + " are planned together",
                "part the list and plan each part by itself");
    }

    private static Where place(String source, PieceList list, String section, int k) {
        return new Where(source, PieceList.LENGTH, list.lines().get(section).get(k), 1);
    }

    /**
     * Plans a list in which {@link #problems} found nothing, all sections together until a deadline.
     *
     * @param source what problems call the file
     */
    public static ListPlan of(String source, PieceList list, List<Stock> stocks, Saw saw, Deadline deadline) {
        List<SectionPlan> sections = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        int left = list.bySection().size();
        for (Map.Entry<String, List<Piece>> entry : list.bySection().entrySet()) {
            String section = entry.getKey();
            CuttingJob job = new CuttingJob(entry.getValue(), stocks, saw);
            Cutter.planIfAny(job, deadline.share(left--))
                    .ifPresentOrElse(
                            plan -> sections.add(new SectionPlan(section, plan)),
                            () -> problems.add(job.tooFewBars(place(source, list, section, firstNeedingLimited(job)))));
        }
        return new ListPlan(sections, problems);
    }

    private static int firstNeedingLimited(CuttingJob job) {
        return IntStream.range(0, job.pieces().size())
                .filter(k -> job.needsLimited(job.pieces().get(k)))
                .findFirst()
                .orElseThrow();
    }
}
