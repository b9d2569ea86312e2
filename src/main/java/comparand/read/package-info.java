/**
 * From files to the library: the only package that opens them.
 *
 * <p>A library is read whole or not at all; every fault in every file is reported together. Nothing outside the library
 * folder is opened.
 *
 * <p>Floor 4: imports floors 0 to 3, and the packages below it that know one kind of file each.
 */
@NullMarked
package comparand.read;

import org.jspecify.annotations.NullMarked;
