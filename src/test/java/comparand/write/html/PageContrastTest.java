package comparand.write.html;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.chart.Ink;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contrasts of the page by WCAG 2.2: 1.4.3 (text), 1.4.11 (controls and marks); and what greyscale leaves of its colours. */
class PageContrastTest {

    private static final String CSS = Resources.text("page.css");
    private static final double TEXT = 4.5;
    private static final double MARKS = 3;

    private static final List<String> LETTERED = List.of("ink", "grey", "teal", "plum", "ochre");
    private static final List<String> TINTS = List.of("tint-ink", "tint-grey", "tint-teal", "tint-plum", "tint-ochre");

    @Test
    @DisplayName(
            "the formula gives 21 to 1 for black on white, and 4.54 for #767676, as WCAG's understanding documents say")
    void formula() {
        assertThat(PageColours.contrast("#000000", "#FFFFFF")).isEqualTo(21.0);
        // Understanding Success Criterion 1.4.3: the lightest grey that passes on white is #767676
        assertThat(PageColours.contrast("#767676", "#FFFFFF")).isGreaterThan(TEXT);
        assertThat(PageColours.contrast("#777777", "#FFFFFF")).isLessThan(TEXT);
    }

    @ParameterizedTest(name = "dark {0}, grey {1}")
    @CsvSource({"false, false", "true, false", "false, true", "true, true"})
    @DisplayName("text is legible on every ground it stands on, and lines of controls and marks can be seen")
    void contrasts(boolean dark, boolean grey) {
        var colours = PageColours.of(CSS, dark, grey);
        for (var ground : List.of("ground", "raised")) {
            for (var text : LETTERED) {
                assertThat(contrast(colours.get(text), colours.get(ground)))
                        .as(text + " on " + ground)
                        .isGreaterThanOrEqualTo(TEXT);
            }
            assertThat(contrast(colours.get("line"), colours.get(ground))).isGreaterThanOrEqualTo(MARKS);
        }
        for (var tint : TINTS) {
            assertThat(contrast(colours.get("ink"), colours.get(tint))).isGreaterThanOrEqualTo(TEXT);
            assertThat(contrast(colours.get("grey"), colours.get(tint))).isGreaterThanOrEqualTo(TEXT);
            assertThat(contrast(colours.get(tint.substring(5)), colours.get(tint)))
                    .as("a curve on its ribbon, " + tint)
                    .isGreaterThanOrEqualTo(MARKS);
        }
    }

    private static double contrast(
            @org.jspecify.annotations.Nullable String one, @org.jspecify.annotations.Nullable String other) {
        return PageColours.contrast(requireNonNull(one), requireNonNull(other));
    }

    @ParameterizedTest(name = "dark {0}")
    @CsvSource({"false", "true"})
    @DisplayName(
            "in grey no colour has a hue, and each has the luminance of what it stands for, to one step of eight bits")
    void grey(boolean dark) {
        var coloured = PageColours.of(CSS, dark, false);
        PageColours.of(CSS, dark, true).forEach((name, grey) -> {
            assertThat(grey).as(name).matches("#(..)\\1\\1");
            int step = Integer.parseInt(grey.substring(1, 3), 16);
            double of = PageColours.luminance(requireNonNull(coloured.get(name)));
            assertThat(of).as(name).isBetween(luminance(step - 1), luminance(Math.min(255, step + 1)));
        });
    }

    private static double luminance(int grey) {
        return PageColours.luminance(String.format(Locale.ROOT, "#%1$02X%1$02X%1$02X", grey));
    }

    @Test
    @DisplayName("every colour that figures are drawn in has its colour of the look, as fill and as stroke")
    void everyColourOfFiguresTurns() {
        var colour = Pattern.compile("(fill|stroke)=\"(#[0-9A-F]{6})\"").matcher(DemoPage.html(DemoPage.page()));
        var used = new TreeSet<String>();
        while (colour.find()) {
            used.add("svg [%s=\"%s\"] { %s: var(--".formatted(colour.group(1), colour.group(2), colour.group(1)));
        }
        assertThat(used).hasSizeGreaterThan(Ink.values().length);
        assertThat(used).allSatisfy(rule -> assertThat(CSS).contains(rule));
    }
}
