package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import comparand.intake.Interview;
import comparand.intake.Scope;
import comparand.support.FilledForms;
import comparand.support.LibraryCopy;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One invented paper, entered through the workbook and through the questions by somebody who never saw a record. */
final class TwoWaysInTest {

    private static final Path RECORD = Path.of("sources/ardley-2023.yaml");
    private static final YAMLMapper YAML = new YAMLMapper();

    @TempDir
    Path folder;

    private Path library;

    /** What is filled in, by heading. */
    private record Sheet(Map<String, String> source, List<Map<String, String>> values) {
        static Sheet read() throws IOException {
            return YAML.readValue(
                    Path.of("src/test/resources/spec/intake/ardley-2023.yaml").toFile(), new TypeReference<>() {});
        }
    }

    @BeforeEach
    void aLibraryWithoutThePaper() throws IOException {
        library = LibraryCopy.of(Path.of("evidence"), folder.resolve("library"));
        Files.delete(library.resolve(RECORD));
    }

    @Test
    void workbookAndQuestionsGiveTheSameBytes() throws IOException {
        var byWorkbook = byWorkbook(Sheet.read());
        Files.delete(library.resolve(RECORD));
        var byQuestions = byQuestions(Sheet.read());

        assertThat(byQuestions).isEqualTo(byWorkbook);
        assertThat(withoutReaders(byWorkbook))
                .isEqualTo(withoutReaders(Files.readString(Path.of("evidence").resolve(RECORD))));
    }

    @Test
    void theSameFormTakenAgainChangesNothing() throws IOException {
        var once = byWorkbook(Sheet.read());
        var again = CommandLineUse.run("intake", "take", form().toString(), "--library", library.toString());
        assertThat(again.out()).contains("Nothing to write");
        assertThat(Files.readString(library.resolve(RECORD))).isEqualTo(once);
    }

    @Test
    void whatWasAnsweredIsKeptWhenTheSessionEndsAnywhere() throws IOException {
        var whole = byQuestions(Sheet.read());
        Files.delete(library.resolve(RECORD));
        var script = script(Sheet.read());
        // the session breaks off after every seventh answer, as when a window is closed
        for (int at = 0; at < script.size(); at += 7) {
            var part = new ArrayList<String>();
            if (at > 0 && Files.exists(library.resolve(".unfinished-value.yaml"))) {
                part.add("y");
            }
            part.addAll(script.subList(at, Math.min(at + 7, script.size())));
            assertThat(answer(part)).isZero();
        }
        var text = Files.exists(library.resolve(RECORD)) ? Files.readString(library.resolve(RECORD)) : "";
        assertThat(withoutValues(text)).isEqualTo(withoutValues(whole));
    }

    private Path form() {
        return folder.resolve("intake_AB.xlsx");
    }

    private String byWorkbook(Sheet sheet) throws IOException {
        var make = CommandLineUse.run("intake", "make", library.toString(), "--out", form().toString());
        assertThat(make.code()).as(make.err()).isZero();
        FilledForms.fill(form(), book -> {
            FilledForms.start(book, "AB", CommandLineUse.TODAY.toString());
            FilledForms.row(book.getSheet("Sources"), FilledForms.firstEmpty(book.getSheet("Sources")), sheet.source());
            for (int i = 0; i < sheet.values().size(); i++) {
                var row = new HashMap<>(sheet.values().get(i));
                // a question that leads to others; the workbook has their columns
                row.remove("further conditions");
                FilledForms.row(book.getSheet("Values"), i, row);
                FilledForms.cell(book.getSheet("Values"), i, "source")
                        .setCellValue(sheet.source().get("source"));
            }
        });
        var take = CommandLineUse.run("intake", "take", form().toString(), "--library", library.toString());
        assertThat(take.code()).as(take.err()).isZero();
        return Files.readString(library.resolve(RECORD));
    }

    private String byQuestions(Sheet sheet) throws IOException {
        assertThat(answer(script(sheet))).isZero();
        return Files.readString(library.resolve(RECORD));
    }

    /** What is typed, question after question, up to the last value. */
    private List<String> script(Sheet sheet) {
        var files = RecordFiles.open(library).fold((f, said) -> f, said -> {
            throw new AssertionError(String.valueOf(said));
        });
        var lines = new ArrayList<String>();
        var records = new HashMap<>(files.records());
        for (int i = 0; i < sheet.values().size(); i++) {
            var interview = new Interview(Scope.all(files.library()), records, CommandLineUse.TODAY.toString());
            var facts = new HashMap<>(sheet.source());
            facts.put("reader's initials", "AB");
            facts.put(
                    "conditions of all values",
                    "test-model, species, temperature, oxygen-fraction, gas-blood-ratio, gas-volume-basis");
            boolean inSource = true;
            for (var question = interview.next(); question.isPresent(); question = interview.next()) {
                var heading = question.get().heading();
                inSource &= !heading.equals("id");
                var text = (inSource ? facts : sheet.values().get(i)).getOrDefault(heading, "");
                assertThat(interview.answer(text)).as(heading).isEmpty();
                if (i == 0 || !List.of("reader's initials", "source").contains(heading)) {
                    lines.add(text);
                }
            }
            lines.add("y");
            lines.add(i + 1 < sheet.values().size() ? "y" : "n");
            records.putAll(interview.taken().sources());
        }
        return lines;
    }

    private int answer(List<String> lines) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        int code = Main.run(
                new String[] {"add", library.toString()},
                new ByteArrayInputStream(String.join("\n", lines).concat("\n").getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                CommandLineUse.TODAY);
        assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
        return code;
    }

    private static JsonNode withoutReaders(String record) throws IOException {
        var tree = YAML.readTree(record);
        tree.get("values").forEach(v -> ((ObjectNode) v).remove("read"));
        return texts(tree);
    }

    private static JsonNode withoutValues(String record) throws IOException {
        var tree = (ObjectNode) YAML.readTree(record);
        tree.remove("values");
        return tree;
    }

    /** Every scalar as text: the tool reads no types, and quotes do not matter. */
    private static JsonNode texts(JsonNode node) {
        if (node.isObject()) {
            node.fieldNames().forEachRemaining(name -> ((ObjectNode) node).set(name, texts(node.get(name))));
            return node;
        }
        if (node.isArray()) {
            var list = YAML.createArrayNode();
            node.forEach(n -> list.add(texts(n)));
            return list;
        }
        return YAML.getNodeFactory().textNode(node.asText());
    }
}
