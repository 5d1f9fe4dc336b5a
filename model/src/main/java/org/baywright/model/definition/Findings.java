package org.baywright.model.definition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;

/** The problems met so far; reading goes on after each one, so that all are told at once. */
final class Findings {
    private final List<Problem> problems = new ArrayList<>();

    void error(String code, Where where, String message, String remedy) {
        problems.add(Problem.error(code, where, message, remedy));
    }

    void advice(String code, Where where, String message, String remedy) {
        problems.add(Problem.advice(code, where, message, remedy));
    }

    /** How many stop the work so far. */
    long errors() {
        return problems.stream().filter(Problem::isError).count();
    }

    /** Ordered by line; what was asked for on the command line comes last. */
    List<Problem> inOrder() {
        Comparator<Problem> order = Comparator.comparing(p -> p.where().source().equals(Setting.SOURCE));
        return problems.stream()
                .sorted(order.thenComparingInt(p -> p.where().line())
                        .thenComparingInt(p -> p.where().column()))
                .toList();
    }
}
