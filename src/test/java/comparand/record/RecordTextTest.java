package comparand.record;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.record.Entry;
import comparand.document.record.Field;
import comparand.write.yaml.RecordEdit;
import comparand.write.yaml.RecordYaml;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/** A record written as text says the same when it is read again; a changed one keeps every line that says the same. */
final class RecordTextTest {

    private static final List<String> NOTES = List.of("# methods, page 4", "  # seen by two", "#", "   ");

    /** Read by the library's own loader with the failsafe schema of YAML 1.2, in which every scalar is text. */
    private static Entry loaded(String text) {
        return entry(
                new Load(LoadSettings.builder().setSchema(new FailsafeSchema()).build()).loadFromString(text));
    }

    private static Entry entry(Object o) {
        if (o instanceof java.util.Map<?, ?> map) {
            return new Entry.Fields(map.entrySet().stream()
                    .map(e -> new Field((String) e.getKey(), entry(e.getValue())))
                    .toList());
        }
        if (o instanceof List<?> list) {
            return new Entry.Items(list.stream().map(RecordTextTest::entry).toList());
        }
        return new Entry.Words((String) o);
    }

    @Property(tries = 400)
    void aRecordReadsAsItWasWritten(@ForAll("records") Entry.Fields record) {
        assertThat(loaded(RecordYaml.text(record, List.of()))).isEqualTo(record);
    }

    @Property(tries = 1500)
    void anEditedRecordSaysWhatIsWanted(@ForAll("records") Entry.Fields before, @ForAll("records") Entry.Fields after) {
        var text = RecordYaml.text(before, List.of("a note"));
        var edited = RecordEdit.apply(text, after);
        assertThat(loaded(edited).saysTheSameAs(after)).isTrue();
        assertThat(RecordEdit.apply(edited, after)).isEqualTo(edited);
    }

    @Property(tries = 300)
    void notesOnLinesOfTheirOwnSurvive(@ForAll("records") Entry.Fields record, @ForAll long seed) {
        var random = new Random(seed);
        var lines = new ArrayList<String>();
        int notes = 0;
        for (var line : RecordYaml.text(record, List.of()).split("\n", -1)) {
            if (random.nextInt(3) == 0) {
                lines.add(NOTES.get(random.nextInt(NOTES.size())));
                notes++;
            }
            lines.add(line);
        }
        var text = String.join("\n", lines);
        var wanted = touched(record, random);
        var edited = RecordEdit.apply(text, wanted);
        assertThat(loaded(edited).saysTheSameAs(wanted)).isTrue();
        assertThat(edited.lines().filter(NOTES::contains).count()).isEqualTo(notes);
    }

    /** The record with some texts changed and one key added; nothing is removed. */
    private static Entry.Fields touched(Entry.Fields record, Random random) {
        var fields = new ArrayList<Field>();
        for (var field : record.list()) {
            fields.add(new Field(
                    field.key(),
                    field.value() instanceof Entry.Words && random.nextBoolean()
                            ? Entry.words("changed " + random.nextInt(9))
                            : field.value()));
        }
        fields.add(random.nextInt(fields.size() + 1), Field.of("added", "by hand"));
        return new Entry.Fields(fields);
    }

    static List<Path> recordsOfTheDemo() throws IOException {
        try (var files = Files.walk(Path.of("evidence"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("recordsOfTheDemo")
    void aRecordThatSaysTheSameKeepsItsBytes(Path file) throws IOException {
        var text = Files.readString(file);
        assertThat(RecordEdit.apply(text, (Entry.Fields) loaded(text))).isEqualTo(text);
    }

    @ParameterizedTest
    @MethodSource("recordsOfTheDemo")
    void aKeyMoreIsALineMore(Path file) throws IOException {
        var text = Files.readString(file);
        var record = (Entry.Fields) loaded(text);
        var fields = new ArrayList<>(record.list());
        fields.add(1, Field.of("added", "here"));
        var lines = RecordEdit.apply(text, new Entry.Fields(fields)).lines().collect(Collectors.toList());
        assertThat(lines.remove("added: here")).isTrue();
        assertThat(lines).isEqualTo(text.lines().toList());
    }

    @Test
    void aCorrectedValueChangesItsLines() throws IOException {
        var text = Files.readString(Path.of("evidence/sources/ardley-2023.yaml"));
        var record = (Entry.Fields) loaded(text);
        var values = ((Entry.Items) record.get("values").orElseThrow()).list();
        var changed = new ArrayList<>(values);
        changed.set(1, ((Entry.Fields) values.get(1)).with("mean", Entry.words("52.9 mmHg")));
        var edited = RecordEdit.apply(text, record.with("values", new Entry.Items(changed)));
        assertThat(edited).isEqualTo(text.replace("mean: 51.9 mmHg", "mean: 52.9 mmHg"));
    }

    @Test
    void keysThatGoLeaveRoomForThoseThatCome() {
        var text = "a:\n  on: {x: 1}\n  place: 2\n  printed: p\nlist:\n  - id: B1\n    n: 1\n    m: 2\n    k: 3\n";
        var wanted = new Entry.Fields(List.of(
                new Field("a", new Entry.Fields(List.of(Field.of("n", "1"), Field.of("printed", "p")))),
                new Field(
                        "list",
                        new Entry.Items(
                                List.of(new Entry.Fields(List.of(Field.of("new", "0"), Field.of("k", "3"))))))));
        var edited = RecordEdit.apply(text, wanted);
        assertThat(loaded(edited)).isEqualTo(wanted);
    }

    @Test
    void linesOfAnotherSystemStayWhatTheyAre() {
        var text = "a: 1\r\nb: 2 # two\r\n";
        var wanted = new Entry.Fields(List.of(Field.of("a", "1"), Field.of("c", "3"), Field.of("b", "2")));
        assertThat(RecordEdit.apply(text, wanted)).isEqualTo("a: 1\r\nc: 3\r\nb: 2 # two\r\n");
    }

    @Provide
    static Arbitrary<Entry.Fields> records() {
        return fields(2);
    }

    private static Arbitrary<Entry.Fields> fields(int depth) {
        var keys = Arbitraries.of(
                "source", "kind", "printed", "quote", "place", "values", "read", "n", "blood-flow", "a b", "on");
        return Arbitraries.maps(keys, depth == 0 ? words() : entries(depth - 1))
                .ofMinSize(1)
                .ofMaxSize(6)
                .map(m -> new Entry.Fields(new TreeMap<>(m)
                        .entrySet().stream()
                                .map(e -> new Field(e.getKey(), e.getValue()))
                                .toList()));
    }

    private static Arbitrary<Entry> entries(int depth) {
        return Arbitraries.oneOf(
                words(),
                words(),
                fields(depth).map(f -> f),
                words().list().ofMaxSize(4).map(Entry.Items::new),
                named(depth)
                        .list()
                        .ofMaxSize(4)
                        .uniqueElements(f -> f.text("id").orElse(""))
                        .map(list -> new Entry.Items(List.<Entry>copyOf(list))));
    }

    private static Arbitrary<Entry.Fields> named(int depth) {
        return Arbitraries.of("B1", "B2", "B3", "B4", "B5")
                .flatMap(id -> fields(depth).map(f -> {
                    var list = new ArrayList<Field>();
                    list.add(Field.of("id", id));
                    list.addAll(f.list());
                    return new Entry.Fields(list);
                }));
    }

    private static Arbitrary<Entry> words() {
        var odd = Arbitraries.of(
                "",
                " ",
                "~",
                "null",
                "yes",
                "-",
                "- x",
                "1,5 L/min",
                "73.9 ± 4.6",
                "a: b",
                "a #b",
                "\"q\"",
                "it's",
                "#",
                "|",
                "ends ",
                "key:",
                "two\nlines",
                "tab\there",
                "\\",
                "%",
                "@x",
                "-38 %",
                "0/31",
                "≤ 78",
                "{a}",
                "[1",
                "\uFEFF",
                "é",
                "😀",
                "? x",
                "!t",
                "&a",
                "*a",
                "---",
                "...",
                "<<",
                "=",
                "1:30",
                "\u2028",
                "\u0000",
                "\u00a0",
                "a\u0085b",
                "x : y",
                ": x");
        return Arbitraries.oneOf(
                        odd,
                        Arbitraries.strings().withCharRange(' ', '~').ofMaxLength(150),
                        Arbitraries.strings().withCharRange('\u00a0', '\u2fff').ofMaxLength(8))
                .map(Entry::words);
    }
}
