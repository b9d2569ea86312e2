package comparand.compose.talk;

import comparand.compose.text.Run;
import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Span;
import comparand.document.chart.Series;
import comparand.document.talk.Deck;
import comparand.document.talk.Part;
import comparand.document.talk.Slide;
import comparand.document.talk.layout.Fault;
import comparand.document.talk.layout.Legibility;
import comparand.document.talk.layout.Measure;
import comparand.model.template.TalkTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What the words of a talk break, as findings that name the line of the dossier to mend. */
final class TalkRules {

    private final Run run;
    private final TalkTemplate template;

    TalkRules(Run run, TalkTemplate template) {
        this.run = run;
        this.template = template;
    }

    List<Diagnostic> of(Deck deck) {
        return Legibility.ofWords(deck).stream().map(f -> finding(f, deck)).toList();
    }

    private Diagnostic finding(Fault fault, Deck deck) {
        var title = deck.slides().stream()
                .filter(s -> s.id().equals(fault.slide()))
                .map(Slide::title)
                .findFirst()
                .orElse("");
        return switch (fault.rule()) {
            case TITLE_WORDS ->
                stop(
                        "slide-title-long",
                        span(fault.slide(), true),
                        "the title of a slide has %s words, and at most %s: %s"
                                .formatted(whole(fault.found()), whole(fault.allowed()), title),
                        "a title is taken in at a glance, or not at all",
                        fault.slide().equals(OpeningSlides.QUESTION)
                                ? "shorten `question:` of the dossier; what else it says belongs to `decision:`"
                                : "shorten the short name of the device or the name of the metric");
            case BODY_WORDS ->
                stop(
                        "slide-words",
                        span(fault.slide(), false),
                        "slide \"%s\" has %s words, and at most %s"
                                .formatted(title, whole(fault.found()), whole(fault.allowed())),
                        "who reads a slide does not listen",
                        fault.slide().equals(OpeningSlides.QUESTION)
                                ? "shorten `decision:`, `prepared-by:` or `interests:` of the dossier"
                                : "shorten the short names of the devices or the names of the metrics");
            case NOTES ->
                stop(
                        "slide-notes-empty",
                        span(fault.slide(), false),
                        "the notes of slide \"%s\" have nothing under %s".formatted(title, fault.text()),
                        "who gives the talk may not be who wrote it",
                        "give the text of that key under `wording:` of templates/talk.yaml some words");
            case TITLE_TWICE ->
                stop(
                        "slide-title-twice",
                        span(fault.slide(), true),
                        "two slides have the title \"%s\"".formatted(title),
                        "the outline and screen readers tell slides apart by their titles",
                        "give the devices short names, and the metrics names, that differ");
            case SMALLEST_TEXT, CONTRAST, TITLE_HEIGHT, HEIGHT, WIDTH ->
                throw new IllegalStateException(
                        "words have no " + fault.rule().name().toLowerCase(Locale.ROOT));
        };
    }

    private static String whole(double number) {
        return String.valueOf(Math.round(number));
    }

    /** The line of the dossier whose text stands on a slide, or that of the template's list of parts. */
    private Span span(String slide, boolean title) {
        if (slide.equals(OpeningSlides.QUESTION)) {
            return title
                    ? run.dossier().question().span()
                    : run.dossier().decision().span();
        }
        return run.questions().entrySet().stream()
                .filter(e -> slide.endsWith("-" + e.getValue().id()))
                .map(e -> e.getKey().metric().span())
                .findFirst()
                .or(() -> template.sections().stream().findFirst().map(Located::span))
                .orElseGet(() -> run.dossier().title().span());
    }

    /** A published number that stands on a slide stands there with its place. */
    List<Diagnostic> locators(List<Draft> drafts) {
        var findings = new ArrayList<Diagnostic>();
        for (var draft : drafts) {
            var texts = texts(draft).toList();
            for (var value : draft.published()) {
                var locator = run.names().locator(value);
                if (texts.stream().noneMatch(t -> t.contains(locator)) && shows(draft, value.id())) {
                    findings.add(stop(
                            "slide-without-locator",
                            span(draft.id(), false),
                            "slide \"%s\" shows %s without its place, %s".formatted(draft.title(), value.id(), locator),
                            "a number whose place nobody knows cannot be defended",
                            "this is a fault of the program: please report it with the dossier"));
                }
            }
        }
        return findings;
    }

    /**
     * A figure draws every value of its slide, with or without a label. A slide of a table that was split shows some of its
     * values only: those whose print stands on it.
     */
    private boolean shows(Draft draft, String value) {
        var shown = run.summaries().alone(run.comparand(value));
        boolean drawn = draft.parts().stream().anyMatch(p -> p instanceof Part.Drawing);
        return drawn || (!draft.backup() && texts(draft).anyMatch(t -> t.contains(shown)));
    }

    static Stream<String> texts(Draft draft) {
        return Stream.concat(
                Stream.of(draft.title(), draft.strip()), draft.parts().stream().flatMap(TalkRules::texts));
    }

    private static Stream<String> texts(Part part) {
        return part.fold(new Part.Cases<>() {
            @Override
            public Stream<String> headline(Part.Headline headline) {
                return Stream.of(headline.number(), headline.rider());
            }

            @Override
            public Stream<String> points(Part.Points points) {
                return points.sentences().stream();
            }

            @Override
            public Stream<String> grid(Part.Grid grid) {
                return grid.table().rows().stream()
                        .map(row -> String.join(
                                "\n", row.stream().map(Measure::text).toList()));
            }

            @Override
            public Stream<String> drawing(Part.Drawing drawing) {
                return drawing.chart().panels().stream()
                        .flatMap(p -> p.series().stream())
                        .flatMap(x -> x.points().stream())
                        .map(Series.Point::label);
            }

            @Override
            public Stream<String> sieve(Part.Sieve sieve) {
                return sieve.boxes().stream().map(b -> b.count() + " " + b.text() + " " + b.dropped());
            }

            @Override
            public Stream<String> cards(Part.Cards cards) {
                return cards.cards().stream().map(c -> c.heading() + " " + String.join(" ", c.lines()));
            }

            @Override
            public Stream<String> index(Part.Index index) {
                return index.entries().stream().map(Part.Entry::question);
            }
        });
    }

    private static Diagnostic stop(String code, Span span, String message, String why, String fix) {
        return Diagnostic.stop(code, span, message.replaceAll("\\.$", ""), why, fix);
    }
}
