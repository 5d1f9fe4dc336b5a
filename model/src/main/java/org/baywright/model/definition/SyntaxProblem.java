package org.baywright.model.definition;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.baywright.model.problem.Where;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/**
 * Text that is neither YAML nor JSON, said in plain words.
 *
 * @param line from 1
 * @param column from 1
 * @param message what is wrong
 * @param remedy how to mend it
 */
record SyntaxProblem(int line, int column, String message, String remedy) {
    /** What the parser says (in part) against what a builder can use; the first that fits is taken. */
    private static final Map<String, String[]> WORDS = new LinkedHashMap<>();

    static {
        word("mapping values are not allowed", "a ':' where none is expected", "put text with ': ' in it in quotes");
        word("(tab)", "a tab character", "indent with spaces");
        word("could not find expected ':'", "a line without its ':'", "write key: value");
        word("expected ',' or ']'", "a list in [ ] that is not closed or lacks a comma", "check commas and ]");
        word("expected ',' or '}'", "a group in { } that is not closed or lacks a comma or colon", "check : , and }");
        word("unexpected end of stream", "a quote that is not closed before the file ends", "close the quote");
        word("expected <block end>", "a line that does not fit the indentation above", "line it up with its group");
        word("expected the node content", "a comma or bracket where a value is expected", "check the brackets");
        word("block sequence entries are not allowed", "a '-' where no list can start", "start it on a new line");
        word("undefined alias", "an alias (*) without its anchor (&)", "put text that starts with * in quotes");
        word("expected a single document", "a second document after '---'", "keep one definition in a file");
        word("cannot start any token", "a character that cannot start a value", "put the value in quotes");
        word("unknown escape", "an unknown \\ sequence in double quotes", "use single quotes");
        word("nesting depth", "groups within groups without end", "check the brackets");
        word("number of aliases", "too many aliases (*)", "write the values out");
    }

    private static void word(String parser, String message, String remedy) {
        WORDS.put(parser, new String[] {message, remedy});
    }

    /** The lines where a key lacks its colon, which the parser cannot know, else what the parser met. */
    static List<SyntaxProblem> all(YAMLException e, String text) {
        SyntaxProblem met = of(e, text);
        List<SyntaxProblem> colons = MissingColon.lines(text, met.line());
        return colons.isEmpty() ? List.of(met) : colons;
    }

    private static SyntaxProblem of(YAMLException e, String text) {
        if (e instanceof ReaderException unreadable) {
            return unreadable(text, unreadable);
        }
        Optional<Mark> mark =
                e instanceof MarkedYAMLException m ? Optional.ofNullable(m.getProblemMark()) : Optional.empty();
        String said = e instanceof MarkedYAMLException m && m.getProblem() != null ? m.getProblem() : e.getMessage();
        String[] words = words(said);
        return new SyntaxProblem(
                mark.map(m -> m.getLine() + 1).orElse(1),
                mark.map(m -> m.getColumn() + 1).orElse(1),
                words[0],
                words[1]);
    }

    private static String[] words(String said) {
        String lower = said.toLowerCase(Locale.ROOT);
        return WORDS.entrySet().stream()
                .filter(w -> lower.contains(w.getKey()))
                .findFirst()
                .map(Map.Entry::getValue)
                .orElse(new String[] {Spelling.shown(said), "check this line and the one above it"});
    }

    /** The parser counts characters here, not lines. */
    private static SyntaxProblem unreadable(String text, ReaderException e) {
        String read = String.format(Locale.ROOT, "an unprintable character (U+%04X)", e.getCodePoint());
        return at(text, e.getPosition(), read, "delete it");
    }

    /** An escape for a character that does not exist; the parser does not say where. */
    static SyntaxProblem beyondUnicode(String text) {
        return at(text, text.indexOf("\\U"), "a \\U escape that names no character", "use single quotes");
    }

    private static SyntaxProblem at(String text, int position, String message, String remedy) {
        String before = text.substring(0, Math.min(Math.max(position, 0), text.length()));
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        return new SyntaxProblem(line, before.length() - before.lastIndexOf('\n'), message, remedy);
    }

    /** Reports it at its line, or at the override it came with. */
    void tell(String source, String path, boolean marked, Findings findings) {
        Where where = marked ? new Where(source, path, line, column) : new Where(source, path, 0, 0);
        findings.error("syntax", where, "cannot be read: " + message, remedy);
    }
}
