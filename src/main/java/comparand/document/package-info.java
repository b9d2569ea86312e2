/**
 * Finished documents: numbers rounded, words chosen, notes lettered, order fixed.
 *
 * <p>Writers are given this and only this, so that formats cannot disagree. If two writers would compute it, it belongs
 * here. Knows no metric and no statistic.
 *
 * <p>Floor 0: imports the JDK only.
 */
@NullMarked
package comparand.document;

import org.jspecify.annotations.NullMarked;
