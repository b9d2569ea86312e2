package comparand.benchmark;

import comparand.check.Checker;
import comparand.diag.Diagnostic;
import comparand.flow.Outcome;
import comparand.model.Checked;
import comparand.model.LocalResults;
import comparand.read.LibraryReader;
import comparand.study.LocalStudies;
import java.io.IOException;
import java.nio.file.Files;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Seconds from raw rows to local results: 1,000,000 bench rows of 20 columns, and 10,000 cases of 8 samples. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(value = 1, jvmArgs = "-Xmx512m")
public class LocalStudiesBenchmark {

    /** The kind of study and its size. */
    @Param({"bench 1000000", "cases 10000"})
    public String study = "";

    private Checked checked = null;

    /** Writes the study and reads its library. */
    @Setup
    public void write() throws IOException {
        var words = study.split(" ", -1);
        var dossier = LargeStudy.write(
                Files.createTempDirectory("large-study"), words[0], Integer.parseInt(words[1]));
        checked = LibraryReader.read(dossier.getParent().getParent())
                .then(library -> Checker.check(library, library.dossiers().get("example")))
                .fold((value, findings) -> value, LocalStudiesBenchmark::stopped);
    }

    /** Every row to its metrics, members and groups. */
    @Benchmark
    public LocalResults results() {
        Outcome<LocalResults> outcome = LocalStudies.compute(checked);
        return outcome.fold((value, findings) -> value, LocalStudiesBenchmark::stopped);
    }

    private static <T> T stopped(java.util.List<Diagnostic> findings) {
        throw new IllegalStateException(findings.toString());
    }
}
