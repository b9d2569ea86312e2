package comparand.read.proposal;

import comparand.diag.Span;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import comparand.read.csv.CsvForm;
import comparand.read.csv.CsvRows;
import comparand.read.workbook.WorkbookPreview;
import comparand.read.workbook.WorkbookRows;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A table found in a raw file: what has to be declared to read it, and its rows.
 *
 * @param form the lines of its mapping that say how it is read, each with what was assumed
 * @param hiddenIn the reason to look twice at it, if its sheet is hidden
 */
record RawTable(String name, boolean workbook, List<String> form, Optional<String> hiddenIn, RowSource rows) {

    RawTable {
        form = List.copyOf(form);
    }

    static boolean isWorkbook(Path path) {
        return path.getFileName().toString().toLowerCase(Locale.ROOT).matches(".*\\.xls[xm]");
    }

    /**
     * The tables in a file: one in a text file, one per sheet with headings in a workbook.
     *
     * @throws UnreadableRows if there is none
     */
    static List<RawTable> in(Path path) throws IOException {
        var tables = isWorkbook(path) ? sheets(path) : text(path);
        if (tables.isEmpty()) {
            throw new UnreadableRows(
                    Span.startOf(path.getFileName().toString()),
                    "no table with a line of headings was found in `%s`".formatted(path.getFileName()),
                    "give each column a heading of words, all in one line");
        }
        return tables;
    }

    private static List<RawTable> text(Path path) throws IOException {
        var file = path.getFileName().toString();
        var form = CsvForm.of(path);
        var heading = form.flatMap(f -> HeadingRow.among(f.first().stream()
                .map(l -> new HeadingRow.Candidate(l.number(), l.cells()))
                .toList()));
        if (form.isEmpty() || heading.isEmpty()) {
            return List.of();
        }
        var lines = new ArrayList<String>();
        lines.add(line(
                "separator: " + form.get().separator().name().toLowerCase(Locale.ROOT),
                form.get().separatorSeen()));
        lines.add(line("encoding: " + form.get().encoding().name(), form.get().encodingSeen()));
        headingLine(heading.get()).ifPresent(lines::add);
        var rows = new CsvRows(
                path,
                file,
                form.get().separator().sign(),
                form.get().encoding(),
                OptionalInt.of(heading.get().line()));
        return List.of(new RawTable(file, false, lines, Optional.empty(), rows));
    }

    private static List<RawTable> sheets(Path path) throws IOException {
        var file = path.getFileName().toString();
        var tables = new ArrayList<RawTable>();
        for (var sheet : WorkbookPreview.of(path)) {
            var heading = HeadingRow.among(sheet.first().stream()
                    .map(r -> new HeadingRow.Candidate(r.number(), r.cells()))
                    .toList());
            if (heading.isPresent()) {
                var lines = new ArrayList<String>();
                lines.add("sheet: " + YamlWords.quoted(sheet.name()));
                headingLine(heading.get()).ifPresent(lines::add);
                var rows = WorkbookRows.open(
                        path,
                        file,
                        Optional.of(sheet.name()),
                        Span.startOf(file),
                        heading.get().line(),
                        new ArrayList<>());
                tables.add(new RawTable(
                        file, true, lines, sheet.hidden() ? Optional.of(sheet.name()) : Optional.empty(), rows));
            }
        }
        return tables;
    }

    private static Optional<String> headingLine(HeadingRow heading) {
        return heading.line() == 1
                ? Optional.empty()
                : Optional.of(
                        line("header-row: " + heading.line(), heading.seen() + "; what stands above is not read"));
    }

    private static String line(String mapping, String seen) {
        return mapping + "  # " + YamlWords.comment(seen);
    }
}
