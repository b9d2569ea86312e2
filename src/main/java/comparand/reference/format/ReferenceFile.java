package comparand.reference.format;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.reference.Found;
import java.util.List;
import java.util.Optional;

/**
 * A file of references as it was read.
 *
 * @param encoding by its name, such as {@code UTF-8}
 * @param sample a stretch with signs beyond ASCII, by which a person can see whether the encoding is right
 * @param lines of its text, to be shown beside findings
 */
public record ReferenceFile(
        String file,
        ReferenceFormat format,
        String encoding,
        Optional<String> sample,
        List<Found> references,
        List<String> lines) {

    /** The authors of a paper by some ten thousand fit into it. */
    static final int LONGEST_LINE = 200_000;

    public ReferenceFile {
        references = List.copyOf(references);
        lines = List.copyOf(lines);
    }

    /**
     * Reads a file to its end.
     *
     * @param file as the person named it
     * @return empty if its format is not known; every fault is added to the findings, whatever was read
     */
    public static Optional<ReferenceFile> read(String file, byte[] bytes, List<Diagnostic> findings) {
        return Encoded.of(file, bytes, findings).flatMap(e -> read(file, e, findings));
    }

    private static Optional<ReferenceFile> read(String file, Encoded encoded, List<Diagnostic> findings) {
        var format = ReferenceFormat.recognised(encoded.text());
        if (format.isEmpty()) {
            findings.add(Diagnostic.stop(
                    "references-unknown-format",
                    Span.startOf(file),
                    encoded.text().isBlank()
                            ? "this file is empty"
                            : "nothing in this file looks like RIS, PubMed (nbib), BibTeX or CSL-JSON",
                    "the format is known by what a file holds, not by its name",
                    "export the references in one of these formats"));
            return Optional.empty();
        }
        var lines = Lines.of(file, encoded.text());
        // JSON may stand in one line; the length of its texts is bounded where they are read
        var tooLong = format.get() == ReferenceFormat.CSL_JSON
                ? Optional.<Line>empty()
                : lines.stream().filter(l -> l.text().length() > LONGEST_LINE).findFirst();
        if (tooLong.isPresent()) {
            findings.add(Diagnostic.stop(
                    "references-line-too-long",
                    tooLong.get().part(0, 1),
                    "line %d has %d signs, more than the %d a line may have"
                            .formatted(
                                    tooLong.get().number(), tooLong.get().text().length(), LONGEST_LINE),
                    "no field of a reference is that long; this is something else, or has lost its line ends",
                    "export the references anew"));
            return Optional.empty();
        }
        var first = new FirstFindings(findings);
        var references = format.get().read(file, encoded.text(), first);
        first.end(file);
        return Optional.of(new ReferenceFile(
                file,
                format.get(),
                encoded.encoding(),
                encoded.sample(),
                references,
                lines.stream().map(Line::text).toList()));
    }
}
