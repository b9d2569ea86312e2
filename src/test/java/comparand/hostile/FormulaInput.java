package comparand.hostile;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.metric.Formula;
import comparand.unit.TradeSpelling;
import comparand.unit.Unit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A formula by itself: read, given a dimension, and worked out. */
final class FormulaInput implements FuzzedReader {

    private static final Map<String, Unit> UNITS = new TreeMap<>(
            Map.of("a", unit("L/min"), "b", unit("mL/dL"), "Hb", unit("g/dL"), "x_1", unit("%"), "pCO₂", unit("mmHg")));
    private static final List<String> SEEDS = List.of(
            "(a - b) / a",
            "1.34 * Hb * x_1 + 0.003 * pCO₂",
            "sqrt(a^2 + a^2)",
            "exp(-ln(a / a)) ^ -2",
            "min(a, a, 3 * a) / max(b, abs(-b))",
            "log10(pCO₂ / pCO₂) · 2 − 1 ÷ 4",
            "-a^2^3");

    private static Unit unit(String text) {
        return TradeSpelling.read(text).fold(u -> u, f -> {
            throw new IllegalStateException(f.problem());
        });
    }

    @Override
    public String name() {
        return "formula";
    }

    @Override
    public List<byte[]> seeds() {
        return SEEDS.stream().map(s -> s.getBytes(StandardCharsets.UTF_8)).toList();
    }

    @Override
    public List<String> words() {
        return Stream.concat(
                        UNITS.keySet().stream(),
                        Stream.of(
                                "sqrt(", "exp(", "ln(", "log10(", "min(", "max(", "abs(", "^", "(", ")", "1e300", "-",
                                "*"))
                .toList();
    }

    @Override
    public Read read(byte[] input) {
        var text = new String(input, StandardCharsets.UTF_8);
        return Formula.read(text, Set.copyOf(UNITS.keySet()))
                .fold(
                        formula -> {
                            formula.value(Map.of("a", 1e300, "b", -0.0, "Hb", 12.5, "x_1", 1e-300, "pCO₂", 40.0));
                            formula.dimension(UNITS);
                            return new Read(true, List.of());
                        },
                        fault -> {
                            if (fault.at() < 0 || fault.at() + fault.length() > Math.max(1, text.length() + 1)) {
                                throw new AssertionError("a fault outside of the formula");
                            }
                            return new Read(
                                    false,
                                    List.of(Diagnostic.stop(
                                            "formula-unreadable",
                                            Span.startOf(FILE),
                                            fault.problem(),
                                            "it is a formula",
                                            fault.fix())));
                        });
    }
}
