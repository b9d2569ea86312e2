package comparand.compose.manuscript;

import comparand.compose.text.Run;
import comparand.compose.text.RunFacts;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.SourcesTogether;
import comparand.model.Summary;
import comparand.stat.LocalMean;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The statistics that this run used, and no others. */
final class Statistics {

    private final Writing writing;
    private final Run run;

    Statistics(Writing writing) {
        this.writing = writing;
        this.run = writing.run();
    }

    List<String> sentences(RunFacts facts) {
        var said = new ArrayList<String>();
        margins(said);
        said.add(say("ms.say.interval"));
        if (used(c -> c.answer() instanceof Answer.Tested || c.answer() instanceof Answer.EitherReading)) {
            said.add(say("ms.say.welch"));
        }
        if (used(c -> hospitals(c.pairing().ours()) || hospitals(c.pairing().theirs()))) {
            said.add(say("ms.say.centres"));
        }
        if (used(c -> c.answer() instanceof Answer.AgainstFigure)) {
            said.add(say("ms.say.figure"));
        }
        if (used(c -> c.answer() instanceof Answer.EitherReading)) {
            said.add(say("ms.say.either"));
        }
        if (used(c -> c.answer() instanceof Answer.AgainstLimit)) {
            said.add(say("ms.say.limit"));
        }
        if (used(c -> c.answer() instanceof Answer.EventCounts)) {
            said.add(say("ms.say.events"));
        }
        if (used(c -> c.answer() instanceof Answer.Nominal)) {
            said.add(say("ms.say.nominal"));
        }
        together(said);
        adjusted(said);
        said.add(say("ms.say.missing"));
        if (!run.compared().scenarios().isEmpty()) {
            said.add(say(
                    "ms.say.scenarios",
                    "n",
                    String.valueOf(run.compared().scenarios().size()),
                    "table",
                    Numbering.SCENARIOS.named(writing)));
        }
        said.add(say(
                "ms.say.software",
                "tool",
                facts.tool(),
                "fingerprint",
                facts.fingerprint().substring(0, 8)));
        return said;
    }

    private void margins(List<String> said) {
        var set = new ArrayList<String>();
        run.questions()
                .forEach((question, metric) -> question.margin()
                        .flatMap(m -> m.value().amount())
                        .ifPresent(m -> set.add(say(
                                "ms.margin",
                                "metric",
                                run.terms().metric(metric),
                                "margin",
                                run.terms()
                                        .quantity(question.margin()
                                                .orElseThrow()
                                                .value()
                                                .toString()),
                                "reason",
                                question.reason().map(r -> r.value()).orElse(say("no-reason"))))));
        if (!set.isEmpty()) {
            said.add(say("ms.say.margins", "margins", String.join("; ", set)));
        }
    }

    private boolean used(Predicate<Comparison> which) {
        return run.compared().comparisons().stream().anyMatch(which);
    }

    private static boolean hospitals(Comparand c) {
        return c.summary() instanceof Summary.Sampled s
                && s.local()
                        .map(l -> l.rule() != LocalMean.Rule.ONE_CENTRE && l.centreCount() > 1)
                        .orElse(false);
    }

    private void together(List<String> said) {
        if (run.compared().together().stream().anyMatch(t -> t instanceof SourcesTogether.Two)) {
            said.add(say("ms.say.two"));
        }
        if (run.compared().together().stream().anyMatch(t -> t instanceof SourcesTogether.Several)) {
            said.add(say("ms.say.several"));
        }
    }

    private void adjusted(List<String> said) {
        if (run.familySize() > 1) {
            said.add(say("ms.say.adjusted", "m", String.valueOf(run.familySize())));
            run.dossier()
                    .primary()
                    .flatMap(p -> run.library().catalogue().find(p.value()))
                    .ifPresent(p ->
                            said.add(say("ms.say.primary", "metric", run.terms().metric(p))));
        }
    }

    private String say(String key, String... places) {
        return writing.say(key, places);
    }
}
