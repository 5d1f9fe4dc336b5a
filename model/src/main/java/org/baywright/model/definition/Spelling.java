package org.baywright.model.definition;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What was probably meant, and how to show what was read. */
public final class Spelling {
    private static final int SHOWN = 60;

    private Spelling() {}

    /** The valid spellings close to a word, nearest first, at most three; none when nothing is close. */
    public static List<String> near(String word, Collection<String> valid) {
        String read = folded(word);
        return valid.stream()
                .filter(v -> isNear(read, folded(v)))
                .sorted(Comparator.comparingInt(v -> distance(read, folded(v))))
                .limit(3)
                .toList();
    }

    /** A remedy that names the nearest spelling, or all of the valid ones when nothing is close. */
    public static String remedy(String word, Collection<String> valid) {
        List<String> near = near(word, valid);
        return near.isEmpty()
                ? "allowed: " + String.join(", ", valid)
                : "did you mean " + near.stream().collect(Collectors.joining(" or ")) + "?";
    }

    /** Text made safe and short enough for a message: no control characters, no endless lines. */
    public static String shown(String text) {
        String safe = text.codePoints()
                .limit(SHOWN)
                .mapToObj(c -> isPlain(c) ? Character.toString(c) : String.format(Locale.ROOT, "\\u%04x", c))
                .collect(Collectors.joining());
        return text.codePointCount(0, text.length()) > SHOWN ? safe + "…" : safe;
    }

    /** False for what cannot be printed: control and format characters, half surrogates, line separators. */
    static boolean isPlain(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }

    private static String folded(String word) {
        return word.replaceAll("[\\s_\\-]+", "").toLowerCase(Locale.ROOT);
    }

    /** A third of the letters may be wrong; a part of the word is near too ({@code pitch} for {@code roofPitch}). */
    private static boolean isNear(String read, String valid) {
        if (Math.abs(read.length() - valid.length()) > Math.max(valid.length(), 4)) {
            return false;
        }
        boolean part = read.length() >= 4 && valid.contains(read) || valid.length() >= 4 && read.contains(valid);
        return part || distance(read, valid) <= Math.max(1, valid.length() / 3);
    }

    /**
     * How many letters to insert, drop, change or swap with their neighbour.
     *
     * <p>@source F. J. Damerau, A technique for computer detection and correction of spelling errors, 1964, in the
     * restricted form that edits no letter twice (from memory)
     */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cheapest(int[][] d, String a, String b, int i, int j) {
        int change = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
