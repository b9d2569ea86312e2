package comparand.check;

/**
 * What it checks: a value that is possible, and unusual.
 *
 * <p>Why it matters: it may be right, and is worth a second look at the source.
 *
 * <p>What to write instead: nothing, if the source prints it.
 */
final class ValueImplausible implements Rule {

    @Override
    public String code() {
        return "value-implausible";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> Context.amounts(value.value(), metric)
                .filter(a -> metric.possible().contain(a.inMetricUnit())
                        && !metric.plausible().contain(a.inMetricUnit()))
                .forEach(a -> findings.note(
                        a.span(),
                        "`%s` of %s is unusual".formatted(a.text(), metric.name()),
                        "an unusual value may be a slip of a digit or unit",
                        "look at the source once more; nothing to change if it prints this")));
    }
}
