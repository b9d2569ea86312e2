package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is taken from the page: a row as text, a table as CSV; and what is set beside it: an earlier results file. */
class TakeAwayBrowserIT {

    private static final Browser BROWSER = Browser.start();

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @BeforeEach
    void fresh() {
        BROWSER.open(DemoPage.file()).settle().whole();
    }

    /** A number never travels without its conditions and its place in the source. */
    @Test
    void aCopiedRowCarriesAnswerConditionsPlacesAndCaution() {
        for (var pair : DemoPage.pairs("pressure-drop")) {
            var id = pair.get("id").asText();
            var result = DemoPage.resultPairs("pressure-drop").stream()
                    .filter(p -> p.get("id").asText().equals(id))
                    .findFirst()
                    .orElseThrow();

            var text = copied("t-Pairspressuredrop-r" + pair.get("row").asInt());

            assertThat(text)
                    .as(id)
                    .containsIgnoringCase(
                            Browser.folded(result.at("/answer/sentence").asText()))
                    .contains(Browser.folded(result.get("standing-words").asText()))
                    .contains(Browser.folded(result.get("condition-line").asText()))
                    .contains(pair.get("oursLocator").asText())
                    .contains(pair.get("theirsLocator").asText())
                    .contains(DemoPage.exploration().at("/run/rider").asText())
                    .contains(DemoPage.exploration().at("/run/marks/0").asText())
                    .contains(DemoPage.results().at("/run/fingerprint").asText().substring(0, 8));
        }
    }

    @Test
    void aRowCopiedWhileExploringSaysSo() {
        BROWSER.open(DemoPage.file(), "#q=pressure-drop&m.pressure-drop=12").settle();

        assertThat(copied("t-Pairspressuredrop-r0"))
                .contains(DemoPage.word("page.copy.exploring"))
                .contains("12 mmHg");
    }

    private static String copied(String row) {
        BROWSER.run("navigator.clipboard.writeText = t => { window.copied = t; return Promise.resolve(); };"
                + "document.querySelector('#" + row + " button.copy').click()");
        return Browser.folded(BROWSER.text("window.copied"));
    }

    /**
     * RFC 4180: every line ends with CRLF, every record has as many fields, quotes are doubled; with a byte order mark, which
     * that document does not speak of and spreadsheets need to read UTF-8.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {"", "#q=pressure-drop", "#q=pressure-drop&f=Ardley", "#q=pressure-drop&d=mirrowen-12&like=1"})
    void aDownloadHoldsTheVisibleRows(String fragment) throws IOException {
        BROWSER.open(DemoPage.file(), fragment).settle().whole();
        BROWSER.run(
                "document.getElementById('t-Pairspressuredrop').closest('.frame').nextElementSibling.querySelector('button').click()");
        var file = BROWSER.downloaded();
        var bytes = Files.readAllBytes(file);
        var text = new String(bytes, StandardCharsets.UTF_8);

        assertThat(file.getFileName().toString())
                .startsWith("small-oxygenators")
                .endsWith(".csv");
        assertThat(text).startsWith("\ufeff").endsWith("\r\n");
        assertThat(text.replaceAll("\"[^\"]*\"", "").replace("\r\n", ""))
                .doesNotContain("\n")
                .doesNotContain("\r");
        var records = records(text.substring(1));
        int exploring = fragment.contains("like") ? 1 : 0;
        var seen = BROWSER.data("""
                [...document.querySelectorAll('#t-Pairspressuredrop tbody tr')].filter(r => r.getClientRects().length)
                  .map(r => [...r.cells].map(c => c.querySelector('.v').textContent.trim()))
                """);
        assertThat(records).hasSize(1 + seen.size()).hasSizeGreaterThan(1);
        for (int i = 0; i < seen.size(); i++) {
            assertThat(records.get(i + 1)).hasSize(seen.get(i).size() + exploring);
            for (int k = 0; k < seen.get(i).size(); k++) {
                assertThat(records.get(i + 1).get(k))
                        .isIn(
                                seen.get(i).get(k).asText(),
                                "'" + seen.get(i).get(k).asText());
            }
        }
        assertThat(records.get(0)).hasSize(records.get(1).size()).doesNotContain("");
    }

    private static List<List<String>> records(String csv) {
        return CsvReader.builder().ofCsvRecord(csv).stream()
                .map(CsvRecord::getFields)
                .toList();
    }

    @Test
    void theSameResultsDifferInNothing() throws IOException {
        var same = DemoPage.resultsOf();

        assertThat(beside(same))
                .contains(DemoPage.resultsPairs() + " answers are the same", "0 are others", "0 are gone", "0 are new");
    }

    @Test
    void theResultsOfAnEarlierMonthDifferWhereTheyDo() throws IOException {
        var earlier = DemoPage.resultsOf("--over", "evidence/dated/2026-10");
        var then = DemoPage.read(earlier);
        int others = 0;
        int same = 0;
        for (var pair : then.get("pairs")) {
            var now = DemoPage.results().get("pairs");
            for (var p : now) {
                if (p.get("id").equals(pair.get("id"))) {
                    boolean alike = p.at("/answer/sentence").equals(pair.at("/answer/sentence"))
                            && p.get("standing").equals(pair.get("standing"));
                    same += alike ? 1 : 0;
                    others += alike ? 0 : 1;
                }
            }
        }

        var said = beside(earlier);

        assertThat(others).isPositive();
        assertThat(said)
                .contains(same + " answers are the same")
                .contains(others + " are others")
                .contains(then.get("pairs").size() - same - others + " are gone")
                .contains(DemoPage.resultsPairs() - same - others + " are new");
    }

    @Test
    void whatIsNoResultsFileIsRefused() throws IOException {
        assertThat(beside(Files.writeString(Files.createTempFile("no-results", ".json"), "{\"format\": \"other\"}")))
                .contains(DemoPage.word("page.say.earlier-none"));
        assertThat(beside(Files.writeString(Files.createTempFile("no-json", ".json"), "PK\u0003")))
                .contains(DemoPage.word("page.say.earlier-none"));
        assertThat(BROWSER.complaints()).isEmpty();
    }

    private static String beside(Path results) {
        Reader.openSettings(BROWSER);
        BROWSER.find("#controls input[type=file]")
                .sendKeys(results.toAbsolutePath().toString());
        BROWSER.settle().settle();
        return Browser.folded(
                BROWSER.text("document.querySelector('#controls input[type=file]').closest('[role=group]').innerText"));
    }
}
