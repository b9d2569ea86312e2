package comparand.compose.results;

import comparand.compose.text.Kebab;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.result.ComparandResult;
import comparand.document.result.ComparandResult.CircumstanceResult;
import comparand.document.result.ComparandResult.FormerResult;
import comparand.document.result.ComparandResult.LetterResult;
import comparand.document.result.ComparandResult.RangeResult;
import comparand.document.result.ComparandResult.StepResult;
import comparand.document.result.ComparandResult.SummaryResult;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Origin;
import comparand.model.Summary;
import comparand.model.library.ValueRecord;
import comparand.stat.Interval;
import comparand.stat.Moments;
import comparand.stat.ProportionInterval;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Comparands as data. */
public final class ComparandResults {

    public static final double LEVEL = Answer.LEVEL;

    private final Run run;

    public ComparandResults(Run run) {
        this.run = run;
    }

    public ComparandResult of(Comparand c) {
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
                c.metric().unit().named(),
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
                                Kebab.of(s.kind()),
                                run.trails().of(s),
                                run.trails().formula(c, s),
                                s.facts()))
                        .toList(),
                Optional.of(c.origin().fold(p -> p.source().id(), l -> l.study().id())),
                Optional.of(c.origin().fold(this::files, this::files)),
                former(c),
                letter(c));
    }

    private List<String> files(Origin.Published published) {
        return List.of("sources/" + published.source().id() + ".yaml");
    }

    private List<String> files(Origin.Local local) {
        // asked for every local result: only the files of its study are looked at, not those of the whole library
        var folder = "studies/" + local.study().id() + "/";
        return run.library().fingerprints().tailMap(folder).keySet().stream()
                .takeWhile(f -> f.startsWith(folder))
                .filter(f -> local.file().contains(f))
                .toList();
    }

    private static Optional<FormerResult> former(Comparand c) {
        return printed(c)
                .flatMap(ValueRecord::was)
                .map(w -> new FormerResult(
                        w.value().value().toString(),
                        w.reason().value(),
                        w.until().value().toString()));
    }

    private static Optional<LetterResult> letter(Comparand c) {
        return printed(c)
                .flatMap(ValueRecord::letter)
                .map(l -> new LetterResult(
                        l.by().value(), l.on().value().toString(), l.says().value()));
    }

    /** The one value a published comparand stands for; none for a local one and one read off between two. */
    private static Optional<ValueRecord> printed(Comparand c) {
        return c.origin()
                .fold(
                        p -> p.values().size() == 1 ? Optional.of(p.values().get(0)) : Optional.<ValueRecord>empty(),
                        l -> Optional.empty());
    }

    private SummaryResult summary(Comparand c) {
        return c.summary()
                .fold(new Summary.Cases<SummaryDraft>() {
                    @Override
                    public SummaryDraft sampled(Summary.Sampled s) {
                        return moments("sampled", s.moments(), s.halfWidth())
                                .value(s.estimate().mean())
                                .interval(s.estimate().interval(LEVEL))
                                .label(s.label())
                                .local(s.local().map(m -> LocalMeans.of(s, m)))
                                .each(LocalMeans.each(c, s, run.dossier()));
                    }

                    @Override
                    public SummaryDraft estimated(Summary.Estimated s) {
                        return new SummaryDraft("estimated")
                                .value(s.estimate().mean())
                                .se(s.estimate().se())
                                .n(s.n())
                                .interval(s.estimate().interval(LEVEL))
                                .line(s.line().map(LineResults::of));
                    }

                    @Override
                    public SummaryDraft eitherSpread(Summary.EitherSpread s) {
                        return moments("either-spread", s.asSd(), s.halfWidth())
                                .sdIfSe(s.asSe().sd());
                    }

                    @Override
                    public SummaryDraft point(Summary.Point s) {
                        return new SummaryDraft("point")
                                .value(s.value())
                                .halfWidth(s.halfWidth())
                                .label(s.kind());
                    }

                    @Override
                    public SummaryDraft limit(Summary.Limit s) {
                        return new SummaryDraft("limit").value(s.value()).label(s.atLeast() ? "at-least" : "at-most");
                    }

                    @Override
                    public SummaryDraft extent(Summary.Extent s) {
                        return new SummaryDraft("extent").extent(s.low(), s.high());
                    }

                    @Override
                    public SummaryDraft events(Summary.Events s) {
                        return new SummaryDraft("events")
                                .n(s.of())
                                .events(s.events())
                                .interval(ProportionInterval.EXACT.of(s.events(), s.of(), LEVEL));
                    }

                    @Override
                    public SummaryDraft words(Summary.Words s) {
                        return new SummaryDraft("words");
                    }
                })
                .shown(run.summaries().of(c));
    }

    private static SummaryDraft moments(String form, Moments m, double halfWidth) {
        return new SummaryDraft(form).value(m.mean()).sd(m.sd()).n(m.n()).halfWidth(halfWidth);
    }

    public static RangeResult range(Interval interval) {
        return new RangeResult(interval.low(), interval.high());
    }
}
