package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page complains of nothing and asks for nothing outside its own file, whatever a reader does with it. */
class QuietBrowserIT {

    /** So many controls the page has at least: fewer, and the test would have worked next to none. */
    private static final int FEWEST = 20;

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
    @CsvSource({"1280, false", "1280, true", "320, false", "320, true"})
    void opensAndIsWorkedWithoutAComplaint(int width, boolean dark) {
        BROWSER.size(width, 700).dark(dark).open(DemoPage.file()).settle();
        assertThat(BROWSER.complaints()).isEmpty();
        BROWSER.screenshots(dark ? "page-dark" : "page-light");
        BROWSER.size(width, 700);

        assertThat(EveryControl.work(BROWSER)).isGreaterThan(FEWEST);

        assertThat(BROWSER.complaints()).isEmpty();
    }

    @Test
    void noRequestLeavesTheFile() {
        BROWSER.open(DemoPage.file()).settle();
        EveryControl.work(BROWSER);

        var page = DemoPage.file().toAbsolutePath().toUri().toString();
        assertThat(BROWSER.requests())
                .contains(page)
                .allSatisfy(address -> assertThat(address)
                        .satisfiesAnyOf(
                                a -> assertThat(a.replaceAll("#.*", "")).isEqualTo(page),
                                a -> assertThat(a).startsWith("data:"),
                                a -> assertThat(a).startsWith("blob:null/")));
        assertThat(BROWSER.texts("performance.getEntriesByType('resource').map(r => r.name)"))
                .allMatch(a -> a.startsWith("data:") || a.startsWith("blob:"));
    }

    /** Content Security Policy Level 3, 2.2 and 3.3: delivered by a meta element, before anything it governs. */
    @Test
    void aPolicyForbidsWhatThePageDoesNotNeed() {
        BROWSER.open(DemoPage.file());
        var policy = List.of(BROWSER.text("document.querySelector('meta[http-equiv=Content-Security-Policy]').content")
                .split("\\s*;\\s*"));

        assertThat(policy).contains("default-src 'none'", "base-uri 'none'", "form-action 'none'");
        assertThat(policy)
                .allMatch(d -> d.matches("default-src 'none'|(script|style)-src( 'sha256-[A-Za-z0-9+/=]+')+"
                        + "|(font|img)-src data:|(base-uri|form-action) 'none'"));
        assertThat(BROWSER.holds("document.querySelector('meta[http-equiv]').compareDocumentPosition("
                        + "document.querySelector('style, script')) & Node.DOCUMENT_POSITION_FOLLOWING"))
                .isTrue();
    }

    /** The same level, 8.1: what the hashes do not cover does not run, and the browser says so. */
    @Test
    void thePolicyHolds() {
        BROWSER.open(DemoPage.file()).settle();
        BROWSER.run("const s = document.createElement('script'); s.textContent = 'window.intruded = true';"
                + "document.body.append(s)");
        assertThat(BROWSER.holds("window.intruded === true")).isFalse();
        assertThat(BROWSER.complaints()).anyMatch(c -> c.contains("Content Security Policy"));

        BROWSER.run("fetch('http://127.0.0.1:9/').catch(() => 0)");
        BROWSER.settle();
        assertThat(BROWSER.complaints()).anyMatch(c -> c.contains("Content Security Policy"));
    }

    /** Nothing is kept beyond the window: no cookie, no store. */
    @Test
    void nothingIsStored() {
        BROWSER.open(DemoPage.file()).settle();
        EveryControl.work(BROWSER);

        assertThat(BROWSER.text("document.cookie")).isEmpty();
        assertThat(BROWSER.number("localStorage.length + sessionStorage.length"))
                .isZero();
    }
}
