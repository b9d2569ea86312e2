package comparand.check;

import comparand.model.Library.PublishedValue;
import comparand.model.library.SpreadKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What it checks: a standard deviation of less than an eighth of the median of its metric, each relative to its mean.
 *
 * <p>Why it matters: it is probably a standard error.
 *
 * <p>What to write instead: {@code kind: se}, if the source says so.
 */
final class SpreadImplausible implements Rule {

    @Override
    public String code() {
        return "spread-implausible";
    }

    private static final double SHARE = 0.125;

    @Override
    public void check(Context library, Findings findings) {
        var byMetric = new TreeMap<String, List<PublishedValue>>();
        library.values()
                .filter(v -> relativeSd(v).isPresent())
                .forEach(v -> byMetric.computeIfAbsent(v.value().metric().value(), m -> new ArrayList<>())
                        .add(v));
        byMetric.values().stream().filter(all -> all.size() >= 3).forEach(all -> {
            var sorted =
                    all.stream().map(v -> relativeSd(v).orElseThrow()).sorted().toList();
            double median = sorted.get(sorted.size() / 2);
            all.stream()
                    .filter(v -> relativeSd(v).orElseThrow() < SHARE * median)
                    .forEach(v -> findings.note(
                            v.value().spread().orElseThrow().kind().span(),
                            "the standard deviation of `%s` is less than an eighth of the usual one for this metric"
                                    .formatted(v.id()),
                            "it is probably a standard error, which would make a chance difference look firm",
                            "check the heading of the table; if it is a standard error write `kind: se`"));
        });
    }

    private static Optional<Double> relativeSd(PublishedValue v) {
        return v.value()
                .spread()
                .filter(s -> s.kind().value() == SpreadKind.SD && s.figures().size() == 1)
                .flatMap(s -> Context.figure(v.value())
                        .filter(f -> f.value()
                                        .unit()
                                        .equals(s.figures().get(0).value().unit())
                                && f.value().number().value().signum() != 0)
                        .map(f -> Math.abs(s.figures().get(0).value().number().toDouble()
                                / f.value().number().toDouble())));
    }
}
