package comparand.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.diag.Diagnostic;
import comparand.model.library.SourceRecord;
import comparand.read.yaml.Binder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The bounds that keep hostile records out let honest ones in, with room to spare. */
class HonestSizesTest {

    private static final int VALUES = 20_000;

    @Test
    @DisplayName("one source with twenty thousand values is read")
    void values() throws IOException {
        var text = Files.readString(Path.of("templates/blank/sources/example-paper.yaml"));
        int from = text.indexOf("  - id: X1");
        var value = text.substring(from).stripTrailing();
        var all = new StringBuilder(text.substring(0, from));
        for (int i = 1; i <= VALUES; i++) {
            all.append(value.replace("id: X1", "id: X" + i)).append('\n');
        }
        var findings = new ArrayList<Diagnostic>();

        var source = Binder.read(
                "sources/example-paper.yaml",
                all.toString().getBytes(StandardCharsets.UTF_8),
                SourceRecord.class,
                findings);

        assertThat(findings).isEmpty();
        assertThat(source.orElseThrow().values()).hasSize(VALUES);
    }

    @Test
    @DisplayName("a quote of three pages is read")
    void text() throws IOException {
        var text = Files.readString(Path.of("templates/blank/sources/example-paper.yaml"))
                .replace("Invented Journal", "Invented Journal " + "of inventions ".repeat(1000));
        var findings = new ArrayList<Diagnostic>();

        assertThat(Binder.read("x.yaml", text.getBytes(StandardCharsets.UTF_8), SourceRecord.class, findings))
                .isPresent();
        assertThat(findings).isEmpty();
    }
}
