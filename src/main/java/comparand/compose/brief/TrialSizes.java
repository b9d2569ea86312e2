package comparand.compose.brief;

import comparand.compose.text.PlanWords;
import comparand.compose.text.Run;
import comparand.metric.Metric;
import comparand.model.AssumedSd;
import comparand.model.Needed;
import comparand.model.PlanAim;
import comparand.model.Planned;
import comparand.model.Unknown;
import comparand.model.library.SampleUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;

/**
 * How much it takes to settle what is open of a metric, in few words: of several open comparisons the one that takes most, by
 * the width of its interval where that was planned for, else by power.
 */
final class TrialSizes {

    private final Run run;

    TrialSizes(Run run) {
        this.run = run;
    }

    private record Size(Planned plan, PlanAim aim, Needed needed) {

        /** No number suffices comes last, and more than so many behind so many. */
        int amount() {
            return needed.kind() == Needed.Kind.NONE ? Integer.MAX_VALUE : needed.n();
        }
    }

    /** {@code about 14 units, about 133 cases in each group}; empty where no number can be given. */
    Optional<String> of(OpenRow row) {
        var most = new TreeMap<SampleUnit, Size>();
        row.unknowns().stream()
                .flatMap(u -> plan(u).stream())
                .flatMap(p -> size(p).stream())
                .forEach(
                        s -> most.merge(s.plan.unit(), s, BinaryOperator.maxBy(Comparator.comparingInt(Size::amount))));
        return row.metric()
                .filter(m -> !most.isEmpty())
                .map(m -> most.values().stream().map(s -> words(s, m)).collect(Collectors.joining("; ")));
    }

    private static Optional<Planned> plan(Unknown unknown) {
        if (unknown instanceof Unknown.Open open) {
            return open.planned();
        }
        return unknown instanceof Unknown.Unmeasured unmeasured ? unmeasured.planned() : Optional.empty();
    }

    private static Optional<Size> size(Planned plan) {
        return plan.aims().stream()
                .min(Comparator.comparingInt(a -> a.kind() == PlanAim.Kind.DETECT ? 1 : 0))
                .map(aim -> new Size(plan, aim, aim.results().get(atHand(plan.assumed()))));
    }

    private static int atHand(List<AssumedSd> assumed) {
        for (int i = 0; i < assumed.size(); i++) {
            if (assumed.get(i).which() == AssumedSd.Which.AT_HAND) {
                return i;
            }
        }
        return 0;
    }

    private String words(Size size, Metric metric) {
        if (size.needed.kind() == Needed.Kind.NONE) {
            return run.words().say("needed.never", "units", run.terms().level(size.plan.unit()));
        }
        var text = new PlanWords(run.words(), run.figures(), metric, size.plan);
        return run.words()
                .say(
                        "brief.size",
                        "n",
                        text.brief(size.needed),
                        "units",
                        run.terms().level(size.plan.unit()),
                        "where",
                        text.where());
    }
}
