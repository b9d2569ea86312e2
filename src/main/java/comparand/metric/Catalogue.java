package comparand.metric;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** All metrics a library may speak of: those the tool ships, in handbook order, then those the library declares. */
public final class Catalogue {

    private static final Catalogue SHIPPED = new Catalogue(Stream.of(
                    pressure(),
                    heat(),
                    oxygen(),
                    carbonDioxide(),
                    shunt(),
                    haemolysis(),
                    bubbles(),
                    device(),
                    patient())
            .flatMap(List::stream)
            .toList());

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

    public Optional<Input> input(String id) {
        return Optional.ofNullable(inputs.get(id));
    }

    /** Every condition some metric names, and every one of the shipped vocabulary, by id. */
    public Map<String, Condition> conditions() {
        return conditions;
    }

    public Optional<Condition> condition(String id) {
        return Optional.ofNullable(conditions.get(id));
    }

    private static List<Metric> pressure() {
        return List.of(
                PressureDrop.metric(),
                Resistance.metric(),
                AverageShearStress.metric(),
                HydrostaticPressure.metric(),
                BloodViscosity.metric(),
                PlasmaViscosity.metric(),
                HydraulicDiameter.metric(),
                GasPressure.inlet(),
                GasPressure.drop());
    }

    private static List<Metric> heat() {
        return List.of(PerformanceFactor.metric(), PerformanceFactorUncertainty.metric(), HeatFlow.metric());
    }

    private static List<Metric> oxygen() {
        return List.of(
                OxygenContent.inlet(),
                OxygenContent.outlet(),
                OxygenTransfer.metric(),
                OxygenTransferPerMembraneArea.metric(),
                OxygenTransferPerBodySurface.metric(),
                OxygenTransferPerLitre.metric(),
                OxygenSaturation.inlet(),
                OxygenSaturation.outlet(),
                OxygenPressureAtSaturation.metric(),
                Haemoglobin.metric(),
                HaemoglobinFromHaematocrit.metric());
    }

    private static List<Metric> carbonDioxide() {
        return List.of(
                CarbonDioxideTransfer.metric(),
                CarbonDioxideTransferPerMembraneArea.metric(),
                CarbonDioxideTransferPerLitre.metric(),
                CarbonDioxideContent.inlet(),
                CarbonDioxideContent.outlet(),
                CarbonDioxideContent.inletPlasma(),
                CarbonDioxideContent.outletPlasma(),
                CarbonDioxideReduction.metric(),
                RespiratoryExchangeRatio.metric(),
                GasFlowAtStandardState.sweep(),
                GasFlowAtStandardState.exhaust());
    }

    private static List<Metric> shunt() {
        return List.of(
                ShuntFraction.metric(),
                OxygenGradient.metric(),
                IdealOxygenContent.metric(),
                IdealOxygenPressure.metric(),
                WaterVapourPressure.metric(),
                CorrectedOxygenFraction.metric(),
                UptakeRelation.slope(),
                UptakeRelation.fractionAtUptake());
    }

    private static List<Metric> haemolysis() {
        return List.of(
                NormalisedIndexOfHaemolysis.metric(),
                OtherHaemolysis.modified(),
                OtherHaemolysis.aboveControl(),
                OtherHaemolysis.rate(),
                DilutionCorrected.platelets(),
                DilutionCorrected.fibrinogen());
    }

    private static List<Metric> bubbles() {
        return List.of(
                BubbleReduction.count(),
                BubbleReduction.volume(),
                BubbleReduction.countLogarithm(),
                BubbleReduction.volumeLogarithm(),
                Bubbles.count(true),
                Bubbles.count(false),
                Bubbles.volume(true),
                Bubbles.volume(false),
                Bubbles.diameter());
    }

    private static List<Metric> device() {
        return List.of(
                PrimingVolume.metric(),
                MembraneArea.metric(),
                PrimeRatios.perArea(),
                PrimeRatios.perFlow(),
                LabelledFlow.limits(),
                LabelledFlow.reference(),
                LabelledFlow.rated());
    }

    private static List<Metric> patient() {
        return List.of(
                BodySurfaceArea.metric(),
                FlowIndices.perBodySurface(),
                FlowIndices.perBodyWeight(),
                FlowIndices.utilisation(),
                FlowIndices.gasToBlood(),
                FlowIndices.haemoglobin(),
                OxygenDeliveryIndex.metric(),
                BloodGasAtTemperature.ph(true),
                BloodGasAtTemperature.ph(false),
                BloodGasAtTemperature.pco2(true),
                BloodGasAtTemperature.pco2(false),
                BloodGasAtTemperature.po2(true),
                BloodGasAtTemperature.po2(false),
                Anaesthetic.concentration(),
                Anaesthetic.fraction());
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
