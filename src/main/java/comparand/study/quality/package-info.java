/**
 * What the rows of raw files are looked at for: one rule per file, each with what it checks, why it matters and what to
 * do. A rule sees one row through {@link comparand.study.quality.QualityRow} and decides nothing but what it says of it:
 * a remark, a row that is held, or a metric the row is kept from. {@link comparand.study.quality.QualityRules} lists them.
 *
 * <p>Floor 4, below {@code study}: imports metric and unit.
 */
@NullMarked
package comparand.study.quality;

import org.jspecify.annotations.NullMarked;
