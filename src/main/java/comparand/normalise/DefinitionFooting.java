package comparand.normalise;

import comparand.diag.Located;
import comparand.metric.Aspect;
import comparand.metric.Catalogue;
import comparand.metric.Condition;
import comparand.metric.Definition;
import comparand.metric.Inputs;
import comparand.metric.Metric;
import comparand.metric.VariantConversion;
import comparand.model.Step;
import comparand.model.library.ConditionText;
import comparand.model.library.DeviceRecord;
import comparand.model.library.Entries;
import comparand.model.library.PartRecord;
import comparand.unit.Printed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Brings the definition of a published value to the one asked for, aspect by aspect, where a named step exists and all it
 * needs is reported. Otherwise the definition stays as it is, and the matcher says that it differs.
 */
final class DefinitionFooting {

    private final Metric metric;
    private final Definition wanted;
    private final DeviceRecord device;
    private final Entries<Located<ConditionText>> conditions;
    private final Catalogue catalogue;
    private final List<Double> numbers;

    /**
     * The way from what a source states.
     *
     * @param numbers the printed number in the metric's unit, or both ends of a printed range; what becomes of them is
     *     named by each step
     */
    DefinitionFooting(
            Metric metric,
            Definition wanted,
            DeviceRecord device,
            Entries<Located<ConditionText>> conditions,
            Catalogue catalogue,
            List<Double> numbers) {
        this.metric = metric;
        this.wanted = wanted;
        this.device = device;
        this.conditions = conditions;
        this.catalogue = catalogue;
        this.numbers = List.copyOf(numbers);
    }

    Footing from(Definition stated) {
        var footing = Footing.of(stated);
        for (var aspect : metric.definition()) {
            var has = footing.definition().get(aspect.id());
            var wants = wanted.get(aspect.id());
            if (has.isPresent() && wants.isPresent() && !has.equals(wants)) {
                var now = footing;
                footing = aspect.fold(
                        choice -> convert(
                                now, choice, has.get().get(0), wants.get().get(0)),
                        parts -> parts.additive() ? sum(now, has.get(), wants.get()) : now);
            }
        }
        return footing;
    }

    private Footing convert(Footing footing, Aspect.Choice choice, String has, String wants) {
        return choice.conversion(has, wants)
                .flatMap(conversion -> factor(conversion)
                        .map(factor -> footing.times(
                                factor,
                                footing.definition().with(choice.id(), List.of(wants)),
                                result -> Step.of(
                                        Step.Kind.VARIANT,
                                        conversion.formula(),
                                        "aspect",
                                        choice.name(),
                                        "from",
                                        has,
                                        "to",
                                        wants,
                                        "factor",
                                        String.valueOf(factor),
                                        "inputs",
                                        inputs(conversion),
                                        "result",
                                        result(result),
                                        "source",
                                        conversion.citation().toString()))))
                .orElse(footing);
    }

    /** Variants of one metric are proportional, so the conversion of 1 is the factor for value and spread alike. */
    private Optional<Double> factor(VariantConversion conversion) {
        var numbers = new HashMap<String, Double>();
        numbers.put(VariantConversion.VALUE, 1.0);
        for (var input : conversion.needs()) {
            var stated = conditions.get(input.id()).flatMap(c -> c.value().asNumber());
            if (stated.isEmpty() || !stated.get().unit().convertsTo(input.unit())) {
                return Optional.empty();
            }
            numbers.put(input.id(), stated.get().in(input.unit()));
        }
        return Optional.of(conversion.computation().of(new Inputs(numbers, wanted)));
    }

    private String inputs(VariantConversion conversion) {
        return String.join(
                ", ",
                conversion.needs().stream()
                        .map(i -> name(i.id()) + " "
                                + conditions
                                        .get(i.id())
                                        .map(c -> c.value().text())
                                        .orElse(""))
                        .toList());
    }

    private String name(String condition) {
        return catalogue.condition(condition).map(Condition::name).orElse(condition);
    }

    /** Adds the parts that are wanted and not covered, takes away those covered and not wanted; all must be stated. */
    private Footing sum(Footing footing, List<String> has, List<String> wants) {
        var changed = new TreeSet<>(wants);
        changed.addAll(has);
        var steps = new ArrayList<Part>();
        for (var part : changed) {
            boolean add = wants.contains(part) && !has.contains(part);
            boolean remove = has.contains(part) && !wants.contains(part);
            if (add || remove) {
                var record = device.part(part);
                var amount = record.flatMap(p -> p.adds().get(metric.id())).map(Located::value);
                if (amount.isEmpty() || !amount.get().unit().convertsTo(metric.unit())) {
                    return footing;
                }
                steps.add(new Part(part, record.get(), amount.get(), add ? 1 : -1));
            }
        }
        var result = footing;
        var covered = new TreeSet<>(has);
        for (var step : steps) {
            if (step.sign > 0) {
                covered.add(step.name);
            } else {
                covered.remove(step.name);
            }
            result = result.plus(
                    step.sign * step.amount.in(metric.unit()),
                    result.definition().with(Aspect.Parts.ID, covered),
                    now -> Step.of(
                            Step.Kind.PARTS,
                            step.sign > 0 ? "x + part" : "x - part",
                            "part",
                            step.name,
                            "amount",
                            step.amount.toString(),
                            "sign",
                            step.sign > 0 ? "+" : "\u2212",
                            "result",
                            result(now),
                            "source",
                            source(step.record)));
        }
        return result;
    }

    private String result(Footing footing) {
        return numbers.stream().map(n -> String.valueOf(footing.value(n))).collect(Collectors.joining(" to ")) + " "
                + metric.unit().spelling();
    }

    private record Part(String name, PartRecord record, Printed amount, int sign) {}

    private static String source(PartRecord part) {
        return part.from()
                .map(f -> f.source().value() + ", " + f.place().text())
                .orElse("device record, no source given");
    }
}
