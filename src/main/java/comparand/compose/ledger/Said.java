package comparand.compose.ledger;

import java.util.List;
import java.util.Optional;

/**
 * One answer of a run.
 *
 * @param id name of the pair, or of the local result with which several sources stand together
 * @param what it answers, in words
 * @param metric name of the metric
 * @param values names of the values it rests on
 * @param verdict all that makes it this answer and no other: standing, kind, verdict
 * @param reasons conditions for which it is shown and not compared
 * @param facts its numbers
 * @param text as printed
 * @param plain the sentence with names of values in place of their locators, whose numbers of sources are those of a run
 * @param standing of the pair in words; empty for several sources together
 * @param shownOnly whether it is shown and not compared
 * @param p before it is adjusted for the number of comparisons
 * @param adjustedP adjusted
 */
record Said(
        String id,
        String what,
        String metric,
        List<String> values,
        List<Object> verdict,
        List<String> reasons,
        List<Object> facts,
        String text,
        String plain,
        String standing,
        boolean shownOnly,
        Optional<Double> p,
        Optional<Double> adjustedP) {}
