package comparand.compose.talk;

import comparand.compose.text.AnswerText;
import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.Margin;
import comparand.model.Pairing.Purpose;
import comparand.model.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How firm an answer is: beyond the margin before a clear direction before a difference that is ruled out before what is
 * open, and among these by how many times the nearer end of the interval is the margin.
 */
final class Firmness {

    /** The firmest first; equals stay in the order of the questions. */
    static final Comparator<Comparison> FIRMEST = Comparator.comparingInt(Firmness::rank)
            .thenComparing(Comparator.comparingDouble(Firmness::reach).reversed());

    private static final int OPEN = 3;
    private static final int UNTESTED = 4;

    private Firmness() {}

    /** Own devices side by side; those within one hospital only where there is no other. */
    static List<Comparison> ofDevices(List<Comparison> comparisons) {
        var all = of(comparisons, Purpose.AGAINST_PRESENT_DEVICE);
        var stated = of(comparisons, Purpose.STATED_AGAINST_PRESENT_DEVICE);
        return !all.isEmpty() ? all : !stated.isEmpty() ? stated : of(comparisons, Purpose.WITHIN_CENTRE);
    }

    static List<Comparison> ofPublished(List<Comparison> comparisons) {
        return of(comparisons, Purpose.LOCAL_AGAINST_PUBLISHED);
    }

    private static List<Comparison> of(List<Comparison> comparisons, Purpose purpose) {
        return comparisons.stream()
                .filter(c -> c.pairing().purpose() == purpose
                        && c.pairing().standing().isCompared())
                .filter(c -> verdict(c).isPresent())
                .sorted(FIRMEST)
                .toList();
    }

    /** The firmest of all own comparisons of devices, if it settles anything. */
    static Optional<Comparison> headline(List<Comparison> comparisons) {
        return of(comparisons, Purpose.AGAINST_PRESENT_DEVICE).stream()
                .filter(c -> rank(c) < OPEN)
                .findFirst();
    }

    static Optional<Verdict> verdict(Comparison c) {
        if (c.answer() instanceof Answer.Nominal n) {
            return Optional.of(n.verdict());
        }
        return c.answer() instanceof Answer.EitherReading e && !e.agree()
                ? Optional.of(Verdict.NOT_SETTLED)
                : tested(c).map(Answer.Tested::verdict);
    }

    static Optional<Answer.Tested> tested(Comparison c) {
        return AnswerText.tested(c.answer());
    }

    private static int rank(Comparison c) {
        return verdict(c)
                .map(v -> switch (v) {
                    case HIGHER_BEYOND_MARGIN, LOWER_BEYOND_MARGIN -> 0;
                    case HIGHER_MARGIN_OPEN, LOWER_MARGIN_OPEN, HIGHER, LOWER -> 1;
                    case NONE_AS_LARGE_AS_MARGIN, SMALLER_THAN_MARGIN -> 2;
                    case NOT_SETTLED -> OPEN;
                })
                .orElse(UNTESTED);
    }

    /** Nearer end of the interval in margins; for a difference ruled out, the margin in farther ends. */
    private static double reach(Comparison c) {
        var margin = c.margin().map(Margin::value);
        if (margin.isEmpty()) {
            return 0;
        }
        if (c.answer() instanceof Answer.Nominal n) {
            return (Math.abs(n.difference()) - n.rounding()) / margin.get();
        }
        return tested(c)
                .map(t -> {
                    double a = Math.abs(t.interval().low());
                    double b = Math.abs(t.interval().high());
                    return rank(c) == 2 ? margin.get() / Math.max(a, b) : Math.min(a, b) / margin.get();
                })
                .orElse(0.0);
    }
}
