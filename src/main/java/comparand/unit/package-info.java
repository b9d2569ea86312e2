/**
 * Units, exact conversions and printed numbers.
 *
 * <p>Units follow the Unified Code for Units of Measure (UCUM, table version 2.2): base units, prefixes and the atoms
 * this field uses, with exact rational factors. What people write ({@code mmHg}, {@code °C}, {@code mL/min/m²}) is read
 * by {@link comparand.unit.TradeSpelling} and kept as written for printing.
 *
 * <p>Millimetre of mercury: UCUM tabulates {@code m[Hg]} as 133.3220 kPa, so here 1 mmHg is exactly 133.322 Pa. The
 * conventional value, 13595.1 kg/m³ × 9.80665 m/s² = 133.322387415 Pa, is larger by 3 parts in a million.
 *
 * <p>Floor 1: imports {@code diag} and the exact-fraction library.
 */
@NullMarked
package comparand.unit;

import org.jspecify.annotations.NullMarked;
