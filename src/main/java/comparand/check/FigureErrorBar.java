package comparand.check;

import comparand.metric.Metric;
import comparand.model.Library.PublishedValue;
import comparand.model.library.FigureReadingRecord;
import comparand.model.library.SpreadKind;

/**
 * What it checks: an error bar without two ends, one that does not reach across its mark, one beside a spread in figures, and
 * one whose spread is recorded as not reported.
 *
 * <p>Why it matters: the spread of a value is what the source draws or what it prints, and one of the two must count.
 *
 * <p>What to write instead: {@code error-bar: [300, 410]}, with {@code spread: {kind: sd}} where the legend says so, and
 * without {@code of}.
 */
final class FigureErrorBar implements Rule {

    @Override
    public String code() {
        return "figure-error-bar";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> value.value()
                .readFromFigure()
                .filter(r -> !r.errorBar().isEmpty())
                .ifPresent(reading -> {
                    spread(value, findings);
                    ends(value, reading, metric, findings);
                }));
    }

    private static void spread(PublishedValue value, Findings findings) {
        value.value().spread().ifPresent(spread -> {
            if (!spread.figures().isEmpty()) {
                findings.stop(
                        spread.figures().get(0).span(),
                        "the spread of `%s` is given in figures and as an error bar".formatted(value.id()),
                        "only one of the two can count",
                        "leave `error-bar` out, as figures are surer; or leave `of:` out");
            } else if (spread.kind().value() == SpreadKind.NOT_REPORTED) {
                findings.stop(
                        spread.kind().span(),
                        "the spread of `%s` is not reported, and an error bar of it was read".formatted(value.id()),
                        "an error bar is a report of the spread",
                        "write what it stands for, or `kind: not stated`");
            }
        });
    }

    private static void ends(PublishedValue value, FigureReadingRecord reading, Metric metric, Findings findings) {
        var ends = reading.errorBar();
        var first = ends.get(0);
        if (ends.size() != 2 || first.value().toDouble() == ends.get(1).value().toDouble()) {
            findings.stop(
                    first.span(),
                    "an error bar has two ends at different places",
                    "half the distance of its ends is the spread",
                    "write both ends as `error-bar: [300, 410]`; where one end is hidden or not drawn, leave it out");
        } else if (FigureCalibration.canBeRead(reading, metric)) {
            var bar = reading.bar(metric.unit()).orElseThrow();
            double mark = reading.reading(metric.unit()).value();
            if (mark <= bar.low() || mark >= bar.high()) {
                findings.hold(
                        value,
                        first.span(),
                        "this error bar does not reach across its mark",
                        "it belongs to another mark, or a place was mistyped",
                        "read the mark and both ends of its bar again");
            }
        }
    }
}
