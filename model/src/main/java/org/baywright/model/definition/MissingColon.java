package org.baywright.model.definition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds the lines of a text that cannot be read where a key lacks its colon. The parser takes {@code span 12000} for
 * text that may go on, and so stops at a later line, at something that is right.
 */
final class MissingColon {
    /** A key at the start of a line or list entry, what stands in the colon's place, and a value. */
    private static final Pattern LINE = Pattern.compile("(?:\\s*-)*\\s*([A-Za-z]\\w*)(\\s*[:=]|\\s|$)\\s*(.*)");

    private static final Pattern COMMENT = Pattern.compile("(^|\\s)#.*");
    private static final Pattern NUMBER = Pattern.compile("[-+]?[\\d.]+");

    private MissingColon() {}

    /** Each such line as far as the one that was told, and beyond it when there is one; none where another fault fits. */
    static List<SyntaxProblem> lines(String text, int told) {
        List<SyntaxProblem> found = new ArrayList<>();
        List<String> lines = text.lines().collect(Collectors.toList());
        for (int i = 0; i < lines.size(); i++) {
            int number = i + 1;
            read(COMMENT.matcher(lines.get(i)).replaceFirst("").stripTrailing())
                    .ifPresent(m -> found.add(problem(number, m)));
        }
        return !found.isEmpty() && found.get(0).line() <= told ? found : List.of();
    }

    private static Optional<Matcher> read(String line) {
        Matcher m = LINE.matcher(line);
        return Optional.of(m).filter(Matcher::matches).filter(MissingColon::lacksColon);
    }

    /** Only words that are keys, or that a number follows: other lines may be parts of a longer text. */
    private static boolean lacksColon(Matcher m) {
        String value = m.group(3);
        boolean colon = m.group(2).endsWith(":");
        boolean apart = m.start(3) > m.end(2) || value.isEmpty();
        boolean key = Keys.ALL.stream().anyMatch(group -> group.has(m.group(1)));
        return !(colon && apart) && (key || NUMBER.matcher(value).matches());
    }

    private static SyntaxProblem problem(int line, Matcher m) {
        String value = m.group(3);
        String whole = m.group(1) + ":" + (value.isEmpty() ? "" : " " + value);
        String message =
                m.group(2).endsWith(":") ? "a ':' without a space after it" : "'" + m.group(1) + "' without its ':'";
        return new SyntaxProblem(line, m.start(1) + 1, message, "write " + Spelling.shown(whole));
    }
}
