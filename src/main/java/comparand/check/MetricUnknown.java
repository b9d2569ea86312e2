package comparand.check;

import comparand.diag.Suggest;

/**
 * What it checks: a value of a metric that neither the tool nor the library defines.
 *
 * <p>Why it matters: a number without a definition cannot be compared.
 *
 * <p>What to write instead: a name that {@code comparand catalogue} lists, or a new record in metrics/.
 */
final class MetricUnknown implements Rule {

    @Override
    public String code() {
        return "metric-unknown";
    }

    @Override
    public void check(Context library, Findings findings) {
        var metrics = library.catalogue().ids();
        library.values()
                .map(v -> v.value().metric())
                .filter(m -> !metrics.contains(m.value()))
                .forEach(m -> findings.stop(
                        m.span(),
                        "`%s` is not a metric known here".formatted(m.value()),
                        "a number without a definition cannot be compared",
                        Suggest.instruction(m.value(), metrics)));
    }
}
