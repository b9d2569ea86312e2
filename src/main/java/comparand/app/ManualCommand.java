package comparand.app;

import comparand.manual.Manual;
import comparand.manual.example.Bench;
import comparand.read.yaml.RecordSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** {@code comparand manual}: the manual as a folder of pages. */
@Command(
        name = "manual",
        description = {
            "Writes the manual: a folder of pages for a browser, to be read offline.",
            "",
            "Every metric, condition, unit, record, command and finding has its place in it. Examples are run while it is",
            "written, so that it says what this version does."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class ManualCommand implements Callable<Integer> {

    private static final String FIRST = "index.html";

    /** By this file a folder is known to be a manual, which may be replaced whole. */
    private static final String MARK = "style/manual.css";

    @ParentCommand
    private Main main;

    @Option(names = "--out", paramLabel = "DIR", description = "The folder (default: manual)", defaultValue = "manual")
    private Path out;

    @Override
    public Integer call() {
        if (Files.exists(out) && !Files.isRegularFile(out.resolve(MARK))) {
            main.console()
                    .complain("`%s` is there already and holds something else; choose another folder with `--out DIR`."
                            .formatted(out));
            return Exit.STOPPED;
        }
        try {
            if (Files.exists(out)) {
                Bench.delete(out);
            }
            int pages = manual(main.commands()).write(out);
            main.hasWritten();
            main.console().say("wrote %d pages; the first is %s".formatted(pages, out.resolve(FIRST)));
            return Exit.DONE;
        } catch (IOException e) {
            main.console().complain("The manual could not be written: " + Reason.of(e) + ".");
            return Exit.STOPPED;
        }
    }

    /** The manual of this tool, whose examples are run by it. */
    static Manual manual(CommandSpec commands) {
        return new Manual(Version.tool(), RecordSchema.all(), CommandTexts.below(commands), InMemory::run);
    }
}
