package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.app.CommandLineUse;
import comparand.support.BookRows;
import comparand.support.BookRows.BookRow;
import comparand.support.Built;
import comparand.support.LibraryCopy;
import comparand.support.OutputTexts;
import comparand.support.SlidesRead;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How the sources of the demo were found, in every document that says so. */
class ScreeningOutputTest {

    @TempDir
    Path temporary;

    private static JsonNode flow(Built built) {
        return built.results().get("screening").get("flow");
    }

    @Test
    @DisplayName(
            "19 records, 2 duplicates, 17 screened, 3 out, 14 sought, 0 not retrieved, 14 assessed, 4 out, 10 included")
    void counts() {
        var flow = flow(Built.demo());

        assertThat(List.of(
                        "identified",
                        "duplicates",
                        "screened",
                        "excluded",
                        "sought",
                        "not-retrieved",
                        "assessed",
                        "excluded-after-reading",
                        "reports",
                        "studies"))
                .extracting(box -> flow.get(box).asInt())
                .containsExactly(19, 2, 17, 3, 14, 0, 14, 4, 10, 9);
        assertThat(Built.all(flow.get("reasons")))
                .hasSize(4)
                .allMatch(r -> r.get("reports").asInt() == 1);
    }

    @Test
    @DisplayName("the ten included and the four left out after reading are the sources of the library, one by one")
    void sources() {
        var records = Built.all(Built.demo().results().get("screening").get("records"));

        assertThat(sources(records, "included"))
                .containsExactlyInAnyOrder(
                        "quillane-ifu-c",
                        "quillane-ifu-b",
                        "mirrowen-ifu-4",
                        "skarrow-ifu-2",
                        "ardley-2023",
                        "bonvale-2022",
                        "corran-2021",
                        "dunmore-2024",
                        "dunsley-statement",
                        "invented-registry-2025");
        assertThat(sources(records, "excluded-after-reading"))
                .containsExactlyInAnyOrder("elstree-2023", "farrow-2019", "skarrow-flyer", "ardley-2022-preprint");
        assertThat(Built.all(Built.demo().results().get("sources"))).hasSize(14);
    }

    private static List<String> sources(List<JsonNode> records, String became) {
        return records.stream()
                .filter(r -> r.get("became").asText().equals(became))
                .map(r -> r.get("source").asText())
                .toList();
    }

    @Test
    @DisplayName("the flow of the workbook adds up row by row, and its log has every record")
    void workbook() {
        var rows = BookRows.tables(Built.demo().folder().resolve(Libraries.WORKBOOK));
        var flow = rows.stream().filter(r -> r.table().equals("Flow")).toList();

        assertThat(flow.stream()
                        .filter(r -> r.text("Step").startsWith("Records identified,"))
                        .mapToInt(ScreeningOutputTest::n)
                        .sum())
                .isEqualTo(n(flow, "Records identified"));
        assertThat(n(flow, "Records identified") - n(flow, "Duplicate records removed before screening"))
                .isEqualTo(n(flow, "Records screened"));
        assertThat(n(flow, "Records screened") - n(flow, "Records excluded"))
                .isEqualTo(n(flow, "Reports sought for retrieval"));
        assertThat(n(flow, "Reports sought for retrieval") - n(flow, "Reports not retrieved"))
                .isEqualTo(n(flow, "Reports assessed for eligibility"));
        assertThat(n(flow, "Reports assessed for eligibility") - n(flow, "Reports excluded"))
                .isEqualTo(n(flow, "Reports of included studies"));
        assertThat(flow.stream()
                        .filter(r -> r.text("Step").startsWith("Reports excluded:"))
                        .mapToInt(ScreeningOutputTest::n)
                        .sum())
                .isEqualTo(n(flow, "Reports excluded"));
        var log = rows.stream().filter(r -> r.table().equals("Screening")).toList();
        assertThat(log).hasSize(n(flow, "Records identified"));
        assertThat(log)
                .filteredOn(r -> !r.text("What became of it").equals("included"))
                .hasSize(9)
                .noneMatch(r -> r.text("Reason").isBlank() || r.text("Reason").equals("NA"));
    }

    private static int n(BookRow row) {
        return (int) row.cell("Records").orElseThrow().number().orElseThrow();
    }

    private static int n(List<BookRow> rows, String box) {
        return rows.stream()
                .filter(r -> r.text("Step").equals(box))
                .map(ScreeningOutputTest::n)
                .findFirst()
                .orElseThrow();
    }

    @Test
    @DisplayName("a backup slide shows the flow in boxes, and the brief says it in a line")
    void slideAndBrief() {
        var slide = SlidesRead.of(Built.demo().folder().resolve("talk.pptx")).stream()
                .filter(s -> s.title().equals("From the records found to the reports included"))
                .findFirst()
                .orElseThrow();
        assertThat(String.join("\n", slide.all()).replace('\u00a0', ' '))
                .contains(
                        "19",
                        "17",
                        "14",
                        "10",
                        "Reports excluded (n = 4): patients reported",
                        "Studies included (n = 9)");

        assertThat(texts(Built.demo(), "committee-brief.pdf"))
                .contains("Records found: 19; reports read whole: 14; included: 10 reports of 9 studies.");
    }

    private static String texts(Built built, String file) {
        return String.join(" ", OutputTexts.of(built).getOrDefault(file, List.of()))
                .replace('\u00a0', ' ')
                .replaceAll("\\s+", " ");
    }

    @Test
    @DisplayName("no document claims conformity with the statement whose terms the flow has")
    void noClaim() {
        assertThat(texts(Built.demo(), Libraries.TABLE))
                .contains("claims no conformity with that statement")
                .doesNotContainIgnoringCase("according to PRISMA")
                .doesNotContainIgnoringCase("PRISMA-compliant");
    }

    @Test
    @DisplayName("in German the flow has the same counts and German words")
    void german() throws IOException {
        var built = Built.german(Libraries.DEMO);
        var svg = Files.readString(built.folder().resolve("figures/screening.svg"))
                .replace('\u00a0', ' ');

        assertThat(flow(built).get("studies")).isEqualTo(flow(Built.demo()).get("studies"));
        assertThat(svg)
                .contains(
                        "Gesichtete Datensätze (n = 17)",
                        "Auf Eignung geprüfte Berichte (n = 14)",
                        "Eingeschlossene Studien (n = 9)")
                .contains("<desc");
    }

    @Test
    @DisplayName("a library without a log builds without the flow, and its author is told")
    void withoutLog() {
        var built = Built.of(Libraries.FILTERS);

        assertThat(built.results().has("screening")).isFalse();
        assertThat(built.folder().resolve("figures/screening.svg")).doesNotExist();
        assertThat(texts(built, "manuscript.docx")).contains("Write a log in the folder screening");
    }

    @Test
    @DisplayName("a source without a record stops the build with the counts and the line to type")
    void sourceWithoutRecord() throws IOException {
        var run = built(log ->
                log.replaceFirst("(?s)  - id: R14\n.*?(?=  # it says)", "").replace("found: 6", "found: 5"));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("STOP flow-counts")
                .contains("assessed 13 - left out 3 = 10, and beside these there is `skarrow-flyer`")
                .contains("- {id: NAME, source: skarrow-flyer, from: index, became: included}");
    }

    @Test
    @DisplayName("fifty reports left out for reasons of many words still make a talk that can be read")
    void manyReasons() throws IOException {
        var more = new StringBuilder();
        for (int i = 0; i < 50; i++) {
            more.append("""
                      - {id: M%1$d, reference: "Invented paper %1$d", from: lists, became: excluded-after-reading,
                         reason: "no value under conditions that anybody could compare with ours, for cause number %1$d"}
                    """.formatted(i));
        }
        var run = built(log -> log.replace("found: 3\nrecords", "found: 53\nrecords") + more);

        assertThat(run.code()).as(run.err()).isZero();
    }

    private CommandLineUse.Run built(UnaryOperator<String> change) throws IOException {
        var library = LibraryCopy.of(Path.of("evidence"), temporary.resolve("library"));
        var log = library.resolve("screening/small-oxygenators.yaml");
        var before = Files.readString(log);
        var after = change.apply(before);
        assertThat(after).isNotEqualTo(before);
        Files.writeString(log, after);
        return CommandLineUse.run(
                "build",
                library.resolve("dossiers/small-oxygenators.yaml").toString(),
                "--out",
                temporary.resolve("out").toString());
    }
}
