package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** For whom outputs are written, and in which language. */
class BuildForReadersTest {

    @TempDir
    Path folder;

    private String dossier = "";
    private Path out = Path.of("");

    @BeforeEach
    void aLibrary() throws IOException {
        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        dossier = library.resolve("dossiers/example.yaml").toString();
        out = folder.resolve("out");
    }

    @Test
    void onlyWhatTheReadersAreGivenIsWritten() throws IOException {
        var run = CommandLineUse.run("build", dossier, "--out", out.toString(), "--for", "talk,committee");

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(names())
                .containsExactly(
                        "checksums.sha256", "committee-brief.pdf", "results.json", "results.schema.json", "talk.pptx");
    }

    @Test
    void aReaderNobodyWritesForIsWrongUsage() {
        var run = CommandLineUse.run("build", dossier, "--out", out.toString(), "--for", "everybody");

        assertThat(run.code()).isEqualTo(64);
        assertThat(run.err())
                .contains("`everybody` is no reader", "evidence, committee, supplier, talk, manuscript, page, all");
    }

    @Test
    void aLanguageWithoutWordsIsFoundBeforeAnythingIsWritten() {
        var run = CommandLineUse.run("build", dossier, "--out", out.toString(), "--language", "xx");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("language-unknown", "there are no words for the language `xx`");
        assertThat(out).doesNotExist();
    }

    private List<String> names() throws IOException {
        try (var files = Files.list(out.resolve("example"))) {
            return files.map(f -> f.toFile().getName()).sorted().toList();
        }
    }
}
