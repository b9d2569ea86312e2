package comparand.compare;

import comparand.model.Answer;
import comparand.model.Compared;
import comparand.model.Comparison;
import comparand.model.Pairing.Purpose;
import comparand.model.ScenarioOutcome;
import comparand.model.ScenarioOutcome.Change;
import comparand.model.ScenarioOutcome.TogetherChange;
import comparand.model.SourcesTogether;
import comparand.model.SourcesTogether.Two;
import comparand.model.library.ScenarioRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sets the answers of a run beside those of the same run under a scenario. */
public final class Scenarios {

    private Scenarios() {}

    public static ScenarioOutcome outcome(ScenarioRecord scenario, Compared run, Compared supposed) {
        var after = new HashMap<String, Comparison>();
        supposed.comparisons().forEach(c -> after.put(key(c), c));
        var changes = new ArrayList<Change>();
        for (var before : run.comparisons()) {
            var now = Optional.ofNullable(after.get(key(before)));
            if (now.isEmpty() || !said(before).equals(said(now.get()))) {
                changes.add(new Change(before, now));
            }
        }
        return new ScenarioOutcome(scenario, run.comparisons().size(), changes, together(run, supposed));
    }

    /**
     * What makes a pair the same one in both runs: the published value with the device's metric, whichever local result meets
     * it best; or the two local results.
     */
    private static String key(Comparison c) {
        var p = c.pairing();
        return p.purpose() == Purpose.LOCAL_AGAINST_PUBLISHED
                ? String.join(
                        "|",
                        p.ours().metric().id(),
                        p.ours().device(),
                        p.theirs().id())
                : p.purpose() + "|" + p.id();
    }

    /** What is said of a pair, without its numbers: an answer changes when its words do. */
    private static String said(Comparison c) {
        return c.pairing().standing() + " " + words(c.answer());
    }

    private static String words(Answer answer) {
        return answer.fold(new Answer.Cases<String>() {
            @Override
            public String tested(Answer.Tested a) {
                return "tested " + a.verdict();
            }

            @Override
            public String eitherReading(Answer.EitherReading a) {
                // read either way and the same is said: as much as one reading would say
                return a.agree()
                        ? tested(a.asSd())
                        : a.asSd().verdict() + " or " + a.asSe().verdict();
            }

            @Override
            public String againstFigure(Answer.AgainstFigure a) {
                return "figure " + a.taken().verdict();
            }

            @Override
            public String nominal(Answer.Nominal a) {
                return "nominal " + a.verdict();
            }

            @Override
            public String againstLimit(Answer.AgainstLimit a) {
                return "limit " + a.meanMeets() + a.meeting() + a.most().map(Answer.ToleranceBound::meets);
            }

            @Override
            public String events(Answer.EventCounts a) {
                return "events";
            }

            @Override
            public String shown(Answer.Shown a) {
                return "shown";
            }

            @Override
            public String notTestable(Answer.NotTestable a) {
                return a.why().name();
            }
        });
    }

    private static List<TogetherChange> together(Compared run, Compared supposed) {
        Map<String, SourcesTogether> after = new HashMap<>();
        supposed.together().forEach(t -> after.put(t.ours().id(), t));
        var changes = new ArrayList<TogetherChange>();
        for (var before : run.together()) {
            var now = Optional.ofNullable(after.get(before.ours().id()));
            if (now.isEmpty() || !said(before).equals(said(now.get()))) {
                changes.add(new TogetherChange(before, now));
            }
        }
        return changes;
    }

    private static String said(SourcesTogether together) {
        return together.fold(
                (Two two) -> "two",
                several -> several.place() + " " + several.againstMean().verdict()
                        + several.pool().rough());
    }
}
