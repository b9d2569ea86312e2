package comparand.document.talk;

import comparand.document.Block;
import comparand.document.chart.Plot;
import java.util.List;

/** A piece of a slide. */
public sealed interface Part {

    <R> R fold(Cases<R> cases);

    /** One function per kind of piece. */
    interface Cases<R> {
        R headline(Headline headline);

        R points(Points points);

        R grid(Grid grid);

        R drawing(Drawing drawing);

        R sieve(Sieve sieve);

        R cards(Cards cards);

        R index(Index index);
    }

    /** A large number that cannot be copied without its rider: unit, interval, number of units, conditions. */
    record Headline(String number, String rider) implements Part {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.headline(this);
        }
    }

    /** Sentences, one below the other. */
    record Points(List<String> sentences) implements Part {
        public Points {
            sentences = List.copyOf(sentences);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.points(this);
        }
    }

    /** A table, native and editable. */
    record Grid(Block.Table table) implements Part {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.grid(this);
        }
    }

    /** A figure, native and editable. */
    record Drawing(Plot chart) implements Part {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.drawing(this);
        }
    }

    /** Boxes from left to right, each with a count, and what fell away before the next. */
    record Sieve(List<Box> boxes) implements Part {
        public Sieve {
            boxes = List.copyOf(boxes);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.sieve(this);
        }
    }

    /**
     * A box of a sieve.
     *
     * @param dropped what fell away behind it, with its count; may be empty
     */
    record Box(String count, String text, String dropped) {}

    /** Cards side by side. */
    record Cards(List<Card> cards) implements Part {
        public Cards {
            cards = List.copyOf(cards);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.cards(this);
        }
    }

    /** A heading with a few lines. */
    record Card(String heading, List<String> lines) {
        public Card {
            lines = List.copyOf(lines);
        }
    }

    /** Questions that may come from the floor, each a link to the slide that answers it. */
    record Index(List<Entry> entries) implements Part {
        public Index {
            entries = List.copyOf(entries);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.index(this);
        }
    }

    /** A question, and the id of the slide that answers it. */
    record Entry(String question, String slide) {}
}
