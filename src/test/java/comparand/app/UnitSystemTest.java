package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.LibraryCopy;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same measurements written in other units, and mapped so, give the same results. The factors are exact by definition:
 * 133.322 Pa a conventional millimetre of mercury (UCUM), and powers of ten.
 */
class UnitSystemTest {

    private static final Path DEMO = Path.of("evidence");
    private static final String STUDY = "studies/three-hospitals/";
    private static final BigDecimal MMHG_IN_KPA = new BigDecimal("0.133322");

    @TempDir
    Path folder;

    /** A column in another unit: how the mapping says it before and after, and the factor. */
    private record Other(String heading, String before, String after, BigDecimal factor) {}

    @Test
    void casesInOtherUnitsGiveTheSameResults() throws IOException {
        same(
                "norrisgate-cases.csv",
                List.of(
                        new Other("weight_kg", "unit: kg", "unit: g", new BigDecimal(1000)),
                        new Other("flow_at_pressure_lpm", "unit: L/min", "unit: mL/min", new BigDecimal(1000)),
                        new Other("max_flow_lpm", "unit: L/min", "unit: mL/min", new BigDecimal(1000)),
                        new Other("p_in_mmhg", "unit: mmHg", "unit: kPa", MMHG_IN_KPA),
                        new Other("p_out_mmhg", "unit: mmHg", "unit: kPa", MMHG_IN_KPA),
                        new Other("free_hb_end_mgdl", "unit: mg/dL", "unit: g/L", new BigDecimal("0.01"))));
    }

    @Test
    void samplesInOtherUnitsGiveTheSameResults() throws IOException {
        same(
                "norrisgate-samples.csv",
                List.of(
                        new Other("flow_lpm", "unit: L/min", "unit: mL/min", new BigDecimal(1000)),
                        new Other("fio2_pct", "unit: \"%\"", "unit: \"1\"", new BigDecimal("0.01")),
                        new Other("hb_gdl", "unit: g/dL", "unit: g/L", BigDecimal.TEN),
                        new Other("pao2_mmhg", "unit: mmHg", "unit: kPa", MMHG_IN_KPA),
                        new Other("pvo2_mmhg", "unit: mmHg", "unit: kPa", MMHG_IN_KPA),
                        new Other("sao2_pct", "unit: \"%\"", "unit: \"1\"", new BigDecimal("0.01")),
                        new Other("svo2_pct", "unit: \"%\"", "unit: \"1\"", new BigDecimal("0.01")),
                        new Other("pb_mmhg", "unit: mmHg", "unit: hPa", MMHG_IN_KPA.multiply(BigDecimal.TEN))));
    }

    private void same(String file, List<Other> others) throws IOException {
        var copy = LibraryCopy.of(DEMO, folder.resolve("other-units"));
        rewrite(copy.resolve(STUDY + file), others);
        var mapping = copy.resolve(STUDY + "study.yaml");
        var text = Files.readString(mapping);
        for (var other : others) {
            int at = text.indexOf("      " + other.heading + ": {");
            int end = text.indexOf('\n', at);
            var line = text.substring(at, end);
            assertThat(line).contains(other.before);
            text = text.substring(0, at) + line.replace(other.before, other.after) + text.substring(end);
        }
        Files.writeString(mapping, text);

        var as = centres(DEMO);
        var was = centres(copy);
        assertThat(was.keySet()).isEqualTo(as.keySet());
        // converting is exact; what is left is how doubles add up
        as.forEach((id, centre) -> assertThat(Math.abs(was.getOrDefault(id, Double.NaN) - centre))
                .as(id)
                .isLessThanOrEqualTo(1e-12 * Math.abs(centre)));
    }

    private static Map<String, Double> centres(Path library) {
        var local = LocalEvidence.of(library.resolve("dossiers/small-oxygenators.yaml"));
        var centres = new LinkedHashMap<String, Double>();
        local.forEach(c -> c.summary().centre().ifPresent(v -> centres.put(c.id(), v)));
        assertThat(centres).hasSizeGreaterThan(30);
        return centres;
    }

    private static void rewrite(Path file, List<Other> others) throws IOException {
        var lines = Files.readAllLines(file);
        var headings = List.of(lines.get(0).split(",", -1));
        var written = new ArrayList<String>();
        written.add(lines.get(0));
        for (var line : lines.subList(1, lines.size())) {
            var cells = new ArrayList<>(List.of(line.split(",", -1)));
            for (var other : others) {
                int column = headings.indexOf(other.heading);
                if (cells.get(column).matches("[0-9.]+")) {
                    cells.set(
                            column,
                            new BigDecimal(cells.get(column))
                                    .multiply(other.factor)
                                    .toPlainString());
                }
            }
            written.add(String.join(",", cells));
        }
        Files.write(file, written);
    }
}
