package comparand.app;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code comparand references}: references of published works, in and out. */
@Command(
        name = "references",
        description = {
            "Takes references from files that databases and reference managers write (RIS, PubMed nbib, BibTeX, CSL-JSON), gives",
            "those of a library in the same formats, and looks for works and studies that stand in a library twice.",
            "Nothing is looked up anywhere: what a DOI leads to is not checked, its form is."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {ReferencesImportCommand.class, ReferencesExportCommand.class, ReferencesCheckCommand.class})
final class ReferencesCommand implements Runnable {

    @ParentCommand
    private Main main;

    @Spec
    private CommandSpec spec;

    Main main() {
        return main;
    }

    @Override
    public void run() {
        main.console().say(spec.commandLine().getUsageMessage());
    }
}
