/**
 * Ways in for people who do not write records: a workbook to fill in, and questions at the terminal. Both fill the same slots,
 * and a record is made from slots in one place, so that both ways give the same record.
 *
 * <p>{@link comparand.intake.Piece} is one part of a record with the slots it is made from; {@link comparand.intake.ValuePieces}
 * and {@link comparand.intake.SourcePieces} are the lists of all of them.
 */
@NullMarked
package comparand.intake;

import org.jspecify.annotations.NullMarked;
