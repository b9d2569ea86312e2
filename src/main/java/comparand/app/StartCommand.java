package comparand.app;

import comparand.read.yaml.RecordSchema;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand start DIR}: a new library with commented records that build as they are. */
@Command(
        name = "start",
        description = {
            "Writes a new library: one commented record of each kind, and a JSON Schema of each for your editor.",
            "The records hold an invented example and build as they are; replace them by your own."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class StartCommand implements Callable<Integer> {

    private static final String TEMPLATES = "/comparand/templates/blank/";

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
            "dossiers/example.yaml");

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "DIR", description = "A folder that is not there yet, or is empty")
    private Path folder;

    @Override
    public Integer call() throws IOException {
        if (isTaken(folder)) {
            main.console()
                    .complain("`%s` is %s; a new library wants a folder of its own."
                            .formatted(folder, Files.isDirectory(folder) ? "not empty" : "a file"));
            return Exit.STOPPED;
        }
        try {
            writeAll();
        } catch (IOException e) {
            main.console().complain("The library could not be written: " + Output.reason(e) + ".");
            return Exit.STOPPED;
        }
        main.console().say("wrote a new library to " + folder);
        main.console().say("next: comparand check " + folder);
        main.console().say("then: comparand build " + folder.resolve("dossiers").resolve("example.yaml"));
        return Exit.DONE;
    }

    private void writeAll() throws IOException {
        for (var file : FILES) {
            write(folder.resolve(file), template(file));
        }
        for (var schema : RecordSchema.all().entrySet()) {
            write(
                    folder.resolve("schemas").resolve(schema.getKey()),
                    schema.getValue().getBytes(StandardCharsets.UTF_8));
        }
        main.hasWritten();
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

    private static void write(Path file, byte[] content) throws IOException {
        var parent = file.getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
        Files.write(file, content);
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
