package comparand.manual.example;

import java.nio.file.Path;
import java.util.List;

/** The command line, as a function: it runs in a folder and gives back what it printed. */
@FunctionalInterface
public interface Tool {

    /**
     * Runs one command.
     *
     * @param folder what relative paths are taken from
     * @param typed what is typed while it runs
     */
    Run run(Path folder, List<String> arguments, String typed);

    /**
     * What a command gave back.
     *
     * @param code the exit code
     * @param out what it printed as its result
     * @param err findings and complaints
     */
    record Run(int code, String out, String err) {}
}
