package comparand.browser;

import java.util.List;

/** What a reader does with the controls, found by their labels, and what a reader then sees. */
final class Reader {

    private Reader() {}

    /** Unfolds the settings that are not among the choosers. */
    static void openSettings(Browser browser) {
        browser.run("document.querySelector('#controls > details.settings').open = true");
        browser.settle();
    }

    /** Chooses in the list under a label. */
    static void choose(Browser browser, String label, String value) {
        set(browser, labelled(label), "SELECT", value);
    }

    /** Types a number or words into a field. */
    static void type(Browser browser, String selector, String text) {
        browser.run(
                "const e = document.querySelector(arguments[0]); e.focus(); e.value = arguments[1];"
                        + "e.dispatchEvent(new Event('input', {bubbles: true})); e.dispatchEvent(new Event('change', {bubbles: true}));",
                "#controls " + selector,
                text);
        browser.settle();
    }

    /** Ticks the box behind a label. */
    static void tick(Browser browser, String label) {
        browser.run("const l = " + labelled(label) + "; document.getElementById(l.htmlFor).click()");
        browser.settle();
    }

    /** Presses the first button with these words that is shown. */
    static void press(Browser browser, String words) {
        browser.run("[...document.querySelectorAll('button')].find(b => b.getClientRects().length && !b.disabled"
                + " && b.textContent.trim() === '" + DemoPage.word(words) + "').click()");
        browser.settle();
    }

    private static String labelled(String key) {
        return "[...document.querySelectorAll('#controls label')].find(l => l.textContent === '" + DemoPage.word(key)
                + "')";
    }

    private static void set(Browser browser, String label, String tag, String value) {
        browser.run(
                "const e = document.getElementById((" + label + ").htmlFor); if (e.tagName !== '" + tag
                        + "') throw new Error(e.tagName); e.value = arguments[0];"
                        + "e.dispatchEvent(new Event('change', {bubbles: true}));",
                value);
        browser.settle();
    }

    /** All letters that can be seen of the content, blanks left out: those between cells and controls are nobody's. */
    static String seen(Browser browser) {
        return Browser.folded(
                        browser.text(
                                "[...document.querySelectorAll('main > section')].filter(s => s.getClientRects().length).map(s => s.innerText).join('\\n')"))
                .replace(" ", "");
    }

    /** Every text the file itself holds in its sections: what scripts add is left out. */
    static List<String> texts(Browser browser) {
        return browser.texts("""
                [...document.querySelectorAll('main > section :is(.v, p:not(.tools, .noted), summary, h2, h3, figcaption)')]
                  .filter(e => !e.closest('dialog, .noted, .tools') && !(e.hidden && e.classList.contains('noted')))
                  .map(e => e.textContent.replace(/\\s+/g, ' ').trim()).filter(t => t !== '')
                """);
    }
}
