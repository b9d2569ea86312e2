package comparand.model.library;

import comparand.diag.Located;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Stream;

/** Where in a source a value stands: where a reader can put a finger. */
public record PlaceRecord(
        @Meaning("Page as printed") Optional<Located<String>> page,

        @Meaning("Page of the file, counted from its first, where that is another") @Key("pdf-page")
        Optional<Located<String>> pdfPage,

        @Meaning("Table number") Optional<Located<String>> table,

        @Meaning("Row of the table, counted without the heading")
        Optional<Located<String>> row,

        @Meaning("Column of the table") Optional<Located<String>> column,
        @Meaning("Figure number") Optional<Located<String>> figure,
        @Meaning("Panel of the figure") Optional<Located<String>> panel,
        @Meaning("Equation number") Optional<Located<String>> equation,

        @Meaning("Section, where there is no page, table or figure")
        Optional<Located<String>> section) {

    /** Whether a reader could put a finger on it: a row or column alone leads nowhere. */
    public boolean canBeFound() {
        return Stream.of(page, pdfPage, table, figure, equation, section).anyMatch(Optional::isPresent);
    }

    /** {@code page 7, table 2, row 3}. */
    public String text() {
        var out = new StringJoiner(", ");
        add(out, "page ", page);
        add(out, "PDF-page ", pdfPage);
        add(out, "table ", table);
        add(out, "row ", row);
        add(out, "column ", column);
        add(out, "figure ", figure);
        add(out, "panel ", panel);
        add(out, "equation ", equation);
        add(out, "section ", section);
        return out.toString();
    }

    /** The shortest pointer, for a footnote: {@code T2r3}, {@code F3}, {@code p5}. */
    public String pointer() {
        var inTable =
                table.map(t -> "T" + t.value() + row.map(r -> "r" + r.value()).orElse(""));
        return inTable.or(() -> figure.map(
                        f -> "F" + f.value() + panel.map(Located::value).orElse("")))
                .or(() -> equation.map(e -> "E" + e.value()))
                .or(() -> page.map(p -> "p" + p.value()))
                .or(() -> pdfPage.map(p -> "p" + p.value()))
                .or(() -> section.map(s -> "s" + s.value()))
                .orElse("?");
    }

    private static void add(StringJoiner out, String label, Optional<Located<String>> part) {
        part.ifPresent(p -> out.add(label + p.value()));
    }
}
