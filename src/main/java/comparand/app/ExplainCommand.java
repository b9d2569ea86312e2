package comparand.app;

import comparand.manual.Manual;
import java.io.IOException;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand explain CODE}: what a finding means. */
@Command(
        name = "explain",
        description = {
            "Prints what a finding means: what it checks, why it matters, what to do, and an example.",
            "",
            "The code is the word behind STOP, HOLD or NOTE. The example is run while it is printed."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class ExplainCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "CODE", description = "The name of a finding, such as unit-missing")
    private String code;

    @Override
    public Integer call() throws IOException {
        var wanted = code.toLowerCase(Locale.ROOT);
        var text = ManualCommand.manual(main.commands()).explain(wanted);
        if (text.isPresent()) {
            main.console().say(text.get());
            return Exit.DONE;
        }
        main.console()
                .complain("There is no finding `%s`%s"
                        .formatted(
                                code,
                                Manual.nearest(wanted)
                                        .map(n -> ": did you mean `" + n + "`?")
                                        .orElse("; `comparand manual` writes a list of all.")));
        return Exit.USAGE;
    }
}
