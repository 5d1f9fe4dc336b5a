package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import org.baywright.model.problem.Problem;

/**
 * What came of reading a definition.
 *
 * @param definition there exactly when no problem is an error
 * @param problems all of them, ordered by line; overrides last
 * @param places where each key was read
 */
public record Reading(Optional<Definition> definition, List<Problem> problems, Places places) {
    /** Checks that there is a definition or a reason why not. */
    public Reading {
        problems = List.copyOf(problems);
        if (definition.isPresent() == problems.stream().anyMatch(Problem::isError)) {
            throw new IllegalArgumentException("a reading has either a definition or an error");
        }
    }
}
