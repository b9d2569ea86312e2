package comparand.check;

/**
 * What it checks: a weight that is not above zero.
 *
 * <p>Why it matters: a metric of no weight is left out, and one below zero turns its direction round.
 *
 * <p>What to write instead: a weight above zero; which way is favourable stands under {@code better:} of the question.
 */
final class WeightNotPositive implements Rule {

    @Override
    public String code() {
        return "weight-not-positive";
    }

    @Override
    public void check(Context context, Findings findings) {
        context.dossiers().stream()
                .flatMap(d -> d.weights().stream())
                .flatMap(w -> w.of().stream())
                .filter(w -> w.weight().value().value().signum() <= 0)
                .forEach(w -> findings.stop(
                        w.weight().span(),
                        "a weight is more than zero, got `%s`"
                                .formatted(w.weight().value()),
                        "no weight leaves the metric out, and one below zero would turn round which way is favourable",
                        "write a number above zero, or take the entry out"));
    }
}
