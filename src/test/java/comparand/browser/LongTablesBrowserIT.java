package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Of long tables the first rows are drawn; here five of the demo's pairs are taken for many. */
class LongTablesBrowserIT {

    private static final Browser BROWSER = Browser.start();

    private static final String ROWS = "[...document.querySelectorAll('#t-Pairspressuredrop tbody tr')]";
    private static final String DRAWN = ROWS + ".filter(r => r.getClientRects().length).map(r => r.id)";

    @BeforeEach
    void open() throws IOException {
        BROWSER.size(1280, 900)
                .open(DemoPage.file(), "#q=pressure-drop")
                .settle()
                .whole();
        BROWSER.run("""
                const data = JSON.parse(document.getElementById('exploration').textContent);
                window.draw = LongTables.of({say: Words.sayer(data.words)}, document.getElementById('t-Pairspressuredrop'), 5);
                window.draw();
                """);
    }

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @Test
    @DisplayName("the first rows are drawn, in the order in which they stand, and how many there are is said")
    void first() {
        var all = BROWSER.texts(ROWS + ".map(r => r.id)");

        assertThat(all).hasSizeGreaterThan(10);
        assertThat(BROWSER.texts(DRAWN)).isEqualTo(all.subList(0, 5));
        assertThat(note()).contains("5").contains(String.valueOf(all.size()));
    }

    @Test
    @DisplayName("of rows that a filter leaves, the first are drawn; where no more fit than are drawn, nothing is said")
    void filtered() {
        BROWSER.run(ROWS + ".forEach((r, i) => (r.hidden = i % 4 !== 0)); window.draw();");

        assertThat(BROWSER.texts(DRAWN))
                .isEqualTo(BROWSER.texts(ROWS + ".filter(r => !r.hidden).slice(0, 5).map(r => r.id)"))
                .isNotEmpty();
        BROWSER.run(ROWS + ".forEach((r, i) => (r.hidden = i > 2)); window.draw();");
        assertThat(BROWSER.texts(DRAWN)).hasSize(3);
        assertThat(BROWSER.holds("document.querySelector('p.note.tools').hidden"))
                .isTrue();
    }

    @Test
    @DisplayName("all are drawn when a reader asks for them, and stay drawn")
    void all() {
        BROWSER.run("document.querySelector('p.note.tools button').click(); window.draw();");

        assertThat(BROWSER.texts(DRAWN)).isEqualTo(BROWSER.texts(ROWS + ".map(r => r.id)"));
        assertThat(BROWSER.holds("document.querySelector('p.note.tools').hidden"))
                .isTrue();
    }

    @Test
    @DisplayName("a table of usual length is left alone")
    void shortTable() {
        assertThat(BROWSER.number("document.querySelectorAll('#t-Gridpressuredrop .beyond').length"))
                .isZero();
        assertThat(BROWSER.number("document.querySelectorAll('p.note.tools').length"))
                .isEqualTo(1);
    }

    private static String note() {
        return BROWSER.shown("p.note.tools");
    }
}
