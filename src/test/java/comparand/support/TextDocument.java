package comparand.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xwpf.usermodel.IBodyElement;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableRow;

/** A text document read back. */
public record TextDocument(
        Map<String, List<String>> sections,
        List<List<List<String>>> tables,
        List<String> bookmarks,
        List<String> heads) {

    public static TextDocument of(Path file) {
        try (var in = Files.newInputStream(file);
                var text = new XWPFDocument(in)) {
            var sections = new LinkedHashMap<String, List<String>>();
            var tables = new ArrayList<List<List<String>>>();
            var bookmarks = new ArrayList<String>();
            sections.put("", new ArrayList<>());
            var at = "";
            for (IBodyElement element : text.getBodyElements()) {
                if (element instanceof XWPFParagraph paragraph) {
                    if ("Heading1".equals(paragraph.getStyle())) {
                        at = paragraph.getText();
                        sections.put(at, new ArrayList<>());
                    } else if (!paragraph.getText().isBlank()) {
                        sections.getOrDefault(at, new ArrayList<>()).add(paragraph.getText());
                    }
                    paragraph.getCTP().getBookmarkStartList().forEach(b -> bookmarks.add(b.getName()));
                } else if (element instanceof XWPFTable table) {
                    tables.add(table.getRows().stream().map(TextDocument::row).toList());
                }
            }
            var heads = new ArrayList<String>();
            text.getHeaderList().forEach(h -> heads.add(h.getText()));
            text.getFooterList().forEach(f -> heads.add(f.getText()));
            return new TextDocument(sections, tables, bookmarks, heads);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> row(XWPFTableRow row) {
        return row.getTableCells().stream().map(c -> c.getText()).toList();
    }

    /** The paragraphs under a heading. */
    public List<String> section(String heading) {
        return sections.getOrDefault(heading, List.of());
    }

    /** Every text: paragraphs, then cells. */
    public List<String> texts() {
        var all = new ArrayList<String>();
        sections.values().forEach(all::addAll);
        tables.forEach(t -> t.forEach(all::addAll));
        all.addAll(heads);
        return all;
    }
}
