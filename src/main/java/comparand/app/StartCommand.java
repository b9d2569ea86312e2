package comparand.app;

import comparand.model.UnreadableRows;
import comparand.read.yaml.RecordSchema;
import comparand.write.whole.WholeFiles;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand start DIR}: a new library with commented records that build as they are. */
@Command(
        name = "start",
        description = {
            "Writes a new library: one commented record of each kind, a JSON Schema of each for your editor, and the",
            "templates of what reports contain.",
            "The records hold an invented example and build as they are; replace them by your own.",
            "",
            "With --from, raw CSV and XLSX files are looked at, copied into a study of the library, which may be there"
                    + " already, and a mapping of their columns is proposed. Every assumption stands in it as a comment;"
                    + " what only you can decide stops every run until you have."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class StartCommand implements Callable<Integer> {

    private static final String TEMPLATES = "/comparand/templates/";
    private static final String BLANK = "blank/";

    /** The files of a new library; each lies under the same name among the templates. */
    static final List<String> FILES = List.of(
            "devices/example-device.yaml",
            "devices/present-device.yaml",
            "sources/example-ifu.yaml",
            "sources/present-ifu.yaml",
            "sources/example-paper.yaml",
            "metrics/example-metric.yaml",
            "studies/example-bench/study.yaml",
            "studies/example-bench/runs.csv",
            "screening/example.yaml",
            "dossiers/example.yaml");

    /** What the reports of a new library contain, to be changed there. */
    static final List<String> REPORTS = List.of("talk.yaml", "committee.yaml", "manuscript.yaml", "page.yaml");

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "DIR", description = "A folder that is not there yet, or is empty")
    private Path folder;

    @Option(
            names = "--from",
            paramLabel = "FILE",
            arity = "1..*",
            description = "Raw data files, .csv, .tsv, .txt or .xlsx")
    private List<Path> from = List.of();

    @Option(
            names = "--study",
            paramLabel = "NAME",
            description = "Name of the new study (default: that of the first file)")
    private Optional<String> study = Optional.empty();

    @Override
    public Integer call() throws IOException {
        return from.isEmpty() ? library() : study();
    }

    private int study() throws IOException {
        var fresh = new StudyFromFiles(folder, study, from);
        boolean isNew = !Files.exists(folder) || !isTaken(folder);
        var obstacle =
                isNew || Files.isDirectory(folder.resolve("studies")) || Files.isDirectory(folder.resolve("devices"))
                        ? fresh.obstacle()
                        : Optional.of("`%s` is there and is no library.".formatted(folder));
        if (obstacle.isPresent()) {
            main.console().complain(obstacle.get());
            return Exit.STOPPED;
        }
        try {
            var proposal = fresh.proposal();
            var files = new ArrayList<>(isNew ? example() : List.of());
            files.addAll(fresh.changes(proposal));
            WholeFiles.write(folder, files);
            main.hasWritten();
        } catch (UnreadableRows e) {
            main.console()
                    .complain("%s: %s. To mend it: %s.".formatted(e.place().file(), e.problem(), e.fix()));
            return Exit.STOPPED;
        } catch (IOException e) {
            main.console().complain("The study could not be written: " + Unwritten.because(e, folder));
            return Exit.STOPPED;
        }
        main.console().say("wrote a proposed mapping to " + fresh.folder().resolve("study.yaml"));
        main.console().say("every assumption in it is a comment; settle what stands under `undecided:`");
        main.console().say("next: comparand check " + folder);
        return Exit.DONE;
    }

    private int library() throws IOException {
        if (isTaken(folder)) {
            main.console()
                    .complain("`%s` is %s; a new library wants a folder of its own."
                            .formatted(folder, Files.isDirectory(folder) ? "not empty" : "a file"));
            return Exit.STOPPED;
        }
        try {
            WholeFiles.write(folder, example());
            main.hasWritten();
        } catch (IOException e) {
            main.console().complain("The library could not be written: " + Unwritten.because(e, folder));
            return Exit.STOPPED;
        }
        main.console().say("wrote a new library to " + folder);
        main.console().say("next: comparand check " + folder);
        main.console().say("then: comparand build " + folder.resolve("dossiers").resolve("example.yaml"));
        return Exit.DONE;
    }

    /** The files of a new library. */
    private static List<WholeFiles.Change> example() throws IOException {
        var files = new ArrayList<WholeFiles.Change>();
        for (var file : FILES) {
            files.add(fresh(file, template(BLANK + file)));
        }
        for (var report : REPORTS) {
            files.add(fresh("templates/" + report, template(report)));
        }
        RecordSchema.all()
                .forEach((name, text) -> files.add(fresh("schemas/" + name, text.getBytes(StandardCharsets.UTF_8))));
        return files;
    }

    private static WholeFiles.Change fresh(String path, byte[] content) {
        return new WholeFiles.Change(path, Optional.empty(), WholeFiles.Content.of(content));
    }

    private static boolean isTaken(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return false;
        }
        if (!Files.isDirectory(folder)) {
            return true;
        }
        try (var entries = Files.list(folder)) {
            return entries.findAny().isPresent();
        }
    }

    private static byte[] template(String file) throws IOException {
        try (InputStream in = StartCommand.class.getResourceAsStream(TEMPLATES + file)) {
            if (in == null) {
                throw new IllegalStateException("the template " + file + " is missing from the program");
            }
            return in.readAllBytes();
        }
    }
}
