/** What changed between two runs, with the cause of every answer that is not the same; as data and as documents. */
@NullMarked
package comparand.compose.ledger;

import org.jspecify.annotations.NullMarked;
