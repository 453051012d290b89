package org.misecue.notice;

/**
 * Where in the user's files something is.
 *
 * @param file the file as the user knows it, relative to the episode where possible
 * @param line counted from 1; 0 where there is no line to name
 * @param column counted from 1; 0 where there is no column to name
 */
public record Place(String file, int line, int column) {

    public static Place of(String file) {
        return new Place(file, 0, 0);
    }

    public static Place of(String file, int line) {
        return new Place(file, line, 0);
    }

    @Override
    public String toString() {
        if (line == 0) {
            return file;
        }
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }
}
