package comparand.reference.format;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * The text of a file whose format declares no encoding: UTF-8 where every byte fits it, UTF-16 behind its mark, else
 * Windows-1252, which is an assumption and is said.
 *
 * @param encoding its name
 * @param sample a line with signs beyond ASCII, by which a person can see whether the encoding is right; empty without any
 */
record Encoded(String text, String encoding, Optional<String> sample) {

    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final char UNREADABLE = '\uFFFD';
    private static final int LONGEST_SAMPLE = 70;

    /** Empty if the bytes are no text; the finding says what they are. */
    static Optional<Encoded> of(String file, byte[] bytes, List<Diagnostic> findings) {
        var other = Magic.of(bytes);
        if (other.isPresent()) {
            findings.add(Diagnostic.stop(
                    "references-not-text",
                    Span.startOf(file),
                    "this is %s, not a text file of references".formatted(other.get()),
                    "references are read from RIS, PubMed (nbib), BibTeX or CSL-JSON",
                    "export the references in one of these formats"));
            return Optional.empty();
        }
        if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
            return strict(bytes, StandardCharsets.UTF_16)
                    .or(() -> Optional.of(new String(bytes, StandardCharsets.UTF_16)))
                    .map(t -> of(file, t, "UTF-16", findings));
        }
        var utf8 = strict(bytes, StandardCharsets.UTF_8);
        if (utf8.isPresent()) {
            return utf8.map(t -> of(file, t.startsWith("\uFEFF") ? t.substring(1) : t, "UTF-8", findings));
        }
        var encoded = of(file, new String(bytes, WINDOWS), "Windows-1252", findings);
        findings.add(Diagnostic.note(
                "encoding-assumed",
                span(file, encoded),
                "the bytes of this file are not UTF-8, and were read as Windows-1252: "
                        + encoded.sample.map(s -> "`" + s + "`").orElse("no line shows it"),
                "the format declares no encoding, and names read in the wrong one are misspelt for good",
                "if this line is wrong, save the file as UTF-8 and import it again"));
        return Optional.of(encoded);
    }

    private static Encoded of(String file, String text, String encoding, List<Diagnostic> findings) {
        var lines = Lines.of(file, text);
        lines.stream()
                .filter(l -> l.text().indexOf(UNREADABLE) >= 0)
                .findFirst()
                .ifPresent(l -> findings.add(Diagnostic.note(
                        "sign-unreadable",
                        l.part(l.text().indexOf(UNREADABLE), 1),
                        "line %d holds a sign that %s cannot say".formatted(l.number(), encoding),
                        "the word it stands in is misspelt from here on",
                        "mend the word in the record that is written")));
        return new Encoded(
                text,
                encoding,
                lines.stream()
                        .map(l -> l.text().strip())
                        .filter(l -> l.chars().anyMatch(c -> c > 0x7F))
                        .findFirst()
                        .map(Encoded::shortened));
    }

    private static Span span(String file, Encoded encoded) {
        return Lines.of(file, encoded.text).stream()
                .filter(l -> l.text().chars().anyMatch(c -> c > 0x7F))
                .findFirst()
                .map(Line::whole)
                .orElse(Span.startOf(file));
    }

    /** The stretch around the first sign beyond ASCII. */
    private static String shortened(String line) {
        int at = 0;
        while (line.charAt(at) <= 0x7F) {
            at++;
        }
        int from = Math.max(0, Math.min(at - LONGEST_SAMPLE / 2, line.length() - LONGEST_SAMPLE));
        return Plain.text(line.substring(from, Math.min(line.length(), from + LONGEST_SAMPLE)))
                .replace('`', '\'');
    }

    private static Optional<String> strict(byte[] bytes, Charset charset) {
        try {
            return Optional.of(charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    private static boolean startsWith(byte[] bytes, int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }
}
