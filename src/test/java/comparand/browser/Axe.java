package comparand.browser;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The rules of accessibility that a program can check: axe-core's rules for WCAG 2.0, 2.1 and 2.2, levels A and AA, and its
 * rules of good practice. What only a person can judge is not among them.
 */
final class Axe {

    private static final String SCRIPT = script();

    private static final String RUN = """
            const done = arguments[arguments.length - 1];
            axe.run(document, {runOnly: {type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa',
                'best-practice']}, resultTypes: ['violations'], rules: {'target-size': {enabled: true}}})
                .then(r => done(JSON.stringify({passes: r.passes.length, violations: r.violations})), e => done(String(e)));
            """;

    private Axe() {}

    /** What is broken in the page as it stands: rule, advice, and each place. Empty is good. */
    static List<String> violations(Browser browser) {
        if (!browser.holds("typeof axe !== 'undefined'")) {
            browser.run(SCRIPT);
        }
        var answer = browser.later(RUN);
        try {
            var result = new ObjectMapper().readTree(answer);
            if (result.path("passes").asInt() < 10) {
                throw new AssertionError("axe-core looked at almost nothing: " + answer);
            }
            var found = new ArrayList<String>();
            for (var violation : result.get("violations")) {
                for (var node : violation.get("nodes")) {
                    found.add(violation.get("id").asText() + " ("
                            + violation.get("help").asText() + ") at "
                            + node.get("target") + ": "
                            + node.path("failureSummary").asText().replaceAll("\\s+", " "));
                }
            }
            return found;
        } catch (IOException e) {
            throw new AssertionError("axe-core did not finish: " + answer, e);
        }
    }

    private static String script() {
        try (var in = Axe.class.getResourceAsStream("/axe.min.js")) {
            return new String(requireNonNull(in, "axe.min.js").readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
