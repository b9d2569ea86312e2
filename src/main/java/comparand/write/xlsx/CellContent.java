package comparand.write.xlsx;

import comparand.document.Block;
import comparand.document.Cell;
import org.apache.poi.common.usermodel.HyperlinkType;

/** What stands in a cell of a table: numbers as numbers, days as days, everything else as text. */
final class CellContent {

    private CellContent() {}

    static void set(
            org.apache.poi.ss.usermodel.Cell target, Cell cell, Block.Align align, Styles styles, Formulas formulas) {
        Runnable set = cell.fold(new Cell.Cases<Runnable>() {
            @Override
            public Runnable words(Cell.Words words) {
                return () -> {
                    target.setCellValue(
                            words.marks().isEmpty() ? words.text() : words.text() + " (" + words.marks() + ")");
                    target.setCellStyle(styles.words(align, words.weight()));
                };
            }

            @Override
            public Runnable figure(Cell.Figure figure) {
                return () -> {
                    target.setCellValue(figure.value());
                    target.setCellStyle(styles.figure(figure));
                };
            }

            @Override
            public Runnable formula(Cell.Formula formula) {
                return () -> formulas.add(target, formula, align);
            }

            @Override
            public Runnable day(Cell.Day day) {
                return () -> {
                    target.setCellValue(day.date());
                    target.setCellStyle(styles.day());
                };
            }

            @Override
            public Runnable link(Cell.Link link) {
                return () -> {
                    target.setCellValue(link.text());
                    var hyperlink =
                            target.getSheet().getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
                    hyperlink.setAddress("'" + link.target() + "'!A1");
                    target.setHyperlink(hyperlink);
                    target.setCellStyle(styles.link());
                };
            }
        });
        set.run();
    }
}
