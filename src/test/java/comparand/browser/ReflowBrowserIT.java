package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page fits its window: narrow, enlarged, with wider spacing. */
class ReflowBrowserIT {

    private static final Browser BROWSER = Browser.start();

    /** Elements that stick out of the window on the right, but for what lies in a frame that scrolls by itself. */
    private static final String STICKING_OUT = """
            [...document.querySelectorAll('body *')]
              .filter(e => e.getClientRects().length && !e.closest('svg *')
                && e.getBoundingClientRect().right > document.documentElement.clientWidth + 1
                && ![...(function* (p) { while ((p = p.parentElement)) yield p; })(e)]
                  .some(p => /auto|scroll|hidden|clip/.test(getComputedStyle(p).overflowX)))
              .slice(0, 10).map(e => e.tagName + '.' + e.className + '#' + e.id + ' ' + e.textContent.slice(0, 60))
            """;

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @AfterEach
    void asItComes() {
        BROWSER.size(1280, 900);
    }

    /**
     * WCAG 2.2, 1.4.10 Reflow: at 320 CSS pixels, which is 1280 at 400 %, nothing scrolls in two directions. And 1.4.4 Resize
     * Text: 1280 at 200 % is 640.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "320 ",
                "320 #m.pressure-drop=12",
                "640 ",
                "640 #q=pressure-drop&large=1",
                "360 ",
                "768 ",
                "1280 "
            })
    void nothingScrollsSideways(String given) {
        int width = Integer.parseInt(given.substring(0, 3).equals("128") ? "1280" : given.substring(0, 3));
        BROWSER.size(width, 700)
                .open(DemoPage.file(), given.substring(given.indexOf(' ') + 1))
                .settle()
                .whole();
        Reader.openSettings(BROWSER);

        assertThat(BROWSER.texts(STICKING_OUT)).isEmpty();
        assertThat(BROWSER.number("document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(BROWSER.number("document.documentElement.clientWidth"));
    }

    /** 1.4.10 again, with every ladder open: what is folded away must fit too. */
    @Test
    void whatIsFoldedAwayFits() {
        BROWSER.size(320, 700).open(DemoPage.file()).settle().whole();
        BROWSER.run("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        BROWSER.settle();

        assertThat(BROWSER.texts(STICKING_OUT)).isEmpty();
        assertThat(BROWSER.number("document.documentElement.scrollWidth")).isLessThanOrEqualTo(320);
    }

    /** WCAG 2.2, 1.4.12 Text Spacing: its four distances at once, and nothing is cut off or sticks out. */
    @ParameterizedTest
    @ValueSource(ints = {320, 1280})
    void widerSpacingCutsNothingOff(int width) {
        BROWSER.size(width, 700).open(DemoPage.file()).settle().whole();
        BROWSER.run(
                "const s = new CSSStyleSheet(); s.replaceSync('* {line-height: 1.5 !important; letter-spacing: 0.12em"
                        + " !important; word-spacing: 0.16em !important} p {margin-bottom: 2em !important}');"
                        + "document.adoptedStyleSheets = [s]");
        BROWSER.settle();

        assertThat(BROWSER.texts(STICKING_OUT)).isEmpty();
        assertThat(BROWSER.texts("""
                        [...document.querySelectorAll('main *, header *, footer *, nav *')]
                          .filter(e => /hidden|clip/.test(getComputedStyle(e).overflowY) && e.clientHeight > 1
                            && !e.closest('svg') && getComputedStyle(e).clipPath === 'none' && e.scrollHeight > e.clientHeight + 1)
                          .map(e => e.tagName + '.' + e.className + ' ' + e.textContent.slice(0, 60))
                        """)).isEmpty();
    }

    /** WCAG 2.2, 2.5.8 Target Size (Minimum): 24 by 24 CSS pixels, a label counted with what it labels. */
    @ParameterizedTest
    @ValueSource(ints = {320, 1280})
    void whatIsPressedIsLargeEnough(int width) {
        BROWSER.size(width, 700)
                .open(DemoPage.file(), "#q=pressure-drop")
                .settle()
                .whole();
        Reader.openSettings(BROWSER);

        assertThat(BROWSER.number(
                        "document.querySelectorAll('#controls button, #controls input, #controls select').length"))
                .isGreaterThan(5);
        assertThat(BROWSER.texts("""
                        [...document.querySelectorAll('button, input, select, textarea, summary')]
                          .filter(e => e.getClientRects().length)
                          .map(e => ({e, boxes: [e, ...(e.labels || [])].map(b => b.getBoundingClientRect())}))
                          .filter(t => Math.max(...t.boxes.map(b => b.height)) < 24 || Math.max(...t.boxes.map(b => b.width)) < 24)
                          .map(t => t.e.outerHTML.slice(0, 120) + ' ' + t.boxes.map(b => b.width + 'x' + b.height))
                        """)).isEmpty();
    }
}
