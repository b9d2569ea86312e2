/** The evidence table and the evidence workbook. */
@NullMarked
package comparand.compose.table;

import org.jspecify.annotations.NullMarked;
