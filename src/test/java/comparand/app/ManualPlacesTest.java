package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.manual.Manual;
import comparand.metric.Catalogue;
import comparand.read.yaml.RecordSchema;
import comparand.unit.TradeSpelling;
import comparand.unit.UnitRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Everything there is has its place in the manual: what it says of it comes from where it is. */
class ManualPlacesTest {

    @Test
    @DisplayName("metrics, conditions, units and findings have their pages and stand in the index")
    void places() {
        var index = WrittenManual.page("index-of-words.html").select("main a").eachText();
        Catalogue.shipped().all().forEach(m -> {
            var page = WrittenManual.page("metrics/" + m.id() + ".html");
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
            assertThat(WrittenManual.page("conditions/" + c.id() + ".html"))
                    .as(c.id())
                    .isNotNull();
            assertThat(index).contains(c.name());
        });
        var units = WrittenManual.page("units.html").select("code").eachText();
        TradeSpelling.spellings().values().forEach(s -> assertThat(units).containsAll(s));
        UnitRow.all().forEach(r -> assertThat(units).contains(r.code()));
        Manual.codes().forEach(code -> {
            assertThat(WrittenManual.page("findings/" + code + ".html"))
                    .as(code)
                    .isNotNull();
            assertThat(index).contains(code);
        });
    }

    @Test
    @DisplayName("a finding's page shows what the tool prints: the finding with its place, why and what to do")
    void findings() {
        for (var code : Manual.codes()) {
            var page = WrittenManual.page("findings/" + code + ".html");
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
            var page = WrittenManual.page("records/" + kind + ".html");
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
            var page = WrittenManual.page("commands/" + name + ".html");
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
        assertThat(WrittenManual.page("commands/index.html")
                        .select("h2#exit-codes + div tbody th")
                        .eachText())
                .containsExactlyInAnyOrder("" + Exit.DONE, "" + Exit.STOPPED, "" + Exit.USAGE, "" + Exit.OUR_FAULT);
    }

    @Test
    @DisplayName("standings, marks, verdicts and steps are all explained")
    void words() throws IOException {
        var explained =
                WrittenManual.page("words.html").select("dl.words > div").eachAttr("id");
        var keys = Files.readAllLines(Path.of("src/main/resources/comparand/compose/text/words-en.properties")).stream()
                .map(l -> l.replaceAll("=.*", ""))
                .filter(k -> k.matches("(standing|mark|verdict|step)\\.[A-Za-z.]*[A-Z_]+|answer\\.untestable\\..*"))
                .map(k -> k.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-"))
                .toList();
        assertThat(keys).hasSizeGreaterThan(45);
        assertThat(explained).containsAll(keys);
    }

    private static boolean isOf(Element entry, String key, com.fasterxml.jackson.databind.JsonNode property) {
        var said = property.path("description").asText().replace("`", "").replaceAll("\\s+", " ");
        return entry.select("dt > code").text().equals(key) && entry.text().contains(said.substring(1));
    }
}
