package comparand.compose.ledger;

import comparand.document.result.ComparandResult;
import comparand.document.result.PairResult;
import comparand.document.result.PairResult.DifferenceResult;
import comparand.document.result.PairResult.VerdictResult;
import comparand.document.result.TogetherResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The answers of a run, each with what makes it this answer and what are its numbers. */
final class Sentences {

    private static final String PUBLISHED = "local-against-published";
    private static final String STATED = "stated-against-present-device";

    private final Side side;

    Sentences(Side side) {
        this.side = side;
    }

    List<Said> all() {
        var said = new ArrayList<Said>();
        side.results().pairs().forEach(p -> said.add(of(p)));
        side.results().together().forEach(t -> said.add(of(t)));
        return said;
    }

    private Said of(PairResult pair) {
        var answer = pair.answer();
        boolean shownOnly = answer.kind().equals("shown") || answer.kind().equals("not-testable");
        var against = pair.conditions().stream()
                .filter(v -> v.role().equals("decides"))
                .filter(v -> v.verdict().equals("differs") || v.verdict().equals("not-reported"))
                .toList();
        var verdict = new ArrayList<Object>(List.of(pair.standing(), answer.kind()));
        answer.difference().map(DifferenceResult::verdict).ifPresent(verdict::add);
        answer.ifStandardError().map(DifferenceResult::verdict).ifPresent(verdict::add);
        if (answer.kind().equals("against-limit")) {
            verdict.add(answer.sentence().replaceAll("[\\d.,]+", "#"));
        }
        var facts = new ArrayList<Object>(List.of(
                answer.difference(),
                answer.ifStandardError(),
                answer.mean(),
                answer.oneMore(),
                answer.meeting(),
                answer.of(),
                answer.most()));
        if (shownOnly) {
            against.forEach(v -> facts.add(List.of(v.id(), v.ours(), v.theirs())));
        }
        if (answer.kind().equals("events")) {
            facts.add(shown(pair.ours()));
            facts.add(shown(pair.theirs()));
        }
        var shown = answer.difference().map(d -> d.shown() + ": ").orElse("");
        return new Said(
                pair.id(),
                what(pair),
                pair.metric(),
                List.of(pair.ours(), pair.theirs()),
                verdict,
                shownOnly ? against.stream().map(VerdictResult::id).toList() : List.of(),
                facts,
                shown + answer.sentence(),
                plain(answer.sentence(), List.of(pair.ours(), pair.theirs())),
                pair.standingWords(),
                shownOnly,
                answer.difference().flatMap(DifferenceResult::p),
                answer.adjustedP());
    }

    private Said of(TogetherResult together) {
        var values = new ArrayList<String>(List.of(together.ours()));
        values.addAll(together.sources());
        var text = String.join(" ", together.sentences());
        var ours = side.value(together.ours());
        return new Said(
                together.ours() + " | " + String.join(" + ", together.sources()),
                side.words()
                        .say(
                                "ledger.together",
                                "value",
                                ours.map(this::local).orElse(together.ours()),
                                "sources",
                                String.join(", ", together.sources())),
                together.metric(),
                values,
                List.of(together.sentences().get(0).replaceAll("[\\d.,]+", "#")),
                List.of(),
                List.of(together.apart(), together.pool()),
                text,
                plain(text, values),
                "",
                false,
                Optional.empty(),
                Optional.empty());
    }

    private String shown(String value) {
        return side.value(value).map(c -> c.summary().shown()).orElse("");
    }

    private String what(PairResult pair) {
        var ours = side.value(pair.ours());
        var theirs = side.value(pair.theirs());
        if (ours.isEmpty() || theirs.isEmpty()) {
            return pair.id();
        }
        var beside = pair.purpose().equals(PUBLISHED)
                ? side.words()
                        .say(
                                "ledger.published",
                                "value",
                                pair.theirs(),
                                "from",
                                theirs.get().from().orElse(""))
                : side.device(theirs.get().device());
        return side.words()
                .say(
                        "ledger.beside",
                        "value",
                        pair.purpose().equals(STATED) ? side.named(ours.get()) : local(ours.get()),
                        "beside",
                        beside);
    }

    /** {@code Quillane 15, pressure drop (bench-norrisgate, 1.5 L/min)}. */
    private String local(ComparandResult c) {
        return side.words()
                .say(
                        "ledger.local",
                        "device",
                        side.device(c.device()),
                        "metric",
                        side.metric(c.metric()),
                        "where",
                        c.locator().replaceFirst("^L:", ""));
    }

    private String plain(String sentence, List<String> values) {
        var text = sentence;
        for (var id : values) {
            var value = side.value(id);
            if (value.isPresent()) {
                text = Pattern.compile(
                                "(?<![\\w:.])" + Pattern.quote(value.get().locator()) + "(?!\\w)")
                        .matcher(text)
                        .replaceAll(Matcher.quoteReplacement(id));
            }
        }
        return text;
    }
}
