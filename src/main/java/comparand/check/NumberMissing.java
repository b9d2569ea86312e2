package comparand.check;

/**
 * What it checks: a spread without the number of units or cases behind it.
 *
 * <p>Why it matters: without n no interval for a difference can be given.
 *
 * <p>What to write instead: {@code n: 5 units}; or {@code n: not reported} where the source does not say.
 */
final class NumberMissing implements Rule {

    @Override
    public String code() {
        return "number-missing";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.values()
                .filter(v -> v.value().n().isEmpty())
                .filter(v -> v.value().hasSpread())
                .forEach(v -> findings.note(
                        v.value()
                                .spread()
                                .map(s -> s.kind().span())
                                .orElseGet(() -> v.value().id().span()),
                        "the value `%s` has a spread and no number of units or cases".formatted(v.id()),
                        "without n the value can only be shown beside ours",
                        "add `n: 5 units`, or `n: not reported`"));
    }
}
