package comparand.document.talk.layout;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Look;
import comparand.document.talk.Part;
import comparand.document.talk.Slide;
import comparand.document.talk.Slide.SpeakerNote;
import comparand.document.talk.layout.Fault.Rule;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every rule of legibility holds a bad slide, and lets a good one pass. */
class LegibilityTest {

    private static final Stage STAGE = Stage.plain("Arial");

    @Test
    @DisplayName("a good slide breaks no rule")
    void good() {
        var deck = DeckDraft.of(
                DeckDraft.slide("a", "A title of a few words", new Part.Points(List.of("A sentence of five words."))));

        assertThat(Legibility.ofWords(deck)).isEmpty();
        assertThat(Legibility.onStage(deck, STAGE)).isEmpty();
    }

    @Test
    @DisplayName("a title has at most twelve words, and a number with its unit is one of them")
    void titleWords() {
        var twelve = "one two three four five six seven eight nine ten eleven 12\u00a0mmHg";

        assertThat(Legibility.ofWords(DeckDraft.of(DeckDraft.slide("a", twelve))))
                .isEmpty();
        assertThat(Legibility.ofWords(DeckDraft.of(DeckDraft.slide("a", twelve + " more"))))
                .containsExactly(new Fault("a", Rule.TITLE_WORDS, twelve + " more", 13, 12));
    }

    @Test
    @DisplayName("a slide that is shown has at most forty words of running text; one for questions may have more")
    void bodyWords() {
        var long41 = new Part.Points(List.of("word ".repeat(41)));

        assertThat(Legibility.ofWords(DeckDraft.of(DeckDraft.slide("a", "Title", long41))))
                .extracting(Fault::rule, Fault::found)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(Rule.BODY_WORDS, 41.0));
        assertThat(Legibility.ofWords(DeckDraft.of(DeckDraft.backup("a", "Title", long41))))
                .isEmpty();
    }

    @Test
    @DisplayName("notes have something under every heading, and no two titles sound alike")
    void notesAndTitles() {
        var silent = new Slide(
                "a", "Title", List.of(), "", List.of(new SpeakerNote("SAY", List.of(" "))), false, Optional.empty());

        assertThat(Legibility.ofWords(DeckDraft.of(silent, DeckDraft.slide("b", "TITLE"))))
                .extracting(Fault::rule)
                .containsExactly(Rule.NOTES, Rule.TITLE_TWICE);
    }

    @Test
    @DisplayName("text that runs over its place is found: body, title, strip")
    void heights() {
        var over = new Part.Points(
                IntStream.range(0, 13).mapToObj(i -> "A sentence").toList());
        var strip = new Slide(
                "b",
                "A title that is so long that it needs more than the two lines which are there for it, and some more words,"
                        + " and then more words again, until a third line is reached and the place is full",
                List.of(),
                "place ".repeat(120),
                List.of(new SpeakerNote("SAY", List.of("x"))),
                false,
                Optional.empty());

        assertThat(Legibility.onStage(DeckDraft.of(DeckDraft.slide("a", "Title", over), strip), STAGE))
                .extracting(Fault::slide, Fault::rule)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple("a", Rule.HEIGHT),
                        org.assertj.core.groups.Tuple.tuple("b", Rule.TITLE_HEIGHT),
                        org.assertj.core.groups.Tuple.tuple("b", Rule.HEIGHT));
    }

    @Test
    @DisplayName("a word wider than its column is found")
    void width() {
        var table = new Table(
                "T",
                "",
                List.of(new Column("A", 5, Align.LEFT, true), new Column("B", 95, Align.LEFT, false)),
                List.of(List.of(Cell.words("Incomprehensibility"), Cell.words("x"))),
                List.of());

        assertThat(Legibility.onStage(DeckDraft.of(DeckDraft.backup("a", "Title", new Part.Grid(table))), STAGE))
                .extracting(Fault::rule, Fault::text)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(Rule.WIDTH, "Incomprehensibility"));
    }

    @Test
    @DisplayName("masters with small titles, or with text that does not stand out, are found")
    void masters() {
        var deck = DeckDraft.of(DeckDraft.slide("a", "Title"));
        var pale =
                new Stage(STAGE.title(), 24, STAGE.body(), STAGE.foot(), "Arial", 0xFFFFFF, 0x999999, 0x888888, false);

        assertThat(Legibility.onStage(deck, pale))
                .extracting(Fault::rule)
                .containsExactly(Rule.CONTRAST, Rule.CONTRAST, Rule.SMALLEST_TEXT);
    }

    @Test
    @DisplayName("imprint and marks fit their line, or are found")
    void imprint() {
        var house = new Look(
                "A house with a very long name ".repeat(8), Look.Paper.A4, "Arial", Optional.empty(), Optional.empty());

        assertThat(Legibility.onStage(DeckDraft.of(house, DeckDraft.slide("a", "Title")), STAGE))
                .extracting(Fault::rule)
                .containsExactly(Rule.HEIGHT);
    }

    /** Success criterion 1.4.3 of the Web Content Accessibility Guidelines; its greys are widely printed examples. */
    @ParameterizedTest
    @CsvSource({"000000, FFFFFF, 21.00", "767676, FFFFFF, 4.54", "777777, FFFFFF, 4.48", "FFFFFF, FFFFFF, 1.00"})
    @DisplayName("contrast is that of the guidelines")
    void contrast(String ink, String paper, double ratio) {
        assertThat(Contrast.ratio(Integer.parseInt(ink, 16), Integer.parseInt(paper, 16)))
                .isCloseTo(ratio, org.assertj.core.data.Offset.offset(0.005));
    }

    @Test
    @DisplayName("text is set as large as fits, and a table never so large that a word breaks")
    void sizes() {
        var few = SlidePlan.of(DeckDraft.slide("a", "Title", new Part.Points(List.of("A sentence"))), STAGE);
        var many = SlidePlan.of(
                DeckDraft.slide(
                        "a",
                        "Title",
                        new Part.Points(IntStream.range(0, 9)
                                .mapToObj(i -> "A sentence")
                                .toList())),
                STAGE);

        assertThat(few.get(0).size()).isEqualTo(28);
        assertThat(many.get(0).size()).isBetween(20.0, 24.0);
    }
}
