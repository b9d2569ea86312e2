package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/**
 * Everything is done by keys alone: WCAG 2.2, 2.1.1 Keyboard, 2.1.2 No Keyboard Trap, 2.4.3 Focus Order, 2.4.7 Focus Visible and
 * 2.4.11 Focus Not Obscured (Minimum).
 */
class ByKeyboardBrowserIT {

    private static final Browser BROWSER = Browser.start();

    /** More steps than there are places to stop at. */
    private static final int MOST_STEPS = 900;

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @BeforeEach
    void fresh() {
        BROWSER.open(DemoPage.file()).settle();
    }

    /** 2.4.1 Bypass Blocks: the first stop leads past what comes before the content. */
    @Test
    void theFirstStopSkipsToTheContent() {
        BROWSER.press(Keys.TAB);
        assertThat(focused("textContent")).isEqualTo(DemoPage.word("page.skip"));

        BROWSER.press(Keys.ENTER);
        assertThat(focused("id")).isEqualTo("content");
    }

    @Test
    void aQuestionIsChosen() {
        tabTo("f.tagName === 'SELECT' && " + labelled("page.question"));
        BROWSER.press(Keys.ARROW_DOWN).settle();

        assertThat(BROWSER.address()).endsWith("#q=pressure-drop");
        assertThat(shownSections()).contains("s-pressure-drop").doesNotContain("s-oxygen-transfer");
    }

    @Test
    void theMarginIsSetInTheFieldAndBySlidingAndReset() {
        chooseTheFirstQuestion();
        tabTo("f.matches('#controls > details > summary')");
        BROWSER.press(Keys.ENTER);
        tabTo("f.matches('.of-question input[type=number]')");
        BROWSER.press(Keys.chord(Keys.CONTROL, "a"), "1", "2").settle();
        assertThat(BROWSER.address()).contains("m.pressure-drop=12");
        assertThat(BROWSER.shown("#exploring")).contains("12 mmHg");

        tabTo("f.type === 'range'");
        BROWSER.press(Keys.ARROW_RIGHT).settle();
        assertThat(BROWSER.number("document.activeElement.value")).isGreaterThan(12);
        assertThat(BROWSER.shown("#exploring")).doesNotContain(" 12 mmHg");

        tabTo("f.tagName === 'BUTTON' && f.getAttribute('aria-label') === " + quoted("page.margin.reset-label"));
        BROWSER.press(Keys.SPACE).settle();
        assertThat(BROWSER.find("#exploring").isDisplayed()).isFalse();
        assertThat(BROWSER.address()).endsWith("#q=pressure-drop");
    }

    /** 2.4.3: what opens takes the focus; Escape closes it and gives the focus back to where it was. */
    @Test
    void whyIsAskedAndEscapeGoesBack() {
        tabTo("f.matches('button[aria-haspopup=dialog]')");
        var asked = focused("getAttribute('aria-label')");
        BROWSER.press(Keys.ENTER).settle();
        assertThat(BROWSER.shown("dialog[open]"))
                .contains(DemoPage.word("page.why.title"))
                .contains(DemoPage.word("page.why.decides"));
        assertThat(BROWSER.holds("document.querySelector('dialog').contains(document.activeElement)"))
                .isTrue();

        // 2.1.2 within it: it is modal, so that steps stay inside or reach the browser itself, and never the page below
        for (int i = 0; i < 6; i++) {
            BROWSER.press(Keys.TAB);
            assertThat(BROWSER.holds("document.activeElement.matches('body, dialog *')"))
                    .isTrue();
        }

        BROWSER.press(Keys.ESCAPE).settle();
        assertThat(BROWSER.all("dialog[open]")).isEmpty();
        assertThat(focused("getAttribute('aria-label')")).isEqualTo(asked);
    }

    @Test
    void aLocatorOpensTheLadderOfItsNumber() {
        tabTo("f.matches('td a[href=\"#v-B21\"]')");
        BROWSER.press(Keys.ENTER).settle().settle().settle().settle();

        assertThat(BROWSER.holds("document.getElementById('v-B21').open")).isTrue();
        assertThat(BROWSER.holds("document.getElementById('v-B21').contains(document.activeElement)"))
                .isTrue();
        assertThat(BROWSER.holds(
                        "(r => r.top >= 0 && r.top < innerHeight)(document.activeElement.getBoundingClientRect())"))
                .isTrue();
        assertThat(BROWSER.address()).contains("at=v-B21");
    }

    /** Every stop is visible and marked (2.4.7), not wholly covered (2.4.11), and stops follow the order of the page (2.4.3). */
    @Test
    void everyStopIsSeenAndStopsEnd() {
        BROWSER.size(1280, 900).still().open(DemoPage.file()).settle();
        var first = "";
        int steps = 0;
        for (; steps < 120; steps++) {
            BROWSER.press(Keys.TAB);
            var where = focused("outerHTML.slice(0, 160)");
            first = steps == 0 ? where : first;
            assertThat(BROWSER.holds("""
                            (f => { const r = f.getBoundingClientRect(); const s = getComputedStyle(f);
                              return r.width > 0 && r.bottom > 0 && r.top < innerHeight
                                && (s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) > 0 || s.boxShadow !== 'none'); })(document.activeElement)
                            """)).as(where).isTrue();
            assertThat(BROWSER.holds("""
                            (f => { const r = f.getClientRects()[0]; return [[r.left + 2, r.top + 2], [r.right - 2, r.bottom - 2],
                              [(r.left + r.right) / 2, (r.top + r.bottom) / 2]].some(([x, y]) => {
                                const hit = document.elementFromPoint(x, y); return hit && (f.contains(hit) || hit.contains(f)); }); })(document.activeElement)
                            """)).as("not covered: " + where).isTrue();
        }
        assertThat(first).contains("skip");
    }

    private void chooseTheFirstQuestion() {
        tabTo("f.tagName === 'SELECT' && " + labelled("page.question"));
        BROWSER.press(Keys.ARROW_DOWN).settle();
    }

    /** Steps on until the focus is where the condition on {@code f} holds. */
    private static void tabTo(String condition) {
        for (int step = 0; step < MOST_STEPS; step++) {
            BROWSER.press(Keys.TAB);
            if (BROWSER.holds("(f => " + condition + ")(document.activeElement)")) {
                return;
            }
        }
        throw new AssertionError("no stop where " + condition);
    }

    private static String focused(String property) {
        return BROWSER.text("document.activeElement." + property);
    }

    private static String labelled(String key) {
        return "f.labels[0].textContent === " + quoted(key);
    }

    private static String quoted(String key) {
        return "'" + DemoPage.word(key).replace("'", "\\'") + "'";
    }

    private static List<String> shownSections() {
        return BROWSER.texts("[...document.querySelectorAll('main section')].filter(s => !s.hidden).map(s => s.id)");
    }
}
