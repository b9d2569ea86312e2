package comparand.reference.format;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.diag.Diagnostic;
import comparand.model.library.SourceRecord;
import comparand.read.yaml.Binder;
import comparand.reference.Proposals;
import comparand.reference.Recorded;
import comparand.reference.Reference;
import comparand.write.yaml.RecordYaml;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Fifty damaged files of each format: findings, references or both, never a fault of the tool; what is proposed can be written. */
class MangledReferencesTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);
    private static final int FILES = 50;

    /** Bytes that mean something to one of the formats or to an encoding. */
    private static final byte[] NASTY = {
        0,
        9,
        10,
        13,
        27,
        32,
        '"',
        '#',
        '%',
        ',',
        '-',
        ':',
        '=',
        '@',
        '[',
        '\\',
        ']',
        '{',
        '}',
        '~',
        (byte) 0x81,
        (byte) 0xC3,
        (byte) 0xE9,
        (byte) 0xFF,
        'T',
        'Y',
        'E',
        'R',
        '&',
        '*',
        '!',
        '|',
        '>',
        '\''
    };

    private static final String WHOLE = """
            TY  - JOUR
            TI  - One {50%} \\ "two" & thrée
            AU  - van der Müller, Jörg
            AU  - Group,
            PY  - 2020
            DA  - 2020/03/04
            T2  - Journal
            SP  - 1
            EP  - 9
            DO  - 10.5555/a_b.1
            N1  - Status: retracted (2021): why
            ER  -
            TY  - PAMP
            TI  - Instructions for use: a pump
            AU  - Maker,
            PY  - 2021
            ET  - Revision C
            LA  - de
            ER  -
            TY  - CHAP
            TI  - A chapter: with a subtitle
            AU  - Ode, Ann, Jr
            ED  - Other, B.
            T2  - Book
            PB  - Press
            CY  - Town
            SN  - 978-3-16-148410-0
            UR  - https://example.org/a?b=%20~c
            ER  -
            """;

    @ParameterizedTest
    @EnumSource(ReferenceFormat.class)
    void damagedFilesGiveFindingsOrReferences(ReferenceFormat format) {
        int touched = 0;
        var whole = whole(format);
        for (int seed = 0; seed < FILES; seed++) {
            var bytes = mangled(whole, new SplittableRandom(format.word().hashCode() * 1000L + seed));
            var findings = new ArrayList<Diagnostic>();
            var read = ReferenceFile.read("refs", bytes, findings);
            var references = read.map(ReferenceFile::references).orElse(List.of());
            assertThat(findings.isEmpty() && references.isEmpty())
                    .as("seed " + seed)
                    .isFalse();
            touched += findings.isEmpty() ? 0 : 1;
            read.ifPresent(r -> placesExist(findings, r));
            var proposals = Proposals.of(references, List.of(), Set.of(), TODAY);
            proposals
                    .references()
                    .forEach(p -> canBeWritten(
                            RecordYaml.text(p.record(TODAY), List.of()),
                            p.found().reference()));
            var named = new TreeMap<String, Reference>();
            proposals.references().forEach(p -> named.put(p.id(), p.found().reference()));
            for (var other : ReferenceFormat.values()) {
                assertThat(other.write(named)).isNotNull();
            }
        }
        assertThat(touched).as("files whose damage was noticed").isGreaterThan(FILES / 3);
    }

    /** The record is read again, and what it says is what the file said. */
    private static void canBeWritten(String yaml, Reference reference) {
        var faults = new ArrayList<Diagnostic>();
        var source = Binder.read("x.yaml", yaml.getBytes(StandardCharsets.UTF_8), SourceRecord.class, faults);

        assertThat(faults).as(yaml).isEmpty();
        assertThat(Recorded.reference(source.orElseThrow())).isEqualTo(reference);
    }

    private static void placesExist(List<Diagnostic> findings, ReferenceFile read) {
        assertThat(findings).allSatisfy(f -> {
            assertThat(f.span().line())
                    .isLessThanOrEqualTo(Math.max(1, read.lines().size()));
            var line = read.lines().isEmpty() ? "" : read.lines().get(f.span().line() - 1);
            assertThat(f.span().column()).isLessThanOrEqualTo(line.codePointCount(0, line.length()) + 1);
        });
    }

    /** Three works with signs of every kind. */
    private static byte[] whole(ReferenceFormat format) {
        var findings = new ArrayList<Diagnostic>();
        var named = new TreeMap<String, Reference>();
        ReferenceFile.read("whole", WHOLE.getBytes(StandardCharsets.UTF_8), findings)
                .orElseThrow()
                .references()
                .forEach(f -> named.put("s" + named.size(), f.reference()));
        assertThat(findings).isEmpty();
        return format.write(named).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] mangled(byte[] whole, SplittableRandom random) {
        var bytes = whole;
        int edits = random.nextInt(1, 9);
        for (int i = 0; i < edits && bytes.length > 1; i++) {
            int at = random.nextInt(bytes.length);
            int length = Math.min(bytes.length - at, random.nextInt(1, 40));
            bytes = switch (random.nextInt(5)) {
                case 0 -> joined(bytes, at, new byte[] {NASTY[random.nextInt(NASTY.length)]}, at + 1);
                case 1 -> joined(bytes, at, new byte[0], at + length);
                case 2 ->
                    joined(
                            bytes,
                            at,
                            new byte[] {NASTY[random.nextInt(NASTY.length)], NASTY[random.nextInt(NASTY.length)]},
                            at);
                case 3 -> joined(bytes, at, java.util.Arrays.copyOfRange(bytes, at, at + length), at);
                default -> random.nextInt(3) > 0 ? bytes : joined(bytes, at, new byte[0], bytes.length);
            };
        }
        return bytes;
    }

    private static byte[] joined(byte[] bytes, int to, byte[] middle, int from) {
        var out = new ByteArrayOutputStream();
        out.write(bytes, 0, to);
        out.writeBytes(middle);
        out.write(bytes, from, bytes.length - from);
        return out.toByteArray();
    }

    @Test
    void deepNestingAndLongLinesAreNoFault() {
        for (var text : List.of(
                "[".repeat(3) + "{\"a\":".repeat(5000),
                "@article{a, title = " + "{".repeat(20_000),
                "TY  - JOUR\nTI  - " + "x ".repeat(200_000) + "\nER  - \n",
                "PMID- 1\nTI  - " + "\\\"{".repeat(20_000) + "\n",
                "@book{a, title = {" + "\\\"{".repeat(3000) + "}".repeat(3000) + "}, author = {"
                        + "{x} and ".repeat(3000) + "}}")) {
            var findings = new ArrayList<Diagnostic>();
            var read = ReferenceFile.read("refs", text.getBytes(StandardCharsets.UTF_8), findings);
            assertThat(findings.isEmpty() && read.isEmpty()).isFalse();
        }
    }
}
