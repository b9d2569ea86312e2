package comparand.hostile;

import comparand.app.CommandLineUse;
import comparand.model.library.DeviceRecord;
import comparand.model.library.DossierRecord;
import comparand.model.library.MetricRecord;
import comparand.model.library.ScreeningRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.StudyRecord;
import comparand.model.template.CommitteeTemplate;
import comparand.model.template.ManuscriptTemplate;
import comparand.model.template.PageTemplate;
import comparand.model.template.TalkTemplate;
import comparand.reference.format.ReferenceFormat;
import comparand.support.FilledForms;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Every reader of the tool. */
final class FuzzedReaders {

    private static final String ANSWERS = """
            AB
            new-source-2024
            journal
            A title of a paper
            Doe, Jane
            Journal
            2024
            none-found
            pressure-drop
            example-device
            12.5 mmHg
            mean-sd
            p. 3
            4 L/min
            back
            ?
            37 °C
            """;

    /** A change reaches more of a small input than of a large one, and sooner. */
    private static final int SMALLEST = 5;

    private final Path folder;

    /** Readers whose inputs are files, if they must be, of a folder. */
    FuzzedReaders(Path folder) {
        this.folder = folder;
    }

    List<FuzzedReader> all() throws IOException {
        var readers = new ArrayList<FuzzedReader>();
        readers.add(record("source", SourceRecord.class, "sources"));
        readers.add(record("device", DeviceRecord.class, "devices"));
        readers.add(record("metric", MetricRecord.class, "metrics"));
        readers.add(record("screening", ScreeningRecord.class, "screening"));
        readers.add(record("dossier", DossierRecord.class, "dossiers"));
        readers.add(record("study", StudyRecord.class, "studies"));
        readers.add(template("talk", TalkTemplate.class));
        readers.add(template("committee", CommitteeTemplate.class));
        readers.add(template("manuscript", ManuscriptTemplate.class));
        readers.add(template("page", PageTemplate.class));
        readers.add(new FormulaInput());
        for (var format : ReferenceFormat.values()) {
            readers.add(ReferenceInput.of(format));
        }
        readers.add(text("csv", heads(Seeds.files(".csv", "evidence/studies", "templates/blank")), Openings::csv));
        readers.add(text("answers", List.of(ANSWERS.getBytes(StandardCharsets.UTF_8)), Openings::answers));
        readers.add(text("results", List.of(results()), Openings::results));
        readers.add(new WorkbookInput("workbook", smallBooks(), folder.resolve("workbook.xlsx"), Openings::workbook));
        readers.add(new WorkbookInput("form", List.of(form()), folder.resolve("form.xlsx"), Openings::form));
        for (var file : List.of(
                "sources/example-paper.yaml",
                "studies/example-bench/study.yaml",
                "studies/example-bench/runs.csv",
                "metrics/example-metric.yaml",
                "dossiers/example.yaml")) {
            readers.add(library(file));
        }
        return readers;
    }

    private static FuzzedReader record(String kind, Class<? extends Record> type, String under) {
        var seeds = Stream.of("templates/blank/", "evidence/", "src/test/resources/library-haemofilter/")
                .map(f -> f + under)
                .filter(f -> Files.isDirectory(Path.of(f)))
                .flatMap(f -> Seeds.files(".yaml", f).stream())
                .sorted(Comparator.comparingInt(f -> f.length))
                .limit(SMALLEST)
                .toList();
        return RecordInput.of(kind, type, seeds);
    }

    private static FuzzedReader template(String name, Class<? extends Record> type) {
        return RecordInput.of(name, type, List.of(Seeds.bytes(Path.of("templates", name + ".yaml"))));
    }

    private FuzzedReader text(String name, List<byte[]> seeds, FileInput.Opening opening) {
        return new FileInput(name, seeds, Seeds.words(seeds), true, folder.resolve(FuzzedReader.FILE), opening);
    }

    /** The first lines of each, which hold all that there is to vary. */
    private static List<byte[]> heads(List<byte[]> files) {
        return files.stream()
                .map(f -> {
                    var text = new String(f, StandardCharsets.UTF_8);
                    int end = text.indexOf('\n', Math.min(text.length() - 1, 700)) + 1;
                    return (end > 0 ? text.substring(0, end) : text).getBytes(StandardCharsets.UTF_8);
                })
                .toList();
    }

    private byte[] results() throws IOException {
        var out = folder.resolve("results");
        run("build", "templates/blank/dossiers/example.yaml", "--for", "evidence", "--out", out.toString());
        try (var files = Files.walk(out)) {
            return Seeds.bytes(
                    files.filter(f -> f.endsWith("results.json")).findFirst().orElseThrow());
        }
    }

    private byte[] form() throws IOException {
        var form = folder.resolve("whole.xlsx");
        run("intake", "make", "templates/blank", "--source", "example-paper", "--out", form.toString());
        FilledForms.fill(form, book -> FilledForms.start(book, "AB", "2026-11-20"));
        return Files.readAllBytes(form);
    }

    private static List<byte[]> smallBooks() throws IOException {
        return SmallBooks.all();
    }

    private FuzzedReader library(String file) throws IOException {
        var copy = LibraryCopy.of(
                Path.of("templates/blank"),
                folder.resolve("library-" + file.replace('/', '-').replace('.', '-')));
        var seeds = List.of(Seeds.bytes(copy.resolve(file)));
        var words = Seeds.words(Seeds.files("", "templates/blank"));
        var name = "library-" + file.substring(file.lastIndexOf('/') + 1).replaceAll("\\..*", "");
        return new LibraryInput(name, seeds, words, copy, file);
    }

    private static void run(String... command) {
        var run = CommandLineUse.run(command);
        if (run.code() != 0) {
            throw new IllegalStateException(run.err());
        }
    }
}
