package comparand.app;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.Look;
import comparand.document.publication.Publication;
import comparand.document.talk.Deck;
import comparand.document.talk.Slide;
import comparand.document.talk.layout.Fault;
import comparand.flow.Outcome;
import comparand.unit.Rounding;
import comparand.write.pptx.SlideWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Before anything is written: whether the presentation of the house can be taken over, and whether all slides can be read on
 * its masters. Only the writer knows these, and only a finding can stop a run.
 */
final class LegibleSlides {

    private static final String TEMPLATE = "templates/talk.yaml";

    private static final Map<String, String> UNFIT = Map.of(
            "unreadable", "it is no presentation that can be opened",
            "not-wide", "its slides are not 13.33 by 7.5 inches, wide",
            "no-title", "none of its layouts has a place for a title",
            "no-room", "its title and foot leave no room for a figure between them");

    private LegibleSlides() {}

    static Outcome<Publication> checked(Publication publication) {
        var findings = new ArrayList<Diagnostic>();
        for (var deck : publication.decks()) {
            var unfit = SlideWriter.unfit(deck.look());
            if (unfit.isPresent()) {
                findings.add(unfit(deck.look(), unfit.get()));
            } else {
                faults(deck).forEach(f -> findings.add(finding(f, deck)));
            }
        }
        return findings.isEmpty() ? Outcome.of(publication) : Outcome.stopped(findings);
    }

    private static List<Fault> faults(Deck deck) {
        try {
            return SlideWriter.faults(deck);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Diagnostic unfit(Look look, String why) {
        var name = look.slides().map(Look.Content::name).orElse("");
        return Diagnostic.stop(
                "house-slides-unfit",
                Span.startOf(TEMPLATE),
                "`%s` cannot be taken over: %s".formatted(name, UNFIT.getOrDefault(why, why)),
                "slides would be cut off, or would stand on masters nobody chose",
                "save it as a wide presentation whose layout Title only has a title, or take `slides:` out");
    }

    private static Diagnostic finding(Fault fault, Deck deck) {
        var title = deck.slides().stream()
                .filter(s -> s.id().equals(fault.slide()))
                .map(Slide::title)
                .findFirst()
                .orElse("");
        var about = Optional.of(fault.text())
                .filter(t -> !t.isBlank())
                .map(t -> " (" + (t.length() > 60 ? t.substring(0, 60) + " ..." : t) + ")")
                .orElse("");
        return Diagnostic.stop(
                code(fault.rule()),
                Span.startOf(TEMPLATE),
                "%s on slide \"%s\"%s: %s, allowed %s"
                        .formatted(what(fault.rule()), title, about, number(fault.found()), number(fault.allowed())),
                "a slide that cannot be read is worse than none",
                fix(fault.rule()));
    }

    private static String code(Fault.Rule rule) {
        return switch (rule) {
            case TITLE_WORDS -> "slide-title-long";
            case BODY_WORDS -> "slide-words";
            case SMALLEST_TEXT -> "slide-smallest-text";
            case CONTRAST -> "slide-contrast";
            case TITLE_HEIGHT -> "slide-title-height";
            case HEIGHT -> "slide-height";
            case WIDTH -> "slide-width";
            case NOTES -> "slide-notes-empty";
            case TITLE_TWICE -> "slide-title-twice";
        };
    }

    private static String what(Fault.Rule rule) {
        return switch (rule) {
            case TITLE_WORDS, BODY_WORDS -> "too many words";
            case SMALLEST_TEXT -> "text too small, in points,";
            case CONTRAST -> "too little contrast of text and paper";
            case TITLE_HEIGHT -> "a title too high for its place, in points,";
            case HEIGHT -> "text that runs over its place, in points,";
            case WIDTH -> "a word wider than its column, in points,";
            case NOTES -> "empty notes";
            case TITLE_TWICE -> "a title that another slide has";
        };
    }

    private static String fix(Fault.Rule rule) {
        return switch (rule) {
            case CONTRAST -> "change the colours of text or background in the presentation of the house";
            case SMALLEST_TEXT, TITLE_HEIGHT ->
                "give the title of the layout Title only 28 points or more and room for two lines, or shorten the text named";
            case TITLE_WORDS, BODY_WORDS, HEIGHT, WIDTH, NOTES, TITLE_TWICE ->
                "shorten the text named: names of devices, metrics and hospitals, question, decision, unknowns in the dossier";
        };
    }

    private static String number(double value) {
        return Rounding.halfUp(value, 1).toPlainString();
    }
}
