package org.baywright.render.dimension;

/**
 * A column of a table.
 *
 * @param title in the header
 * @param content words, flush left and broken into lines when long, or numbers, flush right and never broken
 */
public record Column(String title, Content content) {
    /** What stands in a column. */
    public enum Content {
        WORDS,
        NUMBERS
    }

    /** A column of words. */
    public static Column words(String title) {
        return new Column(title, Content.WORDS);
    }

    /** A column of numbers. */
    public static Column numbers(String title) {
        return new Column(title, Content.NUMBERS);
    }

    boolean breaks() {
        return content == Content.WORDS;
    }
}
