package org.misecue.recipe.manuscript;

import java.util.regex.Pattern;

/**
 * One line of a manuscript, without its marks.
 *
 * @param number where it stands in the file, from 1; 0 where the document has no lines
 * @param kind what it looks like
 * @param level of a heading, 1 for the topmost; 0 for all else
 * @param text without bullet, number or heading marks; blanks as written within
 * @param gap whether an empty line or a new paragraph stands before it
 */
public record Line(int number, Kind kind, int level, String text, boolean gap) {

    /** What a line looks like. */
    public enum Kind {
        HEADING,
        /** An item of a list with bullets. */
        ITEM,
        /** An item of a numbered list. */
        NUMBERED,
        TEXT
    }

    private static final Pattern RANGE = Pattern.compile(".*\\d[–-]$");

    static Line heading(int number, int level, String text) {
        return new Line(number, Kind.HEADING, level, text, true);
    }

    static Line item(int number, String text) {
        return new Line(number, Kind.ITEM, 0, text, false);
    }

    static Line numbered(int number, String text) {
        return new Line(number, Kind.NUMBERED, 0, text, false);
    }

    static Line text(int number, String text, boolean gap) {
        return new Line(number, Kind.TEXT, 0, text, gap);
    }

    /** This line with more text behind it, as when a mail program broke it. */
    public Line with(String more) {
        // A range such as 20–25 may be broken behind its dash.
        boolean dash = RANGE.matcher(text).matches();
        String joined = text.isEmpty() ? more : dash ? text + more : text + " " + more;
        return new Line(number, kind, level, joined, gap);
    }

    public boolean is(Kind other) {
        return kind == other;
    }
}
