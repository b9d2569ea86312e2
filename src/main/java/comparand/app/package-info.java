/**
 * The command line: joins the stages, prints, writes files, and gives the exit code. The only package that prints.
 *
 * <p>Floor 5: imports everything.
 */
@NullMarked
package comparand.app;

import org.jspecify.annotations.NullMarked;
