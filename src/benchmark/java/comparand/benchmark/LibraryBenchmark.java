package comparand.benchmark;

import comparand.check.Checker;
import comparand.diag.Diagnostic;
import comparand.flow.Outcome;
import comparand.model.Library;
import comparand.read.LibraryReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Seconds to read 20,000 values in 2,000 sources from the disk, and to look at them by every rule. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 5)
@Fork(value = 1, jvmArgs = "-Xmx512m")
public class LibraryBenchmark {

    private Path folder = Path.of(".");
    private Library library = null;

    /** Writes the library and reads it once. */
    @Setup(Level.Trial)
    public void write() throws IOException {
        folder = LargeLibrary.write(Files.createTempDirectory("large-library"), LargeLibrary.Size.OF_A_DEPARTMENT)
                .getParent()
                .getParent();
        library = read();
    }

    /** Every file to its record. */
    @Benchmark
    public Library read() {
        return done(LibraryReader.read(folder));
    }

    /** Every rule. */
    @Benchmark
    public List<Diagnostic> check() {
        return Checker.check(library, LocalDate.of(2026, 11, 26)).findings();
    }

    private static <T> T done(Outcome<T> outcome) {
        return outcome.fold((value, findings) -> value, findings -> {
            throw new IllegalStateException(findings.toString());
        });
    }
}
