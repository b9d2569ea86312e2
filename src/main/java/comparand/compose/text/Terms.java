package comparand.compose.text;

import comparand.metric.Condition;
import comparand.metric.Metric;
import comparand.model.library.DocumentRecord;
import comparand.model.library.SampleSize;
import comparand.model.library.SampleUnit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Names and quantities in the language of a document. Metrics, conditions and definitions carry their English texts through
 * the stages; where such a text enters a document, it passes through here. What an author wrote stays as it is.
 */
public final class Terms {

    private static final Pattern POINT = Pattern.compile("(?<=\\d)\\.(?=\\d)");
    private static final Pattern NUMBER_FIRST = Pattern.compile("[+\\-−±<>≥≤]?\\s?\\d.*");
    private static final List<String> NAMES = List.of("metric", "condition", "aspect", "short");
    private static final String TO = " to ";
    private static final String AND = " + ";

    private final Words words;

    public Terms(Words words) {
        this.words = words;
    }

    public String metric(Metric metric) {
        return words.term("metric", metric.name());
    }

    /** The name of a metric, a condition or an aspect of a definition. */
    public String named(String name) {
        return NAMES.stream()
                .map(section -> words.term(section, name))
                .filter(t -> !t.equals(name))
                .findFirst()
                .orElse(name);
    }

    /** The unit of a difference of two values of a metric. */
    public String differenceUnit(Metric metric) {
        return words.term("unit", metric.differenceUnit());
    }

    /** What is counted, in the plural. */
    public String level(SampleUnit counted) {
        return words.term("level", counted.plural());
    }

    /** One more of what is counted, behind a "for". */
    public String oneFurther(SampleUnit counted) {
        return words.term("level", "one further " + counted.singular());
    }

    /** {@code 6 units}. */
    public String size(SampleSize size) {
        return words.say(
                "size",
                "n",
                String.valueOf(size.count()),
                "units",
                size.count() == 1 ? words.term("level", size.of().singular()) : level(size.of()));
    }

    /**
     * A quantity, a range or a tolerance with the decimal sign of the language in place of the point of the trade. What a
     * source or library writes with a comma keeps it.
     */
    public String quantity(String text) {
        var signed = signed(text);
        for (var unit : words.named("unit")) {
            signed = signed.replaceAll("(?<![\\p{L}])" + Pattern.quote(unit) + "$", words.term("unit", unit));
        }
        return signed.replace(TO, between("to"));
    }

    /** {@code rev C, 2024-03}. */
    public String revision(DocumentRecord document) {
        return words.say(
                "revision",
                "revision",
                document.revision().value(),
                "date",
                document.date().value().text());
    }

    /** {@code page 7, table 2, row 3}: the words before the numbers. */
    public String place(String text) {
        return words.named("stated").contains(text)
                ? words.term("stated", text)
                : Stream.of(text.split(", ")).map(this::pointer).collect(Collectors.joining(", "));
    }

    private String pointer(String part) {
        int blank = part.indexOf(' ');
        return blank < 0 ? part : words.term("place", part.substring(0, blank)) + part.substring(blank);
    }

    /** A margin as it is set in a sentence: it does not break. */
    public String margin(String text) {
        return quantity(text).replace(' ', '\u00a0');
    }

    /** A text of the trade with the decimal sign of the language. */
    String signed(String text) {
        return POINT.matcher(text).replaceAll(String.valueOf(words.decimalSign()));
    }

    /** A word between two others, with its blanks. */
    String between(String english) {
        return " " + words.term("infix", english) + " ";
    }

    /** What a condition was: a quantity, or one of its words; free words stay as they were written. */
    public String circumstance(Optional<Condition> condition, String text) {
        if (words.named("stated").contains(text)) {
            return words.term("stated", text);
        }
        return condition
                .map(c -> c.isNumber() ? quantity(text) : c.words().isEmpty() ? text : words.term("word", text))
                .orElse(text);
    }

    /** The variant or the parts of a definition: {@code oxygenator + filter}. */
    public String variant(String text) {
        return words.named("stated").contains(text)
                ? words.term("stated", text)
                : Stream.of(text.split(Pattern.quote(AND)))
                        .map(w -> NUMBER_FIRST.matcher(w).matches() ? quantity(w) : words.term("word", w))
                        .collect(Collectors.joining(AND));
    }

    /** What sets a local result apart: its step, its centre, its definition, or how it was made to meet another. */
    public String group(String label) {
        return Stream.of(label.split(", ")).map(this::part).collect(Collectors.joining(", "));
    }

    private String part(String part) {
        for (var made : words.named("made")) {
            if (part.equals(made)) {
                return words.term("made", made);
            }
            if (part.startsWith(made + " ")) {
                return words.term("made", made) + " " + phrase(part.substring(made.length() + 1));
            }
        }
        return phrase(part);
    }

    /** Names with quantities, comma between: {@code blood flow 1.5 L/min, haemoglobin 12 g/dL}. */
    public String phrases(String text) {
        // a name may hold a comma of its own
        var name = named(text);
        return !name.equals(text)
                ? name
                : Stream.of(text.split(", ")).map(this::phrase).collect(Collectors.joining(", "));
    }

    private String phrase(String text) {
        if (text.isEmpty() || NUMBER_FIRST.matcher(text).matches()) {
            return quantity(text);
        }
        for (var section : NAMES) {
            for (var name : words.named(section)) {
                if (text.equals(name)) {
                    return words.term(section, name);
                }
                if (text.startsWith(name + " ") && !text.startsWith(name + AND)) {
                    return words.term(section, name) + " " + phrase(text.substring(name.length() + 1));
                }
            }
        }
        return variant(text);
    }
}
