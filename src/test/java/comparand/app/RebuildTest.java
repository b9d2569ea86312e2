package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.compose.Commission;
import comparand.document.publication.Publication;
import comparand.model.Audience;
import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is taken over from the build before, and what is not. */
class RebuildTest {

    private static final Optional<String> TOOL = Optional.of("the tool");

    @TempDir
    Path folder;

    private Path library = Path.of("");
    private Path out = Path.of("");

    @BeforeEach
    void anOutput() throws IOException {
        library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        out = folder.resolve("out");
    }

    private Publication publication() {
        return DossierFile.of(library.resolve("dossiers/example.yaml"), Optional.empty())
                .then(file -> Pipeline.published(
                        file,
                        library.resolve("templates"),
                        new Commission(Set.of(Audience.EVIDENCE, Audience.MANUSCRIPT), Optional.empty())))
                .fold((p, said) -> p, stops -> {
                    throw new AssertionError(stops);
                });
    }

    private Built built(Publication publication, boolean anew, Optional<String> tool) {
        return new Output(out, anew, tool).written(publication).fold((b, said) -> b, stops -> {
            throw new AssertionError(stops);
        });
    }

    @Test
    @DisplayName("of a library that did not change all files are taken over, unless every one is asked for")
    void unchanged() {
        var publication = publication();
        var first = built(publication, false, TOOL);
        var content = FolderContent.of(folder.resolve("out"));
        int files = first.written().size() - 1;

        assertThat(first.unchanged()).isZero();
        assertThat(built(publication(), false, TOOL).unchanged()).isEqualTo(files);
        assertThat(FolderContent.of(out)).isEqualTo(content);
        assertThat(built(publication, true, TOOL).unchanged()).isZero();
        assertThat(FolderContent.of(out)).isEqualTo(content);
    }

    @Test
    @DisplayName("of what another reader is given beside, only that is written")
    void anotherReader() throws IOException {
        var publication = publication();
        var files = built(publication, false, TOOL).written().size() - 1;
        var fewer =
                Publication.of(publication.results(), publication.documents().get(0));

        var built = built(fewer, false, TOOL);
        assertThat(built.written()).containsExactly(out.resolve("checksums.sha256"));
        assertThat(built.unchanged()).isEqualTo(3);
        assertThat(out.resolve("manuscript.docx")).doesNotExist();

        assertThat(built(publication, false, TOOL).unchanged()).isEqualTo(3).isLessThan(files);
    }

    @Test
    @DisplayName(
            "a change of one value is in every file that prints it or the fingerprint of the inputs; the schema is as it was")
    void value() throws IOException {
        built(publication(), false, TOOL);
        LibraryCopy.edit(library.resolve("sources/example-paper.yaml"), "64.1", "65.1");

        var built = built(publication(), false, TOOL);

        assertThat(built.unchanged()).isEqualTo(1);
        assertThat(built.written().stream().map(p -> out.relativize(p).toString()))
                .contains("results.json", "evidence-workbook.xlsx", "evidence-table.pdf", "manuscript.docx")
                .doesNotContain("results.schema.json");
    }

    @Test
    @DisplayName("another tool, or one that cannot be told, takes nothing over")
    void otherTool() {
        var publication = publication();
        built(publication, false, TOOL);

        assertThat(built(publication, false, Optional.of("another")).unchanged())
                .isZero();
        assertThat(built(publication, false, Optional.empty()).unchanged()).isZero();
    }

    @Test
    @DisplayName("where the list of the build before is gone, garbled or of another output, all is written")
    void list() throws IOException {
        var publication = publication();
        built(publication, false, TOOL);
        var list = folder.resolve(".out.built-from");
        var lines = Files.readString(list);
        var content = FolderContent.of(out);

        Files.delete(list);
        assertThat(built(publication, false, TOOL).unchanged()).isZero();
        Files.write(list, new byte[] {1, -1, 0, 10, 13});
        assertThat(built(publication, false, TOOL).unchanged()).isZero();
        // every line says of a file that it has the bytes of the next
        Files.writeString(list, lines.replaceAll(" [0-9a-f]{8}", " 00000000"));
        assertThat(built(publication, false, TOOL).unchanged()).isZero();
        assertThat(FolderContent.of(out)).isEqualTo(content);
        assertThat(Files.readString(list)).isEqualTo(lines);
    }

    @Test
    @DisplayName("a file that was changed is never taken over, also where nothing keeps its fingerprint")
    void changed() throws IOException {
        var publication = publication();
        var files = built(publication, false, TOOL).written().size() - 1;
        var content = FolderContent.of(out);
        Files.delete(out.resolve("checksums.sha256"));
        Files.writeString(out.resolve("manuscript.docx"), "changed", StandardOpenOption.APPEND);
        Files.delete(out.resolve("evidence-table.pdf"));

        assertThat(built(publication, false, TOOL).unchanged()).isEqualTo(files - 2);
        assertThat(FolderContent.of(out)).isEqualTo(content);
    }

    @Test
    @DisplayName("the command says how many files are unchanged, and writes all with --anew")
    void command() {
        String[] build = {
            "build", library.resolve("dossiers/example.yaml").toString(), "--for", "evidence", "--out", out.toString()
        };
        var first = CommandLineUse.run(build);
        var second = CommandLineUse.run(build);
        var again = CommandLineUse.run("build", build[1], "--for", "evidence", "--anew", "--out", out.toString());

        assertThat(second.out().lines())
                .containsExactly(
                        "wrote " + out.resolve("example/checksums.sha256"),
                        "unchanged in %s: 4 files".formatted(out.resolve("example")));
        assertThat(again.out()).isEqualTo(first.out()).doesNotContain("unchanged");
    }
}
