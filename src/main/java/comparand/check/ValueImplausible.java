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
        library.eachValue((value, metric) -> Context.figure(value.value())
                .filter(q -> q.value().unit().convertsTo(metric.unit()))
                .filter(q -> metric.possible().contain(q.value().in(metric.unit()))
                        && !metric.plausible().contain(q.value().in(metric.unit())))
                .ifPresent(q -> findings.note(
                        q.span(),
                        "`%s` of %s is unusual".formatted(q.value(), metric.name()),
                        "an unusual value may be a slip of a digit or unit",
                        "look at the source once more; nothing to change if it prints this")));
    }
}
