package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import comparand.support.PrintedFinding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** References in and out on the command line. */
class ReferencesCommandTest {

    private static final Path DEMO = Path.of("evidence");

    private static final String NEW = """
            TY  - JOUR
            AU  - Ode, Ann
            AU  - van der Marsh, Jörg
            PY  - 2025
            TI  - A new oxygenator on the bench: "quoted", 50 % and {braces}
            T2  - Invented Journal
            DO  - 10.5555/new.1
            KW  - one: two
            KW  - # three
            ER  -
            TY  - PAMP
            TI  - New pump: instructions for use
            AU  - Invented Maker,
            PY  - 2025
            DA  - 2025/03
            ET  - Rev. D
            ER  -
            TY  - PAMP
            TI  - Other pump: instructions for use
            AU  - Other Maker,
            PY  - 2024
            ER  -
            TY  - UNPB
            TI  - A new oxygenator on the bench
            AU  - Ode, Ann
            PY  - 2024
            ER  -
            """;

    @TempDir
    Path folder;

    private CommandLineUse.Run imported(Path library, List<Path> files, String... options) {
        return CommandLineUse.run(Stream.concat(
                        Stream.concat(
                                Stream.of("references", "import"),
                                files.stream().map(Path::toString)),
                        Stream.concat(Stream.of("--library", library.toString()), Stream.of(options)))
                .toArray(String[]::new));
    }

    private List<Path> demoFiles() throws IOException {
        try (var files = Files.list(DEMO.resolve("references"))) {
            return files.sorted().toList();
        }
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static int sources() throws IOException {
        try (var files = Files.list(DEMO.resolve("sources"))) {
            return (int) files.count();
        }
    }

    @Test
    void theFilesOfTheDemoProposeItsOwnSourcesAndNothingElse() throws IOException {
        var run = imported(DEMO, demoFiles());
        var lines = run.out().lines().toList();

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(lines).filteredOn(l -> l.startsWith("+ ")).isEmpty();
        assertThat(lines)
                .filteredOn(l -> l.startsWith("- "))
                .extracting(l -> l.replaceAll(".*it seems to be (\\S+) \\(([^,;)]*).*", "$1: $2"))
                .containsExactlyInAnyOrder(
                        "ardley-2023: the same DOI",
                        "ardley-2022-preprint: the same DOI",
                        "bonvale-2022: the same DOI",
                        "corran-2021: the same DOI",
                        "dunmore-2024: the same DOI",
                        "farrow-2019: the same DOI",
                        "elstree-2023: title");
        assertThat(run.out()).contains("10.5555/iacs.2019.0009; retracted, as its record says");
        assertThat(lines)
                .filteredOn(l -> l.startsWith("= "))
                .hasSize(2)
                .allMatch(l -> l.endsWith("the library says so already"))
                .anyMatch(l -> l.startsWith("= ardley-2022-preprint may report the same study as ardley-2023: "))
                .anyMatch(l -> l.startsWith("= elstree-2023 may report the same study as dunmore-2024: "));
        assertThat(run.out()).endsWith("Nothing was written." + System.lineSeparator());
    }

    @Test
    void pairsThatTheLibraryDoesNotNameAreFindingsWithTheLineToType() throws IOException {
        var library = LibraryCopy.of(DEMO, folder.resolve("library"));
        LibraryCopy.edit(library.resolve("sources/elstree-2023.yaml"), "same-study-as: dunmore-2024\n", "");
        LibraryCopy.edit(library.resolve("sources/ardley-2022-preprint.yaml"), ", by: ardley-2023", "");

        var found = PrintedFinding.in(
                CommandLineUse.run("references", "check", library.toString()).out());

        assertThat(found)
                .extracting(PrintedFinding::code, PrintedFinding::file)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple(
                                "same-study-proposed", "sources/ardley-2022-preprint.yaml"),
                        org.assertj.core.api.Assertions.tuple("same-study-proposed", "sources/elstree-2023.yaml"));
        assertThat(found.get(1).fix()).contains("`same-study-as: dunmore-2024` in sources/elstree-2023.yaml");
    }

    @Test
    void aRetractionThatTheRecordDoesNotSayStopsWithTheLineToType() throws IOException {
        var library = LibraryCopy.of(DEMO, folder.resolve("library"));
        LibraryCopy.edit(library.resolve("sources/farrow-2019.yaml"), "state: retracted", "state: current");
        var before = FolderContent.of(library);

        var run = imported(library, demoFiles(), "--write", "--also", "farrow-2019-b");

        assertThat(run.code()).isEqualTo(Exit.STOPPED);
        assertThat(PrintedFinding.in(run.err())).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("retraction-not-recorded");
            assertThat(f.file()).isEqualTo("sources/farrow-2019.yaml");
            assertThat(f.fix())
                    .contains(
                            "status: {state: retracted, checked: 2026-11-20, since: 2022-05, notice: \"Retraction in: ");
        });
        assertThat(FolderContent.of(library)).isEqualTo(before);
    }

    @Test
    void aNoticeAboutASourceIsNoSourceAndItsRecordIsToSayIt() throws IOException {
        var notice = file("notice.nbib", """
                PMID- 7
                TI  - Erratum.
                DP  - 2026 Nov
                PT  - Published Erratum
                EFR - Inv Arch. 2022;5:112-119. doi: 10.5555/iacs.2022.0112
                """);

        var run = imported(DEMO, List.of(notice), "--write");

        assertThat(run.out()).contains("it is a notice about bonvale-2022 (a correction)");
        assertThat(PrintedFinding.in(run.err())).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("notice-not-recorded");
            assertThat(f.file()).isEqualTo("sources/bonvale-2022.yaml");
            assertThat(f.fix()).contains("state: corrected, checked: 2026-11-20, since: 2026-11");
        });
    }

    @Test
    void whatIsNewIsSaidInASentenceAndWrittenOnlyWhenAsked() throws IOException {
        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        var before = FolderContent.of(library);
        var files = List.of(file("new.ris", NEW));

        var shown = imported(library, files);

        assertThat(shown.out())
                .contains("+ ode-2025 is Ode A, van der Marsh J. A new oxygenator on the bench:")
                .contains(
                        "taken as bench-paper, because the title says \"bench\"; status current, checked 2026-11-20; funding not reported")
                .contains("With --write, 4 sources would be added")
                .contains("= ode-2024 may report the same study as ode-2025: preprint and article");
        assertThat(FolderContent.of(library)).isEqualTo(before);

        var written = imported(library, files, "--write");

        assertThat(written.code()).isZero();
        assertThat(PrintedFinding.in(written.err()))
                .extracting(PrintedFinding::code)
                .containsExactlyInAnyOrder("revision-to-add", "same-study-proposed");
        assertThat(Files.readString(library.resolve("sources/invented-maker-2025.yaml")))
                .contains("document: {revision: D, date: 2025-03}");
        var check = CommandLineUse.run("check", library.toString());
        assertThat(PrintedFinding.in(check.out()))
                .extracting(PrintedFinding::code, PrintedFinding::file)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple("revision-missing", "sources/other-maker-2024.yaml"));
    }

    @Test
    void importingTwiceWritesNothingTheSecondTimeUnlessToldTo() throws IOException {
        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        var files = List.of(file("new.ris", NEW.substring(0, NEW.indexOf("TY  - PAMP"))));
        imported(library, files, "--write");
        var once = FolderContent.of(library);

        assertThat(imported(library, files, "--write").out()).contains("it seems to be ode-2025 (the same DOI");
        assertThat(FolderContent.of(library)).isEqualTo(once);
        assertThat(imported(library, files, "--write", "--also", "ode-2025-c").code())
                .isEqualTo(Exit.STOPPED);
        assertThat(imported(library, files, "--write", "--also", "ode-2025-b").out())
                .contains("wrote ");
        assertThat(Files.readString(library.resolve("sources/ode-2025-b.yaml"))).contains("source: ode-2025-b");
        assertThat(PrintedFinding.in(CommandLineUse.run("references", "check", library.toString())
                        .out()))
                .extracting(PrintedFinding::code)
                .containsExactly("source-twice-proposed");
    }

    @Test
    void aFolderWithoutRecordsIsALibraryToBe() throws IOException {
        var library = Files.createDirectory(folder.resolve("empty"));

        var run = imported(library, List.of(file("new.ris", NEW)), "--write");

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(library.resolve("sources/ode-2025.yaml")).exists();
    }

    @Test
    void filesThatCannotBeReadStopBeforeAnythingIsWritten() throws IOException {
        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        var before = FolderContent.of(library);

        var run = imported(
                library,
                List.of(file("new.ris", NEW), file("x.ris", "nothing"), folder.resolve("gone.ris"), folder),
                "--write");

        assertThat(run.code()).isEqualTo(Exit.STOPPED);
        assertThat(PrintedFinding.in(run.err()))
                .extracting(PrintedFinding::code)
                .contains("references-unknown-format", "references-unreadable");
        assertThat(run.err()).contains("Nothing was written.");
        assertThat(FolderContent.of(library)).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ris", "nbib", "bibtex", "csl-json"})
    void whatIsExportedIsKnownAgainAndSaysThatItIsInventedAndWithdrawn(String format) throws IOException {
        var out = folder.resolve("all." + format);
        var run = CommandLineUse.run("references", "export", "evidence", "--format", format, "--out", out.toString());
        assertThat(run.code()).as(run.err()).isZero();
        var printed = CommandLineUse.run("references", "export", "evidence", "--format", format);

        assertThat(out).hasContent(printed.out());
        assertThat(printed.out()).contains("Invented data").contains("Status: retracted (2022-05)");
        var again = imported(DEMO, List.of(out));
        assertThat(again.err()).isEmpty();
        assertThat(again.out().lines().filter(l -> l.startsWith("- "))).hasSize(sources());
        assertThat(again.out().lines().filter(l -> l.startsWith("+ "))).isEmpty();
        assertThat(CommandLineUse.run("references", "export", "evidence", "--format", format, "--out", out.toString())
                        .code())
                .isEqualTo(Exit.STOPPED);
    }
}
