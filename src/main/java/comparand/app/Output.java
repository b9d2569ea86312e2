package comparand.app;

import comparand.compose.page.Explorable;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.publication.Publication;
import comparand.flow.Outcome;
import comparand.write.html.HtmlWriter;
import comparand.write.rebuild.BuiltFrom;
import comparand.write.rebuild.ToolIdentity;
import comparand.write.whole.WholeFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes all outputs of a run into a folder that is swapped in whole: until the last byte is written, an earlier output
 * stays as it was.
 */
final class Output {

    static final String RESULTS = "results.json";
    static final String SCHEMA = "results.schema.json";
    /** The page, where it is among the outputs. */
    static final String PAGE = Explorable.NAME + "." + HtmlWriter.EXTENSION;

    /** Found once: the code of the program does not change while it runs. */
    private static final class Tool {
        private static final Optional<String> IDENTITY = ToolIdentity.of(Output.class);
    }

    private final Path folder;
    private final boolean anew;
    private final Optional<String> tool;

    /**
     * An output.
     *
     * @param folder where it is put; a link is followed
     * @param anew whether every file is written, be it as it was or not
     */
    Output(Path folder, boolean anew) {
        this(folder, anew, Tool.IDENTITY);
    }

    /** By a tool of another identity, which takes nothing over; by none, which cannot tell what it may take over. */
    Output(Path folder, boolean anew, Optional<String> tool) {
        this.folder = folder;
        this.anew = anew;
        this.tool = tool;
    }

    /** What was written; or the finding that it could not be, and what stands there then. */
    Outcome<Built> written(Publication publication) {
        try {
            var taken = WholeFolder.take(OutputPlace.led(folder), Checksums::isWhole);
            if (taken.isEmpty()) {
                return OutputPlace.busy(folder);
            }
            try (var place = taken.get()) {
                return written(publication, place);
            }
        } catch (IOException e) {
            return unwritable(e, "nothing was changed; an earlier output stands as it was");
        }
    }

    private Outcome<Built> written(Publication publication, WholeFolder place) {
        try {
            place.settle();
            // a run takes seconds: somebody may have written into the folder since it was looked at
            var standing = OutputPlace.standing(folder);
            return standing.isPresent()
                    ? Outcome.stopped(List.of(standing.get()))
                    : Outcome.of(replaced(publication, place));
        } catch (IOException e) {
            return unwritable(
                    e,
                    place.isHalfway()
                            ? "the earlier output lies whole in `%s`, and the next run that is given this place puts right what it can"
                                    .formatted(WholeFolder.work(OutputPlace.led(folder)))
                            : "nothing was changed; an earlier output stands as it was");
        }
    }

    private Built replaced(Publication publication, WholeFolder place) throws IOException {
        var led = OutputPlace.led(folder);
        var fresh = place.begin();
        var filling = new Filling(
                fresh, anew || tool.isEmpty() ? BuiltFrom.nothing(led) : BuiltFrom.before(led), tool.orElse(""));
        var files = OutputFiles.of(publication);
        var written = new ArrayList<Path>();
        filling.write(files).forEach(name -> written.add(folder.resolve(name)));
        var unchanged = files.size() - written.size();
        Checksums.write(fresh, filling.made());
        written.add(folder.resolve(Checksums.FILE));
        place.replace();
        if (tool.isPresent()) {
            keep(led, filling);
        }
        return new Built(folder, written, unchanged);
    }

    private static void keep(Path led, Filling filling) {
        try {
            BuiltFrom.keep(led, filling.made());
        } catch (IOException e) {
            // the outputs stand; the next run writes all of them anew, which is all that is lost
        }
    }

    private Outcome<Built> unwritable(IOException e, String stands) {
        return Outcome.stopped(List.of(Diagnostic.stop(
                "output-unwritable",
                Span.startOf(folder.toString()),
                "the outputs could not be written: " + Reason.of(e),
                stands,
                "check that the folder may be written and that the disk has room")));
    }
}
