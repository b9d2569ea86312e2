package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a reader sets stands in the address, is said in words, and can be taken back to the letter. */
class StateBrowserIT {

    private static final String EXPLORED =
            "#q=pressure-drop&m.pressure-drop=12&t.pressure-drop.haemoglobin=2&out=corran-2021&like=1&nofig=1";

    private static final Browser BROWSER = Browser.start();

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @BeforeEach
    void fresh() {
        BROWSER.open(DemoPage.file()).settle().whole();
    }

    @Test
    void aViewIsOpenedAgainFromItsAddress() {
        Reader.choose(BROWSER, "page.question", "pressure-drop");
        Reader.type(BROWSER, ".of-question input[type=number]", "12");
        Reader.choose(BROWSER, "page.device", "mirrowen-12");
        Reader.tick(BROWSER, "page.no-figure");
        var address = BROWSER.address();
        var seen = Reader.seen(BROWSER);
        assertThat(address).contains("q=pressure-drop", "d=mirrowen-12", "m.pressure-drop=12", "nofig=1");

        BROWSER.open(DemoPage.file(), address.substring(address.indexOf('#')))
                .settle()
                .whole();

        assertThat(BROWSER.address()).isEqualTo(address);
        assertThat(Reader.seen(BROWSER)).isEqualTo(seen);
    }

    /** An address outlives what it was made for. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "#",
                "#=",
                "#&&&",
                "#q=",
                "#q=no-such-metric&d=nobody&m.pressure-drop=-3&t.pressure-drop.haemoglobin=x&out=,,,&like=2",
                "#m.no-such-metric=4&m.=3&m=3&t.x=1",
                "#m.pressure-drop=NaN&m.pressure-drop=Infinity&sort=9.9.9",
                "#sort=Pairspressuredrop.99.a",
                "#at=v-nowhere",
                "#q=%E0%A4%A",
                "#%",
                "#no-such-place",
                "#at=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E",
                "#f=%3Cscript%3Ealert(1)%3C%2Fscript%3E",
                "#__proto__=1&m.__proto__=2&t.constructor=3"
            })
    void nonsenseInTheAddressDoesNoHarm(String fragment) {
        BROWSER.open(DemoPage.file(), fragment).settle();

        assertThat(BROWSER.complaints()).isEmpty();
        assertThat(BROWSER.find("#exploring").isDisplayed()).isFalse();
        assertThat(BROWSER.find("#controls").isDisplayed()).isTrue();
        assertThat(BROWSER.holds("document.querySelector('img[src=x]') === null"))
                .isTrue();
    }

    @Test
    void theBannerListsEveryDifferenceAndOnlyThen() {
        assertThat(BROWSER.find("#exploring").isDisplayed()).isFalse();

        BROWSER.open(DemoPage.file(), "#q=pressure-drop&d=mirrowen-12&f=Ardley&grey=1&large=1")
                .settle();
        assertThat(BROWSER.find("#exploring").isDisplayed())
                .as("a view is no setting")
                .isFalse();

        BROWSER.open(DemoPage.file(), EXPLORED).settle();
        assertThat(BROWSER.shown("#exploring")).contains(Browser.folded(DemoPage.word("page.say.exploring")));
        assertThat(BROWSER.texts(
                        "[...document.querySelectorAll('#exploring li')].map(e => e.innerText.replace(/\\s/g, ' '))"))
                .hasSize(5)
                .anyMatch(t -> t.contains("pressure drop") && t.contains("12 mmHg") && t.contains("10 mmHg"))
                .anyMatch(t -> t.contains("haemoglobin") && t.contains("± 2 g/dL") && t.contains("± 1 g/dL"))
                .anyMatch(t -> t.contains("Corran"))
                .contains(DemoPage.word("page.difference.like"), DemoPage.word("page.difference.no-figure"));
        assertThat(BROWSER.find("#exploring").getDomAttribute("role")).isEqualTo("status");
        BROWSER.screenshots("exploring");
    }

    @Test
    void resetBringsBackTheReportToTheLetter() {
        var before = Reader.seen(BROWSER);
        BROWSER.open(DemoPage.file(), EXPLORED.replace("q=pressure-drop&", ""))
                .settle()
                .whole();
        assertThat(Reader.seen(BROWSER)).isNotEqualTo(before);

        Reader.press(BROWSER, "page.reset-all");

        assertThat(BROWSER.find("#exploring").isDisplayed()).isFalse();
        assertThat(Reader.seen(BROWSER)).isEqualTo(before);
        assertThat(BROWSER.address()).doesNotContain("m.").doesNotContain("out=");
    }

    /** What scripts add beside the text of the report is controls; the text itself they leave alone until something is set. */
    @Test
    void untouchedThePageSaysWhatTheFileSays() {
        var withScripts = Reader.texts(BROWSER);
        BROWSER.scripts(false).open(DemoPage.file());
        var without = Reader.texts(BROWSER);
        BROWSER.scripts(true);

        assertThat(withScripts).isEqualTo(without).hasSizeGreaterThan(500);
    }
}
