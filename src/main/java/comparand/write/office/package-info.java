/** What all files of office programs have alike. */
@NullMarked
package comparand.write.office;

import org.jspecify.annotations.NullMarked;
