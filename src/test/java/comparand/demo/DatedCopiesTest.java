package comparand.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The dated copies differ from the library in nothing but what each month knew: a copy is not forgotten when a record changes. */
class DatedCopiesTest {

    private static final Path LIBRARY = Path.of("evidence");
    private static final String LOOKED_UP = "checked: 2026-09-30";

    @Test
    @DisplayName("October: what was not known on 9 October, and the day the sources were looked up; nothing else")
    void october() throws IOException {
        var only = differences("2026-10");

        assertThat(only.get("sources/ardley-2023.yaml"))
                .hasSize(9)
                .anyMatch(l -> l.contains("59.1 (SD 3.1) mmHg"))
                .allMatch(l -> l.contains("59.1")
                        || l.contains("state: current")
                        || l.contains(LOOKED_UP)
                        || l.contains("read:"));
        assertThat(only.get("sources/farrow-2019.yaml"))
                .containsExactlyInAnyOrder("  state: current", "  " + LOOKED_UP);
        assertThat(only.get("dossiers/small-oxygenators.yaml")).containsExactly("as-of: 2026-10-09");
        // the searches of that day found the same records, and nobody had seen that one was retracted
        assertThat(only.get("screening/small-oxygenators.yaml"))
                .contains("  - {id: R06, source: farrow-2019, from: index, became: included, by: AB and CD}")
                .allMatch(l -> l.contains("on: 2026-09-30") || l.contains("id: R06"));
        only.keySet()
                .removeAll(List.of(
                        "sources/ardley-2023.yaml",
                        "sources/farrow-2019.yaml",
                        "dossiers/small-oxygenators.yaml",
                        "screening/small-oxygenators.yaml"));
        assertThat(only)
                .hasSize(12)
                .allSatisfy(
                        (file, lines) -> assertThat(lines).as(file).hasSize(1).allMatch(l -> l.contains(LOOKED_UP)));
    }

    @Test
    @DisplayName("November: the maker's letter on B05, the four cases, and the day of the report; nothing else")
    void november() throws IOException {
        var only = differences("2026-11");

        assertThat(only.keySet())
                .containsExactly(
                        "dossiers/small-oxygenators.yaml",
                        "sources/quillane-ifu-c.yaml",
                        "studies/three-hospitals/study.yaml");
        assertThat(only.get("dossiers/small-oxygenators.yaml")).containsExactly("as-of: 2026-11-24");
        assertThat(only.get("studies/three-hospitals/study.yaml")).containsExactly("period: March to November 2026");
        assertThat(only.get("sources/quillane-ifu-c.yaml"))
                .hasSize(7)
                .contains("    spread: {kind: sd, of: 5 mmHg}", "    n: 10 units", "      on: 2026-11-23");
    }

    /** Lines of each record that its library has not. */
    private static Map<String, List<String>> differences(String month) throws IOException {
        var folder = LIBRARY.resolve("dated").resolve(month);
        var only = new TreeMap<String, List<String>>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (var file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
                var name = folder.relativize(file).toString();
                var lines = new ArrayList<>(Files.readAllLines(file));
                lines.removeAll(Files.readAllLines(LIBRARY.resolve(name)));
                only.put(name, lines);
            }
        }
        return only;
    }
}
