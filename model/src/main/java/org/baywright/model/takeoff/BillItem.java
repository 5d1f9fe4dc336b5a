package org.baywright.model.takeoff;

import java.util.List;

/**
 * What a bill line is for.
 *
 * @param description section, plate or article
 * @param grade grade and standard; may be empty
 * @param lengthMm of each, or zero when it has none
 * @param marks the parts it serves; may be empty
 * @param note finish, holes or what the buyer must know; may be empty
 */
public record BillItem(String description, String grade, double lengthMm, List<String> marks, String note) {
    /** Copies the list. */
    public BillItem {
        marks = List.copyOf(marks);
    }
}
