package comparand.check;

/**
 * What it checks: a value quoted from another work.
 *
 * <p>Why it matters: numbers change from mouth to mouth; a value not seen in its own source is not evidence of it.
 *
 * <p>What to write instead: the value from the work itself, as a source of its own.
 */
final class SecondHand implements Rule {

    @Override
    public String code() {
        return "second-hand";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.values()
                .forEach(v -> v.value()
                        .quotedFrom()
                        .ifPresent(work -> findings.hold(
                                v,
                                work.span(),
                                "the value `%s` was seen only where `%s` is quoted".formatted(v.id(), work.value()),
                                "numbers change on their way through other papers",
                                "get the work itself and record the value from there")));
    }
}
