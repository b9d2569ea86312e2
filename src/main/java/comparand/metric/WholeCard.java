package comparand.metric;

/** That the card of a metric says all that is needed to compare two values of it. */
final class WholeCard {

    private WholeCard() {}

    /**
     * The metric itself.
     *
     * @throws IllegalArgumentException if its card is incomplete: no citation, a formula without a worked value, or
     *     interpolation over a condition it does not name
     */
    static Metric checked(Metric metric) {
        if (metric.symbol().isBlank() || metric.meaning().isBlank()) {
            throw new IllegalArgumentException(metric + " needs a symbol and a meaning");
        }
        if (metric.citations().isEmpty()) {
            throw new IllegalArgumentException(metric + " needs a citation");
        }
        if (!metric.derivations().isEmpty() && metric.worked().isEmpty()) {
            throw new IllegalArgumentException(metric + " has a formula and no worked value");
        }
        metric.interpolatesOver()
                .filter(over -> metric.condition(over).isEmpty())
                .ifPresent(over -> {
                    throw new IllegalArgumentException(
                            metric + " interpolates over " + over + ", which is not among its conditions");
                });
        return metric;
    }
}
