package comparand.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Where a value stands in its source. */
final class PlacePieces {

    private PlacePieces() {}

    static List<Piece> of() {
        var pieces = new ArrayList<Piece>();
        var group = "Place and quote";
        var page = Slot.text(group, "page", "On which page?", "The page as printed.");
        var table = Slot.text(group, "table", "In which table?", "The number of the table; empty if in none.");
        var figure = Slot.text(group, "figure", "In which figure?", "The number of the figure; empty if in none.");
        var equation =
                Slot.text(group, "equation", "At which equation?", "The number of the equation; empty if at none.");
        Predicate<Answers> inTable = a -> a.text(table).isPresent();
        Predicate<Answers> inFigure = a -> a.text(figure).isPresent();
        pieces.add(TextPiece.of("place/page", page));
        pieces.add(TextPiece.of(
                "place/pdf-page",
                Slot.text(
                        group,
                        "page of the file",
                        "Which page of the file is that, if another?",
                        "Counted from the first page of the PDF; empty where it is the page as printed."),
                a -> a.text(page).isPresent()));
        pieces.add(TextPiece.of("place/table", table));
        pieces.add(TextPiece.of(
                "place/row",
                Slot.text(group, "row", "In which row?", "The row of the table, counted without the heading."),
                inTable));
        pieces.add(TextPiece.of(
                "place/column", Slot.text(group, "column", "In which column?", "The column of the table."), inTable));
        pieces.add(TextPiece.of("place/figure", figure, inTable.negate()));
        pieces.add(TextPiece.of(
                "place/panel", Slot.text(group, "panel", "In which panel?", "The panel of the figure."), inFigure));
        pieces.add(TextPiece.of("place/equation", equation, inTable.or(inFigure).negate()));
        pieces.add(TextPiece.of(
                "place/section",
                Slot.text(group, "section", "In which section?", "Only where there is no page, table or figure."),
                a -> Stream.of(page, table, figure, equation)
                        .allMatch(s -> a.text(s).isEmpty())));
        return pieces;
    }
}
