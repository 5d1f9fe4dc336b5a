package org.baywright.render.paper;

/** The two weights of the one typeface. */
public enum Face {
    REGULAR("DejaVuSansCondensed.ttf"),
    BOLD("DejaVuSansCondensed-Bold.ttf");

    private final String file;

    Face(String file) {
        this.file = file;
    }

    /** The font file's name among the resources in {@code font/}. */
    String file() {
        return file;
    }
}
