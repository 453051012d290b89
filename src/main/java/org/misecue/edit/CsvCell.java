package org.misecue.edit;

/** A cell of a table that somebody opens in a spreadsheet. */
final class CsvCell {

    private CsvCell() {}

    /** Spreadsheets take a cell that begins with one of these for a formula. */
    static String harmless(String cell) {
        return cell.matches("(?s)[=+\\-@\\t\\r].*") ? "'" + cell : cell;
    }
}
