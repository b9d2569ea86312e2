package comparand.read;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Span;
import comparand.model.RowSource;
import comparand.model.library.DataFileRecord;
import comparand.read.csv.CsvRows;
import comparand.read.workbook.WorkbookRows;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** How a data file is to be opened, after its mapping was found to say all that its kind needs and nothing else. */
final class DataFileForm {

    private static final int LAST_ROW = 1_048_576;

    /** Opens the file; what is worth a note in it is added to the findings. */
    private interface Opening {
        RowSource open(Path path, String file, List<Diagnostic> findings) throws IOException;
    }

    private final Opening opening;

    private DataFileForm(Opening opening) {
        this.opening = opening;
    }

    RowSource open(Path path, String file, List<Diagnostic> findings) throws IOException {
        return opening.open(path, file, findings);
    }

    /** The form a mapping describes; empty when it has a fault, which was added to the findings. */
    static Optional<DataFileForm> of(DataFileRecord mapping, List<Diagnostic> findings) {
        int before = findings.size();
        if (mapping.gives().isEmpty() && mapping.describes().isEmpty()) {
            findings.add(missing(mapping, "gives", "the metrics to be computed from it", "gives: [...]"));
        }
        var heading = headingLine(mapping, findings);
        var form = mapping.isWorkbook() ? workbook(mapping, heading, findings) : text(mapping, heading, findings);
        return findings.size() == before ? form : Optional.empty();
    }

    private static Optional<DataFileForm> workbook(
            DataFileRecord mapping, OptionalInt heading, List<Diagnostic> findings) {
        refused(mapping.separator(), "separator", "a workbook", findings);
        refused(mapping.encoding(), "encoding", "a workbook", findings);
        // which sheets there are is known once the workbook is open
        return Optional.of(new DataFileForm((path, file, notes) -> WorkbookRows.open(
                path, file, mapping.sheet().map(Located::value), mapping.split().span(), heading.orElse(1), notes)));
    }

    private static Optional<DataFileForm> text(DataFileRecord mapping, OptionalInt heading, List<Diagnostic> findings) {
        refused(mapping.sheet(), "sheet", "a file of separated values", findings);
        if (mapping.separator().isEmpty()) {
            findings.add(missing(mapping, "separator", "comma, semicolon, tab or bar", "separator: semicolon"));
        }
        if (mapping.decimal().isEmpty()) {
            findings.add(
                    missing(mapping, "decimal", "the decimal sign of its numbers: point or comma", "decimal: point"));
        }
        if (mapping.encoding().isEmpty()) {
            findings.add(missing(mapping, "encoding", "the encoding of its text, such as UTF-8", "encoding: UTF-8"));
        }
        var charset = mapping.encoding().flatMap(e -> charset(e, findings));
        return charset.flatMap(c -> mapping.separator()
                .map(s -> new DataFileForm(
                        (path, file, notes) -> new CsvRows(path, file, s.value().sign(), c, heading))));
    }

    private static OptionalInt headingLine(DataFileRecord mapping, List<Diagnostic> findings) {
        if (mapping.headerRow().isEmpty()) {
            return OptionalInt.empty();
        }
        var number = mapping.headerRow().get().value();
        if (number.decimals() == 0 && number.toDouble() >= 1 && number.toDouble() <= LAST_ROW) {
            return OptionalInt.of(number.value().intValue());
        }
        findings.add(Diagnostic.stop(
                "value-unreadable",
                mapping.headerRow().get().span(),
                "`%s` is no line of a file".formatted(number),
                "`header-row` has to be the number of the line with the headings",
                "count from the top of the file: the first line is 1"));
        return OptionalInt.empty();
    }

    private static void refused(
            Optional<? extends Located<?>> given, String key, String kind, List<Diagnostic> findings) {
        given.ifPresent(value -> findings.add(Diagnostic.stop(
                "key-not-for-this-file",
                value.span(),
                "`%s` has no meaning for %s".formatted(key, kind),
                "a key nobody reads would be lost without a word",
                "take the line out")));
    }

    private static Diagnostic missing(DataFileRecord mapping, String key, String says, String line) {
        Span at = mapping.file().span();
        return Diagnostic.stop(
                "key-missing",
                at,
                "`%s` is missing from the mapping of `%s`".formatted(key, mapping.name()),
                "it says: " + says,
                "add `%s`".formatted(line));
    }

    private static Optional<Charset> charset(Located<String> encoding, List<Diagnostic> findings) {
        try {
            return Optional.of(Charset.forName(encoding.value()));
        } catch (IllegalArgumentException e) {
            findings.add(Diagnostic.stop(
                    "encoding-unknown",
                    encoding.span(),
                    "`%s` is not an encoding known here".formatted(encoding.value()),
                    "read in another encoding, signs and units change",
                    "write `UTF-8`, `windows-1252`, `ISO-8859-1` or `UTF-16`"));
            return Optional.empty();
        }
    }
}
