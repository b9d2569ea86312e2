package comparand.hostile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What once went wrong stays mended; and a short run of the search finds nothing new. */
class CorpusTest {

    /** Seconds, where the search for the report takes many minutes. */
    private static final long INPUTS = 6_000;

    /** Another than that of the report. */
    private static final long SEED = 20_261_120;

    @TempDir
    static Path folder;

    private static Map<String, FuzzedReader> readers;

    @BeforeAll
    static void readers() throws IOException {
        readers = new FuzzedReaders(folder)
                .all().stream().collect(Collectors.toMap(FuzzedReader::name, Function.identity()));
    }

    @Test
    @DisplayName("every input of the corpus is listed with what was wrong, once, and every listed one is there")
    void listed() throws IOException {
        assertThat(Corpus.listed().stream().map(Corpus.Listed::path))
                .doesNotHaveDuplicates()
                .containsExactlyInAnyOrderElementsOf(Corpus.inputs());
    }

    @TestFactory
    Stream<DynamicTest> whatWentWrongStaysMended() throws IOException {
        return Corpus.listed().stream()
                .map(k -> dynamicTest(k.reader() + ": " + k.input(), () -> {
                    var reader = readers.get(k.reader());
                    assertThat(reader).as("a reader " + k.reader()).isNotNull();
                    assertThat(Oracle.judge(reader, Files.readAllBytes(k.path()))
                                    .fault())
                            .as(k.wrong())
                            .isEmpty();
                }));
    }

    @TestFactory
    Stream<DynamicTest> aShortSearchFindsNothing() {
        return readers.values().stream()
                .sorted((a, b) -> a.name().compareTo(b.name()))
                .map(r -> dynamicTest(r.name(), () -> {
                    var run = new Fuzzing(r, SEED).run(Math.max(3, Share.of(r, INPUTS)));
                    assertThat(run.failures()).isEmpty();
                    assertThat(run.inputs()).isPositive();
                }));
    }

    @Test
    @DisplayName("the oracle sees an exception, a place that is not there, silence, and two answers to one input")
    void oracle() {
        assertThat(judged(input -> {
                    throw new IllegalStateException("x");
                }))
                .contains("IllegalStateException");
        assertThat(judged(input -> new Read(false, List.of()))).contains("neither a value");
        assertThat(judged(input -> new Read(
                        false, List.of(Diagnostic.stop("a", new Span(FuzzedReader.FILE, 9, 1, 1), "m", "w", "f")))))
                .contains("where there is nothing");
        var times = new int[1];
        assertThat(judged(input -> new Read(
                        true,
                        times[0]++ == 0
                                ? List.of()
                                : List.of(Diagnostic.note("a", Span.startOf(FuzzedReader.FILE), "m", "w", "f")))))
                .contains("two different answers");
        assertThat(judged(input -> {
                    assertThat(new byte[200 << 20]).isNotNull();
                    return new Read(true, List.of());
                }))
                .contains("MB for 3 bytes");
    }

    private static String judged(Function<byte[], Read> read) {
        var reader = new FileInput(
                "none", List.of(), List.of(), true, folder.resolve(FuzzedReader.FILE), path -> read.apply(new byte[0]));
        return Oracle.judge(reader, "abc".getBytes(StandardCharsets.UTF_8))
                .fault()
                .orElse("");
    }
}
