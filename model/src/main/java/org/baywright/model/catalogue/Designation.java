package org.baywright.model.catalogue;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A section's or anchor's name as people write it, made comparable.
 *
 * <p>The key is what two ways of writing one name share: no spaces, small letters, {@code ×} as {@code x}, {@code 5.0}
 * as {@code 5}, and no leading SHS or RHS, since the sizes say whether a hollow section is square.
 *
 * @param key the name without what does not matter
 */
record Designation(String key) {
    private static final Pattern TRAILING_ZEROS = Pattern.compile("(?<=\\d)(?:\\.0+|(\\.\\d*[1-9])0+)(?!\\d)");
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
    private static final Pattern STANDARD = Pattern.compile("(?<=\\d)en$");

    /**
     * The name as somebody wrote it. Each look-up makes the whole catalogue comparable, so patterns are kept for the
     * names that have a point.
     */
    static Designation of(String written) {
        StringBuilder plain = new StringBuilder(written.length());
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            if (!Character.isWhitespace(c)) {
                plain.append(c == '×' ? 'x' : Character.toLowerCase(c));
            }
        }
        return new Designation(withoutZeros(withoutKind(plain.toString())));
    }

    private static String withoutKind(String name) {
        boolean hollow = name.startsWith("shs") || name.startsWith("rhs");
        return hollow && name.length() > 3 && Character.isDigit(name.charAt(3)) ? name.substring(3) : name;
    }

    private static String withoutZeros(String name) {
        return name.indexOf('.') < 0 ? name : TRAILING_ZEROS.matcher(name).replaceAll("$1");
    }

    /** How many letters and numbers differ. The standard's suffix does not count: the size matters more. */
    int wordsApart(Designation other) {
        return edits(letters(), other.letters())
                + Math.abs(sizes().size() - other.sizes().size());
    }

    /** How far the sizes lie apart, in the numbers that both have: the sum of |ln(a/b)|. */
    double sizesApart(Designation other) {
        List<Double> mine = sizes();
        List<Double> others = other.sizes();
        double sum = 0;
        for (int i = 0; i < Math.min(mine.size(), others.size()); i++) {
            sum += Math.abs(Math.log(mine.get(i) / others.get(i)));
        }
        return sum;
    }

    private String letters() {
        return NUMBER.matcher(STANDARD.matcher(key).replaceFirst("")).replaceAll("");
    }

    /** Largest first, so that the order a name gives them in does not set it apart. */
    private List<Double> sizes() {
        return NUMBER.matcher(key)
                .results()
                .map(number -> Double.valueOf(number.group()))
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    /** The least number of letters to add, drop or change. @source Wagner and Fischer, J. ACM 21 (1974) 168. */
    private static int edits(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int changed = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
