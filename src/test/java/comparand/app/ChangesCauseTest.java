package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every kind of change in a small library, and the cause that the ledger names for it; and files that are no results. */
class ChangesCauseTest {

    @TempDir
    Path folder;

    private Path library;
    private Path before;

    @BeforeEach
    void first() throws IOException {
        library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        before = built("before");
    }

    private Path built(String name) {
        var out = folder.resolve(name);
        var run = CommandLineUse.run(
                "build", library.resolve("dossiers/example.yaml") + "", "--for", "evidence", "--out", out + "");
        assertThat(run.code()).as(run.err()).isZero();
        return out.resolve("example");
    }

    private String after(String file, String old, String by) throws IOException {
        LibraryCopy.edit(library.resolve(file), old, by);
        return ledger(built("after"));
    }

    private String ledger(Path after) {
        var run = CommandLineUse.run("changes", before + "", after + "");
        assertThat(run.code()).as(run.err()).isZero();
        return run.out();
    }

    @Test
    @DisplayName("another margin: the rule before and after, its reason, and the answers of its metric by that cause")
    void margin() throws IOException {
        var said = after("dossiers/example.yaml", "margin: 15 mmHg", "margin: 1 mmHg");

        assertThat(said)
                .contains("rule: Margin on pressure drop", "15 mmHg → 1 mmHg", "Cause: 1: Margin on pressure drop");
        assertThat(said).doesNotContain("No rule changed", "No change that is recorded");
    }

    @Test
    @DisplayName("a source that another dossier leaves out is set aside, and its answer is gone by that cause")
    void aside() throws IOException {
        var said = after(
                "dossiers/example.yaml",
                "questions:",
                "leave-out: [{what: X1, reason: asked by a reviewer}]\nquestions:");

        assertThat(said)
                .contains("set aside: Example Device, pressure drop (X1, example-paper)", "gone: ", "X1 is set aside");
    }

    @Test
    @DisplayName("a value corrected in its record: before, after, reason, and another answer by that cause alone")
    void corrected() throws IOException {
        LibraryCopy.edit(library.resolve("sources/example-paper.yaml"), "64.1", "84.1");
        var said = after(
                "sources/example-paper.yaml",
                "agrees: yes}]\n",
                "agrees: yes}]\n    was: {value: 64.1 mmHg, reason: misread row, until: 2026-10-01}\n");

        assertThat(said)
                .contains(
                        "64.1 (3.8) mmHg, 6 units → 84.1 (3.8) mmHg, 6 units",
                        "Misread row",
                        "Cause: 1: X1 was corrected");
    }

    @Test
    @DisplayName("cells of a raw file that were corrected: the file is the cause where no case came or went")
    void cells() throws IOException {
        var said = after("studies/example-bench/runs.csv", "E-2,E,4.0,259,194", "E-2,E,4.0,239,194");

        assertThat(said)
                .contains(
                        "local data: studies/example-bench/runs.csv", "other cells in studies/example-bench/runs.csv");
        assertThat(said).doesNotContain("No change that is recorded");
    }

    @Test
    @DisplayName("another label: the limits before and after, and the answers of its device by that cause")
    void label() throws IOException {
        var said = after("devices/example-device.yaml", "range: 0.5 to 5 L/min", "range: 0.5 to 2 L/min");

        assertThat(said)
                .contains("rule: Label of Example Device", "another one: ", "Cause: 1: Label of Example Device");
        assertThat(said).doesNotContain("No change that is recorded");
    }

    @Test
    @DisplayName("what no recorded change explains is said so")
    void unexplained() throws IOException {
        var later = Files.createDirectories(folder.resolve("later")).resolve("results.json");
        var json = Files.readString(before.resolve("results.json"));
        Files.writeString(later, json.replaceFirst("\"standing\" : \"same\"", "\"standing\" : \"not-reported\""));

        assertThat(ledger(later)).contains("another one: ", "No change that is recorded explains it");
    }

    @Test
    @DisplayName("another version of the tool is a change, and the cause of what nothing else explains")
    void tool() throws IOException {
        var later = Files.createDirectories(folder.resolve("later")).resolve("results.json");
        var json = Files.readString(before.resolve("results.json"));
        Files.writeString(
                later,
                json.replaceAll("Comparand [0-9][^\"]*", "Comparand 9.9").replace("\"not-settled\"", "\"lower\""));

        assertThat(ledger(later)).contains("tool: Version of the tool", "→ Comparand 9.9");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    {"format": "comparand-results-2"} | results-version
                    {"format": "something-else-1"}    | results-other
                    {"format": "comparand-results-1"} | results-incomplete
                    {"format": 1}                     | results-other
                    [1, 2]                            | results-other
                    {"format": "comparand-res         | results-unreadable
                    %PDF-1.7                          | results-unreadable
                    """)
    @DisplayName("what is no results of this format is a finding with its place, never a stack trace")
    void mangled(String content, String code) throws IOException {
        var file = folder.resolve("mangled.json");
        Files.writeString(file, content);
        var run = CommandLineUse.run("changes", file + "", before + "");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("STOP " + code).doesNotContain("fault of the tool");
        assertThat(run.out()).isEmpty();
    }

    @Test
    @DisplayName("results that lose a key are not read as if it had changed; the finding names the key")
    void lost() throws IOException {
        var json = Files.readString(before.resolve("results.json"));
        var file = folder.resolve("lost.json");
        Files.writeString(file, json.replaceFirst("\"standing\"", "\"stand\""));
        var run = CommandLineUse.run("changes", file + "", before + "");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("results-incomplete", "`pairs[0].standing` is missing");
    }

    @Test
    @DisplayName("keys that a later tool adds to the same format are left alone")
    void added() throws IOException {
        var json = Files.readString(before.resolve("results.json"));
        var later = Files.createDirectories(folder.resolve("later")).resolve("results.json");
        Files.writeString(later, json.replaceFirst("\"run\" : \\{", "\"run\" : {\n    \"mood\" : \"good\","));

        assertThat(ledger(later)).contains("No rule changed");
    }

    @Test
    @DisplayName("wrong use is told apart from files that cannot be read")
    void use() {
        assertThat(CommandLineUse.run("changes", before + "").code()).isEqualTo(64);
        assertThat(CommandLineUse.run("changes", before + "", before + "", "--out", folder.resolve("x.doc") + "")
                        .code())
                .isEqualTo(64);
        var nowhere = CommandLineUse.run("changes", folder.resolve("none") + "", folder.resolve("neither") + "");
        assertThat(nowhere.code()).isEqualTo(2);
        assertThat(nowhere.err().split("STOP results-missing", -1)).hasSize(3);
        var language = CommandLineUse.run("changes", before + "", before + "", "--language", "xx");
        assertThat(language.code()).isEqualTo(2);
        assertThat(language.err()).contains("language-unknown");
    }
}
