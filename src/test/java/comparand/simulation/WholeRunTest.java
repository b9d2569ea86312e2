package comparand.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.simulation.Judged.Kind;
import comparand.simulation.Reading.Why;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A slice of the simulated libraries through the whole tool, and the report that is kept. */
class WholeRunTest {

    private static final List<Judged> PAIRS = Judge.libraries(WholeRunReport.SLICE);

    @TempDir
    Path folder;

    @Test
    void everyPublishedValueIsReadByBoth() {
        var published = PAIRS.stream().filter(p -> p.is(Kind.PUBLISHED)).toList();

        assertThat(published).hasSizeGreaterThanOrEqualTo(6 * WholeRunReport.SLICE);
        assertThat(published).allMatch(p -> p.naive().isPresent() && p.cause().isPresent());
        assertThat(published).noneMatch(p -> p.tool().isWithheld(Why.NOT_PAIRED));
        assertThat(published).extracting(p -> p.tool().isAnswer()).contains(true, false);
    }

    @Test
    void theCountsAddUp() {
        for (var reader : Reader.values()) {
            var has = reader.has(PAIRS);
            int withheld = Arrays.stream(Why.values())
                    .mapToInt(why -> count(has, p -> reader.of(p).isWithheld(why)))
                    .sum();
            assertThat(reader.answers(PAIRS).hits() + withheld).isEqualTo(has.size());
            assertThat(reader.wrong(PAIRS).hits())
                    .isEqualTo(reader.wrongOfAnswers(PAIRS).hits())
                    .isLessThanOrEqualTo(reader.answers(PAIRS).hits());
        }
        int published = count(PAIRS, p -> p.is(Kind.PUBLISHED));
        assertThat(Arrays.stream(Cause.values())
                        .mapToInt(c -> count(PAIRS, p -> p.is(c)))
                        .sum())
                .isEqualTo(published);
        var sides = SummaryTables.sides();
        // the published pairs stand there twice: by how they are printed, and together
        assertThat(sides.values().stream().mapToInt(s -> count(PAIRS, s)).sum()).isEqualTo(PAIRS.size() + published);
    }

    @Test
    void whatIsTrulyOtherOrNotSaidIsNeverComparedUnlessItCanBeMet() {
        assertThat(PAIRS)
                .filteredOn(p -> p.is(Cause.FLOW_BEYOND)
                        || p.is(Cause.HAEMOGLOBIN)
                        || p.is(Cause.LIQUID)
                        || p.is(Cause.PARTS)
                        || p.is(Cause.SILENT_ALIKE)
                        || p.is(Cause.SILENT_OTHER))
                .isNotEmpty()
                .allMatch(p -> p.tool().isWithheld(Why.SHOWN));
    }

    @Test
    void anyLibraryCanBeRunAgainAlone() throws IOException {
        assertThat(Judge.in(folder, 17))
                .hasToString(
                        PAIRS.stream().filter(p -> p.library() == 17).toList().toString());
        assertThat(folder.resolve(SimulatedLibrary.DOSSIER)).exists();
    }

    /** If a sentence of the tool changes, the report is to be written anew. */
    @Test
    void theReportKeptIsOfThisProgram() throws IOException {
        var kept = Files.readString(WholeRunReport.REPORT);

        assertThat(kept).contains("\n" + WholeRunReport.LIBRARIES + " simulated libraries");
        assertThat(kept).contains(WholeRunReport.slice(PAIRS));
        assertThat(rows(kept)).isEqualTo(rows(WholeRunReport.report(WholeRunReport.LIBRARIES, PAIRS)));
    }

    /** Headings and the first cell of every row. */
    private static List<String> rows(String report) {
        return report.lines()
                .filter(l -> l.startsWith("| ") || l.startsWith("#"))
                .map(l -> l.startsWith("| ") ? l.split(" \\| ", -1)[0] : l)
                .toList();
    }

    private static int count(List<Judged> pairs, Predicate<Judged> holds) {
        return Math.toIntExact(pairs.stream().filter(holds).count());
    }
}
