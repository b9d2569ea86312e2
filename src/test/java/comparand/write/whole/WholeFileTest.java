package comparand.write.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed while it writes leaves the old record whole, or the new one. */
final class WholeFileTest {

    private static final int KILLS = 12;
    private static final int LINES = 40_000;

    @TempDir
    Path folder;

    /** Writes one file over and over, each time with other lines, until it is killed. */
    static final class WriteForever {
        private WriteForever() {}

        public static void main(String[] args) throws IOException {
            for (int turn = 0; ; turn++) {
                WholeFile.write(Path.of(args[0]), ("value: " + turn % 10 + "\n").repeat(LINES));
            }
        }
    }

    @Test
    void aKillAtAnyMomentLeavesAWholeFile() throws IOException, InterruptedException {
        var record = folder.resolve("record.yaml");
        var before = "value: old\n".repeat(LINES);
        Files.writeString(record, before);
        var random = new Random(5);
        int changed = 0;
        for (int i = 0; i < KILLS; i++) {
            var writer = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            WriteForever.class.getName(),
                            record.toString())
                    .start();
            // the first moments belong to the start of the machine; then it writes without a pause
            TimeUnit.MILLISECONDS.sleep(250 + random.nextInt(400));
            writer.destroyForcibly().waitFor();

            var text = Files.readString(record);
            var first = text.substring(0, text.indexOf('\n') + 1);
            assertThat(text).isEqualTo(first.repeat(LINES));
            changed += text.equals(before) ? 0 : 1;
        }
        assertThat(changed).as("kills after something was written").isPositive();
    }

    @Test
    void nothingIsLeftBeside() throws IOException {
        var record = folder.resolve("deep/record.yaml");
        WholeFile.write(record, "a: 1\n");
        WholeFile.write(record, "a: 2\n");
        assertThat(record).hasContent("a: 2");
        try (var files = Files.list(folder.resolve("deep"))) {
            assertThat(files).containsExactly(record);
        }
    }
}
