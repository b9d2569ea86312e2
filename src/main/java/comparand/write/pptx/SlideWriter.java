package comparand.write.pptx;

import comparand.document.Look;
import comparand.document.talk.Deck;
import comparand.document.talk.Slide;
import comparand.document.talk.layout.Box;
import comparand.document.talk.layout.Fault;
import comparand.document.talk.layout.Foot;
import comparand.document.talk.layout.Legibility;
import comparand.document.talk.layout.SlidePlan;
import comparand.document.talk.layout.Stage;
import comparand.write.office.FileProperties;
import comparand.write.office.NoClock;
import java.io.IOException;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.sl.usermodel.Placeholder;
import org.apache.poi.sl.usermodel.TextParagraph.TextAlign;
import org.apache.poi.sl.usermodel.VerticalAlignment;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFSlide;
import org.apache.poi.xslf.usermodel.XSLFTextShape;

/**
 * Writes a talk as a presentation that can be edited: titles in the placeholders of their layout, native tables, boxes,
 * links and figures, notes for the speaker on every slide.
 *
 * <p>{@link #unfit} and {@link #faults} are asked before anything is written: a presentation that cannot be taken over, or a
 * slide that cannot be read, stops the run.
 */
public final class SlideWriter {

    public static final String EXTENSION = "pptx";

    /** Why the presentation of a house cannot be taken over, in kebab case, such as {@code no-title}; empty if it can. */
    public static Optional<String> unfit(Look look) {
        return House.unfit(look)
                .map(u -> u.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
    }

    /** What cannot be read on the masters it will stand on. */
    public static List<Fault> faults(Deck deck) throws IOException {
        return Legibility.onStage(deck, House.stage(deck.look()));
    }

    /**
     * Writes the talk; the same deck gives the same bytes.
     *
     * @throws IllegalArgumentException if a link leads to no slide
     */
    public void write(Deck deck, OutputStream out) throws IOException {
        var stage = House.stage(deck.look());
        try (var show = House.open(deck.look())) {
            fill(show, deck, stage);
            FileProperties.set(show, deck.edition());
            NoClock.during(() -> show.write(out));
        }
    }

    private static void fill(XMLSlideShow show, Deck deck, Stage stage) {
        var layout = House.layout(show).orElseThrow(() -> new IllegalArgumentException("no layout has a title"));
        var text = new TextSetter(stage, deck.edition());
        var slides = new HashMap<String, XSLFSlide>();
        // all of them first, so that links find what they lead to
        for (var slide : deck.slides()) {
            slides.put(slide.id(), show.createSlide(layout));
        }
        for (var slide : deck.slides()) {
            var drawn = slides.get(slide.id());
            if (drawn != null) {
                slide(drawn, slide, deck, stage, text, slides);
                NotesSetter.set(show.getNotesSlide(drawn), slide.notes(), text);
            }
        }
    }

    private static void slide(
            XSLFSlide drawn, Slide slide, Deck deck, Stage stage, TextSetter text, Map<String, XSLFSlide> slides) {
        title(drawn, slide, text);
        for (var placed : SlidePlan.of(slide, stage)) {
            new PartSetter(drawn, placed, stage, text, slides).set();
        }
        if (!slide.strip().isBlank()) {
            small(drawn, "Numbers, conditions, sources", slide.strip(), Foot.strip(slide, stage), stage, text);
        }
        slide.back().ifPresent(back -> {
            var box = drawn.createTextBox();
            TextSetter.named(box, "Link back", "");
            text.box(box, Foot.back(stage), VerticalAlignment.TOP, 0);
            var target = slides.get(back.slide());
            if (target == null) {
                throw new IllegalArgumentException("a link leads to no slide: " + back.slide());
            }
            text.line(box, back.text(), Foot.SIZE, false, TextAlign.RIGHT)
                    .createHyperlink()
                    .linkToSlide(target);
        });
        small(drawn, "Date, state, tool, fingerprint", Foot.imprint(deck), Foot.imprint(stage), stage, text);
        var page = drawn.createTextBox();
        TextSetter.named(page, "Number of the slide", "");
        text.box(page, Foot.page(stage), VerticalAlignment.TOP, 0);
        text.pageNumber(page, Foot.SIZE);
    }

    /** Into the layout's own placeholder; others that a layout brings would stand empty, and go. */
    private static void title(XSLFSlide drawn, Slide slide, TextSetter text) {
        var left = List.of(drawn.getPlaceholders());
        XSLFTextShape title = left.stream()
                .filter(p -> p.getTextType() == Placeholder.TITLE || p.getTextType() == Placeholder.CENTERED_TITLE)
                .findFirst()
                .orElseThrow();
        left.stream().filter(p -> p != title).forEach(drawn::removeShape);
        text.language(title.setText(slide.title()));
        TextSetter.named(title, "Title", "");
    }

    private static void small(XSLFSlide drawn, String name, String words, Box box, Stage stage, TextSetter text) {
        var shape = drawn.createTextBox();
        TextSetter.named(shape, name, "");
        text.box(shape, box, VerticalAlignment.TOP, 0);
        var run = text.line(shape, words, Foot.SIZE, false, TextAlign.LEFT);
        if (stage.own()) {
            run.setFontColor(TextSetter.GREY);
        }
    }
}
