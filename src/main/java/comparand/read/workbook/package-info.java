/**
 * Sheets of workbooks (Office Open XML) as rows of raw data, streamed: of a sheet no more than one row is held at a time.
 * What a cell stores is taken as it is stored; what a spreadsheet program would show beside it (hidden rows, formulas, numbers
 * kept as text) becomes a note.
 *
 * <p>Floor 4: imports floors 0 to 3, and the office library.
 */
@NullMarked
package comparand.read.workbook;

import org.jspecify.annotations.NullMarked;
