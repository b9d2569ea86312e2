package comparand.compose.talk;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.talk.layout.Legibility;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Margin;
import comparand.model.Origin;
import comparand.model.Pairing.Purpose;
import comparand.model.Summary;
import java.util.ArrayList;
import java.util.List;

/** Titles of slides: whole sentences, the fullest that has no more words than a title may have. */
final class Titles {

    private final Run run;
    private final SlideNumbers numbers;

    Titles(Run run, SlideNumbers numbers) {
        this.run = run;
        this.numbers = numbers;
    }

    /** What a comparison says. */
    String of(Comparison c) {
        return ConditionLine.upperFirst(fitting(sentences(c)));
    }

    /** The same behind the words that it is the firmest finding. */
    String firmest(Comparison c) {
        var candidates = new ArrayList<String>();
        sentences(c).forEach(s -> candidates.add(say("talk.title.answer", "sentence", s)));
        candidates.add(say("talk.title.answer.brief"));
        return fitting(candidates);
    }

    /** How often it happened in all, where that was counted. */
    String events(Metric metric) {
        var name = ConditionLine.upperFirst(run.terms().metric(metric));
        return run.compared().matched().evidence().localResults().stream()
                .filter(c -> c.metric().equals(metric) && c.device().equals(Comparand.ALL_DEVICES))
                .map(Comparand::summary)
                .filter(Summary.Events.class::isInstance)
                .map(Summary.Events.class::cast)
                .map(e -> say(
                        "talk.title.events",
                        "metric",
                        name,
                        "events",
                        String.valueOf(e.events()),
                        "of",
                        String.valueOf(e.of())))
                .findFirst()
                .orElseGet(() -> say("talk.title.events.brief", "metric", name));
    }

    String shown(Metric metric) {
        return fitting(List.of(
                say("talk.title.shown", "metric", run.terms().metric(metric)),
                say(
                        "talk.title.shown.brief",
                        "metric",
                        ConditionLine.upperFirst(run.terms().metric(metric)))));
    }

    private List<String> sentences(Comparison c) {
        var full = sentence("talk.title.full.", c);
        var plain = sentence("talk.title.plain.", c);
        var brief = sentence("talk.title.brief.", c);
        var step = step(c);
        var candidates = new ArrayList<String>();
        if (c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED) {
            candidates.add(say("talk.title.published", "sentence", full));
            candidates.add(say("talk.title.published", "sentence", plain));
            candidates.add(say("talk.title.published", "sentence", brief));
        } else if (!step.isEmpty() && !full.contains(step)) {
            candidates.add(say("talk.title.at", "step", step, "sentence", full));
        }
        candidates.add(full);
        candidates.add(plain);
        candidates.add(brief);
        return candidates;
    }

    private String sentence(String beginning, Comparison c) {
        var pairing = c.pairing();
        var name = run.terms().metric(pairing.ours().metric());
        var verdict = Firmness.verdict(c).orElseThrow();
        var places = new String[] {
            "metric", c.answer() instanceof Answer.Nominal ? say("talk.stated", "metric", name) : name,
            "amount", numbers.amount(c),
            "device", run.names().brief(pairing.ours().device()),
            "present", run.names().brief(pairing.theirs().device()),
            "margin", c.margin().map(Margin::text).orElse("").replace(' ', '\u00a0')
        };
        return beginning.endsWith("brief.")
                ? say("talk.title.brief." + verdict.name(), places)
                : beginning.endsWith("plain.")
                        ? say("talk.title.plain." + verdict.name(), places)
                        : say("talk.title.full." + verdict.name(), places);
    }

    /** {@code 1.0 L/min}: a step that is one quantity; other groups do not read as a sentence. */
    String step(Comparison c) {
        var group = run.terms().group(c.pairing().ours().origin().fold(p -> "", Origin.Local::group));
        return group.matches("[\\d.,]+ \\S+") ? group.replace(' ', '\u00a0') : "";
    }

    /** The first that is short enough, or else the last. */
    private static String fitting(List<String> candidates) {
        return candidates.stream()
                .filter(t -> Legibility.words(t) <= Legibility.TITLE_WORDS)
                .findFirst()
                .orElse(candidates.get(candidates.size() - 1));
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
