package comparand.benchmark;

import comparand.app.CommandLineUse;
import comparand.browser.Browser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * How a browser bears a page of 5000 published values and 40 devices. Needs a Chromium with its driver, takes some minutes, and
 * so is no part of a build; the report is kept beside the tests.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=comparand.benchmark.LargePage
 * </pre>
 *
 * With {@code -Dexec.args=PAGE} it opens a page that was built before.
 */
public final class LargePage {

    private static final Path REPORT = Path.of("src/test/resources/reports/page.md");
    private static final LargeLibrary.Size SIZE = LargeLibrary.Size.OF_A_PAGE;
    private static final int OPENED = 5;
    private static final int ACTIONS = 9;

    /** From before something is done until the frame that shows it has been painted, in milliseconds. */
    private static final String UNTIL_PAINTED = """
            const done = arguments[arguments.length - 1];
            const act = new Function('i', arguments[0]);
            const start = performance.now();
            const seen = () => requestAnimationFrame(() => { const c = new MessageChannel();
              c.port1.onmessage = () => done(String(performance.now() - start)); c.port2.postMessage(0); });
            const until = new Function('return ' + (arguments[2] || 'true'));
            const wait = () => (until() ? seen() : setTimeout(wait, 1));
            act(arguments[1]);
            wait();
            """;

    private LargePage() {}

    /** Writes the report. */
    public static void main(String[] args) throws IOException {
        var folder = Files.createTempDirectory("comparand-large");
        var page = args.length > 0
                ? Path.of(args[0])
                : build(LargeLibrary.write(folder.resolve("library"), SIZE), folder.resolve("out"));
        try (var browser = Browser.start()) {
            Files.createDirectories(REPORT.getParent());
            Files.writeString(REPORT, report(browser, page));
        }
    }

    private static Path build(Path dossier, Path out) {
        var run = CommandLineUse.run("build", dossier.toString(), "--for", "page", "--out", out.toString());
        if (run.code() != 0) {
            throw new IllegalStateException(run.err());
        }
        return out.resolve("large-1/page.html");
    }

    private static String report(Browser browser, Path page) throws IOException {
        var loaded = new double[OPENED];
        var ready = new double[OPENED];
        for (int i = 0; i < OPENED; i++) {
            browser.open(page);
            // the first frame after the load event in which the page takes input
            var times = browser.later("""
                    const done = arguments[arguments.length - 1];
                    const go = () => requestAnimationFrame(() => setTimeout(() => {
                      const n = performance.getEntriesByType('navigation')[0];
                      done(n.loadEventEnd + ' ' + performance.now() + ' ' + document.getElementById('controls').hidden); }, 0));
                    document.readyState === 'complete' ? go() : addEventListener('load', go);
                    """);
            var parts = times.split(" ", 3);
            if (!parts[2].equals("false")) {
                throw new IllegalStateException("the page did not start");
            }
            loaded[i] = Double.parseDouble(parts[0]);
            ready[i] = Double.parseDouble(parts[1]);
        }
        browser.settle();
        var choosing = times(
                browser,
                "const s = document.querySelector('#controls select'); s.value = i % 2 ? '' : s.options[1].value;"
                        + "s.dispatchEvent(new Event('change', {bubbles: true}))",
                "");
        browser.run("const s = document.querySelector('#controls select'); s.value = s.options[1].value;"
                + "s.dispatchEvent(new Event('change', {bubbles: true}))");
        browser.settle();
        var margin = times(
                browser,
                "const m = document.querySelector('.of-question input[type=number]'); m.value = 5 + i;"
                        + "m.dispatchEvent(new Event('input', {bubbles: true}))",
                "");
        browser.run("window.rows = () => document.querySelectorAll('#t-Pairspressuredrop tbody tr[hidden]').length");
        var filter = times(
                browser,
                "const f = document.querySelector('#controls input[type=search]'); window.before = window.rows();"
                        + "f.value = 'device ' + (i + 10); f.dispatchEvent(new Event('input', {bubbles: true}))",
                "window.rows() !== window.before || performance.now() > window.deadline");
        return text(browser, page, loaded, ready, filter, margin, choosing);
    }

    private static double[] times(Browser browser, String act, String until) {
        return IntStream.range(0, ACTIONS)
                .mapToDouble(i -> {
                    browser.run("window.deadline = performance.now() + 2000");
                    var time = Double.parseDouble(browser.later(UNTIL_PAINTED, act, i, until));
                    browser.settle();
                    return time;
                })
                .toArray();
    }

    private static String text(
            Browser browser,
            Path page,
            double[] loaded,
            double[] ready,
            double[] filter,
            double[] margin,
            double[] choosing)
            throws IOException {
        var afterLoad = IntStream.range(0, ready.length)
                .mapToDouble(i -> Math.max(0, ready[i] - loaded[i]))
                .toArray();
        return """
                # A large page in a browser

                %d published values, %d devices, %.0f rows of pairs in one table; the file has %.1f MB. %s, headless, on %d processors
                that other work may share. Median and largest of %d openings and %d actions each, in milliseconds, from the action
                until the frame that shows it has been painted.

                | what | median | largest | aim |
                |---|---|---|---|
                | load event, from the start of navigation | %s | none |
                | ready for input, from the start of navigation | %s | none |
                | ready for input, from the load event | %s | 1000 |
                | a key in the filter | %s | 100 |
                | another margin | %s | 100 |
                | a question chosen or all shown | %s | 100 |

                Aims: a page is ready within a second of its load event; what is done is answered within 100 milliseconds, the bound of
                the RAIL model for a response, which is common practice.

                Written by `mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=comparand.benchmark.LargePage`.
                """.formatted(
                        SIZE.values(),
                        SIZE.devices(),
                        browser.number("document.querySelectorAll('#t-Pairspressuredrop tbody tr').length"),
                        Files.size(page) / 1e6,
                        browser.text("navigator.userAgent.match(/Chrome\\/[0-9]+/)[0].replace('/', ' ')"),
                        Runtime.getRuntime().availableProcessors(),
                        OPENED,
                        ACTIONS,
                        cells(loaded),
                        cells(ready),
                        cells(afterLoad),
                        cells(filter),
                        cells(margin),
                        cells(choosing));
    }

    private static String cells(double[] times) {
        var sorted = Arrays.stream(times).sorted().toArray();
        return String.format(Locale.ROOT, "%.0f | %.0f", sorted[sorted.length / 2], sorted[sorted.length - 1]);
    }
}
