package comparand.compose.text;

import comparand.model.Comparand;
import comparand.model.Origin;
import comparand.model.Standing;
import comparand.model.Step;
import comparand.model.Summary;
import comparand.model.library.ValueRecord;
import java.util.List;
import java.util.Optional;

/** A comparand in a table cell or a sentence. */
public final class SummaryText {

    /** In place of a number that would stand beside a different quantity. */
    public static final String OTHER_QUANTITY = "–";

    private final Words words;
    private final Figures figures;

    public SummaryText(Words words, Figures figures) {
        this.words = words;
        this.figures = figures;
    }

    /** Without unit: {@code 72.4 (4.1)}, {@code ≥ 85}, {@code 0 of 12}. */
    public String of(Comparand comparand) {
        return marked(comparand, numbers(comparand));
    }

    /** A reading is called one wherever it stands: its ± is the reader's, and not the source's. */
    private String marked(Comparand comparand, String shown) {
        return isRead(comparand) ? words.say("summary.read", "shown", shown) : shown;
    }

    private String numbers(Comparand comparand) {
        return comparand.summary().fold(new Summary.Cases<>() {
            @Override
            public String sampled(Summary.Sampled s) {
                double mean = s.estimate().mean();
                int decimals = figures.of(comparand, mean);
                return figures.number(mean, decimals) + " ("
                        + figures.number(s.moments().sd(), decimals) + ")";
            }

            @Override
            public String estimated(Summary.Estimated s) {
                int decimals = figures.of(comparand, s.estimate().mean());
                return figures.number(s.estimate().mean(), decimals) + " ("
                        + words.say(
                                "summary.se", "se", figures.number(s.estimate().se(), decimals)) + ")";
            }

            @Override
            public String eitherSpread(Summary.EitherSpread s) {
                int decimals = figures.of(comparand, s.asSd().mean());
                return figures.number(s.asSd().mean(), decimals) + " ± "
                        + figures.number(s.asSd().sd(), decimals);
            }

            @Override
            public String point(Summary.Point s) {
                var value = figures.number(s.value(), figures.of(comparand, s.value()));
                return s.kind() == Summary.PointKind.READ_FROM_FIGURE
                        // twice the standard uncertainty; the half-width of its rectangle is √3 times it
                        ? value + " ± "
                                + figures.number(2 * s.halfWidth() / Math.sqrt(3), figures.of(comparand, s.value()))
                        : value;
            }

            @Override
            public String limit(Summary.Limit s) {
                return words.say(
                        s.atLeast() ? "limit.short.at-least" : "limit.short.at-most",
                        "value",
                        figures.number(s.value(), figures.of(comparand, s.value())));
            }

            @Override
            public String extent(Summary.Extent s) {
                int decimals = figures.of(comparand, s.high());
                return words.say(
                        "to", "low", figures.number(s.low(), decimals), "high", figures.number(s.high(), decimals));
            }

            @Override
            public String events(Summary.Events s) {
                return s.events() + "/" + s.of();
            }

            @Override
            public String words(Summary.Words s) {
                return words.say("quoted", "text", s.text());
            }
        });
    }

    /**
     * As it stands beside ours: in the brackets of its standing, and a dash for another quantity. A median that is not
     * compared stays a median; its estimated mean would claim more than was needed.
     */
    public String beside(Comparand comparand, Standing standing) {
        if (standing == Standing.DIFFERENT_QUANTITY) {
            return OTHER_QUANTITY;
        }
        return brackets(standing).around(standing.isCompared() ? of(comparand) : alone(comparand));
    }

    /** The same for a label that has no room to say of a reading that it is one: that is said below the figure. */
    public String besideInShort(Comparand comparand, Standing standing) {
        return standing == Standing.DIFFERENT_QUANTITY
                ? OTHER_QUANTITY
                : brackets(standing).around(standing.isCompared() ? numbers(comparand) : uncompared(comparand));
    }

    /** Where nothing is compared: a median stays the median it is. */
    public String alone(Comparand comparand) {
        return marked(comparand, uncompared(comparand));
    }

    private String uncompared(Comparand comparand) {
        return median(comparand)
                .map(m -> figures.number(m, figures.of(comparand, m)))
                .orElseGet(() -> numbers(comparand));
    }

    /** Whether a value was read from a figure. */
    public static boolean isRead(Comparand comparand) {
        return comparand.trail().stream().anyMatch(s -> s.kind() == Step.Kind.READ_FROM_FIGURE);
    }

    /** The median from which mean and standard deviation were estimated, in the metric's unit. */
    public static Optional<Double> median(Comparand comparand) {
        return comparand.trail().stream()
                .filter(s -> s.kind() == Step.Kind.QUARTILES)
                .flatMap(s -> Optional.ofNullable(s.facts().get("median")).stream())
                .map(Double::valueOf)
                .findFirst();
    }

    public String withUnit(Comparand comparand) {
        boolean bare = comparand.summary() instanceof Summary.Events || comparand.summary() instanceof Summary.Words;
        return bare ? of(comparand) : marked(comparand, figures.withUnit(numbers(comparand), comparand.metric()));
    }

    /** The brackets that say in every copy that a number was not compared: none, {@code [..]}, {@code [..?]}. */
    public static Brackets brackets(Standing standing) {
        return switch (standing) {
            case SAME, SAME_AFTER_CONVERSION -> new Brackets("", "");
            case CONDITIONS_DIFFER -> new Brackets("[", "]");
            case NOT_REPORTED -> new Brackets("[", "?]");
            case DIFFERENT_QUANTITY -> new Brackets("{", "}");
        };
    }

    /** What stands before and behind a number. */
    public record Brackets(String before, String after) {
        String around(String text) {
            return before + text + after;
        }
    }

    /** As printed, in the source's own words; the raw data file for a local result. */
    public static String printed(Comparand comparand) {
        return comparand
                .origin()
                .fold(
                        p -> String.join(
                                "; ",
                                p.values().stream()
                                        .map(v -> v.printed().value())
                                        .toList()),
                        Origin.Local::file);
    }

    public static List<ValueRecord> values(Comparand comparand) {
        return comparand.origin().fold(Origin.Published::values, l -> List.of());
    }
}
