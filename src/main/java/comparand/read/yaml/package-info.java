/**
 * YAML files as trees in which every key and value knows its line and column, and the binding of such trees to the record
 * types of {@code comparand.model.library}.
 *
 * <p>Nothing is converted on the way: {@code no}, {@code 017}, {@code 1_000}, {@code 12:30} and {@code 1e400} stay the
 * text they are. Anchors, aliases, tags, merge keys, several documents in one file and duplicate keys are refused.
 */
@NullMarked
package comparand.read.yaml;

import org.jspecify.annotations.NullMarked;
