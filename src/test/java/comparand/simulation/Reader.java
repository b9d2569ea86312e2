package comparand.simulation;

import java.util.List;
import java.util.function.BiPredicate;

/** Whose readings are counted. */
enum Reader {
    TOOL("the tool"),
    NAIVE("side by side");

    private final String words;

    Reader(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** The pairs it has a reading of. */
    List<Judged> has(List<Judged> pairs) {
        return pairs.stream().filter(p -> this == TOOL || p.naive().isPresent()).toList();
    }

    Reading of(Judged pair) {
        return this == TOOL ? pair.tool() : pair.naive().orElseThrow();
    }

    List<Judged> answered(List<Judged> pairs) {
        return has(pairs).stream().filter(p -> of(p).isAnswer()).toList();
    }

    /** The share of the pairs of which something holds of its reading. */
    Rate rate(List<Judged> pairs, BiPredicate<Truth, Reading> holds) {
        return Rate.of(has(pairs), p -> holds.test(p.truth(), of(p)));
    }

    Rate answers(List<Judged> pairs) {
        return rate(pairs, (t, r) -> r.isAnswer());
    }

    Rate wrong(List<Judged> pairs) {
        return rate(pairs, Truth::wrong);
    }

    Rate wrongOfAnswers(List<Judged> pairs) {
        return rate(answered(pairs), Truth::wrong);
    }
}
