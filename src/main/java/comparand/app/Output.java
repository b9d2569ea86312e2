package comparand.app;

import comparand.compose.page.Explorable;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.Document;
import comparand.document.publication.Publication;
import comparand.flow.Outcome;
import comparand.write.DocumentWriter;
import comparand.write.docx.TextWriter;
import comparand.write.html.HtmlWriter;
import comparand.write.json.ResultJson;
import comparand.write.json.ResultSchema;
import comparand.write.pdf.PdfDocumentWriter;
import comparand.write.pptx.SlideWriter;
import comparand.write.text.PlainTextWriter;
import comparand.write.xlsx.WorkbookWriter;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * Writes all outputs of a run into a folder that is swapped in whole: until the last byte is written, an earlier output
 * stays as it was.
 */
final class Output {

    static final String RESULTS = "results.json";
    /** The page, where it is among the outputs. */
    static final String PAGE = Explorable.NAME + "." + HtmlWriter.EXTENSION;

    private static final String SCHEMA = "results.schema.json";

    private Output() {}

    /** Whether a folder may be replaced: it is not there, is empty, or holds an earlier output. */
    static boolean mayReplace(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return true;
        }
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (var entries = Files.list(folder)) {
            return entries.findAny().isEmpty() || isOurs(folder.resolve(RESULTS));
        }
    }

    private static boolean isOurs(Path results) throws IOException {
        if (!Files.isRegularFile(results)) {
            return false;
        }
        try (var in = Files.newInputStream(results)) {
            return ResultJson.isResultSet(in);
        }
    }

    /** What went wrong with a file, as a clause. */
    static String reason(IOException e) {
        var path = e instanceof FileSystemException f && f.getFile() != null ? "`" + f.getFile() + "` " : "";
        return e instanceof FileAlreadyExistsException
                ? path + "is a file"
                : e instanceof AccessDeniedException
                        ? path + "may not be written"
                        : path.isEmpty()
                                ? String.valueOf(e.getMessage()).replaceAll("\\.$", "")
                                : path + "is in the way";
    }

    /** The files written, by their final paths; or the finding that they could not be. */
    static Outcome<List<Path>> written(Publication publication, Path folder) {
        try {
            return Outcome.of(write(publication, folder));
        } catch (IOException e) {
            return Outcome.stopped(List.of(Diagnostic.stop(
                    "output-unwritable",
                    Span.startOf(folder.toString()),
                    "the outputs could not be written: " + reason(e),
                    "nothing was changed; an earlier output stands as it was",
                    "check that the folder may be written and that the disk has room")));
        }
    }

    private static List<Path> write(Publication publication, Path folder) throws IOException {
        var parent = folder.toAbsolutePath().getParent();
        if (parent == null) {
            throw new IOException(folder + " has no folder above it");
        }
        Files.createDirectories(parent);
        var fresh = Files.createDirectory(parent.resolve(
                "." + folder.getFileName() + ".new-" + ProcessHandle.current().pid() + "-" + System.nanoTime()));
        try {
            var names = fill(publication, fresh);
            swap(fresh, folder);
            return names.stream().map(folder::resolve).toList();
        } finally {
            delete(fresh);
        }
    }

    private static List<String> fill(Publication publication, Path folder) throws IOException {
        var names = new ArrayList<String>();
        names.add(RESULTS);
        try (var out = open(folder.resolve(RESULTS))) {
            ResultJson.write(publication.results(), out);
        }
        names.add(SCHEMA);
        Files.writeString(folder.resolve(SCHEMA), ResultSchema.text(), StandardCharsets.UTF_8);
        for (var document : publication.documents()) {
            for (var writer : writers(document.form())) {
                var name = document.name() + "." + writer.extension();
                names.add(name);
                try (var out = open(folder.resolve(name))) {
                    writer.write(document, out);
                }
            }
        }
        for (var page : publication.pages()) {
            var name = page.document().name() + "." + HtmlWriter.EXTENSION;
            names.add(name);
            try (var out = open(folder.resolve(name))) {
                new HtmlWriter().write(page, out);
            }
        }
        for (var deck : publication.decks()) {
            var name = deck.name() + "." + SlideWriter.EXTENSION;
            names.add(name);
            try (var out = open(folder.resolve(name))) {
                new SlideWriter().write(deck, out);
            }
        }
        names.addAll(new FigureFiles(folder).write(publication));
        Checksums.write(folder);
        names.add(Checksums.FILE);
        return names;
    }

    private static List<DocumentWriter> writers(Document.Form form) {
        return switch (form) {
            case WORKBOOK -> List.of(new WorkbookWriter());
            case WIDE_PAGES, PAGES -> List.of(new PdfDocumentWriter());
            case LETTER -> List.of(new PlainTextWriter(), new TextWriter());
            case TEXT -> List.of(new TextWriter());
            // such a document is written with what can be tried on it, as a page
            case SCREEN -> List.of();
        };
    }

    private static OutputStream open(Path file) throws IOException {
        Files.createDirectories(Objects.requireNonNull(file.getParent()));
        return new BufferedOutputStream(Files.newOutputStream(file));
    }

    /** Two renames; the old output is deleted only when the new one stands in its place. */
    private static void swap(Path fresh, Path folder) throws IOException {
        if (!Files.exists(folder)) {
            Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
            return;
        }
        var old = fresh.resolveSibling(fresh.getFileName().toString().replace(".new-", ".old-"));
        Files.move(folder, old, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            Files.move(old, folder, StandardCopyOption.ATOMIC_MOVE);
            throw e;
        }
        delete(old);
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (var entries = Files.walk(folder)) {
                for (var path : entries.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}
