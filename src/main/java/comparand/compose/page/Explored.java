package comparand.compose.page;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.Edition;
import comparand.document.exploration.Exploration;
import comparand.document.exploration.Exploration.DeviceShown;
import comparand.document.exploration.Exploration.RunShown;
import comparand.document.exploration.Exploration.SourceShown;
import comparand.document.exploration.QuestionShown;
import comparand.document.exploration.QuestionShown.MarginShown;
import comparand.document.exploration.QuestionShown.PoolShown;
import comparand.document.exploration.QuestionShown.Subset;
import comparand.document.exploration.QuestionShown.ToleranceShown;
import comparand.document.result.ResultSet;
import comparand.metric.ConditionUse;
import comparand.metric.Metric;
import comparand.metric.Tolerance;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.ConditionVerdict;
import comparand.model.SourcesTogether;
import comparand.model.library.QuestionRecord;
import comparand.unit.Printed;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** What a reader of the page may try, from the answers of a run. */
final class Explored {

    /** Beginnings of the keys of all words that scripts speak with. */
    private static final Set<String> WORDS = Set.of(
            "page.",
            "verdict.",
            "answer.",
            "why.",
            "standing.",
            "mark.",
            "role.",
            "effect.",
            "distortion.",
            "comparable.",
            "qualifies.",
            "not-applicable",
            "stated.within",
            "not-reported");

    private final Run run;
    private final Edition edition;
    private final ResultSet results;
    private final Cells cells;
    private final Pairs pairs;

    Explored(Run run, Edition edition, ResultSet results, Cells cells, Ladders ladders) {
        this.run = run;
        this.edition = edition;
        this.results = results;
        this.cells = cells;
        this.pairs = new Pairs(run, cells, ladders);
    }

    Exploration exploration() {
        var questions = new ArrayList<QuestionShown>();
        run.questions().forEach((question, metric) -> questions.add(question(questions.size(), question, metric)));
        return new Exploration(
                Exploration.FORMAT,
                new RunShown(
                        results.run().dossier(),
                        edition.title(),
                        edition.date().toString(),
                        edition.tool(),
                        results.run().fingerprint(),
                        edition.state(),
                        edition.language(),
                        run.words().decimalSign(),
                        edition.marks(),
                        run.words().say("page.say.rider")),
                run.words().under(WORDS),
                results.sources().stream()
                        .map(s -> new SourceShown(s.id(), s.number(), s.reference()))
                        .toList(),
                run.dossier().devices().stream()
                        .map(d -> new DeviceShown(d.value(), run.names().device(d.value())))
                        .toList(),
                questions);
    }

    private QuestionShown question(int row, QuestionRecord question, Metric metric) {
        var comparisons = run.comparisons(metric);
        var grid = new ConditionGrid(run, cells, comparisons);
        return new QuestionShown(
                metric.id(),
                run.terms().metric(metric),
                question.asks().value(),
                QuestionPart.name(metric),
                metric.unit().spelling(),
                run.terms().differenceUnit(metric),
                margin(question, metric),
                tolerances(metric, comparisons),
                QuestionPart.table("Pairs", metric),
                PairTable.COLUMNS,
                QuestionPart.table("Grid", metric),
                ConditionGrid.FIRST,
                grid.columns(),
                QuestionList.summary(row),
                pairs.of(comparisons),
                pools(metric));
    }

    private Optional<MarginShown> margin(QuestionRecord question, Metric metric) {
        return question.margin().flatMap(m -> m.value().amount()).map(amount -> {
            var text = run.terms().margin(amount.toString());
            var number = amount.number().value();
            return new MarginShown(
                    amount.asDifferenceIn(metric.unit()),
                    number.doubleValue(),
                    text.replaceFirst("^[^\\d]*[\\d.,]+", ""),
                    text);
        });
    }

    /** Of conditions in numbers that stand on both sides of some pair. */
    private List<ToleranceShown> tolerances(Metric metric, List<Comparison> comparisons) {
        var numbers = comparisons.stream()
                .flatMap(c -> c.pairing().verdicts().stream())
                .filter(v -> v.latitude().isPresent())
                .map(ConditionVerdict::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return metric.conditions().stream()
                .filter(use -> numbers.contains(use.condition().id()))
                .map(use -> tolerance(run.tolerances().of(metric, use)))
                .toList();
    }

    private ToleranceShown tolerance(ConditionUse use) {
        var unit = use.condition().unit().orElse(Unit.ONE);
        var tolerance = use.tolerance();
        var words = run.terms().quantity(tolerance.words());
        var id = use.condition().id();
        var name = run.conditionName(id);
        if (tolerance instanceof Tolerance.Absolute absolute) {
            return written(
                    id,
                    name,
                    "absolute",
                    absolute.amount(),
                    words,
                    absolute.amount().asDifferenceIn(unit));
        }
        if (tolerance instanceof Tolerance.Relative relative) {
            return written(
                    id,
                    name,
                    "relative",
                    relative.percent(),
                    words,
                    relative.percent().in(Unit.ONE));
        }
        return new ToleranceShown(id, name, "equal", 0, 1, unit.spelling(), words);
    }

    private ToleranceShown written(String id, String name, String kind, Printed amount, String words, double inUnit) {
        double number = amount.number().value().doubleValue();
        return new ToleranceShown(
                id,
                name,
                kind,
                number,
                number == 0 ? 1 : inUnit / number,
                amount.unit().spelling(),
                words);
    }

    /** What sources say together, for every choice of them that was worked out. */
    private List<PoolShown> pools(Metric metric) {
        var whole = run.compared().together().stream()
                .filter(t -> t.ours().metric().equals(metric))
                .toList();
        var pools = new ArrayList<PoolShown>();
        for (int row = 0; row < whole.size(); row++) {
            pools.add(pool(metric, whole.get(row), row));
        }
        return pools;
    }

    private PoolShown pool(Metric metric, SourcesTogether whole, int row) {
        var subsets = new ArrayList<Subset>(List.of(subset(whole)));
        run.compared().fewer().stream()
                .filter(t -> t.ours().id().equals(whole.ours().id()))
                .map(this::subset)
                .forEach(subsets::add);
        return new PoolShown(
                whole.ours().id(),
                QuestionPart.table("Together", metric),
                OptionalInt.of(row),
                sources(whole),
                whole.each().stream()
                        .map(c -> c.pairing().theirs())
                        .filter(SummaryText::isRead)
                        .flatMap(c -> source(c).stream())
                        .toList(),
                subsets);
    }

    private Subset subset(SourcesTogether together) {
        return new Subset(sources(together), run.together().of(together));
    }

    private static List<String> sources(SourcesTogether together) {
        return together.each().stream()
                .flatMap(c -> source(c.pairing().theirs()).stream())
                .toList();
    }

    static Optional<String> source(Comparand c) {
        return c.origin().fold(p -> Optional.of(p.source().id()), l -> Optional.empty());
    }
}
