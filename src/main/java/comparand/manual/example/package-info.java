/**
 * Examples of the manual: small libraries that are changed in one place, and what the tool says of them. Nothing here is
 * remembered text; the tool is run whenever an example is shown.
 */
@NullMarked
package comparand.manual.example;

import org.jspecify.annotations.NullMarked;
