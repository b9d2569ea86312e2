package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.app.CommandLineUse;
import comparand.support.Built;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of questions, which a reader sees first, says what is true under the settings: as a report with them would print it. */
class QuestionListBrowserIT {

    private static final String DOSSIER = "dossiers/small-oxygenators.yaml";

    /** Margin and answers of every question, as they stand in the list. */
    private static final String LIST = """
            [...document.querySelectorAll('#t-Questions tbody tr')].map(r => [...r.cells].slice(1).map(c => c.querySelector('.v').textContent))
            """;

    /** The same answers, as the scripts compose them with the settings of the report. */
    private static final String COMPOSED = """
            (() => {
              const data = JSON.parse(document.getElementById('exploration').textContent);
              return Judging.judgeOf(data)(Judging.REPORT).questions.map(q => {
                const texts = QuestionLines.texts(Words.sayer(data.words), q, data.run.decimalSign);
                return [texts.present, texts.published];
              });
            })()
            """;

    private static final Browser BROWSER = Browser.start();

    @TempDir
    Path folder;

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @Test
    @DisplayName("with the settings of the report the lines are composed as the report prints them, to the letter")
    void report() {
        BROWSER.open(DemoPage.file()).settle();
        var printed = BROWSER.data(LIST);
        var composed = BROWSER.data(COMPOSED);

        assertThat(composed).hasSameSizeAs(printed).hasSizeGreaterThan(5);
        for (int i = 0; i < printed.size(); i++) {
            assertThat(composed.get(i).get(0)).isEqualTo(printed.get(i).get(1));
            assertThat(composed.get(i).get(1)).isEqualTo(printed.get(i).get(2));
        }
        assertThat(BROWSER.number("document.querySelectorAll('#t-Questions .changed, #t-Questions .noted').length"))
                .isZero();
    }

    @Test
    @DisplayName(
            "with other margins they are those of a report with these margins; what the report says is noted beside them")
    void otherMargins() throws IOException {
        BROWSER.open(otherReport()).settle();
        var printed = BROWSER.data(LIST);

        BROWSER.open(DemoPage.file(), "#" + otherMarginsInTheAddress()).settle();

        assertThat(BROWSER.data(LIST)).isEqualTo(printed);
        assertThat(BROWSER.number("document.querySelectorAll('#t-Questions tr.changed .noted').length"))
                .isPositive();
        var report = BROWSER.text("document.querySelector('#t-Questions-r0 .noted').textContent");
        assertThat(report).contains("10\u00a0mmHg");
    }

    @Test
    @DisplayName("back at the settings of the report nothing is left of the others")
    void back() {
        BROWSER.open(DemoPage.file()).settle();
        var printed = BROWSER.data(LIST);
        BROWSER.open(DemoPage.file(), "#m.pressure-drop=20&like=1").settle();
        assertThat(BROWSER.data(LIST)).isNotEqualTo(printed);

        Reader.press(BROWSER, "page.reset-all");

        assertThat(BROWSER.data(LIST)).isEqualTo(printed);
        assertThat(BROWSER.number(
                        "[...document.querySelectorAll('#t-Questions .noted')].filter(n => !n.hidden).length"))
                .isZero();
    }

    @Test
    @DisplayName("while one question is chosen the list makes room for it, and comes back")
    void oneQuestion() {
        BROWSER.open(DemoPage.file(), "#q=pressure-drop").settle();
        assertThat(BROWSER.find("#t-Questions").isDisplayed()).isFalse();
        assertThat(BROWSER.find("#s-pressure-drop").isDisplayed()).isTrue();

        Reader.press(BROWSER, "page.question.all");

        assertThat(BROWSER.find("#t-Questions").isDisplayed()).isTrue();
    }

    private Path otherReport() throws IOException {
        var evidence = LibraryCopy.of(Path.of("evidence"), folder.resolve("library"));
        var dossier = evidence.resolve(DOSSIER);
        LibraryCopy.edit(dossier, "margin: 10 ", "margin: 15 ");
        LibraryCopy.edit(dossier, "margin: 5 ", "margin: 7.5 ");
        LibraryCopy.edit(dossier, "margin: 0.05\n", "margin: 0.075\n");
        var run = CommandLineUse.run("build", dossier.toString(), "--for", "page", "--out", folder.toString());
        assertThat(run.code()).as(run.err()).isZero();
        return folder.resolve("small-oxygenators/page.html");
    }

    private static String otherMarginsInTheAddress() {
        return Built.all(DemoPage.exploration().get("questions")).stream()
                .filter(q -> q.hasNonNull("margin"))
                .map(q -> "m." + q.get("metric").asText() + "=" + other(q.at("/margin/number")))
                .collect(Collectors.joining("&"));
    }

    private static String other(JsonNode number) {
        return number.asDouble() == 10 ? "15" : number.asDouble() == 5 ? "7.5" : "0.075";
    }
}
