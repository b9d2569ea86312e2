package comparand.app;

import comparand.compose.ledger.LedgerDocument;
import comparand.compose.text.Words;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.Document;
import comparand.document.result.LedgerResult;
import comparand.document.result.RunResult;
import comparand.flow.Outcome;
import comparand.write.DocumentWriter;
import comparand.write.json.ResultJson;
import comparand.write.pdf.PdfDocumentWriter;
import comparand.write.whole.WholeFile;
import comparand.write.xlsx.WorkbookWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A ledger as files; the ending of a file's name says which kind it is. */
final class LedgerFiles {

    static final Set<String> ENDINGS = Set.of("pdf", "xlsx", "json");

    private final LedgerResult ledger;
    private final RunResult run;
    private final Words words;

    LedgerFiles(LedgerResult ledger, RunResult run, Words words) {
        this.ledger = ledger;
        this.run = run;
        this.words = words;
    }

    static String ending(Path file) {
        var name = String.valueOf(file.getFileName());
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }

    /** Writes each, or finds why it may not be written. A file that is there already stays, unless it is this very one. */
    Outcome<List<Path>> written(List<Path> files) {
        for (var file : files) {
            try {
                var content = content(file);
                if (!Files.exists(file)) {
                    WholeFile.write(file, content);
                } else if (!Files.isRegularFile(file) || !Arrays.equals(Files.readAllBytes(file), content)) {
                    return stop(
                            "output-exists",
                            file,
                            "`%s` is there already and holds something else".formatted(file),
                            "what somebody keeps there would be lost",
                            "choose another name, or move it away");
                }
            } catch (IOException e) {
                return stop(
                        "output-unwritable",
                        file,
                        "`%s` could not be written: %s".formatted(file, Reason.of(e)),
                        "what changed is not on the disk",
                        "check that the folder may be written and that the disk has room");
            }
        }
        return Outcome.of(files);
    }

    private byte[] content(Path file) throws IOException {
        var out = new ByteArrayOutputStream();
        switch (ending(file)) {
            case "pdf" -> write(file, Document.Form.WIDE_PAGES, new PdfDocumentWriter(), out);
            case "xlsx" -> write(file, Document.Form.WORKBOOK, new WorkbookWriter(), out);
            default -> ResultJson.write(ledger, out);
        }
        return out.toByteArray();
    }

    private void write(Path file, Document.Form form, DocumentWriter writer, ByteArrayOutputStream out)
            throws IOException {
        var name = String.valueOf(file.getFileName()).replaceAll("\\.[^.]*$", "");
        writer.write(LedgerDocument.of(ledger, run, Version.tool(), words, name, form), out);
    }

    private static Outcome<List<Path>> stop(String code, Path file, String message, String why, String fix) {
        return Outcome.stopped(List.of(Diagnostic.stop(code, Span.startOf(file.toString()), message, why, fix)));
    }
}
