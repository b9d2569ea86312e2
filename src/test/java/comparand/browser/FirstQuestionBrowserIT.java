package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** The question a reader brings: "does it push harder than what we use now, and who says so?", answered in under three actions. */
class FirstQuestionBrowserIT {

    private static final Browser BROWSER = Browser.start();

    /** Following a link, choosing in a list, pressing a button; scrolling with the eye is none. */
    private int actions;

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @Test
    void isAnsweredInUnderThreeActions() {
        BROWSER.size(1280, 900).open(DemoPage.file()).settle();
        var pairs = DemoPage.resultPairs("pressure-drop");
        var present = pairs.stream()
                .filter(p -> p.get("purpose").asText().equals("against-present-device"))
                .toList();
        assertThat(present).isNotEmpty();

        // no action: the list of questions is the first thing below the title, and says the answer with its place
        var first = BROWSER.shown("#t-Questions-r0");
        assertThat(BROWSER.number("document.getElementById('t-Questions-r0').getBoundingClientRect().top"))
                .as("the first question stands in the first window or the one after it")
                .isLessThan(2 * 900.0);
        for (var pair : present) {
            if (isCompared(pair)) {
                assertThat(first)
                        .containsIgnoringCase(
                                Browser.folded(pair.at("/answer/sentence").asText()));
            }
        }

        // one action: who says so: every published value with its place, and its answer
        act(() -> BROWSER.run("document.querySelector('#t-Questions-r0 a').click()"));
        var section = BROWSER.shown("#s-pressure-drop");
        assertThat(BROWSER.holds("(r => r.top < innerHeight && r.bottom > 0)"
                        + "(document.getElementById('s-pressure-drop').getBoundingClientRect())"))
                .isTrue();
        for (var pair : DemoPage.pairs("pressure-drop")) {
            assertThat(section).contains(pair.get("theirsLocator").asText());
        }
        for (var pair : pairs) {
            assertThat(section)
                    .containsIgnoringCase(
                            Browser.folded(pair.at("/answer/sentence").asText()));
        }

        // two: from a place to the words of the source
        act(() -> BROWSER.run("document.querySelector('#s-pressure-drop td a[href=\"#v-B21\"]').click()"));
        assertThat(BROWSER.shown("#v-B21")).contains("Quillane 15 | 1.5 L/min | 73.9 ± 4.6");
        assertThat(BROWSER.number("document.getElementById('v-B21').getBoundingClientRect().top"))
                .as("the ladder stands in the window")
                .isBetween(-1.0, 880.0);
        assertThat(actions).isLessThan(3);
    }

    private void act(Runnable action) {
        action.run();
        BROWSER.settle().settle().settle();
        actions++;
    }

    private static boolean isCompared(JsonNode pair) {
        return List.of("same", "same-after-conversion")
                .contains(pair.get("standing").asText());
    }
}
