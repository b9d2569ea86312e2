package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.Built;
import comparand.support.LibraryCopy;
import comparand.support.OutputTexts;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What takes no part, and what stands under a concern, is said in every output that sets values side by side. */
class SetAsideEverywhereTest {

    private static final List<String> OUTPUTS = List.of(
            "evidence-workbook.xlsx",
            "evidence-table.pdf",
            "committee-brief.pdf",
            "talk.pptx",
            "manuscript.docx",
            "page.html");

    @TempDir
    Path folder;

    @Test
    @DisplayName("every value that is set aside stands with its reason in every output")
    void everywhere() {
        var built = Built.demo();
        var texts = texts(built);
        var aside = Built.all(built.results().get("set-aside"));

        assertThat(aside).hasSize(3);
        assertThat(OUTPUTS)
                .allSatisfy(output -> assertThat(aside)
                        .allSatisfy(a -> assertThat(texts.get(output))
                                .as(output)
                                .contains(folded(a.get("words").asText()))));
    }

    @Test
    @DisplayName("a concern about a source is said beside the values of it in every output")
    void concern() throws IOException {
        var library = LibraryCopy.of(Path.of("evidence"), folder.resolve("library"));
        LibraryCopy.edit(
                library.resolve("sources/bonvale-2022.yaml"),
                "state: current",
                "state: concern, since: 2026-10, notice: raw data are being looked at");
        var texts = texts(
                Built.of(library.resolve("dossiers/small-oxygenators.yaml").toString()));

        assertThat(OUTPUTS)
                .allSatisfy(output -> assertThat(texts.get(output)).as(output).contains("concern"));
        assertThat(OUTPUTS.stream().filter(o -> !o.equals("committee-brief.pdf")))
                .allSatisfy(output -> assertThat(texts.get(output)).as(output).contains("concern expressed"));
    }

    private static Map<String, String> texts(Built built) {
        var texts = new TreeMap<String, String>();
        OutputTexts.of(built).forEach((file, read) -> texts.put(file, folded(String.join("\n", read))));
        return texts;
    }

    private static String folded(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ").toLowerCase(Locale.ROOT);
    }
}
