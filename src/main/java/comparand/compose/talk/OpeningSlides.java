package comparand.compose.talk;

import comparand.compose.talk.Draft.Asked;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.document.result.RowLogResult;
import comparand.document.result.RowLogResult.ReasonResult;
import comparand.document.talk.Part;
import comparand.document.talk.layout.Legibility;
import java.util.ArrayList;
import java.util.List;

/** The question, and how much stands behind the answers. */
final class OpeningSlides {

    static final String QUESTION = "question";
    static final String METHOD = "method";

    private final Run run;
    private final RowLogResult log;
    private final Speeches speeches;
    private final List<Asked> asked;

    OpeningSlides(Run run, RowLogResult log, Speeches speeches, List<Asked> asked) {
        this.run = run;
        this.log = log;
        this.speeches = speeches;
        this.asked = asked;
    }

    Draft question() {
        var dossier = run.dossier();
        var sentences = new ArrayList<>(List.of(
                say(
                        "talk.question.decision",
                        "decision",
                        unstopped(dossier.decision().value())),
                say(
                        "talk.question.presenter",
                        "presenter",
                        unstopped(dossier.preparedBy().value())),
                dossier.interests()
                        .map(i -> say("talk.question.interests", "interests", unstopped(i.value())))
                        .orElseGet(() -> say("talk.question.interests.none"))));
        var devices = say("talk.question.devices", "devices", devices());
        if (Legibility.words(String.join(" ", sentences) + " " + devices) <= Legibility.BODY_WORDS) {
            sentences.add(1, devices);
        }
        var fixed = dossier.fixed().value().toString();
        var strip = dossier.firstSeen()
                .map(Located::value)
                .map(seen -> say("talk.strip.question", "fixed", fixed, "seen", seen.toString()))
                .orElseGet(() -> say("talk.strip.question.unseen", "fixed", fixed));
        return new Draft(
                QUESTION,
                ConditionLine.upperFirst(dossier.question().value()),
                List.of(new Part.Points(sentences)),
                strip,
                speeches.plain(say("talk.say.question"), asked),
                false,
                List.of());
    }

    private String devices() {
        var present = run.dossier().presentDevice().value();
        return String.join(
                ", ",
                run.dossier().devices().stream()
                        .map(Located::value)
                        .map(d -> d.equals(present)
                                ? say(
                                        "talk.question.present",
                                        "device",
                                        run.names().device(d))
                                : run.names().device(d))
                        .toList());
    }

    private static String unstopped(String text) {
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }

    Draft method() {
        var total = log.total();
        var boxes = new ArrayList<Part.Box>();
        boxes.add(new Part.Box(
                String.valueOf(total.rows()),
                say("talk.sieve.rows", "files", String.valueOf(log.files().size())),
                dropped()));
        var kept = new ArrayList<String>(List.of(say("talk.sieve.kept")));
        log.studies()
                .forEach(s -> kept.add(s.members()
                        .map(n -> say(
                                "talk.sieve.members",
                                "n",
                                String.valueOf(n),
                                "level",
                                run.words().term("level", s.of())))
                        .orElse("")));
        kept.removeIf(String::isEmpty);
        boxes.add(new Part.Box(String.valueOf(total.kept()), String.join("\n", kept), ""));
        int shown = total.pairs() - total.compared();
        boxes.add(new Part.Box(
                String.valueOf(total.pairs()),
                say("talk.sieve.pairs"),
                shown == 0 ? "" : say("talk.sieve.shown", "n", String.valueOf(shown))));
        boxes.add(new Part.Box(String.valueOf(total.compared()), say("talk.sieve.compared"), ""));
        return new Draft(
                METHOD,
                say("talk.title.method"),
                List.of(new Part.Sieve(boxes)),
                say("talk.strip.method"),
                speeches.plain(say("talk.say.method"), asked),
                false,
                List.of());
    }

    private String dropped() {
        var total = log.total();
        if (total.dropped() == 0) {
            return total.held() == 0 ? "" : say("talk.sieve.held", "n", String.valueOf(total.held()));
        }
        var named = new ArrayList<String>();
        for (ReasonResult r : total.named()) {
            named.add(say("talk.sieve.reason", "reason", r.reason(), "n", String.valueOf(r.rows())));
        }
        if (total.otherReasons() > 0) {
            named.add(say("talk.sieve.others", "n", String.valueOf(total.otherReasons())));
        }
        var dropped =
                say("talk.sieve.dropped", "n", String.valueOf(total.dropped()), "reasons", String.join("; ", named));
        return total.held() == 0
                ? dropped
                : say("talk.sieve.held.too", "dropped", dropped, "held", String.valueOf(total.held()));
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
