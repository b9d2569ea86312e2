package comparand.app;

import comparand.diag.Suggest;
import comparand.metric.Catalogue;
import comparand.read.LibraryFolder;
import comparand.read.LibraryReader;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand catalogue [METRIC]}: what metrics mean. */
@Command(
        name = "catalogue",
        description =
                "Lists the metrics and conditions, or prints one metric: definition, formula, sources, conditions, worked values.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class CatalogueCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "METRIC", arity = "0..1", description = "A metric, such as pressure-drop")
    private @Nullable String metric;

    @Option(names = "--library", paramLabel = "LIBRARY", description = "Also the metrics that this library declares")
    private @Nullable Path library;

    @Override
    public Integer call() {
        if (library == null) {
            return print(Catalogue.shipped());
        }
        var root = library;
        return LibraryReader.read(root).fold((l, findings) -> print(l.catalogue()), findings -> {
            main.console().findings(findings, new LibraryFolder(root));
            return Exit.STOPPED;
        });
    }

    private int print(Catalogue catalogue) {
        if (metric == null) {
            main.console().say(CatalogueText.list(catalogue));
            return Exit.DONE;
        }
        var found = catalogue.find(metric);
        if (found.isEmpty()) {
            main.console()
                    .complain("There is no metric `%s`: %s"
                            .formatted(metric, Suggest.instruction(metric, catalogue.ids())));
            return Exit.USAGE;
        }
        main.console().say(CatalogueText.metric(found.get()));
        return Exit.DONE;
    }
}
