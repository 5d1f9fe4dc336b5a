package org.baywright.model.definition;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.baywright.model.problem.Where;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * YAML or JSON text as a tree with places. Values stay text: what they mean is decided by the key they stand at, so
 * that {@code no} can be a name and {@code 0x10} is never silently sixteen.
 */
final class SyntaxTree {
    /** The parser takes seconds over much longer lines, and two hundred bays written out fit in a fifth of this. */
    private static final int LONGEST_TEXT = 200_000;

    private static final int MOST_VALUES = 20_000;
    private static final int DEEPEST = 30;

    private static final Pattern ESCAPED_SLASH = Pattern.compile("(?<!\\\\)((?:\\\\\\\\)*)\\\\/");

    private final String source;
    private final boolean marked;
    private final Findings findings;
    private int values;

    private SyntaxTree(String source, boolean marked, Findings findings) {
        this.source = source;
        this.marked = marked;
        this.findings = findings;
    }

    /** A whole file; empty when it cannot be read, which has then been told. */
    static Optional<Located> ofFile(String source, String text, Findings findings) {
        return new SyntaxTree(source, true, findings)
                .read("", jsonAsYaml(text))
                .filter(tree -> !(tree instanceof Located.Scalar) || !tellColons(source, text, findings));
    }

    /** A file whose lines all lack their colon is one long text to the parser. */
    private static boolean tellColons(String source, String text, Findings findings) {
        List<SyntaxProblem> colons = MissingColon.lines(text, Integer.MAX_VALUE);
        colons.forEach(problem -> problem.tell(source, "", true, findings));
        return !colons.isEmpty();
    }

    /** The value of an override: plain text, or YAML when it starts with a bracket or a quote. */
    static Optional<Located> ofValue(Where where, String text, Findings findings) {
        String t = text.strip();
        if (!t.isEmpty() && "[{\"'".indexOf(t.charAt(0)) >= 0) {
            return new SyntaxTree(where.source(), false, findings).read(where.path(), t);
        }
        boolean blank = t.isEmpty() || t.equals("~") || t.equals("null");
        return Optional.of(blank ? new Located.Blank(where) : new Located.Scalar(where, t));
    }

    /**
     * JSON allows two things that YAML's parser does not: tabs between values (inside strings it forbids them), and
     * the escape {@code \/} for a plain slash.
     */
    private static String jsonAsYaml(String text) {
        return text.stripLeading().startsWith("{")
                ? ESCAPED_SLASH.matcher(text.replace('\t', ' ')).replaceAll("$1/")
                : text;
    }

    private Optional<Located> read(String path, String text) {
        Where start = new Where(source, path, marked ? 1 : 0, marked ? 1 : 0);
        if (text.length() > LONGEST_TEXT) {
            String message = text.length() + " characters were read; at most " + LONGEST_TEXT + " are allowed";
            findings.error("too-large", start, message, "a definition is a page or two");
            return Optional.empty();
        }
        try {
            Node root = new Yaml(options()).compose(new StringReader(text));
            return Optional.of(root == null ? new Located.Blank(start) : tree(root, path, 0));
        } catch (YAMLException e) {
            SyntaxProblem.all(e, text).forEach(problem -> problem.tell(source, path, marked, findings));
        } catch (NumberFormatException e) {
            // The parser's way of saying that an escape such as U+FFFFFFFF names no character.
            SyntaxProblem.beyondUnicode(text).tell(source, path, marked, findings);
        } catch (TooLarge e) {
            findings.error("too-large", e.where, e.getMessage(), "check the file: no shed needs that much");
        }
        return Optional.empty();
    }

    private static LoaderOptions options() {
        LoaderOptions options = new LoaderOptions();
        options.setNestingDepthLimit(DEEPEST);
        options.setMaxAliasesForCollections(50);
        return options;
    }

    /** Aliases may repeat or even contain themselves, so depth and number are watched here too. */
    private Located tree(Node node, String path, int depth) {
        Where where = where(path, node.getStartMark());
        if (depth > DEEPEST || ++values > MOST_VALUES) {
            throw new TooLarge(where);
        }
        if (node instanceof MappingNode mapping) {
            return mapping(mapping, where, depth);
        }
        if (node instanceof SequenceNode sequence) {
            return sequence(sequence, where, depth);
        }
        return node.getTag().equals(Tag.NULL)
                ? new Located.Blank(where)
                : new Located.Scalar(where, ((ScalarNode) node).getValue());
    }

    private Located sequence(SequenceNode node, Where where, int depth) {
        List<Located> items = new ArrayList<>();
        for (Node item : node.getValue()) {
            items.add(tree(item, where.path() + "[" + items.size() + "]", depth + 1));
        }
        return new Located.Sequence(where, items);
    }

    private Located mapping(MappingNode node, Where where, int depth) {
        Map<String, Located.Entry> entries = new LinkedHashMap<>();
        for (NodeTuple tuple : node.getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode key) {
                entry(entries, key, tuple.getValueNode(), where.path(), depth);
            } else {
                Where at = where(where.path(), tuple.getKeyNode().getStartMark());
                findings.error("wrong-type", at, "a list or group stands where a key is expected", "write key: value");
            }
        }
        return new Located.Mapping(where, entries);
    }

    private void entry(Map<String, Located.Entry> entries, ScalarNode key, Node value, String path, int depth) {
        String name = key.getValue();
        String inner = path.isEmpty() ? Spelling.shown(name) : path + "." + Spelling.shown(name);
        Where at = where(inner, key.getStartMark());
        Located.Entry earlier = entries.putIfAbsent(name, new Located.Entry(at, tree(value, inner, depth + 1)));
        if (earlier != null) {
            String first = marked ? " (first on line " + earlier.key().line() + ")" : "";
            findings.error("duplicate-key", at, "'" + Spelling.shown(name) + "' is given twice" + first, "keep one");
        }
    }

    private Where where(String path, Mark mark) {
        return marked
                ? new Where(source, path, mark.getLine() + 1, mark.getColumn() + 1)
                : new Where(source, path, 0, 0);
    }

    /** Thrown within this class only, to leave a tree that would not end. */
    private static final class TooLarge extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient Where where;

        TooLarge(Where where) {
            super("more than " + MOST_VALUES + " values, or more than " + DEEPEST + " levels of them");
            this.where = where;
        }
    }
}
