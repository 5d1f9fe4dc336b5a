package org.baywright.render.sheet;

import java.util.List;

/**
 * Sheets that go out together as one file.
 *
 * @param title document title
 * @param author who drew it; may be empty
 * @param subject one line on what it is
 * @param sheets in order
 */
public record SheetSet(String title, String author, String subject, List<Sheet> sheets) {
    /** Copies the sheets. */
    public SheetSet {
        sheets = List.copyOf(sheets);
    }
}
