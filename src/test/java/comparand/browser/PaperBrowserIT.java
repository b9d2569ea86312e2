package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.Built;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** The page printed on paper: what a committee must see is on it, and nothing that only a screen can do. */
class PaperBrowserIT {

    private static final Browser BROWSER = Browser.start();

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @Test
    void questionsAnswersCautionsAndMarksAreOnIt() {
        var paper = BROWSER.open(DemoPage.file()).settle().printed();
        var letters = letters(paper);

        for (var question : DemoPage.results().get("questions")) {
            assertThat(letters).contains(letters(question.get("asks").asText()));
        }
        for (var caution : DemoPage.results().get("cautions")) {
            assertThat(letters).contains(letters(caution.asText()));
        }
        DemoPage.exploration().at("/run/marks").forEach(m -> assertThat(letters).contains(letters(m.asText())));
        assertThat(paper)
                .contains(DemoPage.results().at("/run/fingerprint").asText().substring(0, 8));
        for (var pair : Built.all(DemoPage.results().get("pairs"))) {
            assertThat(letters)
                    .containsIgnoringCase(letters(pair.at("/answer/sentence").asText()));
        }
    }

    /** Narrow columns do not tear words that would fit: the headings of the list of questions are read as words. */
    @Test
    void headingsAreWholeWords() {
        var paper = BROWSER.open(DemoPage.file()).settle().printed();

        for (var heading :
                BROWSER.texts("[...document.querySelectorAll('#t-Questions thead th')].map(h => h.textContent)")) {
            assertThat(paper).contains(Browser.folded(heading));
        }
        assertThat(paper).contains("10 mmHg");
    }

    /** Letters, digits and signs alone: lines and pages may break anywhere, with a hyphen, and every page has a foot. */
    private static String letters(String text) {
        var fingerprint = DemoPage.results().at("/run/fingerprint").asText().substring(0, 8);
        return text.replaceAll(
                        "\\d+ / \\d+"
                                + DemoPage.exploration().at("/run/marks/0").asText() + ".*?" + fingerprint,
                        "")
                .replaceAll("[\\s\u00a0\u00ad\u2010-]+", "");
    }

    @Test
    void noControlIsOnIt() {
        BROWSER.open(DemoPage.file()).settle();
        assertThat(BROWSER.number("[...document.querySelectorAll('button, input, select')].filter(e =>"
                        + " e.getClientRects().length).length"))
                .isGreaterThan(5);

        BROWSER.paper(true);
        assertThat(BROWSER.texts("[...document.querySelectorAll('button, input, select, textarea, nav')].filter(e =>"
                        + " e.getClientRects().length).map(e => e.outerHTML.slice(0, 120))"))
                .isEmpty();
        BROWSER.paper(false);
    }

    @Test
    void anExploredPageSaysSoOnPaper() {
        BROWSER.open(DemoPage.file(), "#m.pressure-drop=12&out=ardley-2023").settle();
        var banner = BROWSER.shown("#exploring");
        assertThat(banner).contains("12 mmHg").contains("Ardley");

        BROWSER.paper(true);
        var onPaper = BROWSER.shown("#exploring");
        BROWSER.paper(false);
        assertThat(onPaper).contains("12 mmHg").contains("Ardley");
        assertThat(letters(BROWSER.printed())).contains(letters(onPaper));

        assertThat(BROWSER.open(DemoPage.file()).settle().printed())
                .doesNotContain(DemoPage.word("page.say.exploring"));
    }
}
