package comparand.reference.format;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.diag.Diagnostic;
import comparand.reference.Name;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The encoding of files that declare none, and the format of files by what they hold. */
class EncodingTest {

    private static final String MUELLER = "TY  - JOUR\nTI  - Plain\nAU  - Müller, Jörg\nER  - \n";

    @Test
    void utf8WithAndWithoutItsMarkUtf16WithOneAndWindows1252AreRead() {
        for (var text : new byte[][] {
            MUELLER.getBytes(StandardCharsets.UTF_8),
            ("\uFEFF" + MUELLER).getBytes(StandardCharsets.UTF_8),
            ("\uFEFF" + MUELLER).getBytes(StandardCharsets.UTF_16LE),
            ("\uFEFF" + MUELLER).getBytes(StandardCharsets.UTF_16BE),
            MUELLER.getBytes(Charset.forName("windows-1252"))
        }) {
            assertThat(read(text, new ArrayList<>()).orElseThrow().references())
                    .singleElement()
                    .satisfies(f -> assertThat(f.reference().authors()).containsExactly(Name.person("Müller", "Jörg")));
        }
    }

    @Test
    void theAssumptionOfWindows1252IsSaidWithALineThatShowsIt() {
        var findings = new ArrayList<Diagnostic>();

        var read = read(MUELLER.getBytes(Charset.forName("windows-1252")), findings)
                .orElseThrow();

        assertThat(read.encoding()).isEqualTo("Windows-1252");
        assertThat(read.sample()).contains("AU - Müller, Jörg");
        assertThat(findings).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("encoding-assumed");
            assertThat(f.message()).contains("Müller");
            assertThat(f.span().line()).isEqualTo(3);
        });
    }

    @Test
    void whatIsNoTextStops() {
        assertThat(code("PK\u0003\u0004xxxx".getBytes(StandardCharsets.ISO_8859_1)))
                .isEqualTo("references-not-text");
        assertThat(code("%PDF-1.7 xxx".getBytes(StandardCharsets.UTF_8))).isEqualTo("references-not-text");
        assertThat(code(MUELLER.getBytes(StandardCharsets.UTF_16LE))).isEqualTo("references-not-text");
        assertThat(code(new byte[0])).isEqualTo("references-unknown-format");
        assertThat(code("Dear colleague, ...".getBytes(StandardCharsets.UTF_8))).isEqualTo("references-unknown-format");
    }

    private static String code(byte[] bytes) {
        var findings = new ArrayList<Diagnostic>();
        assertThat(read(bytes, findings)).isEmpty();
        assertThat(findings).hasSize(1).allMatch(Diagnostic::stops);
        return findings.get(0).code();
    }

    @Test
    void theFormatIsKnownByWhatTheFileHolds() {
        assertThat(ReferenceFormat.recognised(MUELLER)).contains(ReferenceFormat.RIS);
        assertThat(ReferenceFormat.recognised("\r\n\r\nPMID- 1\r\nTI  - T.")).contains(ReferenceFormat.NBIB);
        assertThat(ReferenceFormat.recognised("% TY  - no\nsome words\n@article{a,"))
                .contains(ReferenceFormat.BIBTEX);
        assertThat(ReferenceFormat.recognised("\n [ {\"id\": 1")).contains(ReferenceFormat.CSL_JSON);
        assertThat(ReferenceFormat.recognised("write to ann@example.org")).isEmpty();
    }

    private static Optional<ReferenceFile> read(byte[] bytes, List<Diagnostic> findings) {
        return ReferenceFile.read("refs.txt", bytes, findings);
    }
}
