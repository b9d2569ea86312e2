package comparand.unit;

import java.util.regex.Pattern;

/**
 * Reads quantities and ranges as a person writes them: {@code 1.5 L/min}, {@code 72.4 mmHg}, {@code 0.71},
 * {@code 0.1 to 1.2 L/min}. Positions in faults count within the text.
 */
public final class QuantityText {

    private static final Pattern NUMBER_PART = Pattern.compile("[+\\-−]?[\\d.,·_:]+([eE][+\\-−]?\\d+)?");
    private static final Pattern BETWEEN = Pattern.compile("\\s+(?:to|bis|–|—|-)\\s+|\\s*[–—]\\s*|(?<=\\d)-(?=\\d)");

    private QuantityText() {}

    /** A number with an optional unit. */
    public static Parsed<Printed> quantity(String text, DecimalSign decimal) {
        int lead = text.length() - text.stripLeading().length();
        var body = text.strip();
        var m = NUMBER_PART.matcher(body);
        if (!m.lookingAt()) {
            return Parsed.fault(
                    lead,
                    Math.max(1, body.length()),
                    "`" + body + "` does not start with a number",
                    "write a number and a unit, such as `72.4 mmHg`");
        }
        var digits = m.group();
        var after = body.substring(m.end());
        int gap = after.length() - after.stripLeading().length();
        var unit = after.strip().isEmpty()
                ? Parsed.ok(Unit.ONE)
                : TradeSpelling.read(after.strip()).shifted(lead + m.end() + gap);
        return PrintedNumber.read(digits, decimal).shifted(lead).then(n -> unit.map(u -> new Printed(n, u)));
    }

    /** Two ends, {@code a to b unit}; a unit written once holds for both. */
    public static Parsed<PrintedRange> range(String text, DecimalSign decimal) {
        var m = BETWEEN.matcher(text);
        if (!m.find()) {
            return Parsed.fault(
                    0,
                    text.length(),
                    "`" + text + "` is not a range",
                    "write `low to high unit`, such as `0.1 to 1.2 L/min`");
        }
        int secondAt = m.end();
        return quantity(text.substring(0, m.start()), decimal)
                .then(low -> quantity(text.substring(secondAt), decimal)
                        .shifted(secondAt)
                        .then(high -> {
                            var first = low.unit().isNumber() ? new Printed(low.number(), high.unit()) : low;
                            if (!first.unit().convertsTo(high.unit())) {
                                return Parsed.fault(
                                        0,
                                        text.length(),
                                        "the ends of `" + text + "` are in units that do not fit together",
                                        "give both ends in one unit");
                            }
                            if (first.in(high.unit()) > high.number().toDouble()) {
                                return Parsed.fault(
                                        0,
                                        text.length(),
                                        "the range `" + text + "` runs downwards",
                                        "write the lower end first");
                            }
                            return Parsed.ok(new PrintedRange(first, high));
                        }));
    }
}
