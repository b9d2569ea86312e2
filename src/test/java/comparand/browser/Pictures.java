package comparand.browser;

import java.nio.file.Path;

/**
 * Takes pictures of a page in the states a reader meets, at three sizes, light and dark, into {@code target/screenshots}: to be
 * looked at after a change of what it looks like.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=comparand.browser.Pictures -Dexec.args=PAGE.html
 * </pre>
 */
public final class Pictures {

    private static final String ONE_QUESTION = "#q=pressure-drop";
    private static final String EXPLORING = "#q=pressure-drop&m.pressure-drop=15&t.pressure-drop.haemoglobin=2";

    private Pictures() {}

    public static void main(String[] arguments) {
        var page = Path.of(arguments[0]);
        try (var browser = Browser.start()) {
            for (boolean dark : new boolean[] {false, true}) {
                var look = dark ? "dark-" : "light-";
                browser.dark(dark);
                browser.open(page).screenshots(look + "fresh");
                browser.open(page, ONE_QUESTION).screenshots(look + "question");
                browser.open(page, EXPLORING).screenshots(look + "exploring");
                pairs(browser.open(page, EXPLORING)).screenshots(look + "pairs");
                browser.open(page, ONE_QUESTION + "&at=v-B24").screenshots(look + "ladder");
                why(browser.open(page, ONE_QUESTION)).screenshots(look + "why");
                browser.open(page, "#s-trail").screenshots(look + "trail");
            }
        }
    }

    private static Browser pairs(Browser browser) {
        browser.run("document.querySelector('table[id^=t-Pairs]').scrollIntoView()");
        return browser;
    }

    private static Browser why(Browser browser) {
        browser.run("document.querySelector('section:not([hidden]) button.ask').click()");
        return browser;
    }
}
