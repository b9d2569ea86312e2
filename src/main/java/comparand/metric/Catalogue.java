package comparand.metric;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All metrics a library may speak of: those the tool ships, in handbook order, then those the library declares. */
public final class Catalogue {

    private static final Catalogue SHIPPED = new Catalogue(List.of(
            PressureDrop.metric(),
            Resistance.metric(),
            PerformanceFactor.metric(),
            OxygenContent.inlet(),
            OxygenContent.outlet(),
            OxygenTransfer.metric(),
            OxygenTransferPerMembraneArea.metric(),
            CarbonDioxideTransfer.metric(),
            CarbonDioxideTransferPerMembraneArea.metric(),
            NormalisedIndexOfHaemolysis.metric(),
            BubbleReduction.count(),
            BubbleReduction.volume(),
            PrimingVolume.metric(),
            MembraneArea.metric(),
            LabelledFlow.limits(),
            LabelledFlow.reference()));

    private final Map<String, Metric> metrics;
    private final Map<String, Input> inputs;
    private final Map<String, Condition> conditions;

    private Catalogue(Collection<Metric> all) {
        var byId = new LinkedHashMap<String, Metric>();
        all.forEach(m -> {
            if (byId.put(m.id(), m) != null) {
                throw new IllegalArgumentException("two metrics are called " + m.id());
            }
        });
        metrics = Collections.unmodifiableMap(byId);
        inputs = inputs(metrics.values());
        conditions = conditions(metrics.values());
    }

    /** The metrics the tool ships. */
    public static Catalogue shipped() {
        return SHIPPED;
    }

    /**
     * This catalogue with further metrics at its end.
     *
     * @throws IllegalArgumentException if an id is taken: the checker has let a fault through
     */
    public Catalogue with(Collection<Metric> declared) {
        var all = new ArrayList<>(metrics.values());
        all.addAll(declared);
        return new Catalogue(all);
    }

    public Optional<Metric> find(String id) {
        return Optional.ofNullable(metrics.get(id));
    }

    public Collection<Metric> all() {
        return metrics.values();
    }

    public Collection<String> ids() {
        return metrics.keySet();
    }

    /** Every quantity some formula asks for, by id: what a data column may be mapped to. */
    public Map<String, Input> inputs() {
        return inputs;
    }

    /** Every condition some metric names, and every one of the shipped vocabulary, by id. */
    public Map<String, Condition> conditions() {
        return conditions;
    }

    public Optional<Condition> condition(String id) {
        return Optional.ofNullable(conditions.get(id));
    }

    private static Map<String, Input> inputs(Collection<Metric> all) {
        var inputs = new LinkedHashMap<String, Input>();
        all.stream()
                .flatMap(m -> m.derivations().stream())
                .flatMap(d -> d.inputs().stream())
                .forEach(input -> inputs.putIfAbsent(input.id(), input));
        return Collections.unmodifiableMap(inputs);
    }

    private static Map<String, Condition> conditions(Collection<Metric> all) {
        var conditions = new LinkedHashMap<>(Conditions.all());
        all.stream()
                .flatMap(m -> m.conditions().stream())
                .forEach(use -> conditions.putIfAbsent(use.condition().id(), use.condition()));
        return Collections.unmodifiableMap(conditions);
    }
}
