package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.baywright.render.paper.Face;

/**
 * Words in a block, with or without a sign before them.
 *
 * @param sign a bullet or number that hangs left of the words; may be empty
 */
public record Paragraph(String sign, String words, Face face) {
    /** Checks that something is said. */
    public Paragraph {
        if (words.isBlank()) {
            throw new IllegalArgumentException("a paragraph needs words");
        }
    }

    /** Plain words. */
    public static Paragraph of(String words) {
        return new Paragraph("", words, Face.REGULAR);
    }

    /** Bold words over others. */
    public static Paragraph heading(String words) {
        return new Paragraph("", words, Face.BOLD);
    }

    /** Words after a bullet. */
    public static Paragraph bullet(String words) {
        return new Paragraph("•", words, Face.REGULAR);
    }

    /** Words numbered from one. */
    public static List<Paragraph> numbered(List<String> words) {
        return new ArrayList<>(IntStream.range(0, words.size())
                .mapToObj(i -> new Paragraph((i + 1) + ".", words.get(i), Face.REGULAR))
                .toList());
    }
}
