package comparand.check;

/**
 * What it checks: a printed quantity in a unit that does not measure its metric.
 *
 * <p>Why it matters: it cannot be converted, and is most often a misplaced metric or a misspelt unit.
 *
 * <p>What to write instead: a unit of the metric's dimension, as the source prints it.
 */
final class UnitDimension implements Rule {

    @Override
    public String code() {
        return "unit-dimension";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> Context.quantities(value.value())
                .filter(q -> !q.value().unit().isNumber() && !q.value().unit().convertsTo(metric.unit()))
                .forEach(q -> findings.stop(
                        q.span(),
                        "`%s` is not a unit of %s, which is kept in %s"
                                .formatted(
                                        q.value().unit(),
                                        metric.name(),
                                        metric.unit().isNumber() ? "plain numbers" : metric.unit()),
                        "a number of another quantity cannot be converted",
                        "check metric and unit; `comparand catalogue %s` says what it measures"
                                .formatted(metric.id()))));
    }
}
