package comparand.hostile;

import comparand.app.CommandLineUse;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One file of the blank library, with all that the tool does with it: it is checked, and compared as far as it can be.
 *
 * @param library a copy, in which the file is replaced
 */
record LibraryInput(String name, List<byte[]> seeds, List<String> words, Path library, String file)
        implements FuzzedReader {

    @Override
    public boolean isText() {
        return false;
    }

    @Override
    public Read read(byte[] input) throws IOException {
        Files.write(library.resolve(file), input);
        var findings = new ArrayList<Diagnostic>();
        boolean whole = ran(findings, "check", library.toString(), "--findings", "json");
        ran(findings, "plan", library.resolve("dossiers/example.yaml").toString());
        return new Read(whole, findings);
    }

    private static boolean ran(List<Diagnostic> findings, String... command) {
        var run = CommandLineUse.run(command);
        if (run.code() != 0 && run.code() != 2) {
            throw new AssertionError("exit code " + run.code() + " of " + command[0] + ": "
                    + run.err().lines().findFirst().orElse(""));
        }
        for (var line : (run.out() + run.err()).lines().limit(40).toList()) {
            if (line.contains("\"code\"") || line.startsWith("STOP") || line.startsWith("HOLD")) {
                findings.add(Diagnostic.stop(
                        "said", Span.startOf("library"), "says " + line.strip(), "it was said", "mend"));
            }
        }
        if (run.code() == 2 && findings.isEmpty()) {
            findings.add(Diagnostic.stop("said", Span.startOf("library"), "stopped", "it was said", "mend"));
        }
        return run.code() == 0;
    }
}
