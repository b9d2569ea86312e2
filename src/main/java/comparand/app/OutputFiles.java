package comparand.app;

import comparand.document.Document;
import comparand.document.publication.Publication;
import comparand.write.DocumentWriter;
import comparand.write.docx.TextWriter;
import comparand.write.html.HtmlWriter;
import comparand.write.json.ResultJson;
import comparand.write.json.ResultSchema;
import comparand.write.pdf.PdfDocumentWriter;
import comparand.write.pptx.SlideWriter;
import comparand.write.text.PlainTextWriter;
import comparand.write.xlsx.WorkbookWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The files of a publication, in the order in which they are told. */
final class OutputFiles {

    private OutputFiles() {}

    static List<OutputFile> of(Publication publication) {
        var files = new ArrayList<OutputFile>();
        var results = publication.results();
        files.add(new OutputFile(Output.RESULTS, List.of(results), out -> ResultJson.write(results, out)));
        var schema = ResultSchema.text();
        files.add(new OutputFile(
                Output.SCHEMA, List.of(schema), out -> out.write(schema.getBytes(StandardCharsets.UTF_8))));
        for (var document : publication.documents()) {
            for (var writer : writers(document.form())) {
                files.add(new OutputFile(
                        document.name() + "." + writer.extension(),
                        List.of(document),
                        out -> writer.write(document, out)));
            }
        }
        for (var page : publication.pages()) {
            files.add(new OutputFile(
                    page.document().name() + "." + HtmlWriter.EXTENSION,
                    List.of(page),
                    out -> new HtmlWriter().write(page, out)));
        }
        for (var deck : publication.decks()) {
            files.add(new OutputFile(
                    deck.name() + "." + SlideWriter.EXTENSION,
                    List.of(deck),
                    out -> new SlideWriter().write(deck, out)));
        }
        files.addAll(FigureFiles.of(publication));
        return files;
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
}
