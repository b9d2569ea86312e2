package comparand.check;

import comparand.diag.Located;
import comparand.model.library.ReadingRecord;
import comparand.model.library.ValueRecord;
import comparand.model.library.YesNo;
import comparand.unit.Printed;
import java.util.stream.Stream;

/**
 * What it checks: a value on which a second reader did not agree, or found another figure, and that nobody settled.
 *
 * <p>Why it matters: one of the two is wrong.
 *
 * <p>What to write instead: {@code settled:} with who, when and why.
 */
final class ReadersDisagree implements Rule {

    @Override
    public String code() {
        return "readers-disagree";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.values()
                .filter(v -> v.value().settled().isEmpty())
                .forEach(v -> v.value().read().stream()
                        .filter(r -> disagrees(r, v.value()))
                        .findFirst()
                        .ifPresent(r -> findings.hold(
                                v,
                                r.by().span(),
                                "%s does not find the value `%s` as recorded%s"
                                        .formatted(
                                                r.by().value(),
                                                v.id(),
                                                r.found()
                                                        .map(f -> ", but " + f.value())
                                                        .orElse("")),
                                "one of the two readings is wrong",
                                "look at the source together and add `settled: {by: ..., on: ..., reason: ...}`")));
    }

    /** By word, or by having found another figure. */
    private static boolean disagrees(ReadingRecord reading, ValueRecord value) {
        boolean byWord = reading.agrees().filter(a -> a.value() == YesNo.NO).isPresent();
        return byWord || reading.found().filter(f -> isOther(f.value(), value)).isPresent();
    }

    /** Another figure than the recorded one, or than either end; a figure in words or a count is not held against it. */
    private static boolean isOther(Printed found, ValueRecord value) {
        var recorded = Stream.concat(Context.figure(value).stream(), Context.range(value))
                .map(Located::value)
                .toList();
        return !recorded.isEmpty()
                && recorded.stream()
                        .noneMatch(r -> r.unit().equals(found.unit())
                                && r.number().value().compareTo(found.number().value()) == 0);
    }
}
