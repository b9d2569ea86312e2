/**
 * What a reader of the page may try on the answers of a run: the numbers behind every pair, the rules they were judged by, and
 * the words in which the page says what would come of other settings.
 *
 * <p>Finished like a document: names chosen, numbers printed to their digits. What scripts work out anew from it follows the
 * rules of the stages, and tests hold the two together.
 *
 * <p>Floor 0: imports the JDK only.
 */
@NullMarked
package comparand.document.exploration;

import org.jspecify.annotations.NullMarked;
