package org.baywright.model.problem;

/**
 * A place in what was read.
 *
 * @param source the file's name, or {@code --set} for an override on the command line
 * @param path the dotted key, such as {@code leanTos[0].pitch}; empty for the whole file
 * @param line line in the file from 1, or 0 when the key is not in it
 * @param column column in the line from 1, or 0
 */
public record Where(String source, String path, int line, int column) {
    /** The whole of a source. */
    public static Where whole(String source) {
        return new Where(source, "", 0, 0);
    }

    /** As it is printed before a message: {@code shed.yaml:4:9 roofPitch}. */
    @Override
    public String toString() {
        String position = line > 0 ? ":" + line + ":" + column : "";
        return source + position + (path.isEmpty() ? "" : " " + path);
    }
}
