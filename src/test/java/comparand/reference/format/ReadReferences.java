package comparand.reference.format;

import comparand.diag.Diagnostic;
import comparand.reference.Found;
import comparand.reference.Reference;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** What a text of references gives, for tests. */
record ReadReferences(List<Found> found, List<Diagnostic> findings) {

    static ReadReferences of(String text) {
        return of(text, StandardCharsets.UTF_8);
    }

    static ReadReferences lines(String... lines) {
        return of(String.join("\n", lines) + "\n");
    }

    static ReadReferences of(String text, Charset charset) {
        var findings = new ArrayList<Diagnostic>();
        var read = ReferenceFile.read("refs", text.getBytes(charset), findings);
        return new ReadReferences(read.map(ReferenceFile::references).orElse(List.of()), findings);
    }

    List<Reference> references() {
        return found.stream().map(Found::reference).toList();
    }

    Reference only() {
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " references; findings: " + findings);
        }
        return found.get(0).reference();
    }

    List<String> codes() {
        return findings.stream().map(f -> f.code() + " " + f.span().within()).toList();
    }
}
