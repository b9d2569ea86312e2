package comparand.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import comparand.app.CommandLineUse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Texts made to become markup, scripts, links or formulas stay texts in every file for every reader. */
class HostileTextsTest {

    private static final Path BLANK = Path.of("templates/blank");
    private static final String BEFORE = "=HYPERLINK(\"javascript:alert(1)\") ";
    private static final String SCRIPT = "<script>alert(1)</script>";
    private static final String BEHIND = SCRIPT + "\"'&]]>-->{{7*7}}${x}%s\\";

    /** Texts that are names, words of a list, numbers or places in files: what is no such name is a finding. */
    private static final Set<String> NAMES = Set.of(
            "aspect",
            "at",
            "by",
            "codes",
            "collection-title",
            "column",
            "condition",
            "confused-with",
            "container-title-short",
            "currency",
            "definition",
            "device",
            "devices",
            "dossier",
            "duplicate-of",
            "encoding",
            "file",
            "formula",
            "formula-follows",
            "from",
            "funding",
            "gives",
            "grouped-by",
            "id",
            "independent",
            "input",
            "instructions",
            "interpolates-over",
            "is",
            "isbn",
            "issn",
            "key",
            "kind",
            "language",
            "leave-out",
            "limits",
            "metric",
            "missing",
            "part",
            "parts",
            "pdf-page",
            "pmcid",
            "pmid",
            "doi",
            "present-device",
            "primary",
            "quoted-from",
            "same",
            "same-study-as",
            "screening",
            "sha256",
            "sheet",
            "source",
            "sources",
            "studies",
            "study",
            "symbol",
            "text",
            "tolerance",
            "undecided",
            "unit",
            "url",
            "usual",
            "variant",
            "within");

    /** Further fields of references and methods, which go the ways of those that are tried. */
    private static final Set<String> LIKE_OTHERS = Set.of(
            "authors",
            "data-availability",
            "dropping-particle",
            "edition",
            "ethics",
            "interests",
            "issue",
            "kept",
            "number",
            "panel",
            "particle",
            "publisher-place",
            "registration",
            "section",
            "suffix");

    @TempDir
    static Path folder;

    @Test
    @DisplayName("of every text in a record it is known whether its words are free")
    void fields() {
        var known = new TreeSet<>(HostileTexts.FREE);
        known.addAll(NAMES);
        known.addAll(LIKE_OTHERS);
        var keys = new TreeSet<String>();
        new ClassFileImporter()
                .importPackages("comparand.model.library").stream()
                        .map(c -> c.reflect())
                        .filter(Class::isRecord)
                        .flatMap(c -> Arrays.stream(c.getRecordComponents()))
                        .filter(r -> r.getGenericType().toString().contains("java.lang.String"))
                        .forEach(r -> keys.add(
                                r.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT)));

        assertThat(keys).hasSizeGreaterThan(100);
        assertThat(known).containsAll(keys);
    }

    @Test
    @DisplayName("no text of a record and no cell of raw data does anything in what is written")
    void written() throws IOException {
        var texts = new HostileTexts(HostileTexts.FREE, BEFORE, BEHIND);
        var library = texts.library(BLANK, folder.resolve("library"));
        assertThat(texts.count()).isGreaterThan(50);
        var rows = library.resolve("studies/example-bench/runs.csv");
        Files.writeString(
                rows,
                Files.readString(rows)
                        .replaceAll("(?m)^(?!unit)([^,\n]+),", "$1\u0001\u000b<b>\u202e\ufffe\ud83d\ude00=1+1,"));
        var out = folder.resolve("out");

        var run = CommandLineUse.run(
                "build",
                library.resolve("dossiers/example.yaml").toString(),
                "--for",
                "evidence,committee,supplier,manuscript,page",
                "--out",
                out.toString());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat((run.out() + run.err())
                        .codePoints()
                        .filter(c -> c == 0x202E || (Character.isISOControl(c) && c != '\n')))
                .isEmpty();
        var files = new HarmlessFiles(SCRIPT);
        try (var all = Files.walk(out)) {
            for (var file : all.filter(Files::isRegularFile).sorted().toList()) {
                files.look(file);
            }
        }
    }

    @Test
    @DisplayName("nor in the talk, where there is room for little")
    void talk() throws IOException {
        var library = new HostileTexts(
                        Set.of("title", "question", "asks", "name", "short-name", "maker"), "", "<s>\"'&")
                .library(BLANK, folder.resolve("talk"));
        var out = folder.resolve("talk-out");

        var run = CommandLineUse.run(
                "build", library.resolve("dossiers/example.yaml").toString(), "--for", "talk", "--out", out.toString());

        assertThat(run.code()).as(run.err()).isZero();
        var files = new HarmlessFiles("<s>");
        try (var all = Files.walk(out)) {
            for (var file : all.filter(Files::isRegularFile).sorted().toList()) {
                files.look(file);
            }
        }
    }

    @Test
    @DisplayName("the form for published values, and its records, take such texts for texts too")
    void form() throws IOException {
        var library = new HostileTexts(HostileTexts.FREE, BEFORE, BEHIND).library(BLANK, folder.resolve("form"));
        var form = folder.resolve("form.xlsx");

        var run = CommandLineUse.run(
                "intake", "make", library.toString(), "--source", "example-paper", "--out", form.toString());

        assertThat(run.code()).as(run.err()).isZero();
        new HarmlessFiles("<s>").look(form);
    }
}
