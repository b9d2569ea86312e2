package comparand.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Chapters are Markdown of which every block is carried out: records are read and commands run when the manual is written; Java is
 * compiled here, and a fragment of it stands in the source.
 */
class ChaptersTest {

    private static final Path FOLDER = Path.of("src/main/resources/comparand/manual/chapters");
    private static final Pattern BLOCK = Pattern.compile("(?ms)^```([^\n]*)\n(.*?)^```$");

    @TempDir
    Path folder;

    /** A fenced block. */
    record Block(String info, String text) {}

    static Stream<String> chapters() {
        return Chapters.FILES.stream();
    }

    static List<Block> blocks(String chapter) throws IOException {
        var blocks = new ArrayList<Block>();
        BLOCK.matcher(Files.readString(FOLDER.resolve(chapter)))
                .results()
                .forEach(m -> blocks.add(new Block(m.group(1), m.group(2))));
        return blocks;
    }

    @Test
    @DisplayName("every chapter is in the manual")
    void files() throws IOException {
        try (var files = Files.list(FOLDER)) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactlyInAnyOrderElementsOf(Chapters.FILES);
        }
    }

    @ParameterizedTest
    @MethodSource("chapters")
    @DisplayName("every block says what it is, and every class compiles against the tool")
    void compiles(String chapter) throws IOException {
        for (var block : blocks(chapter)) {
            assertThat(block.info()).as(chapter).matches("(yaml|csv|properties) \\S+|comparand( \\d+)?|java \\S+");
            if (block.info().startsWith("java comparand/")) {
                var name = block.info().substring("java ".length());
                assertThat(CompiledBlock.of(name, block.text(), folder).name())
                        .isEqualTo(name.replace(".java", "").replace('/', '.'));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("chapters")
    @DisplayName("a fragment stands in the source as it is shown")
    void fragments(String chapter) throws IOException {
        for (var block : blocks(chapter)) {
            if (block.info().equals("java fragment")) {
                var sources = Files.readString(Path.of("src/main/java/comparand/unit/TradeSpelling.java"))
                        + Files.readString(Path.of("src/main/java/comparand/unit/UcumTable.java"));
                assertThat(block.text().lines())
                        .allSatisfy(l -> assertThat(sources).contains(l));
            }
        }
    }

    @Test
    @DisplayName("lines of a language have keys that are there, and the same places")
    void language() throws IOException {
        var english = Files.readString(Path.of("src/main/resources/comparand/compose/text/words-en.properties"));
        var lines = blocks("add-a-language.md").stream()
                .filter(b -> b.info().startsWith("properties"))
                .flatMap(b -> b.text().lines())
                .toList();

        assertThat(lines).hasSizeGreaterThan(2).allSatisfy(line -> {
            var key = line.substring(0, line.indexOf('=') + 1);
            var original = english.lines().filter(l -> l.startsWith(key)).findFirst();
            assertThat(original).as(key).isPresent();
            assertThat(places(line)).isEqualTo(places(original.orElseThrow()));
        });
    }

    private static List<String> places(String line) {
        return Pattern.compile("\\{[^}]*}")
                .matcher(line)
                .results()
                .map(m -> m.group())
                .sorted()
                .toList();
    }
}
