package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** WCAG 2.0 to 2.2, A and AA, as far as axe-core can check it, and its rules of good practice: in every state of the page. */
class BarriersBrowserIT {

    private static final Browser BROWSER = Browser.start();

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @BeforeEach
    void asItComes() {
        BROWSER.size(1280, 900).dark(false);
    }

    @ParameterizedTest
    @CsvSource({
        "1280, false, ''",
        "1280, true, ''",
        "320, false, ''",
        "1280, false, '#q=pressure-drop&m.pressure-drop=12'",
        "1280, true, '#q=pressure-drop&m.pressure-drop=12'",
        "320, false, '#q=pressure-drop&m.pressure-drop=12'",
        "1280, false, '#q=pressure-drop&grey=1&large=1'"
    })
    void noneIsFound(int width, boolean dark, String fragment) {
        BROWSER.size(width, 900)
                .dark(dark)
                .open(DemoPage.file(), fragment)
                .settle()
                .whole();

        assertThat(Axe.violations(BROWSER)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1280, false", "320, true"})
    void noneIsFoundInADialog(int width, boolean dark) {
        BROWSER.size(width, 900)
                .dark(dark)
                .open(DemoPage.file(), "#q=pressure-drop")
                .settle()
                .whole();
        BROWSER.run(
                "[...document.querySelectorAll('button[aria-haspopup=dialog]')].find(b => b.getClientRects().length).click()");
        BROWSER.settle();
        assertThat(BROWSER.find("dialog[open]").isDisplayed()).isTrue();

        assertThat(Axe.violations(BROWSER)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1280, false", "320, true"})
    void noneIsFoundWithLaddersOpen(int width, boolean dark) {
        BROWSER.size(width, 900).dark(dark).open(DemoPage.file()).settle().whole();
        BROWSER.run("[...document.querySelectorAll('details')].slice(0, 40).forEach(d => { d.open = true; })");
        BROWSER.settle().whole();

        assertThat(Axe.violations(BROWSER)).isEmpty();
    }
}
