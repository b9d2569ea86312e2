package comparand.app;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/** Runs the command line in memory, for tests. */
public final class CommandLineUse {

    /** The day on which tests run. */
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

    private CommandLineUse() {}

    /** What a command gave back. */
    public record Run(int code, String out, String err) {}

    /** What the program does before it runs a command, once for this Java. */
    public static void offline() {
        Offline.begin();
    }

    public static Run run(String... args) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        int code = Main.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                TODAY);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
