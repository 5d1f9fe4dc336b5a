package org.baywright.model.cutting;

import java.util.List;
import java.util.Objects;

/**
 * One bar on the saw.
 *
 * @param layout how it is cut
 * @param marks what is written on its pieces, in the order of the layout's cuts
 */
public record Bar(Layout layout, List<String> marks) {
    /** Copies the list; each piece has its mark. */
    public Bar {
        Objects.requireNonNull(layout);
        marks = List.copyOf(marks);
        if (marks.size() != layout.pieces()) {
            throw new IllegalArgumentException(
                    "a bar of " + layout.pieces() + " pieces got " + marks.size() + " marks");
        }
    }
}
