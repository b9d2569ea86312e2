package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Where scripts do not run the page is complete: nothing is missing, and nothing dead is shown. */
class WithoutScriptsBrowserIT {

    private static final Browser BROWSER = Browser.start();

    @BeforeAll
    static void open() {
        BROWSER.scripts(false).open(DemoPage.file()).styled("* {content-visibility: visible !important}");
    }

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @Test
    void theAnswerOfEveryPairStandsInItsRow() {
        int seen = 0;
        for (var question : DemoPage.exploration().get("questions")) {
            for (var pair : question.get("pairs")) {
                var row = BROWSER.find("#t-" + question.get("table").asText() + "-r"
                        + pair.get("row").asInt());
                var answer = result(pair).at("/answer/sentence").asText();
                assertThat(Browser.folded(row.getText()))
                        .as(pair.get("id").asText())
                        .containsIgnoringCase(Browser.folded(answer));
                seen++;
            }
        }
        assertThat(seen).isEqualTo(DemoPage.results().get("pairs").size()).isPositive();
    }

    @Test
    void everySourceIsNamed() {
        var main = BROWSER.shown("main");
        for (var source : DemoPage.results().get("sources")) {
            assertThat(main).contains(Browser.folded(source.get("reference").asText()));
        }
    }

    @Test
    void everyQuestionIsAsked() {
        var main = BROWSER.shown("main");
        for (var question : DemoPage.results().get("questions")) {
            assertThat(main).contains(Browser.folded(question.get("asks").asText()));
        }
    }

    /** HTML: a details element opens without scripts; what it folds away is read, not only present. */
    @Test
    void everyLadderOpensAndTellsItsSteps() {
        var ladders = BROWSER.all("details.ladder");
        assertThat(ladders).hasSizeGreaterThan(50);
        var first = ladders.get(0);
        assertThat(first.getAttribute("open")).isNull();
        first.findElement(By.tagName("summary")).sendKeys(Keys.ENTER);
        assertThat(first.getAttribute("open")).isNotNull();

        for (var question : DemoPage.exploration().get("questions")) {
            for (var pair : question.get("pairs")) {
                for (var side : List.of("ours", "theirs")) {
                    var ladder = BROWSER.find("[id=\"" + anchor(pair.get(side)) + "\"]");
                    var text = Browser.folded(content(ladder));
                    for (var step : comparand(result(pair).get(side).asText()).get("steps")) {
                        assertThat(text)
                                .contains(Browser.folded(step.get("text").asText()));
                    }
                }
            }
        }
    }

    @Test
    void nothingDeadIsShown() {
        assertThat(BROWSER.all("main button, main input, main select, main textarea, dialog"))
                .filteredOn(WebElement::isDisplayed)
                .isEmpty();
        assertThat(BROWSER.find("#controls").isDisplayed()).isFalse();
        assertThat(BROWSER.find("#exploring").isDisplayed()).isFalse();
    }

    @Test
    void everyLinkWithinThePageLeadsSomewhere() {
        var targets = BROWSER.all("a[href^='#']").stream()
                .map(a -> String.valueOf(a.getDomAttribute("href")).substring(1))
                .distinct()
                .toList();

        assertThat(targets).hasSizeGreaterThan(20);
        assertThat(targets)
                .allSatisfy(t -> assertThat(BROWSER.all("[id=\"" + t + "\"]")).hasSize(1));
    }

    private static String content(WebElement element) {
        return String.valueOf(element.getDomProperty("textContent"));
    }

    private static String anchor(JsonNode ladder) {
        return ladder.asText().startsWith("v-") ? ladder.asText() : "v-" + ladder.asText();
    }

    private static JsonNode result(JsonNode shown) {
        return Built.all(DemoPage.results().get("pairs")).stream()
                .filter(p -> p.get("id").equals(shown.get("id")))
                .findFirst()
                .orElseThrow();
    }

    private static JsonNode comparand(String id) {
        return Built.all(DemoPage.results().get("comparands")).stream()
                .filter(c -> c.get("id").asText().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
