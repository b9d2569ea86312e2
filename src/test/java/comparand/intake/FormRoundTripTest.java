package comparand.intake;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.Edition;
import comparand.document.record.Entry;
import comparand.model.Library;
import comparand.read.LibraryReader;
import comparand.read.workbook.FormReader;
import comparand.read.yaml.RecordPlaces;
import comparand.write.xlsx.FormWriter;
import comparand.write.yaml.RecordYaml;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** A record written into a form and taken back is the record it was. */
final class FormRoundTripTest {

    private static final Library DEMO = LibraryReader.read(Path.of("evidence")).fold((l, said) -> l, said -> {
        throw new AssertionError(String.valueOf(said));
    });

    private static final Edition EDITION =
            new Edition("Form", "", LocalDate.of(2026, 11, 20), "", "tool", "", "draft", List.of(), List.of(), "en");

    private static Taken throughForm(List<Entry.Fields> records, Map<String, Entry.Fields> existing) {
        try {
            var bytes = new ByteArrayOutputStream();
            FormWriter.write(IntakeForm.of(Scope.all(DEMO), records, records, EDITION), bytes);
            var file = Files.createTempFile("form", ".xlsx");
            try {
                Files.write(file, bytes.toByteArray());
                return FormReader.read(file)
                        .map(f -> FormTaking.take(f, Scope.all(DEMO), existing))
                        .fold((t, said) -> t, said -> {
                            throw new AssertionError(String.valueOf(said));
                        });
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everySourceOfTheDemoComesBackAsItIs() throws IOException {
        var records = new ArrayList<Entry.Fields>();
        for (var id : DEMO.sources().keySet()) {
            var file = "sources/" + id + ".yaml";
            RecordPlaces.of(file, Files.readAllBytes(Path.of("evidence", file))).map(r -> records.add(r.record()));
        }
        assertThat(records).hasSizeGreaterThanOrEqualTo(12);
        var taken = throughForm(records, existing(records));

        for (var record : records) {
            var id = record.text("source").orElseThrow();
            assertThat(taken.sources().get(id))
                    .satisfies(back -> assertThat(back.saysTheSameAs(record))
                            .as("%s\n%s", RecordYaml.text(back, List.of()), RecordYaml.text(record, List.of()))
                            .isTrue());
        }
    }

    private static Map<String, Entry.Fields> existing(List<Entry.Fields> records) {
        var all = new LinkedHashMap<String, Entry.Fields>();
        records.forEach(r -> all.put(r.text("source").orElseThrow(), r));
        return all;
    }

    /** Random records, made by filling random slots with what each may hold. */
    @Property(tries = 25)
    void aRandomRecordComesBackAsItIs(@ForAll long seed) {
        var random = new Random(seed);
        var record = RandomRecords.source(Scope.all(DEMO), random);
        var taken = throughForm(List.of(record), Map.of());

        assertThat(taken.findings()).isEmpty();
        assertThat(taken.sources().get(record.text("source").orElseThrow())).isEqualTo(record);
    }

    /** The same on the way through the text of a file. */
    @Property(tries = 200)
    void aRandomRecordReadsAsItWasWritten(@ForAll long seed) {
        var record = RandomRecords.source(Scope.all(DEMO), new Random(seed));
        var text = RecordYaml.text(record, List.of()).getBytes(StandardCharsets.UTF_8);
        var read = RecordPlaces.of("sources/x.yaml", text)
                .<Entry.Fields>fold((r, said) -> r.record(), said -> Entry.Fields.NONE);
        assertThat(read).isEqualTo(record);
    }
}
