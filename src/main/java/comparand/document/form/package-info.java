/** A form to be filled in by a person, as a workbook: finished, so that the writer of workbooks decides nothing. */
@NullMarked
package comparand.document.form;

import org.jspecify.annotations.NullMarked;
