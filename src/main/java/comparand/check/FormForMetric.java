package comparand.check;

import comparand.metric.Nature;

/**
 * What it checks: events out of cases given for a metric that is measured, or a figure for a metric that is
 * counted.
 *
 * <p>Why it matters: the two are compared by different methods.
 *
 * <p>What to write instead: {@code count: 0 of 31} for events, a quantity for everything else.
 */
final class FormForMetric implements Rule {

    @Override
    public String code() {
        return "form-for-metric";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> {
            var record = value.value();
            boolean event = metric.nature() == Nature.EVENT;
            if (record.count().isPresent() && !event) {
                findings.stop(
                        record.count().get().span(),
                        "`%s` counts events, and %s is measured"
                                .formatted(record.count().get().value(), metric.name()),
                        "a count and a measurement are compared by different methods",
                        "write the measured figure, or choose a metric that is counted");
            } else if (event && record.count().isEmpty() && record.claim().isEmpty()) {
                findings.stop(
                        record.metric().span(),
                        "%s is counted, and this value gives no count".formatted(metric.name()),
                        "a percentage without its number of cases has no interval",
                        "write `count: 19 of 42`");
            }
        });
    }
}
