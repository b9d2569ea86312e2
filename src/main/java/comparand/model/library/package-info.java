/**
 * The library as written: one record type per kind of file, every value with its place in the file, nothing converted.
 *
 * <p>These types are the file format. The reader binds files to them, the published JSON Schemas are generated from them,
 * and {@link comparand.model.library.Meaning} carries the sentence an editor shows for a key. A component's name in kebab
 * case is its key; {@code Optional} and {@code List} components may be left out; {@code Entries} holds keys of the
 * author's choosing.
 */
@NullMarked
package comparand.model.library;

import org.jspecify.annotations.NullMarked;
