package comparand.compose.talk;

import comparand.compose.talk.Draft.Asked;
import comparand.compose.text.Layout;
import comparand.compose.text.Run;
import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.document.Edition;
import comparand.document.result.ResultSet;
import comparand.document.talk.Deck;
import comparand.document.talk.Slide;
import comparand.document.talk.Slide.SpeakerNote;
import comparand.flow.Outcome;
import comparand.metric.Metric;
import comparand.model.template.TalkTemplate;
import comparand.model.template.TalkTemplate.Section;
import comparand.model.template.Templates;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The slides of a talk of ten minutes, and behind them slides for questions. */
public final class TalkDeck {

    public static final String NAME = "talk";

    /** So many metrics have a slide of the talk; those behind them are shown when asked for. */
    private static final int MESSAGES = 4;

    private static final int SECONDS = 600;

    private final Run run;
    private final Edition edition;
    private final ResultSet results;
    private final Templates templates;

    public TalkDeck(Run run, Edition edition, ResultSet results, Templates templates) {
        this.run = run;
        this.edition = edition;
        this.results = results;
        this.templates = templates;
    }

    /** The talk, or findings where it could not be read or spoken to. */
    public Outcome<Deck> deck() {
        var template = templates.talk();
        var drafts = drafts(template);
        var look = Layout.of(template.look(), template.slides(), templates);
        var findings = new ArrayList<Diagnostic>();
        var deck = new Deck(NAME, edition, look, slides(drafts));
        var rules = new TalkRules(run, template);
        findings.addAll(rules.of(deck));
        findings.addAll(rules.locators(drafts));
        return findings.isEmpty() ? Outcome.of(deck) : Outcome.stopped(findings);
    }

    private List<Draft> drafts(TalkTemplate template) {
        var sections =
                template.sections().stream().map(Located::value).distinct().toList();
        var numbers = new SlideNumbers(run);
        var titles = new Titles(run, numbers);
        var speeches = new Speeches(run, numbers);
        boolean backup = sections.contains(Section.BACKUP);
        var usual = List.of(
                new Asked(run.words().say("talk.ask.flow"), BackupSlides.CONDITIONS),
                new Asked(run.words().say("talk.ask.units"), BackupSlides.HOSPITALS),
                new Asked(run.words().say("talk.ask.who"), "references"));
        var opening = new OpeningSlides(run, results.rowLog(), speeches, usual);
        var answer = new AnswerSlide(run, numbers, titles, speeches, usual);
        var messages = new MessageSlides(run, numbers, titles, speeches);
        var main = new ArrayList<Draft>();
        var later = new ArrayList<Draft>();
        for (var section : sections) {
            switch (section) {
                case QUESTION -> main.add(opening.question());
                case METHOD -> main.add(opening.method());
                case ANSWER -> main.add(answer.answer());
                case MESSAGES -> {
                    var metrics = withResults();
                    run.questions().forEach((question, metric) -> {
                        int place = metrics.indexOf(metric);
                        if (place >= 0 && place < MESSAGES) {
                            main.add(messages.of(question, metric, false));
                        } else if (place >= 0) {
                            later.add(messages.of(question, metric, true));
                        }
                    });
                }
                case NOT_COMPARED -> main.add(new NotComparedSlide(run, speeches).slide());
                case NOT_KNOWN -> main.add(new NotKnownSlide(run, speeches).slide());
                case TAKE_HOME -> main.add(answer.takeHomeSlide());
                case BACKUP -> {
                    // comes last, whatever its place
                }
            }
        }
        if (backup) {
            var behind = new BackupSlides(
                    run, results, speeches, new Split(run, template.slides().isPresent()));
            main.add(behind.index(sections.contains(Section.MESSAGES) ? withResults() : List.of()));
            main.addAll(later);
            main.addAll(behind.slides());
        }
        return main;
    }

    /** Metrics with something to show, in the order of the dossier: it was fixed before the results were seen. */
    private List<Metric> withResults() {
        return run.questions().values().stream()
                .filter(m -> !run.comparisons(m).isEmpty()
                        || run.compared().matched().evidence().localResults().stream()
                                .anyMatch(c -> c.metric().equals(m)))
                .toList();
    }

    private List<Slide> slides(List<Draft> drafts) {
        var ids = drafts.stream().map(Draft::id).toList();
        long shown = drafts.stream().filter(d -> !d.backup()).count();
        var slides = new ArrayList<Slide>();
        for (var d : drafts) {
            slides.add(
                    new Slide(d.id(), d.title(), d.parts(), d.strip(), notes(d, ids, shown), d.backup(), link(d, ids)));
        }
        return slides;
    }

    /** From a backup slide back to the questions; from one of the talk to where its numbers come from. */
    private Optional<Slide.Back> link(Draft d, List<String> ids) {
        if (d.backup()) {
            return d.id().equals(BackupSlides.INDEX)
                    ? Optional.empty()
                    : Optional.of(new Slide.Back(say("talk.back"), BackupSlides.INDEX));
        }
        var who = say("talk.ask.who");
        return d.speech().asked().stream()
                .filter(a -> a.question().equals(who) && ids.contains(a.slide()))
                .findFirst()
                .map(a -> new Slide.Back(who, a.slide()));
    }

    /** In their fixed order; a heading without anything says so. */
    private List<SpeakerNote> notes(Draft d, List<String> ids, long shown) {
        var speech = d.speech();
        var asked = speech.asked().stream()
                .filter(a -> ids.contains(a.slide()))
                .map(a -> say(
                        "talk.note.asked.line",
                        "question",
                        a.question(),
                        "slide",
                        String.valueOf(ids.indexOf(a.slide()) + 1)))
                .toList();
        return Stream.of(
                        item("talk.note.say", speech.say()),
                        item("talk.note.numbers", speech.numbers()),
                        item("talk.note.source", speech.source()),
                        item("talk.note.conditions", speech.conditions()),
                        item("talk.note.asked", asked),
                        item("talk.note.dont", speech.dont()),
                        item(
                                "talk.note.time",
                                List.of(
                                        d.backup()
                                                ? say("talk.note.time.backup")
                                                : say("talk.note.time.shown", "time", time(shown)))))
                .toList();
    }

    private SpeakerNote item(String heading, List<String> lines) {
        return new SpeakerNote(run.words().say(heading), lines.isEmpty() ? List.of(say("talk.note.nothing")) : lines);
    }

    /** An equal share, in steps of five seconds. */
    private String time(long shown) {
        long seconds = Math.max(5, SECONDS / Math.max(1, shown) / 5 * 5);
        return seconds < 60
                ? say("talk.time.seconds", "seconds", String.valueOf(seconds))
                : seconds % 60 == 0
                        ? say("talk.time.whole", "minutes", String.valueOf(seconds / 60))
                        : say(
                                "talk.time.minutes",
                                "minutes",
                                String.valueOf(seconds / 60),
                                "seconds",
                                String.valueOf(seconds % 60));
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
