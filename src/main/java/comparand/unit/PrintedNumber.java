package comparand.unit;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A number as its source prints it. The digits are evidence: {@code 0.90} claims more than {@code 0.9}.
 *
 * @param text the digits as printed, with the source's own decimal sign
 * @param value the same number; its scale is the number of printed decimals
 */
public record PrintedNumber(String text, BigDecimal value) {

    private static final Pattern NUMBER = Pattern.compile("[+\\-−]?(\\d+)((?<sign>[.,·])(?<decimals>\\d+))?");
    private static final Pattern GROUPED = Pattern.compile("[+\\-−]?\\d{1,3}([., ]\\d{3})+");
    private static final int MOST_DIGITS = 25;

    public PrintedNumber {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a printed number has digits");
        }
    }

    /** A number this program itself writes, with a decimal point. */
    public static PrintedNumber of(String text) {
        return read(text, DecimalSign.POINT).orThrow();
    }

    /**
     * Reads digits, an optional sign and at most one decimal sign: the declared one, or the raised dot of older
     * journals. No thousands separators, no exponents, no leading zeros: each has been misread before.
     */
    public static Parsed<PrintedNumber> read(String text, DecimalSign decimal) {
        var m = NUMBER.matcher(text);
        if (!m.matches()) {
            return notANumber(text);
        }
        if (text.length() > MOST_DIGITS) {
            return Parsed.fault(
                    0,
                    text.length(),
                    "`%s…` has more digits than any measurement".formatted(text.substring(0, 12)),
                    "write the digits the source prints");
        }
        if (m.group(1).length() > 1 && m.group(1).startsWith("0")) {
            return Parsed.fault(
                    m.start(1),
                    m.group(1).length(),
                    "`" + text + "` starts with a zero too many",
                    "write the number without the leading zero");
        }
        if (GROUPED.matcher(text).matches() && text.indexOf(decimal.other()) > 0) {
            return Parsed.fault(
                    0,
                    text.length(),
                    "`" + text + "` may be grouped in thousands or carry a decimal sign",
                    "write it without separators, or with the declared decimal sign");
        }
        var sign = m.group("sign");
        if (sign != null && sign.charAt(0) == decimal.other()) {
            return Parsed.fault(
                    m.start("sign"),
                    1,
                    "`%s` has a decimal %s, and this file is declared to use a %s"
                            .formatted(text, name(decimal.other()), name(decimal.sign())),
                    "write `%s`, or declare `decimal: %s` for the whole file"
                            .formatted(text.replace(decimal.other(), decimal.sign()), name(decimal.other())));
        }
        var plain = text.replace('−', '-').replace(',', '.').replace('·', '.');
        return Parsed.ok(new PrintedNumber(text, new BigDecimal(plain)));
    }

    private static Parsed<PrintedNumber> notANumber(String text) {
        if (text.matches("[+\\-−]?\\d[\\d_]*_[\\d_]*")) {
            return Parsed.fault(
                    text.indexOf('_'),
                    1,
                    "`" + text + "` is written with an underscore",
                    "write `" + text.replace("_", "") + "`");
        }
        if (text.matches("[+\\-−]?[\\d.,]+[eE][+\\-−]?\\d+")) {
            return Parsed.fault(
                    0,
                    text.length(),
                    "`" + text + "` is written with a power of ten",
                    "write the digits the source prints, in a unit that suits them");
        }
        if (GROUPED.matcher(text).matches()) {
            return Parsed.fault(
                    0, text.length(), "`" + text + "` may be grouped in thousands", "write it without separators");
        }
        if (text.matches("\\d+:\\d+(:\\d+)?")) {
            return Parsed.fault(
                    0,
                    text.length(),
                    "`" + text + "` is a time or a ratio, not a number",
                    "write one number with a unit");
        }
        return Parsed.fault(
                0, text.length(), "`" + text + "` is not a number", "write digits with at most one decimal sign");
    }

    private static String name(char sign) {
        return sign == ',' ? "comma" : "point";
    }

    public double toDouble() {
        return value.doubleValue();
    }

    public BigFraction exact() {
        return UcumTable.fraction(value.toPlainString());
    }

    public int decimals() {
        return Math.max(0, value.scale());
    }

    /** Printed digits from the first that is not zero: 2 for {@code 0.71}, 3 for {@code 65.0}; 1 for zero itself. */
    public int significantDigits() {
        return value.signum() == 0 ? 1 : value.precision();
    }

    /**
     * Half a unit in the last printed place: the number before rounding lay within this of the printed one. A whole
     * number is taken as printed to the unit.
     */
    public double halfUnit() {
        return 0.5 * Math.pow(10, -decimals());
    }

    @Override
    public String toString() {
        return text;
    }
}
