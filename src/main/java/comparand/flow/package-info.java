/**
 * How stages are joined: {@link comparand.flow.Outcome}, a value with findings or findings that stop, and
 * {@link comparand.flow.Stage}, a pure function from one model type to the next.
 *
 * <p>Floor 1: imports {@code diag}.
 */
@NullMarked
package comparand.flow;

import org.jspecify.annotations.NullMarked;
