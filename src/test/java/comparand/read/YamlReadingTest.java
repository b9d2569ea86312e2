package comparand.read;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.diag.Diagnostic;
import comparand.model.library.ConditionText;
import comparand.model.library.SourceRecord;
import comparand.read.yaml.Binder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reading a record: exact places, no silent conversion, all faults at once. */
class YamlReadingTest {

    private static final String HEAD = """
            source: s
            kind: bench-paper
            reference: {type: article, title: T}
            funding: independent
            status: {state: current, checked: 2026-01-01}
            """;

    private static final String VALUE = """
            values:
              - id: V1
                device: d
                metric: m
                printed: "%s"
                %s
            """;

    @ParameterizedTest(name = "printed: {0}")
    @ValueSource(
            strings = {
                "no",
                "NO",
                "yes",
                "on",
                "017",
                "1_000",
                "12:30",
                "1:20:30",
                "1e400",
                "0x1F",
                "0b101",
                ".5",
                "+3",
                "2026-01-01",
                "0.10",
                "true"
            })
    void plainTextIsKeptToTheLetter(String text) {
        var findings = new ArrayList<Diagnostic>();
        var yaml = HEAD + "remark: " + text + "\n";

        var record = read(yaml, findings);

        assertThat(findings).isEmpty();
        assertThat(record.orElseThrow().remark().orElseThrow().value()).isEqualTo(text);
    }

    @ParameterizedTest(name = "mean: {0}")
    @CsvSource(
            delimiter = '|',
            useHeadersInDisplayName = false,
            value = {
                "017 mmHg | zero too many", "1_000 mmHg | underscore", "12:30 | time or a ratio",
                        "1e400 mmHg | power of ten",
                "no | does not start with a number", "0,77 mmHg | decimal comma", ".5 mmHg | not a number",
                        "0x1F | cannot be read as a unit"
            })
    void aNumberThatYamlWouldChangeIsRefusedAndNotChanged(String text, String says) {
        var findings = new ArrayList<Diagnostic>();

        read(HEAD + VALUE.formatted("x", "mean: " + text), findings);

        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).message()).contains(says);
        assertThat(findings.get(0).span().line()).isEqualTo(11);
    }

    @Test
    void printedDigitsSurvive() {
        var record = read(HEAD + VALUE.formatted("0.10", "mean: 0.10 mmHg"), new ArrayList<>())
                .orElseThrow();

        assertThat(record.values().get(0).mean().orElseThrow().value().number().text())
                .isEqualTo("0.10");
    }

    @Test
    void aDecimalCommaIsReadWhereTheFileDeclaresIt() {
        var yaml = HEAD.replace("kind:", "decimal: comma\nkind:") + VALUE.formatted("0,77", "mean: 0,77 mmHg");

        var value = read(yaml, new ArrayList<>())
                .orElseThrow()
                .values()
                .get(0)
                .mean()
                .orElseThrow()
                .value();

        assertThat(value.number().toDouble()).isEqualTo(0.77);
        assertThat(value.number().text()).isEqualTo("0,77");
    }

    @Test
    void everyKeyAndValueKnowsItsLineAndColumn() {
        var record = read(HEAD + VALUE.formatted("73.9", "mean: 73.9 mmHg"), new ArrayList<>())
                .orElseThrow();
        var value = record.values().get(0);

        assertThat(value.id().span()).hasToString("s.yaml:7:9");
        assertThat(value.mean().orElseThrow().span()).hasToString("s.yaml:11:11");
        assertThat(record.funding().span()).hasToString("s.yaml:4:10");
    }

    @Test
    void theCaretPointsIntoTheTextAndBehindTheQuote() {
        var findings = new ArrayList<Diagnostic>();
        read(HEAD + VALUE.formatted("x", "mean: \"73.9 mmHgg\""), findings);

        assertThat(findings.get(0).span()).hasToString("s.yaml:11:17");
        assertThat(findings.get(0).span().length()).isEqualTo(5);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            useHeadersInDisplayName = false,
            value = {
                "conditions: &c {a: 1}        | yaml-anchor",
                "conditions: *c               | yaml-alias",
                "remark: !!str x              | yaml-tag",
                "funding: maker               | duplicate-key",
                "temprature: x                | key-unknown",
                "remark:                      | value-empty",
                "remark: ~                    | value-empty",
                "remark: null                 | value-empty",
                "remark: \"\"                 | value-empty",
                "remark: [a]                  | value-of-wrong-kind",
                "values: 3                    | value-of-wrong-kind",
                "conditions: [a]              | value-of-wrong-kind",
                "document: x                  | value-of-wrong-kind",
                "conditions: {<<: {a: 1}}     | yaml-merge",
                "? [a, b] : c                 | yaml-key",
                "remark: a: b                 | yaml-unreadable",
                "remark: {a                   | yaml-unreadable"
            })
    void whatHasTwoReadingsIsRefused(String line, String code) {
        var findings = new ArrayList<Diagnostic>();

        var record = read(HEAD + line + "\n", findings);

        assertThat(record).isEmpty();
        assertThat(findings).extracting(Diagnostic::code).contains(code);
        assertThat(findings).allSatisfy(f -> assertThat(f.span().line()).isBetween(1, 8));
    }

    @Test
    void aTabAsIndentationIsNamed() {
        var findings = new ArrayList<Diagnostic>();
        read(HEAD + "values:\n\t- id: V1\n", findings);

        assertThat(findings).extracting(Diagnostic::code).containsExactly("yaml-tab");
        assertThat(findings.get(0).span().line()).isEqualTo(7);
    }

    @Test
    void aSecondDocumentIsRefused() {
        var findings = new ArrayList<Diagnostic>();
        read(HEAD + "---\nsource: t\n", findings);

        assertThat(findings).extracting(Diagnostic::code).containsExactly("yaml-several-documents");
    }

    @Test
    void allFaultsOfAFileAreReportedTogether() {
        var findings = new ArrayList<Diagnostic>();
        var yaml = HEAD.replace("bench-paper", "bench paper")
                        .replace("independent", "indipendent")
                        .replace("2026-01-01", "2026-13-01")
                + "temprature: x\n"
                + VALUE.formatted("x", "mean: 5 mmHgg");

        read(yaml, findings);

        assertThat(findings).hasSize(5);
        assertThat(findings).extracting(f -> f.span().line()).containsExactlyInAnyOrder(2, 4, 5, 6, 12);
        assertThat(findings).filteredOn(f -> f.code().equals("key-unknown")).hasSize(1);
    }

    @ParameterizedTest(name = "{0} suggests {1}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {"condition, conditions", "vaules, values", "fundign, funding"})
    void aMistypedKeyIsSuggested(String typed, String meant) {
        var findings = new ArrayList<Diagnostic>();
        read(HEAD + typed + ": x\n", findings);

        assertThat(findings).anySatisfy(f -> assertThat(f.fix()).contains("`" + meant + "`"));
    }

    @Test
    void oneKindOfNumberIsWantedAndOnlyOne() {
        var two = new ArrayList<Diagnostic>();
        read(HEAD + VALUE.formatted("x", "mean: 5 mmHg\n    median: 4 mmHg"), two);
        var none = new ArrayList<Diagnostic>();
        read(HEAD + VALUE.formatted("x", "n: 5 units"), none);

        assertThat(two).extracting(Diagnostic::code).containsExactly("keys-exclude-each-other");
        assertThat(none).extracting(Diagnostic::code).containsExactly("key-missing");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            useHeadersInDisplayName = false,
            value = {
                "12 g/dL | Amount", "12 ± 1 g/dL | Amount", "12 +/- 1 g/dL | Amount", "10 to 12 g/dL | Between",
                        "bovine | Word",
                "not reported | NotReported", "5 mL bolus | Word", "20 mL/min continuous | Word", "1.0 | Amount",
                        "-5 mmol/L | Amount"
            })
    void aConditionIsANumberARangeAWordOrNotReported(String text, String kind) {
        var findings = new ArrayList<Diagnostic>();
        var record = read(HEAD + "conditions: {c: " + text + "}\n", findings);

        assertThat(findings).isEmpty();
        ConditionText condition =
                record.orElseThrow().conditions().get("c").orElseThrow().value();
        assertThat(condition.getClass().getSimpleName()).isEqualTo(kind);
        assertThat(condition.text()).isEqualTo(text.replace("+/-", "±"));
    }

    @Test
    void whatIsNotTextOrNotUtf8OrEmptyIsSaid() {
        assertThat(codes(new byte[] {'P', 'K', 3, 4, 0, 0})).containsExactly("file-not-text");
        assertThat(codes(new byte[] {'a', 0, 'b'})).containsExactly("file-not-text");
        assertThat(codes("source: Müller".getBytes(StandardCharsets.ISO_8859_1)))
                .containsExactly("file-not-utf8");
        assertThat(codes(new byte[0])).containsExactly("file-empty");
        assertThat(codes("# only a comment\n".getBytes(StandardCharsets.UTF_8))).containsExactly("file-empty");
        assertThat(codes("- a\n- b\n".getBytes(StandardCharsets.UTF_8))).containsExactly("file-not-a-record");
        assertThat(codes("just words".getBytes(StandardCharsets.UTF_8))).containsExactly("file-not-a-record");
    }

    @Test
    void deepNestingIsRefusedWithoutExhaustingTheStack() {
        assertThat(codes(("a: " + "[".repeat(100_000)).getBytes(StandardCharsets.UTF_8)))
                .containsExactly("yaml-too-deep");
        assertThat(codes(("a: " + "{b: ".repeat(50_000)).getBytes(StandardCharsets.UTF_8)))
                .containsExactly("yaml-too-deep");
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheText() {
        var findings = new ArrayList<Diagnostic>();

        assertThat(read("\uFEFF" + HEAD, findings)).isPresent();
    }

    private static List<String> codes(byte[] bytes) {
        var findings = new ArrayList<Diagnostic>();
        assertThat(Binder.read("s.yaml", bytes, SourceRecord.class, findings)).isEmpty();
        return findings.stream().map(Diagnostic::code).toList();
    }

    private static Optional<SourceRecord> read(String yaml, List<Diagnostic> findings) {
        return Binder.read("s.yaml", yaml.getBytes(StandardCharsets.UTF_8), SourceRecord.class, findings);
    }
}
