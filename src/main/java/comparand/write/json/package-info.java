/** The results of a run as JSON, and the JSON Schema of that file, from the same record types. */
@NullMarked
package comparand.write.json;

import org.jspecify.annotations.NullMarked;
