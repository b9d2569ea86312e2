package comparand.write.xlsx;

import comparand.document.Cell;

/**
 * How tall a row must be for its wrapped text. Spreadsheet programs differ in whether they work this out on opening, so it
 * is estimated here from the width of the column in characters, generously.
 */
final class RowHeight {

    private static final float LINE = 12f;
    private static final float MOST = 400;
    /** Bold letters and capitals are wider than the digit a column width counts in. */
    private static final double ROOM = 1.05;

    private RowHeight() {}

    /** Lines a cell needs in a column. */
    static int lines(Cell cell, double width) {
        // to write out each of a million numbers takes longer than to see that it is short
        return cell instanceof Cell.Figure figure && most(figure) <= room(width) ? 1 : lines(cell.shown(), width);
    }

    /** Signs a number cannot have more of: its digits, a zero and a decimal sign before those that are all decimals, a minus. */
    private static long most(Cell.Figure figure) {
        var printed = figure.printed();
        return (long) printed.precision()
                + Math.abs((long) printed.scale())
                + 3
                + figure.before().length()
                + figure.after().length();
    }

    private static double room(double width) {
        return Math.max(4, width * ROOM);
    }

    /** Lines a text needs in a column, breaking at blanks and within long words. */
    static int lines(String text, double width) {
        double room = room(width);
        if (text.length() <= room) {
            return 1;
        }
        int lines = 1;
        double used = 0;
        for (var word : text.split("[ \\n]", -1)) {
            double length = word.codePointCount(0, word.length());
            if (used > 0 && used + 1 + length > room) {
                lines++;
                used = 0;
            }
            used += (used > 0 ? 1 : 0) + length;
            if (used > room) {
                // a word broken within itself ends its line
                lines += (int) Math.ceil(used / room) - 1;
                used = room;
            }
        }
        return lines;
    }

    static float of(int lines) {
        return Math.min(MOST, lines * LINE + 2);
    }
}
