package comparand.read.yaml;

import static java.util.Objects.requireNonNull;

import comparand.diag.Suggest;
import comparand.model.library.ConditionText;
import comparand.model.library.EventCount;
import comparand.model.library.PartialDate;
import comparand.model.library.Price;
import comparand.model.library.SampleSize;
import comparand.model.library.SampleUnit;
import comparand.model.library.Spelled;
import comparand.model.library.StatedMargin;
import comparand.model.library.StatedPrice;
import comparand.model.library.StatedSize;
import comparand.unit.DecimalSign;
import comparand.unit.Parsed;
import comparand.unit.Printed;
import comparand.unit.PrintedNumber;
import comparand.unit.PrintedRange;
import comparand.unit.QuantityText;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Pattern;

/**
 * How one kind of single value is written: in words for people, as a pattern for editors, and as a function for the
 * binder.
 *
 * @param name what it is, with its article, for messages
 * @param example what one looks like, for "the line to type"
 * @param pattern a regular expression every correct text matches; empty where any text will do
 * @param words the only texts allowed; empty where there is no fixed list
 */
record ScalarType<T>(
        String name,
        String example,
        Optional<String> pattern,
        List<String> words,
        BiFunction<String, DecimalSign, Parsed<T>> reader) {

    private static final Pattern COUNTED = Pattern.compile("(\\d+) ([a-z]+)");
    private static final Pattern X_OF_N = Pattern.compile("(\\d{1,7})\\s+of\\s+(\\d{1,7})");
    private static final Pattern AMOUNT_OF_MONEY = Pattern.compile("(\\S+)\\s+([A-Z]{3})");
    private static final Pattern BAND = Pattern.compile("\\s*(?:±|\\+/-)\\s*");
    private static final Pattern STARTS_AS_NUMBER = Pattern.compile("[+\\-−]?[\\d.,].*");

    private static final Map<Class<?>, ScalarType<?>> KNOWN = Map.ofEntries(
            Map.entry(String.class, open("a text", "...", "", (text, d) -> Parsed.ok(text))),
            Map.entry(LocalDate.class, open("a date", "2026-09-14", "^\\d{4}-\\d{2}-\\d{2}$", (text, d) -> date(text))),
            Map.entry(
                    PartialDate.class,
                    open(
                            "a date, a month or a year",
                            "2024-03",
                            "^\\d{4}(-\\d{2}){0,2}$",
                            (text, d) -> partialDate(text))),
            Map.entry(Printed.class, open("a quantity", "72.4 mmHg", "^[+\\-−]?\\d", QuantityText::quantity)),
            Map.entry(PrintedNumber.class, open("a number", "357", "^[+\\-−]?\\d[\\d.,·]*$", PrintedNumber::read)),
            Map.entry(PrintedRange.class, open("a range", "0.1 to 1.5 L/min", "^[+\\-−]?\\d", QuantityText::range)),
            Map.entry(
                    EventCount.class,
                    open("so many of so many", "19 of 42", "^\\d+ of \\d+$", (text, d) -> count(text))),
            Map.entry(
                    StatedSize.class,
                    open("a number of something", "5 units", "^(\\d+ [a-z]+|not reported)$", (text, d) -> size(text))),
            Map.entry(
                    StatedMargin.class,
                    open("a quantity, or none", "10 mmHg", "^(none|[+\\-−]?\\d.*)$", ScalarType::margin)),
            Map.entry(
                    StatedPrice.class,
                    open(
                            "a price, or not supplied",
                            "310.00 EUR",
                            "^(not supplied|[+\\-−]?\\d.* [A-Z]{3})$",
                            ScalarType::price)),
            Map.entry(ConditionText.class, open("a condition", "1.5 L/min", "", ScalarType::condition)));

    ScalarType {
        requireNonNull(reader, "reader");
        words = List.copyOf(words);
    }

    /** The type of a class, if values of it are written as one text. */
    static Optional<ScalarType<?>> of(Class<?> type) {
        return type.isEnum() ? Optional.of(oneOf(type)) : Optional.ofNullable(KNOWN.get(type));
    }

    private static <T> ScalarType<T> open(
            String name, String example, String pattern, BiFunction<String, DecimalSign, Parsed<T>> reader) {
        return new ScalarType<>(
                name, example, pattern.isEmpty() ? Optional.empty() : Optional.of(pattern), List.of(), reader);
    }

    private static ScalarType<Object> oneOf(Class<?> type) {
        var constants = List.<Object>of(type.getEnumConstants());
        var words = constants.stream().map(ScalarType::spelling).toList();
        return new ScalarType<>(
                "one of " + String.join(", ", words), words.get(0), Optional.empty(), words, (text, d) -> {
                    int at = words.indexOf(text);
                    return at >= 0
                            ? Parsed.ok(constants.get(at))
                            : Parsed.fault(
                                    0,
                                    text.length(),
                                    "`" + text + "` is not one of the words that can stand here",
                                    Suggest.instruction(text, words));
                });
    }

    static String spelling(Object constant) {
        return constant instanceof Spelled spelled
                ? spelled.spelling()
                : ((Enum<?>) constant).name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Parsed<LocalDate> date(String text) {
        if (!PartialDate.DAY.matcher(text).matches()) {
            return Parsed.fault(
                    0,
                    text.length(),
                    "`" + text + "` is not a date of the form year-month-day",
                    "write it as `2026-09-14`");
        }
        return PartialDate.read(text)
                .map(d -> Parsed.ok(d.earliest()))
                .orElseGet(() -> Parsed.fault(
                        0, text.length(), "there is no day `" + text + "`", "write the day as a calendar has it"));
    }

    private static Parsed<PartialDate> partialDate(String text) {
        return PartialDate.read(text)
                .map(Parsed::ok)
                .orElseGet(() -> Parsed.fault(
                        0, text.length(), "`" + text + "` is not a date", "write `2024-03-18`, `2024-03` or `2024`"));
    }

    private static Parsed<EventCount> count(String text) {
        var m = X_OF_N.matcher(text);
        if (!m.matches()) {
            return Parsed.fault(0, text.length(), "`" + text + "` is not so many of so many", "write `19 of 42`");
        }
        int x = Integer.parseInt(m.group(1));
        int n = Integer.parseInt(m.group(2));
        return n == 0 || x > n
                ? Parsed.fault(
                        0,
                        text.length(),
                        "`" + text + "` counts more events than there were cases",
                        "write events first, then cases: `19 of 42`")
                : Parsed.ok(new EventCount(x, n));
    }

    private static Parsed<StatedSize> size(String text) {
        if (text.equals(ConditionText.NOT_REPORTED)) {
            return Parsed.ok(StatedSize.NOT_REPORTED);
        }
        var names = new ArrayList<String>();
        for (var unit : SampleUnit.values()) {
            names.add(unit.plural());
        }
        var m = COUNTED.matcher(text);
        if (!m.matches()) {
            return Parsed.fault(
                    0,
                    text.length(),
                    "`" + text + "` does not say how many of what",
                    "write `5 units`, or `not reported`");
        }
        for (var unit : SampleUnit.values()) {
            if (unit.plural().equals(m.group(2)) || unit.singular().equals(m.group(2))) {
                if (m.group(1).length() > 6) {
                    return Parsed.fault(
                            0,
                            m.end(1),
                            "`" + m.group(1) + "` is more than any sample",
                            "write how many there were, or `not reported`");
                }
                int n = Integer.parseInt(m.group(1));
                return n > 0
                        ? Parsed.ok(new StatedSize(Optional.of(new SampleSize(n, unit))))
                        : Parsed.fault(
                                0,
                                text.length(),
                                "`" + text + "` is no sample",
                                "write how many there were, or `not reported`");
            }
        }
        return Parsed.fault(
                m.start(2),
                m.group(2).length(),
                "`" + m.group(2) + "` is not something samples are counted in",
                Suggest.instruction(m.group(2), names));
    }

    private static Parsed<StatedMargin> margin(String text, DecimalSign decimal) {
        return text.equals(StatedMargin.NONE_WORD)
                ? Parsed.ok(StatedMargin.NONE)
                : QuantityText.quantity(text, decimal).map(q -> new StatedMargin(Optional.of(q)));
    }

    private static Parsed<StatedPrice> price(String text, DecimalSign decimal) {
        if (text.equals(StatedPrice.NOT_SUPPLIED_WORDS)) {
            return Parsed.ok(StatedPrice.NOT_SUPPLIED);
        }
        var m = AMOUNT_OF_MONEY.matcher(text);
        if (!m.matches()) {
            return Parsed.fault(
                    0,
                    text.length(),
                    "`" + text + "` is not an amount with the code of its currency",
                    "write `310.00 EUR`, or `not supplied`");
        }
        var code = m.group(2);
        return Currency.getAvailableCurrencies().stream()
                        .noneMatch(c -> c.getCurrencyCode().equals(code))
                ? Parsed.fault(
                        m.start(2),
                        code.length(),
                        "`" + code + "` is not the code of a currency",
                        "write its three letters after ISO 4217, such as `EUR`")
                : PrintedNumber.read(m.group(1), decimal).map(n -> new StatedPrice(Optional.of(new Price(n, code))));
    }

    private static Parsed<ConditionText> condition(String text, DecimalSign decimal) {
        if (text.equals(ConditionText.NOT_REPORTED)) {
            return Parsed.ok(new ConditionText.NotReported());
        }
        if (!STARTS_AS_NUMBER.matcher(text).matches()) {
            return Parsed.ok(new ConditionText.Word(text));
        }
        var band = BAND.matcher(text);
        if (band.find()) {
            return band(text.substring(0, band.start()), text.substring(band.end()), band.end(), decimal);
        }
        var range = QuantityText.range(text, decimal);
        if (range instanceof Parsed.Ok<PrintedRange> ok) {
            return Parsed.ok(new ConditionText.Between(ok.value()));
        }
        var quantity = QuantityText.quantity(text, decimal);
        return quantity.fold(
                q -> Parsed.ok(new ConditionText.Amount(q, Optional.empty())),
                // free words may begin with a number: "5 mL bolus"
                fault -> text.matches("[\\d.,]+ \\S+ .*\\p{L}.*")
                        ? Parsed.ok(new ConditionText.Word(text))
                        : quantity.map(q -> new ConditionText.Amount(q, Optional.empty())));
    }

    /** {@code 12 ± 1 g/dL}: the unit behind the band holds for both. */
    private static Parsed<ConditionText> band(String middle, String width, int widthAt, DecimalSign decimal) {
        return QuantityText.quantity(width, decimal)
                .shifted(widthAt)
                .then(w -> QuantityText.quantity(middle, decimal).then(m -> {
                    var value = m.unit().isNumber() ? new Printed(m.number(), w.unit()) : m;
                    return value.unit().convertsTo(w.unit())
                            ? Parsed.ok(new ConditionText.Amount(value, Optional.of(w)))
                            : Parsed.fault(
                                    0,
                                    middle.length(),
                                    "`" + middle + "` and its band are in units that do not fit together",
                                    "write `12 ± 1 g/dL`");
                }));
    }
}
