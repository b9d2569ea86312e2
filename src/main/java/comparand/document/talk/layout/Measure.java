package comparand.document.talk.layout;

import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.talk.Part;
import comparand.document.talk.Part.Box;
import comparand.document.talk.Part.Card;
import java.util.ArrayList;
import java.util.List;

/** How high parts are. The same numbers place them on the slide. */
public final class Measure {

    /** Between paragraphs, for a text size of 1. */
    public static final double PARAGRAPH = 0.45;

    /** Within a cell of a table, beside and above its text. */
    public static final double CELL_SIDE = 6;

    public static final double CELL_TOP = 4;

    /** Between cards, and within them. */
    public static final double GUTTER = 20;

    public static final double CARD_PAD = 12;

    /** Between the two columns of an index, and the least from entry to entry for a size of 1. */
    public static final double INDEX_GUTTER = 32;

    public static final double NUMBER_SIZE = 72;

    /** Size of the count in a box, for a text size of 1. */
    public static final double COUNT = 1.7;

    /** Width of the gap between boxes, relative to that of a box. */
    public static final double GAP = 0.36;

    /** Where a figure has less, its labels meet. */
    private static final double LEAST_FIGURE = 220;

    private final Lines lines;
    private final double width;

    public Measure(Lines lines, double width) {
        this.lines = lines;
        this.width = width;
    }

    /** The height of a part with text of this size. */
    public double height(Part part, double size) {
        return part.fold(new Part.Cases<>() {
            @Override
            public Double headline(Part.Headline headline) {
                return lines.height(headline.number(), width, NUMBER_SIZE, true)
                        + lines.height(headline.rider(), width, size, false)
                        + 8;
            }

            @Override
            public Double points(Part.Points points) {
                return paragraphs(points.sentences(), width, size);
            }

            @Override
            public Double grid(Part.Grid grid) {
                return rows(grid.table(), size).stream().mapToDouble(r -> r).sum();
            }

            @Override
            public Double drawing(Part.Drawing drawing) {
                return LEAST_FIGURE;
            }

            @Override
            public Double sieve(Part.Sieve sieve) {
                return boxHeight(sieve, size) + 12 + dropHeight(sieve, size);
            }

            @Override
            public Double cards(Part.Cards cards) {
                return cards.cards().stream()
                        .mapToDouble(c -> card(c, cardWidth(cards), size))
                        .max()
                        .orElse(0);
            }

            @Override
            public Double index(Part.Index index) {
                int half = (index.entries().size() + 1) / 2;
                double left = index.entries().stream()
                        .limit(half)
                        .mapToDouble(e -> entry(e, size))
                        .sum();
                double right = index.entries().stream()
                        .skip(half)
                        .mapToDouble(e -> entry(e, size))
                        .sum();
                return Math.max(left, right);
            }
        });
    }

    private double paragraphs(List<String> texts, double across, double size) {
        return texts.stream()
                .mapToDouble(t -> lines.height(t, across, size, false) + PARAGRAPH * size)
                .sum();
    }

    public double entry(Part.Entry entry, double size) {
        return lines.height(entry.question(), indexWidth(), size, false) + 0.5 * size;
    }

    public double indexWidth() {
        return (width - INDEX_GUTTER) / 2;
    }

    public double cardWidth(Part.Cards cards) {
        int n = cards.cards().size();
        return (width - (n - 1) * GUTTER) / n;
    }

    private double card(Card card, double across, double size) {
        double inner = across - 2 * CARD_PAD;
        return lines.height(card.heading(), inner, size, true)
                + PARAGRAPH * size
                + paragraphs(card.lines(), inner, size)
                + 2 * CARD_PAD;
    }

    public double boxWidth(Part.Sieve sieve) {
        int n = sieve.boxes().size();
        return width / (n + (n - 1) * GAP);
    }

    public double boxHeight(Part.Sieve sieve, double size) {
        double inner = boxWidth(sieve) - 2 * CELL_SIDE;
        return sieve.boxes().stream()
                        .mapToDouble(b -> lines.height(b.text(), inner, size, false))
                        .max()
                        .orElse(0)
                + COUNT * size * Lines.LEADING
                + 2 * CARD_PAD;
    }

    /** What fell away stands below the gap behind its box, and half below the boxes on both sides. */
    public double dropWidth(Part.Sieve sieve) {
        return boxWidth(sieve) * (1 + GAP) - CARD_PAD;
    }

    private double dropHeight(Part.Sieve sieve, double size) {
        return sieve.boxes().stream()
                .map(Box::dropped)
                .mapToDouble(d -> d.isEmpty() ? 0 : lines.height(d, dropWidth(sieve), size, false))
                .max()
                .orElse(0);
    }

    /** Heights of the rows of a table, that of its headings first. */
    public List<Double> rows(Table table, double size) {
        var across = columns(table);
        var heights = new ArrayList<Double>();
        double heading = 0;
        for (int c = 0; c < across.size(); c++) {
            heading = Math.max(
                    heading, lines.height(table.columns().get(c).heading(), across.get(c) - 2 * CELL_SIDE, size, true));
        }
        heights.add(heading + 2 * CELL_TOP);
        for (var row : table.rows()) {
            double height = 0;
            for (int c = 0; c < across.size(); c++) {
                height = Math.max(
                        height,
                        lines.height(text(row.get(c)), across.get(c) - 2 * CELL_SIDE, size, strong(row.get(c))));
            }
            heights.add(height + 2 * CELL_TOP);
        }
        return heights;
    }

    /** Texts of a table with a word that is wider than its column. */
    public List<String> tooWide(Table table, double size) {
        var wide = new ArrayList<String>();
        var across = columns(table);
        for (int c = 0; c < across.size(); c++) {
            double room = across.get(c) - 2 * CELL_SIDE;
            var heading = table.columns().get(c).heading();
            if (lines.breaksWord(heading, room, size, true)) {
                wide.add(heading);
            }
            for (var row : table.rows()) {
                if (lines.breaksWord(text(row.get(c)), room, size, strong(row.get(c)))) {
                    wide.add(text(row.get(c)));
                }
            }
        }
        return wide;
    }

    /** What is set in a cell: its text, and behind it the marks of its notes. */
    public static String text(Cell cell) {
        return cell.marks().isEmpty() ? cell.shown() : cell.shown() + " " + cell.marks();
    }

    public static boolean strong(Cell cell) {
        return cell instanceof Cell.Words w && w.weight() == Cell.Words.Weight.STRONG;
    }

    /** Widths of the columns of a table. */
    public List<Double> columns(Table table) {
        double all = table.columns().stream().mapToDouble(c -> c.width()).sum();
        return table.columns().stream().map(c -> width * c.width() / all).toList();
    }
}
