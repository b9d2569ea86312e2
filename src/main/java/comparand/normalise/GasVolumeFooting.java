package comparand.normalise;

import comparand.metric.Conditions;
import comparand.metric.GasVolume;
import comparand.metric.Metric;
import comparand.model.Circumstance;
import comparand.model.Step;
import comparand.unit.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Brings a gas volume reported at body temperature, saturated, to standard temperature and pressure, dry. */
final class GasVolumeFooting {

    static final String STANDARD = "STPD";
    private static final String BODY = "BTPS";

    private GasVolumeFooting() {}

    /** The value at STPD; empty if it is there already, or the barometric pressure it takes is not reported. */
    static Optional<Footing> of(
            Metric metric, Map<String, Circumstance> stated, Footing footing, List<Double> printed) {
        var basis = Conditions.GAS_VOLUME_BASIS.id();
        boolean body = metric.condition(basis).isPresent()
                && stated.get(basis) instanceof Circumstance.Word word
                && word.text().equals(BODY);
        if (!body
                || printed.isEmpty()
                || !(stated.get(Conditions.BAROMETRIC_PRESSURE.id()) instanceof Circumstance.Amount pressure)) {
            return Optional.empty();
        }
        double factor = GasVolume.fromBtpsToStpd(pressure.value());
        return Optional.of(footing.times(
                factor,
                footing.definition(),
                now -> Step.of(
                        Step.Kind.VOLUME_BASIS,
                        GasVolume.FORMULA,
                        "over",
                        Conditions.GAS_VOLUME_BASIS.name(),
                        "was",
                        BODY,
                        "at",
                        STANDARD,
                        "pressure",
                        pressure.text(),
                        "factor",
                        String.valueOf(factor),
                        "value",
                        String.valueOf(now.value(printed.get(0))),
                        "unit",
                        metric.unit().isNumber()
                                ? Unit.ONE.spelling()
                                : metric.unit().spelling())));
    }
}
