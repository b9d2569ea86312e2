package comparand.compare;

import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.Pairing;
import comparand.model.Pairing.Purpose;
import comparand.model.Verdict;
import java.util.List;
import java.util.Optional;

/** Which comparisons leave something open. */
final class OpenAnswers {

    private OpenAnswers() {}

    /** The test of an answer that does not settle the direction, or whether the margin is reached; else empty. */
    static Optional<Answer.Tested> of(Answer answer) {
        var tested = answer instanceof Answer.Tested t
                ? Optional.of(t)
                : answer instanceof Answer.AgainstFigure f
                        ? Optional.of(f.taken())
                        // where the readings differ it is the kind of spread that has to be asked for
                        : answer instanceof Answer.EitherReading e && e.agree()
                                ? Optional.of(e.asSe())
                                : Optional.<Answer.Tested>empty();
        return tested.filter(t -> isOpen(t.verdict()));
    }

    private static boolean isOpen(Verdict verdict) {
        return switch (verdict) {
            case NOT_SETTLED, HIGHER_MARGIN_OPEN, LOWER_MARGIN_OPEN -> true;
            case HIGHER_BEYOND_MARGIN,
                    LOWER_BEYOND_MARGIN,
                    NONE_AS_LARGE_AS_MARGIN,
                    SMALLER_THAN_MARGIN,
                    HIGHER,
                    LOWER -> false;
        };
    }

    /** Whether a comparison within one hospital asks the same as one of all hospitals that is among the others. */
    static boolean isPartOfAnother(Comparison c, List<Comparison> others) {
        return c.pairing().purpose() == Purpose.WITHIN_CENTRE
                && others.stream()
                        .filter(o -> o.pairing().purpose() == Purpose.AGAINST_PRESENT_DEVICE)
                        .anyMatch(o -> sameQuestion(o.pairing(), c.pairing()));
    }

    private static boolean sameQuestion(Pairing a, Pairing b) {
        return a.ours().metric().equals(b.ours().metric())
                && a.ours().device().equals(b.ours().device())
                && study(a).equals(study(b));
    }

    private static String study(Pairing p) {
        return p.ours().origin().fold(x -> "", l -> l.study().id());
    }
}
