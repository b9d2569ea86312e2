/** Documents as workbooks: one sheet a section, real tables, typed cells. */
@NullMarked
package comparand.write.xlsx;

import org.jspecify.annotations.NullMarked;
