package comparand.compose.results;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Figures;
import comparand.compose.text.Kebab;
import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.document.result.ChangesResult;
import comparand.document.result.ChangesResult.RecordChangeResult;
import comparand.model.Comparison;
import comparand.model.library.FormerValueRecord;
import comparand.model.library.ReadingRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.SourceState;
import comparand.model.library.ToleranceRecord;
import comparand.model.library.ValueRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the dated entries of the records say to have changed from a day on. */
final class ChangeResults {

    private final Run run;
    private final List<RecordChangeResult> changes = new ArrayList<>();

    ChangeResults(Run run) {
        this.run = run;
    }

    ChangesResult of() {
        var since = run.dossier().since().map(Located::value);
        since.ifPresent(this::gather);
        changes.sort(Comparator.comparing(RecordChangeResult::on));
        return new ChangesResult(since.map(LocalDate::toString), changes);
    }

    private void gather(LocalDate since) {
        for (var source : run.names().sources()) {
            status(source, since);
            revision(source, since);
            added(source, since);
            for (var value : source.values()) {
                value.was().filter(w -> !w.until().value().isBefore(since)).ifPresent(w -> corrected(source, value, w));
            }
        }
        run.dossier().tolerances().stream()
                .filter(t -> !t.set().value().isBefore(since))
                .forEach(this::tolerance);
        run.dossier()
                .weights()
                .filter(w -> !w.on().value().isBefore(since))
                .ifPresent(w -> add(
                        "weights",
                        w.on().value().toString(),
                        say("change.weights"),
                        say("change.nothing"),
                        w.setBy().map(Located::value).orElse(""),
                        say("change.weights-set"),
                        List.of(),
                        say("change.no-answer-by-weights")));
    }

    private void status(SourceRecord source, LocalDate since) {
        var status = source.status();
        status.since()
                .filter(d -> !d.value().latest().isBefore(since))
                .ifPresent(d -> add(
                        "source",
                        d.value().toString(),
                        named(source),
                        Kebab.of(SourceState.CURRENT),
                        Kebab.of(status.state().value()),
                        status.notice().map(Located::value).orElseGet(() -> say("no-reason")),
                        comparisons(ids(source.values().stream())),
                        rest(comparisons(ids(source.values().stream())))));
    }

    /** A document in whose place a newer revision stands. */
    private void revision(SourceRecord source, LocalDate since) {
        var newer = source.status()
                .by()
                .flatMap(by -> run.library().source(by.value()))
                .filter(s -> source.status().state().value() == SourceState.SUPERSEDED);
        newer.flatMap(SourceRecord::document)
                .filter(d -> !d.date().value().latest().isBefore(since))
                .ifPresent(d -> {
                    var concerned = comparisons(ids(newer.stream().flatMap(s -> s.values().stream())));
                    add(
                            "revision",
                            d.date().value().toString(),
                            named(newer.orElseThrow()),
                            source.document().map(run.terms()::revision).orElseGet(() -> say("not-reported")),
                            run.terms().revision(d),
                            say("change.revision"),
                            concerned,
                            rest(concerned));
                });
    }

    /** Values that nobody had read before. */
    private void added(SourceRecord source, LocalDate since) {
        var fresh = source.values().stream()
                .filter(v -> first(v).filter(d -> !d.isBefore(since)).isPresent())
                .toList();
        fresh.stream()
                .flatMap(v -> first(v).stream())
                .min(Comparator.naturalOrder())
                .ifPresent(day -> {
                    var concerned = comparisons(ids(fresh.stream()));
                    add(
                            "added",
                            day.toString(),
                            named(source),
                            say("change.nothing"),
                            fresh.stream().map(v -> v.printed().value()).collect(Collectors.joining("; ")),
                            say("change.read"),
                            concerned,
                            rest(concerned));
                });
    }

    private static Optional<LocalDate> first(ValueRecord value) {
        return value.read().stream().map(ReadingRecord::on).map(Located::value).min(Comparator.naturalOrder());
    }

    private void corrected(SourceRecord source, ValueRecord value, FormerValueRecord was) {
        var concerned = comparisons(ids(Stream.of(value)));
        var metric = run.library().catalogue().find(value.metric().value()).orElseThrow();
        add(
                "value",
                was.until().value().toString(),
                say(
                        "change.value",
                        "device",
                        run.names().device(value.device().value()),
                        "metric",
                        run.terms().metric(metric),
                        "locator",
                        run.names().locator(source, value)),
                was.value().value().toString(),
                Figures.figure(value)
                        .map(Object::toString)
                        .orElseGet(() -> value.printed().value()),
                was.reason().value(),
                concerned,
                rest(concerned));
    }

    private void tolerance(ToleranceRecord t) {
        var metric = t.metric().map(Located::value);
        var concerned = run.compared().comparisons().stream()
                .filter(c -> metric.map(m -> c.pairing().ours().metric().id().equals(m))
                        .orElse(true))
                .filter(c -> c.pairing().verdicts().stream()
                        .anyMatch(v -> v.id().equals(t.condition().value())))
                .toList();
        add(
                "tolerance",
                t.set().value().toString(),
                say(
                        "change.tolerance",
                        "condition",
                        run.conditionName(t.condition().value())),
                say("change.catalogue"),
                t.within().value(),
                t.reason().map(Located::value).orElseGet(() -> say("no-reason")),
                concerned,
                say("change.tolerance-judged", "pairs", String.valueOf(concerned.size())));
    }

    private String named(SourceRecord source) {
        return say(
                "change.source",
                "number",
                String.valueOf(run.names().number(source.id())),
                "author",
                source.reference().author().stream()
                        .findFirst()
                        .map(a -> a.text())
                        .orElseGet(() -> source.reference().title().value()));
    }

    private static Set<String> ids(Stream<ValueRecord> values) {
        return values.map(v -> v.id().value()).collect(Collectors.toSet());
    }

    private List<Comparison> comparisons(Set<String> values) {
        return run.compared().comparisons().stream()
                .filter(c -> values.contains(c.pairing().ours().id())
                        || values.contains(c.pairing().theirs().id()))
                .toList();
    }

    /** Which answers rest on values: those of pairs that are compared. */
    private String rest(List<Comparison> concerned) {
        var resting = concerned.stream()
                .filter(c -> c.pairing().standing().isCompared())
                .toList();
        if (resting.isEmpty()) {
            return say("change.no-answer");
        }
        return say(
                "change.answers",
                "answers",
                resting.stream().map(this::answer).distinct().collect(Collectors.joining("; ")));
    }

    private String answer(Comparison c) {
        return say(
                "change.answer",
                "device",
                run.names().device(c.pairing().ours().device()),
                "metric",
                run.terms().metric(c.pairing().ours().metric()),
                "answer",
                run.answers().of(c));
    }

    private void add(
            String kind,
            String on,
            String what,
            String before,
            String after,
            String cause,
            List<Comparison> pairs,
            String answers) {
        changes.add(new RecordChangeResult(
                kind,
                on,
                what,
                before,
                after,
                ConditionLine.upperFirst(cause),
                pairs.stream().map(c -> c.pairing().id()).toList(),
                (int) pairs.stream()
                        .filter(c -> c.pairing().standing().isCompared())
                        .count(),
                answers));
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
