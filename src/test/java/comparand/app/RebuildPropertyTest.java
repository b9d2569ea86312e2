package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** Whatever is changed between two builds, the second gives the bytes that a build into a new folder gives. */
class RebuildPropertyTest {

    /** What an author may do between two builds. */
    enum Kind {
        VALUE,
        CONDITION,
        MARGIN,
        WORDING,
        DAY,
        ROW_ADDED,
        ROW_DELETED,
        SOURCE_ADDED,
        SOURCE_DELETED,
        LANGUAGE,
        READERS,
        NOTHING
    }

    /** One change, by a small number. */
    record Change(Kind kind, int number) {}

    @Provide
    Arbitrary<List<Change>> changes() {
        return Combinators.combine(
                        Arbitraries.of(Kind.class), Arbitraries.integers().between(1, 4))
                .as(Change::new)
                .list()
                .ofMinSize(3)
                .ofMaxSize(6);
    }

    /** A library in which things are changed, and what is asked of the build. */
    private static final class Author {
        private final Path library;
        private String language = "en";
        private String readers = "evidence";

        Author(Path library) {
            this.library = library;
        }

        void make(Change change) throws IOException {
            var paper = library.resolve("sources/example-paper.yaml");
            var dossier = library.resolve("dossiers/example.yaml");
            var runs = library.resolve("studies/example-bench/runs.csv");
            var twin = library.resolve("sources/example-twin.yaml");
            int n = change.number();
            switch (change.kind()) {
                case VALUE -> replace(paper, "\\d\\d\\.1( \\(SD 3\\.8\\))? mmHg", "6%d.1$1 mmHg".formatted(n));
                case CONDITION -> replace(paper, "blood-flow: \\d L/min", "blood-flow: %d L/min".formatted(n));
                case MARGIN -> replace(dossier, "margin: 1\\d mmHg", "margin: 1%d mmHg".formatted(n));
                case WORDING -> replace(dossier, "title: .*", "title: The title in its form " + n);
                case DAY -> replace(dossier, "as-of: 2026-11-2\\d", "as-of: 2026-11-2" + n);
                case ROW_ADDED ->
                    Files.writeString(runs, "E-9%d,E,4.0,26%d,199,121,\n".formatted(n, n), StandardOpenOption.APPEND);
                case ROW_DELETED -> replace(runs, "E-9\\d.*\n", "");
                case SOURCE_ADDED -> {
                    Files.copy(paper, twin, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
                    replace(twin, "source: example-paper", "source: example-twin");
                    replace(twin, "id: X1", "id: X9");
                    replace(twin, "2024\\.1", "2024.9");
                    replace(twin, "An invented bench", "Another invented bench");
                }
                case SOURCE_DELETED -> Files.deleteIfExists(twin);
                case LANGUAGE -> language = n % 2 == 0 ? "en" : "de";
                case READERS -> readers = n % 2 == 0 ? "evidence" : "evidence,manuscript";
                case NOTHING -> {}
            }
        }

        private static void replace(Path file, String pattern, String by) throws IOException {
            Files.writeString(file, Files.readString(file).replaceAll(pattern, by));
        }

        CommandLineUse.Run build(Path out) {
            return CommandLineUse.run(
                    "build",
                    library.resolve("dossiers/example.yaml").toString(),
                    "--for",
                    readers,
                    "--language",
                    language,
                    "--out",
                    out.toString());
        }
    }

    @Property(tries = 4, shrinking = ShrinkingMode.OFF)
    void aRebuildIsABuild(@ForAll("changes") List<Change> changes) throws IOException {
        var folder = Files.createTempDirectory("comparand-rebuild");
        var author = new Author(LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library")));
        var kept = folder.resolve("kept");
        assertThat(author.build(kept).code()).isZero();
        var done = new ArrayList<Change>();
        for (var change : changes) {
            done.add(change);
            author.make(change);
            var before = FolderContent.of(kept.resolve("example"));

            var rebuilt = author.build(kept);

            var fresh = folder.resolve("fresh-" + done.size());
            var clean = author.build(fresh);
            assertThat(rebuilt.code()).as("%s: %s", done, clean.err()).isEqualTo(clean.code());
            assertThat(FolderContent.of(kept.resolve("example")))
                    .as(done.toString())
                    .isEqualTo(clean.code() == Exit.DONE ? FolderContent.of(fresh.resolve("example")) : before);
        }
    }
}
