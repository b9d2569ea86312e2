package comparand.app;

import comparand.manual.example.Tool;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Runs the whole tool in memory, for the examples of the manual. */
final class InMemory {

    /** The day of the examples, so that the manual says the same on every day: that of the records they are made of. */
    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

    private InMemory() {}

    static Tool.Run run(Path folder, List<String> arguments, String typed) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        int code = Main.run(
                arguments.toArray(String[]::new),
                new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                DAY,
                folder);
        return new Tool.Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
