package comparand.unit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A unit that can be written, as the table of units has it.
 *
 * @param code the case-sensitive UCUM code
 * @param equals its definition: a value and what it is a multiple of; empty for a base unit
 * @param takesPrefixes whether milli-, kilo- and the like may stand before it
 */
public record UnitRow(String code, String equals, boolean takesPrefixes) {

    /** Every unit of the table by its code. */
    public static List<UnitRow> all() {
        var rows = new ArrayList<UnitRow>();
        UcumTable.BASE.forEach(code -> rows.add(new UnitRow(code, "", true)));
        UcumTable.ATOMS.forEach((code, atom) -> rows.add(
                new UnitRow(code, (atom.value() + " × " + atom.expression()).replace(" × 1", ""), atom.metric())));
        rows.add(new UnitRow("Cel", "K − 273.15", false));
        rows.add(new UnitRow("[degF]", "K × 9/5 − 459.67", false));
        rows.add(new UnitRow("[pH]", "−log10 of mol/L", false));
        rows.sort(Comparator.comparing(UnitRow::code, String.CASE_INSENSITIVE_ORDER)
                .thenComparing(UnitRow::code));
        return List.copyOf(rows);
    }

    /** The prefixes that can be written, the two-letter one first. */
    public static List<String> prefixes() {
        return List.copyOf(UcumTable.PREFIXES.keySet());
    }
}
