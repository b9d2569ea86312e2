package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Where rows are cards there are no headings to press, and pairs are sorted by a list of orders. */
class SortedCardsBrowserIT {

    private static final int OURS = 2;
    private static final String LIST = "document.querySelector('#s-pressure-drop .orders select')";

    private static final Browser BROWSER = Browser.start();

    @BeforeEach
    void narrow() {
        BROWSER.size(390, 800)
                .open(DemoPage.file(), "#q=pressure-drop")
                .settle()
                .whole();
    }

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @Test
    @DisplayName("the pairs come in the order of the values of the column, and go back into that of the report")
    void sorts() {
        var report = values();
        assertThat(report).hasSizeGreaterThan(5);

        choose("Pairspressuredrop." + OURS + ".d");

        var sorted = report.stream().sorted(Comparator.reverseOrder()).toList();
        assertThat(values()).isEqualTo(sorted).isNotEqualTo(report);
        assertThat(BROWSER.address()).contains("sort=Pairspressuredrop." + OURS + ".d");

        choose("");

        assertThat(values()).isEqualTo(report);
        assertThat(BROWSER.address()).doesNotContain("sort=");
    }

    @Test
    @DisplayName("the list stands where there are cards, and only there")
    void onlyWhereThereAreCards() {
        assertThat(BROWSER.number(LIST + ".getClientRects().length")).isPositive();

        BROWSER.size(1280, 800).settle();

        assertThat(BROWSER.number(LIST + ".getClientRects().length")).isZero();
    }

    private static void choose(String order) {
        BROWSER.run(
                "const s = " + LIST + "; s.value = arguments[0]; s.dispatchEvent(new Event('change', {bubbles: true}))",
                order);
        BROWSER.settle();
    }

    /** The numbers of our values, which all begin with one, from the first row to the last. */
    private static List<Double> values() {
        return Built.all(BROWSER.data(
                        "[...document.querySelectorAll('#t-Pairspressuredrop tbody tr')].map(r => parseFloat(r.cells["
                                + OURS + "].querySelector('.v').textContent))"))
                .stream()
                .map(JsonNode::asDouble)
                .toList();
    }
}
