package comparand.document.talk.layout;

import comparand.document.talk.Deck;
import comparand.document.talk.Part;
import comparand.document.talk.Slide;
import comparand.document.talk.layout.Fault.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Whether slides can be read from the back of a room and spoken to. Words are counted on any stage; sizes, colours and
 * heights on the stage they will stand on.
 *
 * <p>Running text are sentences, riders and the lines of cards. Headings, the counts of boxes, tables, figures and links are
 * looked at and not read, and their words are not counted; their size is checked all the same.
 */
public final class Legibility {

    /** A title is one sentence that is taken in at a glance. */
    public static final int TITLE_WORDS = 12;

    public static final int BODY_WORDS = 40;

    private static final double LEAST_TITLE = 28;

    private static final double LEAST_SHOWN = 20;

    /** Tables of a backup slide are read aloud from, or from near. */
    private static final double LEAST_BACKUP = 12;

    private Legibility() {}

    /** How many words a text has; a number counts as one, with the unit that is joined to it. */
    public static int words(String text) {
        return (int) Stream.of(text.split("[\\s]+"))
                .filter(w -> w.codePoints().anyMatch(Character::isLetterOrDigit))
                .count();
    }

    /** What the words of a talk break, whatever they are drawn on. */
    public static List<Fault> ofWords(Deck deck) {
        var faults = new ArrayList<Fault>();
        var titles = new ArrayList<String>();
        for (var slide : deck.slides()) {
            most(faults, slide, Rule.TITLE_WORDS, slide.title(), words(slide.title()), TITLE_WORDS);
            if (!slide.backup()) {
                var text = String.join(" ", running(slide));
                most(faults, slide, Rule.BODY_WORDS, text, words(text), BODY_WORDS);
            }
            for (var note : slide.notes()) {
                if (note.lines().stream().allMatch(String::isBlank)) {
                    faults.add(new Fault(slide.id(), Rule.NOTES, note.heading(), 0, 1));
                }
            }
            // a screen reader and the outline tell slides apart by what is heard, not by capitals
            if (titles.stream().anyMatch(slide.title()::equalsIgnoreCase)) {
                faults.add(new Fault(slide.id(), Rule.TITLE_TWICE, slide.title(), 2, 1));
            }
            titles.add(slide.title());
        }
        return faults;
    }

    /** What a talk breaks on its stage. */
    public static List<Fault> onStage(Deck deck, Stage stage) {
        var faults = new ArrayList<Fault>();
        var first = deck.slides().get(0);
        least(faults, first, Rule.CONTRAST, "", Contrast.ratio(stage.ink(), stage.paper()), Contrast.LEAST);
        least(
                faults,
                first,
                Rule.CONTRAST,
                first.title(),
                Contrast.ratio(stage.titleInk(), stage.paper()),
                Contrast.LEAST);
        least(faults, first, Rule.SMALLEST_TEXT, first.title(), stage.titleSize(), LEAST_TITLE);
        var lines = stage.lines();
        for (var slide : deck.slides()) {
            most(
                    faults,
                    slide,
                    Rule.TITLE_HEIGHT,
                    slide.title(),
                    lines.height(slide.title(), stage.title().width(), stage.titleSize(), true),
                    stage.title().height());
            var strip = Foot.strip(slide, stage);
            most(
                    faults,
                    slide,
                    Rule.HEIGHT,
                    slide.strip(),
                    lines.height(slide.strip(), strip.width(), Foot.SIZE, false),
                    strip.height());
            parts(faults, slide, stage);
        }
        var imprint = Foot.imprint(stage);
        most(
                faults,
                first,
                Rule.HEIGHT,
                Foot.imprint(deck),
                lines.height(Foot.imprint(deck), imprint.width(), Foot.SIZE, false),
                imprint.height());
        return faults;
    }

    private static void parts(List<Fault> faults, Slide slide, Stage stage) {
        var measure = new Measure(stage.lines(), stage.body().width());
        double end = stage.body().y();
        for (var placed : SlidePlan.of(slide, stage)) {
            end = placed.box().y() + Math.max(placed.needed(), placed.box().height());
            least(
                    faults,
                    slide,
                    Rule.SMALLEST_TEXT,
                    text(placed.part()),
                    placed.size(),
                    slide.backup() ? LEAST_BACKUP : LEAST_SHOWN);
            if (placed.part() instanceof Part.Grid grid) {
                measure.tooWide(grid.table(), placed.size())
                        .forEach(t -> faults.add(new Fault(slide.id(), Rule.WIDTH, t, 1, 0)));
            }
        }
        if (!slide.parts().isEmpty()) {
            var last = slide.parts().get(slide.parts().size() - 1);
            most(
                    faults,
                    slide,
                    Rule.HEIGHT,
                    text(last),
                    end - stage.body().y(),
                    stage.body().height());
        }
    }

    /** The running text of a slide. */
    private static List<String> running(Slide slide) {
        return slide.parts().stream()
                .filter(p -> !(p instanceof Part.Grid || p instanceof Part.Drawing || p instanceof Part.Index))
                .filter(p -> !(p instanceof Part.Sieve))
                .map(Legibility::text)
                .toList();
    }

    /** The text of a part as one, without headings of cards. */
    private static String text(Part part) {
        return part.fold(new Part.Cases<>() {
            @Override
            public String headline(Part.Headline headline) {
                return headline.number() + " " + headline.rider();
            }

            @Override
            public String points(Part.Points points) {
                return String.join(" ", points.sentences());
            }

            @Override
            public String grid(Part.Grid grid) {
                return grid.table().caption();
            }

            @Override
            public String drawing(Part.Drawing drawing) {
                return drawing.chart().message();
            }

            @Override
            public String sieve(Part.Sieve sieve) {
                return String.join(
                        " ",
                        sieve.boxes().stream()
                                .map(b -> b.text() + " " + b.dropped())
                                .toList());
            }

            @Override
            public String cards(Part.Cards cards) {
                return String.join(
                        " ",
                        cards.cards().stream().flatMap(c -> c.lines().stream()).toList());
            }

            @Override
            public String index(Part.Index index) {
                return String.join(
                        " ", index.entries().stream().map(Part.Entry::question).toList());
            }
        });
    }

    private static void most(List<Fault> faults, Slide slide, Rule rule, String text, double found, double most) {
        if (found > most + 0.5) {
            faults.add(new Fault(slide.id(), rule, text, found, most));
        }
    }

    private static void least(List<Fault> faults, Slide slide, Rule rule, String text, double found, double least) {
        if (found < least) {
            faults.add(new Fault(slide.id(), rule, text, found, least));
        }
    }
}
