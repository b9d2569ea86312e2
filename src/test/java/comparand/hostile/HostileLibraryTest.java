package comparand.hostile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import comparand.app.CommandLineUse;
import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Libraries made to reach beyond themselves, or to keep the tool busy for ever: refused in words, and nothing else is touched. */
class HostileLibraryTest {

    private static final Path BLANK = Path.of("templates/blank");
    private static final String DEVICE = "devices/example-device.yaml";
    private static final String PAPER = "sources/example-paper.yaml";
    private static final String STUDY = "studies/example-bench/study.yaml";
    private static final String METRIC = "metrics/example-metric.yaml";

    @TempDir
    Path folder;

    private interface Change {
        void to(Path library) throws IOException;
    }

    private static Change edit(String file, String old, String by) {
        return library -> LibraryCopy.edit(library.resolve(file), old, by);
    }

    private static Map<String, Change> refused() {
        var all = new LinkedHashMap<String, Change>();
        for (var id : new String[] {"../../x", "a/b", "'C:\\x'", "CON", "\"a\\nb\"", "..", "\"con.\"", "\"a b\""}) {
            all.put(
                    "a device called " + id + " -> id-not-file-name",
                    edit(DEVICE, "device: example-device", "device: " + id));
        }
        all.put(
                "a name with a NUL -> text-sign-unprintable",
                edit(DEVICE, "device: example-device", "device: \"a\\0b\""));
        all.put("a dossier called as Windows calls a device -> id-not-plain", library -> {
            LibraryCopy.edit(library.resolve("dossiers/example.yaml"), "dossier: example", "dossier: nul");
            Files.move(library.resolve("dossiers/example.yaml"), library.resolve("dossiers/nul.yaml"));
        });
        all.put(
                "a name of thousands of parts -> id-not-file-name",
                edit(DEVICE, "device: example-device", "device: a" + "-a".repeat(9000)));
        for (var file :
                new String[] {"../../../x.csv", "/etc/passwd", "sub/runs.csv", "'C:\\x.csv'", "'..'", ".hidden.csv"}) {
            all.put("raw data in " + file + " -> file-outside", edit(STUDY, "file: runs.csv", "file: " + file));
        }
        all.put(
                "raw data under half a sign -> text-sign-unprintable",
                edit(STUDY, "file: runs.csv", "file: \"\\uD800.csv\""));
        all.put(
                "raw data with a line end in the name -> file-outside",
                edit(STUDY, "file: runs.csv", "file: \"a\\nb.csv\""));
        for (var sign : new String[] {"\\x01", "\\x1f", "\\x7f", "\\x9f", "\\uFFFE", "\\uFFFF", "\\uDC00", "\\e"}) {
            all.put(
                    "a title with the sign " + sign + " -> text-sign-unprintable",
                    edit(PAPER, "\"An invented bench", "\"" + sign + "An invented bench"));
        }
        for (var sign : new String[] {"\u202a", "\u202e", "\u2066", "\u2069"}) {
            all.put(
                    "a quote that shows another number than it holds, U+%04X -> text-turned"
                            .formatted((int) sign.charAt(0)),
                    edit(PAPER, "| 64.1 (SD", "| " + sign + "64.1 (SD"));
        }
        all.put(
                "a text of twenty thousand signs and one -> yaml-text-too-long",
                edit(PAPER, "Invented Journal", "x".repeat(20_001)));
        all.put("aliases of aliases of aliases -> yaml-anchor", library -> {
            var bomb = new StringBuilder("a0: &a0 lol\n");
            for (int i = 1; i < 10; i++) {
                bomb.append("a%d: &a%d [%s]\n".formatted(i, i, ("*a" + (i - 1) + ",").repeat(10)));
            }
            Files.writeString(library.resolve(PAPER), bomb);
        });
        all.put("keys without number -> findings-too-many", library -> {
            var keys = new StringBuilder(Files.readString(library.resolve(PAPER)));
            for (int i = 0; i < 100_000; i++) {
                keys.append("k").append(i).append(": 1\n");
            }
            Files.writeString(library.resolve(PAPER), keys);
        });
        all.put(
                "entries without number -> yaml-too-many",
                library -> Files.writeString(library.resolve(PAPER), "source: [" + "1,".repeat(2_000_001) + "]\n"));
        all.put(
                "a record of twenty megabytes and more -> file-too-large",
                library -> Files.writeString(library.resolve(PAPER), "# x\n".repeat(5_000_001)));
        all.put(
                "a record that is a pipe and never ends -> file-unreadable",
                library -> pipe(library.resolve("sources/pipe.yaml")));
        all.put("raw data that are a pipe -> file-missing", library -> {
            Files.delete(library.resolve("studies/example-bench/runs.csv"));
            pipe(library.resolve("studies/example-bench/runs.csv"));
        });
        all.put(
                "a link to itself -> file-unreadable",
                library -> Files.createSymbolicLink(library.resolve("sources/loop.yaml"), Path.of("loop.yaml")));
        all.put(
                "a folder that is a link to the folder above -> study-missing",
                library -> Files.createSymbolicLink(library.resolve("studies/loop"), Path.of("..")));
        all.put("a metric with more inputs than any formula -> inputs-too-many", library -> {
            var many = new StringBuilder("inputs:\n");
            for (int i = 0; i < 20_000; i++) {
                many.append("  - {input: i%d, symbol: s%d, means: x, unit: s}\n".formatted(i, i));
            }
            LibraryCopy.edit(library.resolve(METRIC), "inputs:\n", many.toString());
        });
        for (var formula : new String[] {
            "(".repeat(31) + "t_last - t_start" + ")".repeat(31),
            "t_last - t_start" + " + t_last - t_last".repeat(40),
            "t_last - t_start + " + "-".repeat(40) + "t_last",
            "t_last - t_start" + "^2".repeat(40),
            "t_last - t_start + while(1)",
            "t_last - t_start; x"
        }) {
            all.put(
                    "the formula " + formula.substring(0, Math.min(30, formula.length())) + " -> formula-unreadable",
                    edit(METRIC, "formula: t_last - t_start", "formula: \"" + formula + "\""));
        }
        all.put(
                "an exponent beyond any use -> formula-dimension",
                edit(METRIC, "formula: t_last - t_start", "formula: (t_last - t_start)^999999999"));
        all.put("a quote in raw data that never ends -> data-unreadable", library -> {
            var rows = library.resolve("studies/example-bench/runs.csv");
            Files.writeString(rows, Files.readString(rows) + "E-01,\"" + "x,".repeat(3_000_000));
        });
        all.put("headings without end -> data-unreadable", library -> {
            var rows = library.resolve("studies/example-bench/runs.csv");
            Files.writeString(rows, "x,".repeat(100_000) + "\n");
        });
        return all;
    }

    private static void pipe(Path path) throws IOException {
        try {
            assertThat(new ProcessBuilder("mkfifo", path.toString()).start().waitFor())
                    .isZero();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    @TestFactory
    @DisplayName("what reaches beyond a library, or is beyond measure, is refused at its place")
    Stream<DynamicTest> refusals() {
        return refused().entrySet().stream()
                .map(e -> dynamicTest(e.getKey(), () -> {
                    var place = Files.createTempDirectory(folder, "case");
                    var library = LibraryCopy.of(
                            BLANK, place.resolve("a").resolve("b").resolve("library"));
                    e.getValue().to(library);
                    var code = e.getKey().substring(e.getKey().lastIndexOf(" -> ") + 4);

                    var run = CommandLineUse.run("check", library.toString());

                    assertThat(run.code()).as(cut(run.out() + run.err())).isEqualTo(2);
                    assertThat(run.out())
                            .contains("STOP " + code)
                            .doesNotContain("fault of the tool")
                            .hasSizeLessThan(3_000_000);
                    assertThat(run.out()
                                    .codePoints()
                                    .filter(c ->
                                            (Character.isISOControl(c) && c != '\n') || (c >= 0x202A && c <= 0x202E)))
                            .isEmpty();
                    try (var beside = Files.list(place)) {
                        assertThat(beside).containsExactly(place.resolve("a"));
                    }
                }));
    }

    private static String cut(String text) {
        return text.substring(0, Math.min(2000, text.length()));
    }

    @Test
    @DisplayName("metrics that are computed from one another find no end in each other")
    void circles() throws IOException {
        var library = LibraryCopy.of(BLANK, folder.resolve("library"));
        for (var pair : Map.of("first-metric", "second-metric", "second-metric", "first-metric")
                .entrySet()) {
            var text = Files.readString(library.resolve(METRIC))
                            .replace("metric: example-metric", "metric: " + pair.getKey())
                            .replaceAll("(?s)inputs:.*", "")
                    + "inputs:\n  - {input: %s, symbol: t_o, means: the other, unit: min}\nformula: t_o + 0 * t_o\nworked:\n  - {from: {%s: 1 min}, result: 1 min}\n"
                            .formatted(pair.getValue(), pair.getValue());
            Files.writeString(library.resolve("metrics/" + pair.getKey() + ".yaml"), text);
        }
        LibraryCopy.edit(library.resolve(STUDY), "gives: [pressure-drop]", "gives: [pressure-drop, first-metric]");
        var before = FolderContent.of(library);

        var check = CommandLineUse.run("check", library.toString());
        var plan = CommandLineUse.run(
                "plan", library.resolve("dossiers/example.yaml").toString());

        assertThat(check.code()).as(check.out()).isIn(0, 2);
        assertThat(plan.code()).as(plan.err()).isIn(0, 2);
        assertThat(FolderContent.of(library)).isEqualTo(before);
    }

    @Test
    @DisplayName("a template may name no file elsewhere, by path or by link")
    void templates() throws IOException {
        var templates = LibraryCopy.of(Path.of("templates"), folder.resolve("templates"));
        var secret = Files.writeString(folder.resolve("secret.pptx"), "secret");
        Files.createSymbolicLink(templates.resolve("house.pptx"), secret);
        for (var name : new String[] {"../secret.pptx", "/etc/passwd", "house.pptx"}) {
            var copy = LibraryCopy.of(
                    Path.of("templates"), Files.createTempDirectory(folder, "t").resolve("templates"));
            Files.createSymbolicLink(copy.resolve("house.pptx"), secret);
            Files.writeString(
                    copy.resolve("talk.yaml"),
                    Files.readString(copy.resolve("talk.yaml")) + "\nslides: " + name + "\n");

            var run = CommandLineUse.run(
                    "build",
                    BLANK.resolve("dossiers/example.yaml").toString(),
                    "--for",
                    "talk",
                    "--templates",
                    copy.toString(),
                    "--out",
                    folder.resolve("out").toString());

            assertThat(run.code()).as(run.err()).isEqualTo(2);
            assertThat(run.err()).contains("template-file-elsewhere");
        }
    }
}
