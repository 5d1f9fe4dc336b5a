package org.baywright.cli;

import java.io.PrintWriter;
import java.util.List;
import org.baywright.model.problem.Problem;

/** Prints problems the way a builder reads them: where, what, and what to do. */
final class Report {
    private Report() {}

    static void print(List<Problem> problems, PrintWriter to) {
        problems.stream().filter(Problem::isError).forEach(p -> print("error", p, to));
        problems.stream().filter(p -> !p.isError()).forEach(p -> print("advice", p, to));
    }

    private static void print(String word, Problem problem, PrintWriter to) {
        to.println(word + ": " + problem.where() + ": " + problem.message() + " [" + problem.code() + "]");
        if (!problem.remedy().isEmpty()) {
            to.println("       " + problem.remedy());
        }
    }
}
