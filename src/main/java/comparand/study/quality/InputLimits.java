package comparand.study.quality;

import comparand.metric.Bounds;
import comparand.unit.Unit;
import java.util.List;

/**
 * What measured quantities can be, and what they usually are, on bypass from newborns to adults and on the bench. Trade
 * usage throughout, meant to catch slips of digits, units and columns, not to judge patients; a file may declare others
 * under {@code limits:}.
 */
final class InputLimits {

    /**
     * The limits of one quantity.
     *
     * @param id of an input or condition
     * @param unit that of the bounds
     * @param possible outside of it a row is held
     * @param plausible outside of it a row is pointed out
     */
    record Limit(String id, Unit unit, Bounds possible, Bounds plausible) {
        Limit with(Bounds otherPossible, Bounds otherPlausible) {
            return new Limit(id, unit, otherPossible, otherPlausible);
        }
    }

    static final List<Limit> TABLE = List.of(
            // id, unit, possible, plausible
            limit("blood-flow", "L/min", 0, 12, 0, 7),
            limit("flow-index", "L/min/m²", 0, 8, 0, 4),
            limit("water-flow", "L/min", 0, 60, 0.5, 30),
            limit("sweep-gas-flow", "L/min", 0, 30, 0, 15),
            limit("exhaust-gas-flow", "L/min", 0, 30, 0, 15),
            limit("oxygen-fraction", "1", 0, 1, 0.2, 1),
            limit("exhaust-oxygen-fraction", "1", 0, 1, 0.1, 1),
            limit("sweep-co2-fraction", "1", 0, 1, 0, 0.1),
            limit("exhaust-co2-fraction", "1", 0, 0.5, 0.002, 0.15),
            limit("exhaust-pco2", "mmHg", 0, 200, 2, 100),
            limit("gas-temperature", "°C", -10, 60, 10, 42),
            limit("barometric-pressure", "mmHg", 350, 820, 560, 800),
            limit("gas-inlet-pressure", "mmHg", -20, 400, 0, 100),
            limit("haemoglobin", "g/dL", 3, 25, 6, 18),
            limit("haemoglobin-before", "g/dL", 3, 25, 6, 20),
            limit("haemoglobin-after", "g/dL", 3, 25, 6, 18),
            limit("haemoglobin-amount", "mmol/L", 1.8, 15.6, 3.7, 11.2),
            limit("haemoglobin-tetramer-amount", "mmol/L", 0.45, 3.9, 0.92, 2.8),
            limit("haematocrit", "%", 5, 75, 15, 55),
            limit("haematocrit-before", "%", 5, 75, 18, 60),
            limit("haematocrit-after", "%", 5, 75, 15, 55),
            limit("carboxyhaemoglobin-fraction", "1", 0, 0.6, 0, 0.06),
            limit("methaemoglobin-fraction", "1", 0, 0.6, 0, 0.04),
            limit("inlet-saturation", "1", 0, 1.02, 0.3, 1),
            limit("outlet-saturation", "1", 0, 1.02, 0.8, 1),
            limit("inlet-po2", "mmHg", 3, 760, 15, 120),
            limit("outlet-po2", "mmHg", 3, 760, 50, 650),
            limit("inlet-pco2", "mmHg", 3, 200, 15, 90),
            limit("outlet-pco2", "mmHg", 3, 200, 10, 80),
            limit("inlet-ph", "[pH]", 6.5, 8, 6.9, 7.8),
            limit("outlet-ph", "[pH]", 6.5, 8, 6.9, 7.8),
            limit("base-excess", "mmol/L", -40, 40, -15, 15),
            limit("temperature", "°C", 0, 45, 14, 41),
            limit("inlet-blood-temperature", "°C", 0, 45, 14, 41),
            limit("outlet-blood-temperature", "°C", 0, 45, 14, 41),
            limit("inlet-water-temperature", "°C", 0, 60, 3, 42),
            limit("outlet-water-temperature", "°C", 0, 60, 3, 42),
            limit("inlet-pressure", "mmHg", -300, 1000, 0, 500),
            limit("outlet-pressure", "mmHg", -300, 1000, -20, 450),
            limit("patient-height", "cm", 20, 230, 40, 210),
            limit("patient-weight", "kg", 0.3, 300, 1.5, 180),
            limit("patient-age", "a", 0, 120, 0, 100),
            limit("body-surface-area", "m²", 0.08, 3.5, 0.15, 2.6),
            limit("bypass-duration", "min", 0, 3000, 5, 900),
            limit("platelet-count-before", "10⁹/L", 1, 2500, 50, 800),
            limit("platelet-count-after", "10⁹/L", 1, 2500, 20, 600),
            limit("fibrinogen-before", "g/L", 0.1, 15, 0.8, 8),
            limit("fibrinogen-after", "g/L", 0.1, 15, 0.4, 6),
            limit("total-protein-before", "g/L", 5, 150, 30, 90),
            limit("total-protein-after", "g/L", 5, 150, 15, 90),
            limit("albumin-before", "g/L", 2, 80, 15, 60),
            limit("albumin-after", "g/L", 2, 80, 8, 60),
            limit("free-haemoglobin-start", "g/L", 0, 20, 0, 2),
            limit("free-haemoglobin-end", "g/L", 0, 20, 0, 5),
            limit("anaesthetic-concentration", "%", 0, 20, 0, 8),
            limit("bubble-bin-count-upstream", "{count}", 0, 1e9, 0, 1e7),
            limit("bubble-bin-count-downstream", "{count}", 0, 1e9, 0, 1e7),
            limit("bubble-count-upstream", "{count}", 0, 1e9, 0, 1e7),
            limit("bubble-count-downstream", "{count}", 0, 1e9, 0, 1e7),
            limit("bubble-volume-upstream", "µL", 0, 1e5, 0, 1e3),
            limit("bubble-volume-downstream", "µL", 0, 1e5, 0, 1e3));

    private InputLimits() {}

    private static Limit limit(String id, String unit, double least, double most, double usualLeast, double usualMost) {
        return new Limit(id, Unit.of(unit), new Bounds(least, most), new Bounds(usualLeast, usualMost));
    }
}
