package comparand.read.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import comparand.diag.Span;
import comparand.model.DataCell;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Separated values as RFC 4180 describes them, in the declared encoding; places are those an editor shows. */
class CsvRowsTest {

    @TempDir
    Path folder;

    private CsvRows open(byte[] content, String encoding, OptionalInt heading) throws IOException {
        var file = Files.write(folder.resolve("runs.csv"), content);
        return new CsvRows(file, "runs.csv", ';', Charset.forName(encoding), heading);
    }

    private CsvRows open(String content) throws IOException {
        return open(content.getBytes(StandardCharsets.UTF_8), "UTF-8", OptionalInt.empty());
    }

    private UnreadableRows refused(byte[] content, String encoding, OptionalInt heading) {
        return catchThrowableOfType(
                UnreadableRows.class, () -> open(content, encoding, heading).forEach(row -> {}));
    }

    private static List<RowSource.Row> rows(RowSource source) {
        var rows = new ArrayList<RowSource.Row>();
        source.forEach(rows::add);
        return rows;
    }

    @Test
    void rowsKnowTheirLinesAndCellsTheirPlaces() throws IOException {
        var source = open("unit;flow;note\nQ-1; 1,5 ;\n\n;;\n\"Q\n2\";1,2;\"so; he said \"\"no\"\"\"\nQ-3;1;x\n");

        assertThat(rows(source)).extracting(RowSource.Row::line).containsExactly(2, 5, 7);
        assertThat(rows(source).get(0).cells())
                .containsExactly(new DataCell.Text("Q-1"), new DataCell.Text("1,5"), DataCell.blank());
        assertThat(rows(source).get(1).cells())
                .containsExactly(
                        new DataCell.Text("Q\n2"), new DataCell.Text("1,2"), new DataCell.Text("so; he said \"no\""));
        assertThat(source.place(2, 1)).isEqualTo(new Span("runs.csv", 2, 5, 5));
        assertThat(source.place(5, 0)).isEqualTo(new Span("runs.csv", 5, 1, 2));
        assertThat(source.place(5, 1)).isEqualTo(new Span("runs.csv", 6, 4, 3));
        assertThat(source.place(7, 2)).isEqualTo(new Span("runs.csv", 7, 7, 1));
        assertThat(source.heading(2)).isEqualTo(new Span("runs.csv", 1, 11, 4));
    }

    @Test
    void textAboveTheDeclaredHeadingsIsNotRead() throws IOException {
        var text = "Export \"of\nthe; day\n\nunit;flow\nQ-1;1\n".getBytes(StandardCharsets.UTF_8);
        var source = open(text, "UTF-8", OptionalInt.of(4));

        assertThat(source.header()).containsExactly("unit", "flow");
        assertThat(rows(source)).extracting(RowSource.Row::line).containsExactly(5);
        assertThat(source.heading(1)).isEqualTo(new Span("runs.csv", 4, 6, 4));
        assertThat(refused(text, "UTF-8", OptionalInt.of(3)).problem()).contains("line 3", "empty");
        assertThat(refused(text, "UTF-8", OptionalInt.of(99)).problem()).contains("line 99");
    }

    @Test
    void aByteOfAnotherEncodingIsNamedByItsPlace() {
        var latin = "unit;Gerät\nQ-1;Mühle\n".getBytes(StandardCharsets.ISO_8859_1);

        var found = refused(latin, "UTF-8", OptionalInt.empty());

        assertThat(found.place()).isEqualTo(new Span("runs.csv", 1, 9, 1));
        assertThat(found.fix()).contains("encoding: windows-1252");
    }

    @Test
    void utf8IsNotReadAsSomethingElse() throws IOException {
        var utf8 = "unit;Gerät\nQ-1;Mühle\n".getBytes(StandardCharsets.UTF_8);
        var ascii = "unit;device\nQ-1;M\n".getBytes(StandardCharsets.UTF_8);

        assertThat(refused(utf8, "windows-1252", OptionalInt.empty()).fix()).contains("encoding: UTF-8");
        assertThat(refused(utf8, "ISO-8859-1", OptionalInt.empty()).fix()).contains("encoding: UTF-8");
        assertThat(open(ascii, "windows-1252", OptionalInt.empty()).header()).containsExactly("unit", "device");
    }

    @Test
    void utf16IsKnownByItsMark() throws IOException {
        var utf16 = "unit;Gerät\nQ-1;M\n".getBytes(StandardCharsets.UTF_16);

        assertThat(open(utf16, "UTF-16", OptionalInt.empty()).header()).containsExactly("unit", "Gerät");
        assertThat(refused(utf16, "UTF-8", OptionalInt.empty()).fix()).contains("encoding: UTF-16");
    }

    @Test
    void windowsSignsAreNotThoseOfIso() throws IOException {
        // 0x96 is an en dash in windows-1252 and a control character in ISO 8859-1
        var bytes = new byte[] {'a', ';', 'b', '\n', '1', (byte) 0x96, '2', ';', (byte) 0xE4, '\n'};

        assertThat(rows(open(bytes, "windows-1252", OptionalInt.empty()))
                        .get(0)
                        .cells()
                        .get(0)
                        .text())
                .isEqualTo("1–2");
        assertThat(rows(open(bytes, "windows-1252", OptionalInt.empty()))
                        .get(0)
                        .cells()
                        .get(1)
                        .text())
                .isEqualTo("ä");
    }
}
