package org.baywright.model.takeoff;

import java.util.List;

/**
 * What a bill line is for.
 *
 * @param description section, plate or article
 * @param grade grade and standard; may be empty
 * @param lengthMm of each, or zero when it has none
 * @param marks what it serves in the model: marks of parts, sheets and flashings, names of surfaces, gutters and
 *     openings, or kinds of part when it serves them all; empty for anchors, which serve every hole
 * @param note finish, holes or what the buyer must know; may be empty
 */
public record BillItem(String description, String grade, double lengthMm, List<String> marks, String note) {
    /** Copies the list. */
    public BillItem {
        marks = List.copyOf(marks);
    }

    /** An article without a length. */
    static BillItem of(String description, String grade, List<String> marks, String note) {
        return new BillItem(description, grade, 0, marks, note);
    }
}
