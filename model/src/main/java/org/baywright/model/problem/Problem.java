package org.baywright.model.problem;

import java.util.Objects;

/**
 * One thing that is wrong, or worth knowing, about what was asked for: what, where and how to mend it.
 *
 * @param severity whether it stops the work
 * @param code a short fixed word for it, such as {@code unknown-key}; tests and scripts rely on it
 * @param where the place in the file
 * @param message what was read and what is allowed
 * @param remedy what to do about it; may be empty
 */
public record Problem(Severity severity, String code, Where where, String message, String remedy) {
    /** Whether a problem stops the work. */
    public enum Severity {
        /** Nothing is written until this is mended. */
        ERROR,
        /** Worth knowing; the work goes on. */
        ADVICE
    }

    /** Checks that nothing is missing. */
    public Problem {
        Objects.requireNonNull(severity);
        Objects.requireNonNull(where);
        if (code.isBlank() || message.isBlank()) {
            throw new IllegalArgumentException("a problem needs a code and a message");
        }
        Objects.requireNonNull(remedy);
    }

    /** A problem that stops the work. */
    public static Problem error(String code, Where where, String message, String remedy) {
        return new Problem(Severity.ERROR, code, where, message, remedy);
    }

    /** Advice: the work goes on. */
    public static Problem advice(String code, Where where, String message, String remedy) {
        return new Problem(Severity.ADVICE, code, where, message, remedy);
    }

    /** True when it stops the work. */
    public boolean isError() {
        return severity == Severity.ERROR;
    }
}
