package comparand.check;

/**
 * What it checks: a value that says nothing of a condition that decides its metric.
 *
 * <p>Why it matters: silence would look like agreement; what a source does not report must be said.
 *
 * <p>What to write instead: the condition as printed, or {@code not reported} once it was looked for.
 */
final class ConditionNotStated implements Rule {

    @Override
    public String code() {
        return "condition-not-stated";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> {
            var stated = value.source().conditionsOf(value.value());
            var silent = metric.conditions().stream()
                    .filter(u -> u.role().asksForReport()
                            && !stated.has(u.condition().id()))
                    .map(u -> u.condition().id())
                    .toList();
            if (!silent.isEmpty() && value.value().claim().isEmpty()) {
                findings.stop(
                        value.value().id().span(),
                        "the value `%s` says nothing of: %s".formatted(value.id(), String.join(", ", silent)),
                        "these conditions decide whether its %s may be compared; silence is not agreement"
                                .formatted(metric.name()),
                        "add under `conditions:` what the source prints, or `%s: not reported`"
                                .formatted(silent.get(0)));
            }
        });
    }
}
