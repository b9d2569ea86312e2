package comparand.check;

/**
 * What it checks: a margin without a reason.
 *
 * <p>Why it matters: a number nobody can defend will be asked for first.
 *
 * <p>What to write instead: {@code reason:} in words of the group.
 */
final class MarginWithoutReason implements Rule {

    @Override
    public String code() {
        return "margin-without-reason";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachQuestion((question, metric) -> question.margin()
                .filter(m -> m.value().amount().isPresent() && question.reason().isEmpty())
                .ifPresent(m -> findings.stop(
                        m.span(),
                        "the margin `%s` for %s has no reason".formatted(m.value(), metric.name()),
                        "a margin nobody can defend is the first thing a reader asks about",
                        "add `reason:` with why a smaller difference would not change the decision")));
    }
}
