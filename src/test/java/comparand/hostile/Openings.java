package comparand.hostile;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.flow.Outcome;
import comparand.intake.FormTaking;
import comparand.intake.Interview;
import comparand.intake.Scope;
import comparand.model.Library;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import comparand.read.LibraryReader;
import comparand.read.csv.CsvForm;
import comparand.read.csv.CsvRows;
import comparand.read.results.ResultReader;
import comparand.read.workbook.FormReader;
import comparand.read.workbook.WorkbookPreview;
import comparand.read.workbook.WorkbookRows;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** How the readers of files are opened. */
final class Openings {

    private static final Library BLANK = LibraryReader.read(Path.of("templates/blank"))
            .fold((library, said) -> library, said -> {
                throw new IllegalStateException(said.toString());
            });
    private static final Scope SCOPE = Scope.all(BLANK);
    private static final char[] SEPARATORS = {',', ';', '\t', '|'};

    private Openings() {}

    private static Read read(Outcome<?> outcome) {
        return new Read(outcome.<Boolean>fold((v, f) -> true, f -> false), outcome.findings());
    }

    private static Diagnostic said(UnreadableRows e) {
        return Diagnostic.stop("data-unreadable", e.place(), e.problem(), "it is data", e.fix());
    }

    /** The separator follows from the length, so that each seed is read with each. */
    static Read csv(Path path) throws IOException {
        var findings = new ArrayList<Diagnostic>();
        CsvForm.of(path);
        char separator = SEPARATORS[(int) (Files.size(path) % SEPARATORS.length)];
        return rows(
                findings,
                () -> new CsvRows(path, FuzzedReader.FILE, separator, StandardCharsets.UTF_8, OptionalInt.empty()));
    }

    static Read workbook(Path path) throws IOException {
        var findings = new ArrayList<Diagnostic>();
        try {
            var sheets = WorkbookPreview.of(path);
            var first = sheets.isEmpty() ? "none" : sheets.get(0).name();
            return rows(
                    findings,
                    () -> WorkbookRows.open(
                            path, FuzzedReader.FILE, Optional.of(first), Span.startOf("study.yaml"), 1, findings));
        } catch (UnreadableRows e) {
            findings.add(said(e));
            return new Read(false, findings);
        }
    }

    private interface Rows {
        RowSource open() throws IOException;
    }

    private static Read rows(List<Diagnostic> findings, Rows rows) throws IOException {
        try {
            var source = rows.open();
            var last = new int[2];
            source.forEach(row -> {
                last[0] = row.line();
                last[1] = row.cells().size();
                row.cells().forEach(c -> c.text());
            });
            if (last[0] > 0) {
                source.place(last[0], Math.max(0, last[1] - 1));
                source.heading(0);
            }
            return new Read(true, findings);
        } catch (UnreadableRows e) {
            findings.add(said(e));
            return new Read(false, findings);
        }
    }

    static Read results(Path path) {
        return read(ResultReader.read(path));
    }

    static Read form(Path path) {
        return read(FormReader.read(path).then(form -> {
            var taken = FormTaking.take(form, SCOPE, Map.of());
            return Outcome.of(taken, taken.findings());
        }));
    }

    /** Every line is an answer to the next question, or the wish to go back. */
    static Read answers(Path path) throws IOException {
        var interview = new Interview(SCOPE, Map.of(), "2026-11-20");
        var findings = new ArrayList<Diagnostic>();
        for (var line : new String(Files.readAllBytes(path), StandardCharsets.UTF_8).split("\n", -1)) {
            var question = interview.next();
            if (question.isEmpty()) {
                break;
            }
            if (line.strip().equals("back")) {
                interview.back();
            } else {
                var refused = interview.answer(line);
                refused.ifPresent(r -> findings.add(Diagnostic.stop(
                        "answer-refused",
                        Span.startOf("terminal"),
                        r.replaceAll("\\.+$", ""),
                        "it is an answer",
                        "answer")));
            }
        }
        var kept = interview.kept();
        var again = new Interview(SCOPE, Map.of(), "2026-11-20");
        again.resume(kept);
        findings.addAll(interview.taken().findings());
        return new Read(findings.stream().noneMatch(Diagnostic::stops), findings);
    }
}
