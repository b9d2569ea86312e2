package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** The other tests in a browser would notice what they look for: each kind of fault is put into a small page and found. */
class FaultsAreSeenBrowserIT {

    private static final Browser BROWSER = Browser.start();

    @TempDir
    Path folder;

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    private Browser page(String head, String body) throws IOException {
        var file = folder.resolve("page.html");
        Files.writeString(
                file,
                "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>A page</title>" + head
                        + "</head><body><main><h1>A page</h1>" + body + "</main></body></html>");
        return BROWSER.open(file);
    }

    @Test
    void anErrorAndAWarningAreHeard() throws IOException {
        assertThat(page("", "<p>Calm</p>").complaints()).isEmpty();
        assertThat(page("", "<script>console.warn('odd')</script>").complaints())
                .anyMatch(c -> c.contains("odd"));
        assertThat(page("", "<script>nowhere()</script>").complaints())
                .anyMatch(c -> c.contains("nowhere is not defined"));
    }

    /** CSP level 3: an inline style against the policy is reported on the console. */
    @Test
    void aBrokenPolicyIsHeard() throws IOException {
        var policy = "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'\">";

        assertThat(page(policy, "<p style=\"color: red\">x</p>").complaints())
                .anyMatch(c -> c.contains("Content Security Policy"));
    }

    @Test
    void aRequestIsSeen() throws IOException {
        page("", "<p>Calm</p>");
        assertThat(BROWSER.requests()).singleElement().asString().endsWith("/page.html");

        page("", "<img alt=\"\" src=\"http://127.0.0.1:9/none.png\">").settle();
        assertThat(BROWSER.requests()).contains("http://127.0.0.1:9/none.png");
    }

    @Test
    void aBarrierIsSeen() throws IOException {
        assertThat(Axe.violations(page("", "<p>Calm</p>"))).isEmpty();
        assertThat(Axe.violations(page("", "<input><p style=\"color: #ccc\">pale</p>")))
                .anyMatch(v -> v.startsWith("label"))
                .anyMatch(v -> v.startsWith("color-contrast"));
    }

    @Test
    void sizesColoursAndScriptsAreSet() throws IOException {
        page("", "<p>Calm</p>");
        BROWSER.size(320, 700).dark(true);
        assertThat(BROWSER.number("innerWidth")).isEqualTo(320);
        assertThat(BROWSER.holds("matchMedia('(prefers-color-scheme: dark)').matches"))
                .isTrue();
        BROWSER.size(1280, 900).dark(false);
        assertThat(BROWSER.holds("matchMedia('(prefers-color-scheme: dark)').matches"))
                .isFalse();

        BROWSER.scripts(false);
        page("", "<p id=\"p\">as written</p><script>document.getElementById('p').textContent = 'changed'</script>");
        assertThat(BROWSER.find("#p").getText()).isEqualTo("as written");
        BROWSER.scripts(true);
    }

    @Test
    void keysArePressedAndPaperIsRead() throws IOException {
        page(
                "<style>@media print {button {display: none}}</style>",
                "<button onclick=\"said.textContent = 'pressed'\">Go</button><p id=\"said\">still</p>");

        BROWSER.press(Keys.TAB, Keys.ENTER);

        assertThat(BROWSER.printed()).contains("pressed").doesNotContain("Go");
    }
}
