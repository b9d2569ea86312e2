package comparand.study.quality;

import comparand.metric.Bounds;
import comparand.study.quality.InputLimits.Limit;
import comparand.unit.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether the digits of a number make sense in another unit than the one its column declares. */
final class OtherUnits {

    /** The units in which one quantity comes out of analysers, monitors and pumps; trade usage. */
    private static final List<Unit> USUAL = Stream.of(
                    "g/dL", "g/L", "mg/dL", "mg/L", "mmHg", "kPa", "hPa", "cmH2O", "L/min", "mL/min", "1", "%", "°C",
                    "K", "°F", "kg", "g", "cm", "m", "min", "h", "a", "mo", "10⁹/L", "µL", "nL")
            .map(Unit::of)
            .toList();

    /** Grams of haemoglobin per decilitre for one mmol/L of monomer, 16114.5 g/mol, and of tetramer, 64458 g/mol. */
    private static final double MONOMER = 1.61145;

    private static final double TETRAMER = 6.4458;

    /** Another way to count the same molecules: its name, and how many of this unit one of it makes. */
    private record OtherAmount(String unit, double times) {}

    private static final Map<String, List<OtherAmount>> AMOUNTS = Map.of(
            "haemoglobin",
            List.of(new OtherAmount("mmol/L of monomer", MONOMER), new OtherAmount("mmol/L of tetramer", TETRAMER)),
            "haemoglobin-amount",
            List.of(new OtherAmount("mmol/L of tetramer", 4), new OtherAmount("g/dL", 1 / MONOMER)),
            "haemoglobin-tetramer-amount",
            List.of(new OtherAmount("mmol/L of monomer", 0.25), new OtherAmount("g/dL", 1 / TETRAMER)));

    private OtherUnits() {}

    /** Such as {@code 112 g/L would be 11.2 g/dL}, where that is a usual value; empty where no unit explains the number. */
    static Optional<String> explain(Limit limit, Written written) {
        var other = USUAL.stream()
                .filter(u -> u.convertsTo(limit.unit()) && !u.equals(written.unit()))
                .filter(u -> limit.plausible().contain(written.as(u).in(limit.unit())))
                .findFirst();
        return other.map(u -> "%s would be %s"
                        .formatted(written.as(u), Amounts.text(written.as(u).in(limit.unit()), limit.unit())))
                .or(() -> amount(limit, written));
    }

    private static Optional<String> amount(Limit limit, Written written) {
        Bounds usual = limit.plausible();
        return AMOUNTS.getOrDefault(limit.id(), List.of()).stream()
                .filter(o -> usual.contain(o.times * written.value()))
                .findFirst()
                .map(o -> "%s %s would be %s"
                        .formatted(
                                Amounts.plain(written.value(), 6),
                                o.unit,
                                Amounts.text(o.times * written.value(), limit.unit())));
    }
}
