package comparand.compare;

import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.Label;
import comparand.model.Origin;
import comparand.model.Pairing.Purpose;
import comparand.model.SourcesTogether;
import comparand.model.SourcesTogether.Place;
import comparand.model.SourcesTogether.Several;
import comparand.model.SourcesTogether.Two;
import comparand.model.SourcesTogether.Without;
import comparand.model.Summary;
import comparand.model.Verdict;
import comparand.stat.BetweenVariance;
import comparand.stat.Effects;
import comparand.stat.Holm;
import comparand.stat.MeanDifference;
import comparand.stat.MeanEstimate;
import comparand.stat.Pool;
import comparand.stat.RandomEffects;
import comparand.stat.RatioOfMeans;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Puts the sources together that were each compared with the same local result: those with mean, spread and number, one value
 * for each source. Figures without spread are shown, and not pooled.
 */
final class Pooling {

    /** With fewer, what is left when one is taken away cannot show how sources differ. */
    private static final int FEWEST_TO_LEAVE_ONE_OUT = 4;

    private static final int FEWEST_TO_POOL = 3;

    private Pooling() {}

    /** In the order of the comparisons. */
    static List<SourcesTogether> of(List<Comparison> comparisons) {
        var groups = new LinkedHashMap<String, LinkedHashMap<String, Comparison>>();
        comparisons.stream()
                .filter(c -> c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED
                        && c.answer() instanceof Answer.Tested
                        && c.pairing().theirs().summary() instanceof Summary.Sampled)
                .forEach(c -> groups.computeIfAbsent(c.pairing().ours().id(), o -> new LinkedHashMap<>())
                        .putIfAbsent(source(c), c));
        return groups.values().stream()
                .filter(g -> g.size() > 1)
                .flatMap(g -> together(List.copyOf(g.values())).stream())
                .toList();
    }

    private static String source(Comparison c) {
        return c.pairing().theirs().origin().fold(p -> p.source().id(), (Origin.Local l) -> "");
    }

    /** Empty where they cannot be put together. */
    static Optional<SourcesTogether> together(List<Comparison> each) {
        var estimates = each.stream().map(Pooling::theirs).toList();
        return Pool.of(estimates)
                .value()
                .flatMap(pool -> pool.fold(
                        one -> Optional.<SourcesTogether>empty(),
                        pair -> Optional.of(two(each, pair)),
                        several -> Optional.of(several(each, several))));
    }

    private static SourcesTogether two(List<Comparison> each, Pool.Pair pair) {
        var p = each.stream()
                .map(c -> MeanDifference.of(ours(c), theirs(c)).p())
                .toList();
        return new Two(each, pair.difference(), Holm.adjust(p));
    }

    private static SourcesTogether several(List<Comparison> each, Pool.Several pool) {
        var ours = ours(each.get(0));
        var expected = pool.furtherObservedMean(ours, Answer.LEVEL);
        var difference = MeanDifference.of(ours, pool.mean());
        var interval = difference.interval(Answer.LEVEL);
        var margin = each.get(0).margin();
        return new Several(
                each,
                pool,
                expected,
                Place.of(ours.mean(), expected),
                new Answer.Tested(
                        difference,
                        interval,
                        Verdict.of(interval, margin),
                        RatioOfMeans.of(ours, pool.mean()).value()),
                without(each, ours));
    }

    private static List<Without> without(List<Comparison> each, MeanEstimate ours) {
        var all = new ArrayList<Without>();
        if (each.size() >= FEWEST_TO_LEAVE_ONE_OUT) {
            each.forEach(left -> all.add(without(each, ours, Optional.empty(), left::equals)));
        }
        Stream.of(Label.ESTIMATED, Label.DIGITISED)
                .map(label -> without(
                        each, ours, Optional.of(label), c -> theirSummary(c).label() == label))
                .filter(w -> !w.left().isEmpty())
                .forEach(all::add);
        return all;
    }

    private static Without without(
            List<Comparison> each, MeanEstimate ours, Optional<Label> label, Predicate<Comparison> isLeftOut) {
        var left = each.stream()
                .filter(isLeftOut)
                .map(c -> c.pairing().theirs().id())
                .toList();
        var rest = each.stream().filter(isLeftOut.negate()).map(Pooling::theirs).toList();
        var random = rest.size() < FEWEST_TO_POOL
                ? Optional.<RandomEffects>empty()
                : Optional.of(RandomEffects.of(Effects.ofEstimates(rest), BetweenVariance.RESTRICTED_LIKELIHOOD));
        var place = random.flatMap(
                r -> r.furtherObservedMean(ours, Answer.LEVEL).value().map(i -> Place.of(ours.mean(), i)));
        return new Without(left, label, random, place);
    }

    private static Summary.Sampled theirSummary(Comparison c) {
        return (Summary.Sampled) c.pairing().theirs().summary();
    }

    private static MeanEstimate theirs(Comparison c) {
        return KnownSide.of(c.pairing().theirs().summary()).orElseThrow();
    }

    private static MeanEstimate ours(Comparison c) {
        return KnownSide.of(c.pairing().ours().summary()).orElseThrow();
    }
}
