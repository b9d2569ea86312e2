package comparand.compose.results;

import comparand.compose.text.Kebab;
import comparand.compose.text.Run;
import comparand.document.result.PairResult.DifferenceResult;
import comparand.document.result.TogetherResult;
import comparand.document.result.TogetherResult.PoolResult;
import comparand.document.result.TogetherResult.WithoutResult;
import comparand.model.Answer;
import comparand.model.SourcesTogether;
import comparand.model.SourcesTogether.Several;
import comparand.model.SourcesTogether.Two;
import comparand.model.SourcesTogether.Without;
import comparand.model.Verdict;
import comparand.stat.Interval;
import comparand.stat.RandomEffects;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** What several sources say together, as data. */
public final class TogetherResults {

    private final Run run;

    public TogetherResults(Run run) {
        this.run = run;
    }

    public TogetherResult of(SourcesTogether together) {
        var apart = together.fold(two -> Optional.of(apart(two)), several -> Optional.<DifferenceResult>empty());
        return new TogetherResult(
                together.ours().metric().id(),
                together.ours().id(),
                together.each().stream().map(c -> c.pairing().theirs().id()).toList(),
                run.together().of(together),
                apart,
                together.fold(Two::adjustedP, several -> List.<Double>of()),
                together.fold(two -> Optional.<PoolResult>empty(), several -> Optional.of(pool(several))));
    }

    private DifferenceResult apart(Two two) {
        var interval = two.apart().interval(Answer.LEVEL);
        var verdict = Verdict.of(interval, two.margin());
        return difference(new Answer.Tested(two.apart(), interval, verdict, Optional.empty()), two);
    }

    private DifferenceResult difference(Answer.Tested tested, SourcesTogether together) {
        return new PairResults(run).difference(tested, together.each().get(0));
    }

    private PoolResult pool(Several several) {
        var pool = several.pool();
        var by = new TreeMap<String, Double>();
        pool.tau2().forEach((method, tau2) -> by.put(Kebab.of(method), Math.sqrt(tau2)));
        var tau2 = pool.tau2Interval(Answer.LEVEL);
        return new PoolResult(
                pool.mean().mean(),
                ComparandResults.range(pool.mean().interval(Answer.LEVEL)),
                Math.sqrt(pool.random().tau2()),
                ComparandResults.range(new Interval(Math.sqrt(tau2.low()), Math.sqrt(tau2.high()))),
                by,
                pool.common().i2(),
                pool.common().mean(),
                ComparandResults.range(pool.common().estimate().interval(Answer.LEVEL)),
                ComparandResults.range(several.expected()),
                Kebab.of(several.place()),
                pool.rough(),
                difference(several.againstMean(), several),
                several.without().stream().map(TogetherResults::without).toList());
    }

    private static WithoutResult without(Without without) {
        var mean = without.random().map(RandomEffects::modifiedHartungKnapp);
        return new WithoutResult(
                without.left(),
                without.label().map(Kebab::of).orElse("one-source"),
                mean.map(m -> m.mean()),
                mean.map(m -> ComparandResults.range(m.interval(Answer.LEVEL))),
                without.place().map(Kebab::of));
    }
}
