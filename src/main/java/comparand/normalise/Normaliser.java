package comparand.normalise;

import comparand.diag.Located;
import comparand.flow.Outcome;
import comparand.metric.Catalogue;
import comparand.metric.Conditions;
import comparand.metric.Definition;
import comparand.metric.Metric;
import comparand.model.Checked;
import comparand.model.Circumstance;
import comparand.model.Comparand;
import comparand.model.Evidence;
import comparand.model.Library.PublishedValue;
import comparand.model.LocalResults;
import comparand.model.Origin;
import comparand.model.SetAside;
import comparand.model.Sizes;
import comparand.model.Step;
import comparand.model.library.ConditionText;
import comparand.model.library.LetterRecord;
import comparand.model.library.PlaceRecord;
import comparand.model.library.QuestionRecord;
import comparand.model.library.ScenarioRecord;
import comparand.model.library.SpreadReading;
import comparand.model.library.ValueRecord;
import comparand.unit.Printed;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The stage that turns published values into comparands, on the footing a dossier asks for. */
public final class Normaliser {

    private final Checked checked;
    private final Catalogue catalogue;
    private final Set<String> devices = new HashSet<>();
    private final Set<String> sources = new HashSet<>();

    private Normaliser(Checked checked) {
        this.checked = checked;
        this.catalogue = checked.library().catalogue();
        checked.dossier().devices().forEach(d -> devices.add(d.value()));
        checked.dossier().sources().forEach(s -> sources.add(s.value()));
    }

    /** Every published value of the dossier's devices and sources as a comparand, or set aside with its reason. */
    public static Outcome<Evidence> normalise(Checked checked, LocalResults local) {
        return Outcome.of(new Normaliser(checked).evidence(local));
    }

    private Evidence evidence(LocalResults local) {
        var published = new ArrayList<Comparand>();
        var aside = new ArrayList<>(local.setAside());
        checked.library().values().filter(this::inScope).forEach(value -> {
            var comparand = comparand(value);
            SettingAside.why(checked, value, comparand)
                    .ifPresentOrElse(
                            why -> aside.add(new SetAside(comparand, why.reason(), why.detail())),
                            () -> published.add(comparand));
        });
        var ours = new ArrayList<>(local.comparands());
        var tolerances = checked.tolerances();
        ours.addAll(new LocalFooting(tolerances, checked.dossier().smallestGroup()).of(local.series(), published));
        published.addAll(Interpolation.between(published, local.comparands()));
        return new Evidence(checked, ours, published, aside, local.log());
    }

    /** How the scenario reads an unexplained spread; both ways without one. */
    private Optional<SpreadReading> reading() {
        return checked.scenario().flatMap(ScenarioRecord::unstatedSpread).map(Located::value);
    }

    private boolean inScope(PublishedValue value) {
        return devices.contains(value.value().device().value())
                && (sources.isEmpty() || sources.contains(value.source().id()));
    }

    private Comparand comparand(PublishedValue published) {
        var value = published.value();
        var metric = catalogue.find(value.metric().value()).orElseThrow();
        var device = checked.library().device(value.device().value()).orElseThrow();
        var stated = published.source().conditionsOf(value);
        var footing = new DefinitionFooting(metric, wanted(metric), device, stated, catalogue, numbers(metric, value))
                .from(definition(value));
        var found = new LinkedHashMap<String, Circumstance>();
        stated.stream()
                .forEach(e -> catalogue
                        .condition(e.key().value())
                        .ifPresent(c ->
                                found.put(c.id(), Circumstance.of(c, e.value().value()))));
        var based = GasVolumeFooting.of(metric, found, footing, numbers(metric, value));
        if (based.isPresent()) {
            footing = based.get();
            found.put(Conditions.GAS_VOLUME_BASIS.id(), new Circumstance.Word(GasVolumeFooting.STANDARD));
        }
        var inlet = InletFooting.of(metric, found, footing, numbers(metric, value));
        if (inlet.isPresent()) {
            footing = inlet.get().footing();
            found.put(
                    metric.inletStandard().orElseThrow().inlet().id(),
                    inlet.get().inlet());
        }
        var trail = new ArrayList<Step>();
        trail.add(printed(published));
        value.letter().map(Normaliser::letter).ifPresent(trail::add);
        unitStep(metric, value).ifPresent(trail::add);
        var formed = SummaryForm.of(metric, value, footing, reading());
        trail.addAll(formed.steps());
        trail.addAll(footing.steps());
        return new Comparand(
                published.id(),
                new Origin.Published(published.source(), List.of(value)),
                value.device().value(),
                metric,
                footing.definition(),
                formed.summary(),
                value.n().flatMap(n -> n.value().size()).map(Sizes::of).orElse(Sizes.NOT_REPORTED),
                found,
                trail);
    }

    /** The definition asked for: the dossier's for this metric over the metric's own standard. */
    private Definition wanted(Metric metric) {
        var wanted = metric.standardDefinition();
        for (var question : checked.dossier().questions()) {
            if (question.metric().value().equals(metric.id())) {
                wanted = over(wanted, question);
            }
        }
        return wanted;
    }

    private static Definition over(Definition wanted, QuestionRecord question) {
        var result = wanted;
        for (var entry : question.definition().list()) {
            result = result.with(
                    entry.key().value(),
                    entry.value().list().stream().map(Located::value).toList());
        }
        return result;
    }

    private static Definition definition(ValueRecord value) {
        var definition = Definition.NONE;
        for (var entry : value.definition().list()) {
            var words = entry.value().list().stream().map(Located::value).toList();
            if (!words.equals(List.of(ConditionText.NOT_REPORTED))) {
                definition = definition.with(entry.key().value(), words);
            }
        }
        return definition;
    }

    private static Step printed(PublishedValue published) {
        var value = published.value();
        var step = Step.of(
                Step.Kind.PRINTED,
                "",
                "printed",
                value.printed().value(),
                "source",
                published.source().id(),
                "place",
                value.place().map(PlaceRecord::text).orElse("no place given"),
                "quote",
                value.quote().map(Located::value).orElse("no quote given"),
                "file",
                value.id().span().file() + ":" + value.id().span().line());
        return value.translation().map(t -> step.with("translation", t.value())).orElse(step);
    }

    private static Step letter(LetterRecord letter) {
        return Step.of(
                Step.Kind.LETTER,
                "",
                "by",
                letter.by().value(),
                "on",
                letter.on().value().toString(),
                "says",
                letter.says().value());
    }

    private static Optional<Step> unitStep(Metric metric, ValueRecord value) {
        return figure(value)
                .filter(printed -> !printed.unit().equals(metric.unit()))
                .map(printed -> Step.of(
                        Step.Kind.UNIT,
                        "exact UCUM factor",
                        "from",
                        printed.toString(),
                        "to",
                        String.valueOf(printed.in(metric.unit())),
                        "unit",
                        metric.unit().spelling(),
                        "factor",
                        printed.unit().factorTo(metric.unit())));
    }

    /** What is printed, in the metric's unit: a number, both ends of a range, or nothing for words and counts. */
    private static List<Double> numbers(Metric metric, ValueRecord value) {
        return value.range()
                .map(r -> List.of(
                        r.value().low().in(metric.unit()), r.value().high().in(metric.unit())))
                .orElseGet(() ->
                        figure(value).map(f -> f.in(metric.unit())).stream().toList());
    }

    private static Optional<Printed> figure(ValueRecord value) {
        return value.value()
                .or(value::mean)
                .or(value::median)
                .or(value::atLeast)
                .or(value::atMost)
                .or(value::about)
                .map(Located::value)
                .or(() -> value.range().map(r -> r.value().low()));
    }
}
