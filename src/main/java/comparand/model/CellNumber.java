package comparand.model;

import comparand.unit.DecimalSign;
import comparand.unit.Parsed;
import comparand.unit.PrintedNumber;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads a cell as one number, or says why it is none. Nothing is cut off, stripped or taken for granted: a bound, a footnote
 * mark, a unit or a grouped number in a cell is a fault with words of its own, so that its author can decide.
 */
public final class CellNumber {

    private static final BigDecimal LARGEST = new BigDecimal("1e30");

    /** No number, and no slip of one, is longer. */
    private static final int LONGEST = 60;

    private static final String DECLARE =
            "correct the cell, list its code under `missing:`, or declare the file's decimal sign under `decimal:`";

    /** A way in which cells are written that are no plain number, with what to say and to do about it. */
    private record Slip(Pattern form, String problem, String fix) {}

    private static final String CORRECT =
            "write the number alone in the cell, or list what stands there under `missing:`";
    private static final String NUMBER = "[+\\-−–]?\\d[\\d.,·' \\u00a0\\u2009\\u202f]*";

    private static final List<Slip> SLIPS = List.of(
            slip(
                    "[<>≤≥]\\s*=?\\s*" + NUMBER + ".*",
                    "`%s` is a bound, not a measured number",
                    "decide what it stands for: list it under `missing:`, or drop the row with a reason"),
            slip(NUMBER + "\\s*(±|\\+/-).*", "`%s` holds a number and its spread", CORRECT),
            slip(NUMBER + "[*†‡§¶#]+|[*†‡§¶#]+" + NUMBER, "`%s` carries a footnote mark", CORRECT),
            slip("[+\\-]?\\d+·\\d+", "`%s` has a raised dot for its decimal sign", CORRECT),
            slip("\\d[\\d.,]*(,\\d+\\.|\\.\\d+,)\\d+", "`%s` carries both a point and a comma", CORRECT),
            slip(
                    "[+\\-−]?\\d{1,3}(['’ \\u00a0\\u2009\\u202f]\\d{3})+([.,]\\d+)?",
                    "`%s` is grouped in thousands", CORRECT),
            slip(
                    "[\\-−–—]+|\\.+|\\?+|/",
                    "`%s` stands where a number should",
                    "list it under `missing:` if it means that"),
            slip(
                    NUMBER + "\\s*[%‰°\\p{L}µ].*",
                    "`%s` holds a number and letters",
                    "write the number alone and the unit under `unit:` of the column"));

    private CellNumber() {}

    private static Slip slip(String form, String problem, String fix) {
        return new Slip(Pattern.compile(form), problem, fix);
    }

    /**
     * The number in a cell that is neither blank nor marked missing. What a fault says to do does not name the cell's text,
     * so that like faults of a column can be told as one.
     *
     * @param decimal the decimal sign declared for texts; empty in a workbook whose numbers are all stored as numbers
     */
    public static Parsed<PrintedNumber> read(DataCell cell, Optional<DecimalSign> decimal) {
        return cell.fold(
                text -> text(text.text(), decimal),
                figure -> stored(figure.value()),
                when -> fault(
                        when.text(),
                        "`%s` is a date or a time, not a number",
                        "write the number itself, such as minutes, and give the cell a number format"),
                error -> fault(
                        error.text(),
                        "`%s` stands where a formula failed",
                        "mend the formula, or list its sign under `missing:`"),
                blank -> Parsed.fault(0, 1, "this cell is empty", "write the number"));
    }

    private static Parsed<PrintedNumber> stored(BigDecimal value) {
        return value.abs().compareTo(LARGEST) > 0
                ? fault(value.toString(), "`%s` is larger than any measurement", "correct the cell")
                : Parsed.ok(new PrintedNumber(value.toPlainString(), new BigDecimal(value.toPlainString())));
    }

    private static Parsed<PrintedNumber> text(String text, Optional<DecimalSign> decimal) {
        // the raised dot of journals is no sign that instruments write
        var read = decimal.filter(d -> text.indexOf('·') < 0).map(d -> PrintedNumber.read(text, d));
        return read.isPresent() && read.get() instanceof Parsed.Ok<PrintedNumber> number
                ? number
                : explained(text, read);
    }

    private static Parsed<PrintedNumber> explained(String text, Optional<Parsed<PrintedNumber>> read) {
        var slip = text.length() > LONGEST || isScientific(text)
                ? Optional.<Slip>empty()
                : SLIPS.stream().filter(s -> s.form.matcher(text).matches()).findFirst();
        if (slip.isPresent()) {
            return fault(text, slip.get().problem, slip.get().fix);
        }
        return read.map(r -> r.<Parsed<PrintedNumber>>fold(
                        Parsed::ok, f -> Parsed.fault(f.at(), f.length(), f.problem(), DECLARE)))
                .orElseGet(() -> fault(
                        text,
                        "`%s` is stored as a text",
                        "store it as a number, or declare the decimal sign of such texts under `decimal:`"));
    }

    /** A power of ten has a message of its own. */
    private static boolean isScientific(String text) {
        return text.matches("[+\\-−]?[\\d.,]+[eE][+\\-−]?\\d+");
    }

    private static Parsed<PrintedNumber> fault(String text, String problem, String fix) {
        return Parsed.fault(0, Math.max(1, text.length()), problem.replace("%s", text), fix);
    }
}
