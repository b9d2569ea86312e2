package comparand.compose;

import comparand.document.result.ComparandResult;
import comparand.document.result.ComparandResult.CircumstanceResult;
import comparand.document.result.ComparandResult.RangeResult;
import comparand.document.result.ComparandResult.StepResult;
import comparand.document.result.ComparandResult.SummaryResult;
import comparand.model.Comparand;
import comparand.model.Summary;
import comparand.stat.Interval;
import comparand.stat.Moments;
import comparand.stat.ProportionInterval;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;

/** Comparands as data. */
final class ComparandResults {

    private static final double LEVEL = 0.95;

    private final Run run;

    ComparandResults(Run run) {
        this.run = run;
    }

    ComparandResult of(Comparand c) {
        var definition = new TreeMap<String, String>();
        c.metric()
                .definition()
                .forEach(a -> c.definition().get(a.id()).ifPresent(w -> definition.put(a.id(), a.text(w))));
        var sizes = new TreeMap<String, Integer>();
        c.sizes().counts().forEach((level, n) -> sizes.put(level.plural(), n));
        return new ComparandResult(
                c.id(),
                c.isLocal() ? "local" : "published",
                c.device(),
                c.metric().id(),
                c.metric().unit().isNumber() ? "1" : c.metric().unit().spelling(),
                definition,
                summary(c),
                sizes,
                c.conditions().entrySet().stream()
                        .map(e ->
                                new CircumstanceResult(e.getKey(), e.getValue().text()))
                        .toList(),
                run.names().locator(c),
                c.isLocal() ? Optional.empty() : Optional.of(SummaryText.printed(c)),
                c.trail().stream()
                        .map(s -> new StepResult(
                                s.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                                run.trails().of(s),
                                s.formula(),
                                s.facts()))
                        .toList());
    }

    private SummaryResult summary(Comparand c) {
        var shown = run.summaries().of(c);
        return c.summary().fold(new Summary.Cases<>() {
            @Override
            public SummaryResult sampled(Summary.Sampled s) {
                return moments(
                        "sampled", s.moments(), Optional.empty(), s.halfWidth(), Optional.of(lower(s.label())), shown);
            }

            @Override
            public SummaryResult eitherSpread(Summary.EitherSpread s) {
                return moments(
                        "either-spread", s.asSd(), Optional.of(s.asSe().sd()), s.halfWidth(), Optional.empty(), shown);
            }

            @Override
            public SummaryResult point(Summary.Point s) {
                return plain(
                        "point",
                        Optional.of(s.value()),
                        Optional.of(s.halfWidth()),
                        Optional.of(lower(s.kind())),
                        shown);
            }

            @Override
            public SummaryResult limit(Summary.Limit s) {
                return plain(
                        "limit",
                        Optional.of(s.value()),
                        Optional.empty(),
                        Optional.of(s.atLeast() ? "at-least" : "at-most"),
                        shown);
            }

            @Override
            public SummaryResult extent(Summary.Extent s) {
                return new SummaryResult(
                        "extent",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new RangeResult(s.low(), s.high())),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        shown);
            }

            @Override
            public SummaryResult events(Summary.Events s) {
                return new SummaryResult(
                        "events",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(s.of()),
                        Optional.of(range(ProportionInterval.EXACT.of(s.events(), s.of(), LEVEL))),
                        Optional.empty(),
                        Optional.of(s.events()),
                        Optional.empty(),
                        Optional.empty(),
                        shown);
            }

            @Override
            public SummaryResult words(Summary.Words s) {
                return plain("words", Optional.empty(), Optional.empty(), Optional.empty(), shown);
            }
        });
    }

    private static SummaryResult moments(
            String form, Moments m, Optional<Double> sdIfSe, double halfWidth, Optional<String> label, String shown) {
        return new SummaryResult(
                form,
                Optional.of(m.mean()),
                Optional.of(m.sd()),
                sdIfSe,
                Optional.of(m.n()),
                sdIfSe.isPresent()
                        ? Optional.empty()
                        : Optional.of(range(m.estimate().interval(LEVEL))),
                Optional.empty(),
                Optional.empty(),
                Optional.of(halfWidth),
                label,
                shown);
    }

    private static SummaryResult plain(
            String form, Optional<Double> value, Optional<Double> halfWidth, Optional<String> label, String shown) {
        return new SummaryResult(
                form,
                value,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                halfWidth,
                label,
                shown);
    }

    static RangeResult range(Interval interval) {
        return new RangeResult(interval.low(), interval.high());
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
