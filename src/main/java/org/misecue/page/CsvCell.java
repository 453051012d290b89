package org.misecue.page;

/** A cell of a table that somebody opens in a spreadsheet. */
public final class CsvCell {

    private CsvCell() {}

    /** Spreadsheets take a cell that begins with one of these for a formula. */
    public static String harmless(String cell) {
        return cell.matches("(?s)[=+\\-@\\t\\r].*") ? "'" + cell : cell;
    }
}
