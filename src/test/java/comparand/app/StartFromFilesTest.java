package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import comparand.read.yaml.RecordSchema;
import comparand.support.Books;
import comparand.support.FolderContent;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A mapping proposed for raw files: each assumption stands beside its line, and what only a person can decide stops. */
class StartFromFilesTest {

    private static final Path DEMO = Path.of("evidence/studies/bench-norrisgate");
    private static final YAMLMapper YAML = new YAMLMapper();

    private static final String EXPORT = """
            Klinik F, Auszug vom 3.4.2026

            Fall;Gerät;Hb [g/L];p_in (mmHg);p_out;flow_lpm;Datum;Platelets [10⁹/L];when;Bemerkung
            C-01;Q;98,5;120;80;1,2;13.04.2026;210;01/02/2026;ok
            C-02;M;n.d.;130;82;1,1;14.04.2026;>500;03/02/2026;
            C-03;M;101,5;128;85;1,3;03.05.2026;180;03/05/2026;coox off
            """;

    @TempDir
    Path folder;

    private Path library() {
        return folder.resolve("library");
    }

    private String proposed(Path... files) throws IOException {
        var arguments = new ArrayList<String>();
        arguments.add("start");
        arguments.add(library().toString());
        arguments.add("--study");
        arguments.add("proposed");
        arguments.add("--from");
        for (var file : files) {
            arguments.add(file.toString());
        }
        var run = CommandLineUse.run(arguments.toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        return Files.readString(library().resolve("studies/proposed/study.yaml"));
    }

    private Path export(String encoding) throws IOException {
        return Files.writeString(
                folder.resolve("export.csv"),
                encoding.equals("UTF-8") ? EXPORT : EXPORT.replace("⁹", "^9"),
                Charset.forName(encoding));
    }

    private static void assertValid(String record) throws IOException {
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(RecordSchema.all().getOrDefault("study.schema.json", ""), InputFormat.JSON);
        assertThat(schema.validate(YAML.readTree(record))).isEmpty();
    }

    @Test
    void whatWasAssumedStandsBehindItsLine() throws IOException {
        var record = proposed(export("UTF-8"));

        assertValid(record);
        assertThat(record.lines().map(String::strip))
                .contains(
                        "- file: export.csv  # 3 rows",
                        "separator: semicolon  # at this sign 4 of the first 5 rows fall into 10 cells",
                        "encoding: UTF-8  # all its signs beyond ASCII are whole in UTF-8",
                        "header-row: 3  # the first row with 10 different words and no number; what stands above is not read",
                        "decimal: comma  # 5 of 5 numbers with a decimal sign have a comma",
                        "missing: [\"n.d.\"]  # among numbers 1 times n.d.",
                        "\"Hb [g/L]\": {input: haemoglobin, unit: g/L}  # CHECK: quantity and unit are read from the heading",
                        "Datum: {holds: date, date-order: day-month-year}  # the only order in which all its dates exist; it"
                                + " holds `13.04.2026`, `14.04.2026`, `03.05.2026`",
                        "Bemerkung: {holds: remark}  # by its heading; it holds `ok`, `coox off`");
    }

    @Test
    void whatOnlyAPersonCanDecideStopsUntilItIsSettled() throws IOException {
        proposed(export("UTF-8"));

        var check = CommandLineUse.run("check", library().toString());

        assertThat(check.code()).isEqualTo(Exit.STOPPED);
        assertThat(check.out())
                .contains(
                        "what counts as one independent result",
                        "which device each code of `Gerät` stands for",
                        "the unit of `p_out`: add `unit: mmHg`",
                        "whether the units read from 3 headings are right",
                        "in which order `when` writes its dates: add `date-order: day-month-year` or `month-day-year`");
        assertThat(check.out().lines().filter(l -> l.startsWith("STOP")).toList())
                .isNotEmpty()
                .allMatch(l -> l.startsWith("STOP undecided  studies/proposed/study.yaml:"));
    }

    @Test
    void anEncodingThatCannotBeKnownIsSaidToBeAssumed() throws IOException {
        assertThat(proposed(export("windows-1252")))
                .contains("encoding: windows-1252  # it is not UTF-8; look whether the signs beyond ASCII are right")
                .contains("Gerät: {holds: device");
    }

    /** The demo's own study record was written by hand: what is proposed must not contradict it. */
    @Test
    void noProposalForTheDemoContradictsItsRecord() throws IOException {
        var byHand = YAML.readTree(DEMO.resolve("study.yaml").toFile());
        var proposed = YAML.readTree(proposed(
                DEMO.resolve("flow-runs.csv"),
                DEMO.resolve("exchanger-runs.csv"),
                DEMO.resolve("haemolysis-runs.csv"),
                DEMO.resolve("bubble-runs.csv")));

        int mapped = 0;
        for (int f = 0; f < 4; f++) {
            for (var key : new String[] {"file", "separator", "decimal", "encoding"}) {
                assertThat(proposed.at("/files/" + f + "/" + key)).isEqualTo(byHand.at("/files/" + f + "/" + key));
            }
            var columns = byHand.at("/files/" + f + "/columns").properties();
            for (var column : columns) {
                var other = proposed.at("/files/" + f + "/columns").get(column.getKey());
                if (!ignored(other) && !ignored(column.getValue())) {
                    mapped++;
                    assertThat(meaning(other)).as(column.getKey()).isEqualTo(meaning(column.getValue()));
                }
            }
        }
        // of 36 columns that mean something, four have names of this study's own
        assertThat(mapped).isGreaterThanOrEqualTo(30);
    }

    private static boolean ignored(JsonNode column) {
        return column.path("holds").asText().equals("ignored")
                || column.path("holds").asText().equals("remark");
    }

    /** What a column gives; whether as an input or as a condition depends on what is computed. */
    private static String meaning(JsonNode column) {
        var quantity = column.path("input").asText(column.path("condition").asText());
        return column.path("holds").asText() + quantity + " "
                + column.path("unit").asText();
    }

    @Test
    void everySheetOfAWorkbookIsProposedAndHiddenOnesAreAskedAbout() throws IOException {
        var book = Books.write(folder.resolve("register 2026.xlsx"), b -> {
            var cases = b.createSheet("Cases");
            Books.set(cases.createRow(0), 0, "Register");
            Books.set(cases.createRow(2), 0, "case", "device", "flow [L/min]");
            Books.set(cases.createRow(3), 0, "C-01", "Q", 1.5);
            Books.set(cases.createRow(4), 0, "C-02", "M", 1.2);
            Books.set(b.createSheet("Corrected").createRow(0), 0, "case", "device");
            Books.set(b.getSheet("Corrected").createRow(1), 0, "C-02", "Q");
            b.setSheetHidden(1, true);
            b.createSheet("Empty");
        });

        var record = proposed(book);

        assertValid(record);
        assertThat(record)
                .contains("- file: register 2026.xlsx  # 2 rows\n    sheet: Cases\n    header-row: 3")
                .contains("sheet: Corrected", "whether the hidden sheet `Corrected` is to be read")
                .contains("\"flow [L/min]\": {input: blood-flow, unit: L/min}")
                .doesNotContain("separator", "encoding", "decimal", "sheet: Empty");
    }

    @Test
    void headingsOfAnySignsGiveAValidRecord() throws IOException {
        var file = Files.writeString(
                folder.resolve("odd.csv"),
                "unit,\"a: b # c\",\"say \"\"no\"\"\",yes,- x,{y},\"two\nlines\",null,ø\nQ-1,1,2,3,4,5,6,7,x\n",
                StandardCharsets.UTF_8);

        var record = proposed(file);

        assertValid(record);
        assertThat(YAML.readTree(record).at("/files/0/columns").properties().stream()
                        .map(Map.Entry::getKey))
                .containsExactly("unit", "a: b # c", "say \"no\"", "yes", "- x", "{y}", "two\nlines", "null", "ø");
    }

    @Test
    void aStudyJoinsALibraryThatIsThereAndNothingElseIsTouched() throws IOException {
        CommandLineUse.run("start", library().toString());
        var before = FolderContent.of(library()).entries();

        proposed(export("UTF-8"));

        var after = new TreeMap<>(FolderContent.of(library()).entries());
        after.keySet().removeIf(k -> k.startsWith("studies/proposed"));
        assertThat(after).isEqualTo(new TreeMap<>(before));
        assertThat(library().resolve("studies/proposed/export.csv")).hasContent(EXPORT);
    }

    @Test
    void whatStandsInTheWayIsSaidAndNothingIsWritten() throws IOException {
        var file = export("UTF-8");
        var noTable = Files.writeString(folder.resolve("words.csv"), "no table\nat all\n");
        proposed(file);
        var before = FolderContent.of(library());

        for (var arguments : new String[][] {
            {"start", library().toString(), "--study", "proposed", "--from", file.toString()},
            {"start", library().toString(), "--study", "../elsewhere", "--from", file.toString()},
            {
                "start",
                library().toString(),
                "--study",
                "other",
                "--from",
                folder.resolve("gone.csv").toString()
            },
            {"start", library().toString(), "--study", "other", "--from", noTable.toString()},
            {"start", folder.toString(), "--from", file.toString()}
        }) {
            var run = CommandLineUse.run(arguments);
            assertThat(run.code()).as(String.join(" ", arguments)).isEqualTo(Exit.STOPPED);
            assertThat(run.err()).isNotBlank().doesNotContain("fault of the tool");
            assertThat(FolderContent.of(library())).isEqualTo(before);
        }
    }
}
