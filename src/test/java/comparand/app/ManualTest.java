package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.manual.Manual;
import comparand.metric.Catalogue;
import comparand.read.yaml.RecordSchema;
import comparand.support.FolderContent;
import comparand.unit.TradeSpelling;
import comparand.unit.UnitRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The manual as it is written: whole, without a dead link, and with a place for everything there is. */
class ManualTest {

    @TempDir
    static Path folder;

    private static Path manual;
    private static final Map<String, Document> PAGES = new TreeMap<>();
    private static final List<String> FAULTS = new ArrayList<>();

    @BeforeAll
    static void write() throws IOException {
        manual = folder.resolve("manual");
        var run = CommandLineUse.run("manual", "--out", manual.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains(manual.resolve("index.html").toString());
        try (var files = Files.walk(manual)) {
            for (var file : files.filter(f -> f.toString().endsWith(".html")).toList()) {
                var name = manual.relativize(file).toString().replace('\\', '/');
                var parser = Parser.htmlParser().setTrackErrors(20);
                PAGES.put(name, Jsoup.parse(Files.readString(file), name, parser));
                parser.getErrors().forEach(e -> FAULTS.add(name + ": " + e));
            }
        }
    }

    private static Document page(String name) {
        var page = PAGES.get(name);
        assertThat(page).as(name).isNotNull();
        return java.util.Objects.requireNonNull(page);
    }

    @Test
    @DisplayName("pages are well-formed, say their language, and have one heading above all")
    void wellFormed() {
        assertThat(FAULTS).isEmpty();
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
            assertThat(manual.resolve(file)).as("%s links to %s", name, href).isRegularFile();
            if (parts.length > 1) {
                assertThat(page(file).select("[id]").eachAttr("id"))
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
        var next = page(at).selectFirst("a[rel=next]");
        return next == null ? "" : resolved(at, next.attr("href"));
    }

    private static void reach(String name, Set<String> seen) {
        var waiting = new ArrayList<>(List.of(name));
        while (!waiting.isEmpty()) {
            var at = waiting.remove(waiting.size() - 1);
            if (seen.add(at)) {
                page(at).select("main a[href]").stream()
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
    @DisplayName("metrics, conditions, units and findings have their pages and stand in the index")
    void places() {
        var index = page("index-of-words.html").select("main a").eachText();
        Catalogue.shipped().all().forEach(m -> {
            var page = page("metrics/" + m.id() + ".html");
            assertThat(page).as(m.id()).isNotNull();
            assertThat(page.text()).contains(m.meaning(), m.citations().get(0).toString());
            m.derivations()
                    .forEach(d -> assertThat(page.select(".formula").eachText()).contains(d.formula()));
            m.conditions()
                    .forEach(c -> assertThat(page.text()).contains(c.tolerance().words()));
            assertThat(page.select("h2").eachText().contains("Worked values"))
                    .isEqualTo(!m.worked().isEmpty());
            assertThat(index).contains(m.id(), m.name());
        });
        Catalogue.shipped().conditions().values().forEach(c -> {
            assertThat(page("conditions/" + c.id() + ".html")).as(c.id()).isNotNull();
            assertThat(index).contains(c.name());
        });
        var units = page("units.html").select("code").eachText();
        TradeSpelling.spellings().values().forEach(s -> assertThat(units).containsAll(s));
        UnitRow.all().forEach(r -> assertThat(units).contains(r.code()));
        Manual.codes().forEach(code -> {
            assertThat(page("findings/" + code + ".html")).as(code).isNotNull();
            assertThat(index).contains(code);
        });
    }

    @Test
    @DisplayName("a finding's page shows what the tool prints: the finding with its place, why and what to do")
    void findings() {
        for (var code : Manual.codes()) {
            var page = page("findings/" + code + ".html");
            var example = page.selectFirst("pre.said");
            if (example != null && !page.text().contains("ROW LOG")) {
                assertThat(example.wholeText())
                        .as(code)
                        .startsWith("$ comparand ")
                        .containsPattern("\n(STOP|HOLD|NOTE) " + code + "  \\S+")
                        .contains("\n  why: ", "\n  fix: ");
            }
            assertThat(page.select("h2").eachText())
                    .as(code)
                    .contains("What it checks")
                    .containsAnyOf("Example", "No example");
        }
    }

    @Test
    @DisplayName("every key of every record has its place, its meaning and a line that is read")
    void keys() throws IOException {
        var mapper = new ObjectMapper();
        var without = new ArrayList<String>();
        for (var schema : RecordSchema.all().entrySet()) {
            var kind = schema.getKey().replace(".schema.json", "");
            var page = page("records/" + kind + ".html");
            assertThat(page).as(kind).isNotNull();
            var entries = page.select("dl.keys > div");
            int keys = 0;
            for (var definition : mapper.readTree(schema.getValue()).path("$defs")) {
                for (var property : definition.path("properties").properties()) {
                    keys++;
                    assertThat(entries.stream().anyMatch(e -> isOf(e, property.getKey(), property.getValue())))
                            .as("%s of a %s", property.getKey(), kind)
                            .isTrue();
                }
            }
            assertThat(entries).as("keys of a " + kind).hasSize(keys);
            entries.stream().filter(e -> e.select("pre").isEmpty()).forEach(e -> without.add(kind + " " + e.id()));
        }
        assertThat(without).as("keys without an example line").isEmpty();
    }

    private static boolean isOf(Element entry, String key, com.fasterxml.jackson.databind.JsonNode property) {
        var said = property.path("description").asText().replace("`", "").replaceAll("\\s+", " ");
        return entry.select("dt > code").text().equals(key) && entry.text().contains(said.substring(1));
    }

    @Test
    @DisplayName("every command and every option of it has its place")
    void commands() {
        var run = CommandLineUse.run("--help");
        var names = run.out()
                .lines()
                .dropWhile(l -> !l.startsWith("Commands:"))
                .skip(1)
                .takeWhile(l -> l.startsWith("  "))
                .filter(l -> l.matches("  [a-z].*"))
                .map(l -> l.strip().split(" ", 2)[0])
                .toList();
        assertThat(names).contains("check", "build", "explain", "manual");
        names.forEach(name -> {
            var page = page("commands/" + name + ".html");
            assertThat(page).as(name).isNotNull();
            var options = page.select("dl.keys dt").text();
            CommandLineUse.run(name, "--help")
                    .out()
                    .lines()
                    .map(String::strip)
                    .filter(l -> l.matches("(-\\w, )?--[a-z].*"))
                    .map(l -> l.replaceAll("^(-\\w, )?(--[a-z-]+).*", "$2"))
                    .forEach(o -> assertThat(options).as(name).contains(o));
        });
    }

    @Test
    @DisplayName("the exit codes are those of the tool")
    void exits() {
        assertThat(page("commands/index.html")
                        .select("h2#exit-codes + div tbody th")
                        .eachText())
                .containsExactlyInAnyOrder("" + Exit.DONE, "" + Exit.STOPPED, "" + Exit.USAGE, "" + Exit.OUR_FAULT);
    }

    @Test
    @DisplayName("standings, marks, verdicts and steps are all explained")
    void words() throws IOException {
        var explained = page("words.html").select("dl.words > div").eachAttr("id");
        var keys = Files.readAllLines(Path.of("src/main/resources/comparand/compose/text/words-en.properties")).stream()
                .map(l -> l.replaceAll("=.*", ""))
                .filter(k -> k.matches("(standing|mark|verdict|step)\\.[A-Za-z.]*[A-Z_]+|answer\\.untestable\\..*"))
                .map(k -> k.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-"))
                .toList();
        assertThat(keys).hasSizeGreaterThan(45);
        assertThat(explained).containsAll(keys);
    }

    @Test
    @DisplayName("written again, it has the same bytes; it names no place of the machine")
    void same() throws IOException {
        var before = FolderContent.of(manual);
        var run = CommandLineUse.run("manual", "--out", manual.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(FolderContent.of(manual).entries()).containsExactlyInAnyOrderEntriesOf(before.entries());
        assertThat(PAGES.values().stream()
                        .map(Document::html)
                        .filter(h -> h.contains(System.getProperty("java.io.tmpdir") + "/")))
                .isEmpty();
    }

    @Test
    @DisplayName("text has 4.5 to 1 on its ground, in both looks")
    void contrast() throws IOException {
        var css = Files.readString(manual.resolve("style/manual.css"));
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
