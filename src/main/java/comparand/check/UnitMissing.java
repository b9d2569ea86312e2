package comparand.check;

/**
 * What it checks: a printed quantity without a unit, for a metric that has one.
 *
 * <p>Why it matters: 9.3 kPa is 70 mmHg: a number without its unit may mean anything.
 *
 * <p>What to write instead: the unit as the source prints it; for a bare number of a metric in per cent, the per cent
 * sign.
 */
final class UnitMissing implements Rule {

    @Override
    public String code() {
        return "unit-missing";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> {
            if (metric.unit().isNumber()) {
                return;
            }
            Context.quantities(value.value())
                    .filter(q -> q.value().unit().isNumber())
                    .forEach(q -> findings.stop(
                            q.span(),
                            "`%s` of %s has no unit".formatted(q.value(), metric.name()),
                            "9.3 kPa is 70 mmHg: without a unit the number may mean either",
                            "write the unit as printed, such as `%s %s`"
                                    .formatted(q.value().number(), metric.unit())));
        });
    }
}
