package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The manual as it is written: whole, without a dead link, and with a place for everything there is. */
class ManualTest {

    private static final Map<String, Document> PAGES = WrittenManual.pages();

    @TempDir
    Path folder;

    @Test
    @DisplayName("pages are well-formed, say their language, and have one heading above all")
    void wellFormed() {
        assertThat(WrittenManual.faults()).isEmpty();
        assertThat(PAGES.size()).isGreaterThan(400);
        PAGES.forEach((name, page) -> {
            assertThat(page.documentType()).as(name).isNotNull();
            assertThat(page.select("html").attr("lang")).as(name).isEqualTo("en");
            assertThat(page.title()).as(name).isNotBlank();
            assertThat(page.select("h1")).as(name).hasSize(1);
            assertThat(page.select("script, [style], [onclick], img")).as(name).isEmpty();
            assertThat(page.select("[id]").eachAttr("id")).as(name).doesNotHaveDuplicates();
            assertThat(page.select("table"))
                    .as(name)
                    .allMatch(t -> !t.select("thead th[scope=col]").isEmpty());
        });
        assertThat(PAGES.values().stream().map(Document::title)).doesNotHaveDuplicates();
    }

    @Test
    @DisplayName("headings go down one step at a time")
    void headings() {
        PAGES.forEach((name, page) -> {
            int level = 0;
            for (var heading : page.select("h1, h2, h3, h4")) {
                int next = heading.tagName().charAt(1) - '0';
                assertThat(next).as(name + ": " + heading.text()).isLessThanOrEqualTo(level + 1);
                level = next;
            }
        });
    }

    @Test
    @DisplayName("every link leads to a file of the manual, and to a place that is there")
    void links() {
        PAGES.forEach((name, page) -> page.select("a[href], link[href]").forEach(a -> {
            var href = a.attr("href");
            assertThat(href).as(name).doesNotContain(":").isNotEmpty();
            var parts = href.split("#", -1);
            var file = parts[0].isEmpty() ? name : resolved(name, parts[0]);
            assertThat(WrittenManual.folder().resolve(file))
                    .as("%s links to %s", name, href)
                    .isRegularFile();
            if (parts.length > 1) {
                assertThat(WrittenManual.page(file).select("[id]").eachAttr("id"))
                        .as("%s links to %s", name, href)
                        .contains(parts[1]);
            }
        }));
    }

    @Test
    @DisplayName("every page is reached from the first one, and turning pages goes through all of them")
    void reached() {
        var seen = new HashSet<String>();
        reach("index.html", seen);
        assertThat(seen).containsAll(PAGES.keySet());

        var turned = new ArrayList<String>();
        var at = "index.html";
        while (!at.isEmpty()) {
            turned.add(at);
            at = next(at);
        }
        assertThat(turned).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(PAGES.keySet());
    }

    private static String next(String at) {
        var next = WrittenManual.page(at).selectFirst("a[rel=next]");
        return next == null ? "" : resolved(at, next.attr("href"));
    }

    private static void reach(String name, Set<String> seen) {
        var waiting = new ArrayList<>(List.of(name));
        while (!waiting.isEmpty()) {
            var at = waiting.remove(waiting.size() - 1);
            if (seen.add(at)) {
                WrittenManual.page(at).select("main a[href]").stream()
                        .map(a -> a.attr("href").replaceAll("#.*", ""))
                        .filter(h -> !h.isEmpty())
                        .forEach(h -> waiting.add(resolved(at, h)));
            }
        }
    }

    private static String resolved(String page, String href) {
        var base = Path.of(page).getParent();
        return (base == null ? Path.of(href) : base.resolve(href))
                .normalize()
                .toString()
                .replace('\\', '/');
    }

    @Test
    @DisplayName("it names no place of the machine")
    void noPlaces() {
        PAGES.forEach((name, page) ->
                assertThat(page.html()).as(name).doesNotContain(System.getProperty("java.io.tmpdir") + "/"));
    }

    @Test
    @DisplayName("text has 4.5 to 1 on its ground, in both looks")
    void contrast() throws IOException {
        var css = Files.readString(WrittenManual.folder().resolve("style/manual.css"));
        var looks = css.split("@media \\(prefers-color-scheme: dark\\)", -1);
        assertThat(looks).hasSize(2);
        for (var look : looks) {
            var colours = colours(look);
            for (var ground : List.of("ground", "raised")) {
                for (var text : List.of("ink", "grey", "teal", "plum", "ochre")) {
                    assertThat(contrast(colours.getOrDefault(text, 0), colours.getOrDefault(ground, 0)))
                            .as(text + " on " + ground)
                            .isGreaterThanOrEqualTo(4.5);
                }
            }
        }
    }

    private static Map<String, Integer> colours(String css) {
        var found = new HashMap<String, Integer>();
        java.util.regex.Pattern.compile("--([a-z-]+): #([0-9A-F]{6});")
                .matcher(css)
                .results()
                .forEach(m -> found.putIfAbsent(m.group(1), Integer.parseInt(m.group(2), 16)));
        assertThat(found).containsKeys("ground", "raised", "ink", "grey", "teal", "plum", "ochre");
        return found;
    }

    /** WCAG 2.2, contrast ratio and relative luminance. */
    private static double contrast(int a, int b) {
        double high = Math.max(luminance(a), luminance(b));
        double low = Math.min(luminance(a), luminance(b));
        return (high + 0.05) / (low + 0.05);
    }

    private static double luminance(int rgb) {
        var linear = Stream.of(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255)
                .map(c -> c / 255.0)
                .map(c -> c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4))
                .toList();
        return 0.2126 * linear.get(0) + 0.7152 * linear.get(1) + 0.0722 * linear.get(2);
    }

    @Test
    @DisplayName("a folder that holds something else is left alone")
    void elsewhere() throws IOException {
        var other = Files.createDirectories(folder.resolve("other"));
        Files.writeString(other.resolve("minutes.txt"), "minutes");

        var run = CommandLineUse.run("manual", "--out", other.toString());

        assertThat(run.code()).isEqualTo(Exit.STOPPED);
        assertThat(run.err()).contains("holds something else");
        assertThat(other.resolve("minutes.txt")).hasContent("minutes");
    }

    @Test
    @DisplayName("explain prints the page of a finding, and names the nearest where it is mistyped")
    void explain() {
        var run = CommandLineUse.run("explain", "unit-missing");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains(
                        "What it checks",
                        "Why it matters",
                        "What to do",
                        "STOP unit-missing  sources/example-paper.yaml:20:11")
                .contains("$ comparand check library");
        assertThat(run.out().lines().filter(l -> l.contains("|")).collect(Collectors.joining()))
                .contains("mean: 64.1", "^^^^");

        var mistyped = CommandLineUse.run("explain", "unit-mising");
        assertThat(mistyped.code()).isEqualTo(Exit.USAGE);
        assertThat(mistyped.err()).contains("did you mean `unit-missing`?");
        assertThat(CommandLineUse.run("explain", "phase-of-the-moon").err()).contains("comparand manual");
    }
}
