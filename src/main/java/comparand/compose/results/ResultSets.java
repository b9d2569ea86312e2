package comparand.compose.results;

import comparand.compose.text.Kebab;
import comparand.compose.text.Run;
import comparand.compose.text.RunFacts;
import comparand.compose.text.SummaryText;
import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.document.result.DeviceResult;
import comparand.document.result.DeviceResult.StatementResult;
import comparand.document.result.FindingResult;
import comparand.document.result.QuestionResult;
import comparand.document.result.QuestionResult.ToleranceResult;
import comparand.document.result.ResultSet;
import comparand.document.result.RunResult;
import comparand.document.result.RunResult.InputResult;
import comparand.document.result.SetAsideResult;
import comparand.document.result.SourceResult;
import comparand.document.result.UnpairedResult;
import comparand.metric.ConditionUse;
import comparand.metric.Metric;
import comparand.metric.Role;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.SetAside;
import comparand.model.library.ConditionText;
import comparand.model.library.DeviceRecord;
import comparand.model.library.QuestionRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.StatedMargin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;

/** The results of a run as data. */
public final class ResultSets {

    private final Run run;
    private final RunFacts facts;
    private final List<Diagnostic> findings;

    public ResultSets(Run run, RunFacts facts, List<Diagnostic> findings) {
        this.run = run;
        this.facts = facts;
        this.findings = findings;
    }

    public ResultSet results() {
        var comparands = new ComparandResults(run);
        var pairs = new PairResults(run);
        return new ResultSet(
                ResultSet.FORMAT,
                runResult(),
                run.dossier().devices().stream().map(d -> device(d.value())).toList(),
                run.names().sources().stream().map(this::source).toList(),
                questions(),
                run.comparands().stream().map(comparands::of).toList(),
                run.compared().comparisons().stream().map(pairs::of).toList(),
                run.compared().together().stream()
                        .map(new TogetherResults(run)::of)
                        .toList(),
                new ScenarioResults(run).results(),
                new UnknownResults(run).all(),
                run.compared().matched().unpaired().stream().map(this::unpaired).toList(),
                new ComparabilityResults(run).all(),
                run.compared().matched().evidence().setAside().stream()
                        .map(this::setAside)
                        .toList(),
                ScreeningResults.of(run),
                RowLogResults.of(run),
                CostResults.of(run),
                new WeightResults(run).of(),
                new ChangeResults(run).of(),
                RequestResults.of(run),
                findings.stream().sorted(Diagnostic.ORDER).map(this::finding).toList(),
                run.words().cautions(),
                new Counts(run).all(),
                new Limitations(run).all());
    }

    private RunResult runResult() {
        var d = run.dossier();
        var inputs = run.library().fingerprints().entrySet().stream()
                .map(e -> new InputResult(
                        e.getKey(),
                        e.getValue(),
                        Optional.ofNullable(run.library().laidOver().get(e.getKey()))))
                .toList();
        return new RunResult(
                d.id(),
                d.title().value(),
                d.question().value(),
                d.decision().value(),
                d.fixed().value().toString(),
                d.firstSeen().map(f -> f.value().toString()),
                d.asOf().value().toString(),
                d.preparedBy().value(),
                Kebab.of(d.state().value()),
                d.inventedData().value().isYes(),
                d.presentDevice().value(),
                facts.tool(),
                facts.fingerprint(),
                inputs,
                Answer.LEVEL,
                PairResults.NARROW,
                Answer.ToleranceBound.SHARE,
                run.familySize(),
                Optional.of(run.words().language()));
    }

    private DeviceResult device(String id) {
        DeviceRecord device = run.library().device(id).orElseThrow();
        var label = device.label().stream()
                .map(l -> new StatementResult(
                        "label",
                        run.conditionName(l.limits().value()),
                        run.terms().quantity(l.range().value().toString()),
                        run.names().locator(l.from())))
                .toList();
        var characteristics = device.characteristics().stream()
                .map(c -> new StatementResult(
                        Kebab.of(c.block().value()),
                        c.name().value(),
                        c.is().value(),
                        run.names().locator(c.from())))
                .toList();
        return new DeviceResult(
                id,
                device.displayName(),
                device.maker().value(),
                device.instructions().value(),
                label,
                characteristics);
    }

    private SourceResult source(SourceRecord source) {
        int deciding = 0;
        var missing = new TreeSet<String>();
        int reported = 0;
        for (var value : source.values()) {
            var metric = run.library().catalogue().find(value.metric().value()).orElseThrow();
            if (value.claim().isPresent()) {
                continue;
            }
            var stated = source.conditionsOf(value);
            for (var use : metric.conditions()) {
                if (!use.role().asksForReport()) {
                    continue;
                }
                deciding++;
                if (stated.get(use.condition().id())
                        .map(Located::value)
                        .filter(ConditionText::isReported)
                        .isPresent()) {
                    reported++;
                } else {
                    missing.add(run.terms().named(use.condition().name()));
                }
            }
        }
        var status = source.status();
        return new SourceResult(
                run.names().number(source.id()),
                source.id(),
                Kebab.of(source.kind().value()),
                source.reference().text(),
                source.document().map(run.terms()::revision),
                source.funding().value().spelling(),
                Kebab.of(status.state().value()),
                status.checked().value().toString(),
                status.notice().map(Located::value),
                source.values().size(),
                reported,
                deciding,
                List.copyOf(missing),
                status.since().map(d -> d.value().text()),
                status.by().map(Located::value),
                source.sameStudyAs().map(Located::value));
    }

    private List<QuestionResult> questions() {
        var questions = new ArrayList<QuestionResult>();
        run.questions().forEach((question, metric) -> questions.add(question(question, metric)));
        return questions;
    }

    private QuestionResult question(QuestionRecord question, Metric metric) {
        var definition = new TreeMap<String, String>();
        metric.standardDefinition()
                .aspects()
                .forEach((aspect, words) -> definition.put(aspect, String.join(" + ", words)));
        question.definition().stream()
                .forEach(e -> metric.aspect(e.key().value())
                        .ifPresent(a -> definition.put(
                                a.id(),
                                a.text(e.value().list().stream()
                                        .map(Located::value)
                                        .toList()))));
        return new QuestionResult(
                metric.id(),
                run.terms().metric(metric),
                metric.symbol(),
                metric.unit().named(),
                question.asks().value(),
                question.margin().flatMap(m -> m.value().amount()).map(a -> a.asDifferenceIn(metric.unit())),
                question.margin()
                        .map(m -> run.terms().quantity(m.value().toString()))
                        .orElse(StatedMargin.NONE_WORD),
                question.reason().map(Located::value),
                Kebab.of(run.better(question, metric)),
                definition,
                metric.conditions().stream().map(use -> tolerance(metric, use)).toList());
    }

    private ToleranceResult tolerance(Metric metric, ConditionUse use) {
        var effective = run.tolerances().of(metric, use);
        var from = run.tolerances()
                .override(metric, use)
                .map(t -> run.words().say("set-by.dossier") + " " + t.set().value() + ": "
                        + t.reason().map(Located::value).orElse(""))
                .orElseGet(() -> run.words().say("set-by.catalogue"));
        return new ToleranceResult(
                use.condition().id(),
                run.terms().named(use.condition().name()),
                use.role() == Role.QUALIFIES ? "qualifies" : "decides",
                run.terms().quantity(effective.tolerance().words()),
                from);
    }

    private UnpairedResult unpaired(Comparand comparand) {
        return new UnpairedResult(comparand.id(), run.unpaired(comparand));
    }

    private SetAsideResult setAside(SetAside aside) {
        var comparand = aside.comparand();
        return new SetAsideResult(
                comparand.id(),
                comparand.origin().fold(p -> p.source().id(), l -> l.study().id()),
                comparand.metric().id(),
                comparand.device(),
                SummaryText.printed(comparand),
                run.names().locator(comparand),
                Kebab.of(aside.reason()),
                run.words().say("aside." + aside.reason().name(), "detail", aside.detail()));
    }

    private FindingResult finding(Diagnostic d) {
        return new FindingResult(
                d.severity().name(),
                d.code(),
                d.span().file(),
                d.span().isCell() ? Optional.of(d.span().within()) : Optional.empty(),
                d.span().line(),
                d.span().column(),
                new PatientRows(run).inDocuments(d.span().file(), d.code(), d.message()),
                d.why(),
                d.fix());
    }

    /** The same absence in the type that results use. */
    public static Optional<Double> present(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }
}
