package comparand.compare;

import comparand.diag.Located;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.AssumedSd;
import comparand.model.Comparison;
import comparand.model.Margin;
import comparand.model.Needed;
import comparand.model.Pairing;
import comparand.model.PlanAim;
import comparand.model.Planned;
import comparand.model.Planned.Groups;
import comparand.model.Planned.Reach;
import comparand.model.PlanningSd;
import comparand.model.Summary;
import comparand.model.library.OneOrMore;
import comparand.model.library.PlanRecord;
import comparand.model.library.SampleUnit;
import comparand.stat.CentrePlan;
import comparand.stat.ComparedGroups;
import comparand.stat.LocalMean;
import comparand.stat.PowerPlan;
import comparand.stat.PrecisionPlan;
import comparand.unit.Printed;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How many results would settle an open answer: by the power of a two-sided t test, and by the width of its interval.
 *
 * <p>The width to be reached is the distance between the margin and the size of the difference observed: with it, the interval
 * leaves out the margin, if the difference stays as it is.
 */
final class Planner {

    private static final double USUAL_POWER = 0.8;
    private static final double SMALLER = 0.75;
    private static final double UPPER = 0.8;

    private final Metric metric;
    private final Optional<Margin> margin;
    private final Optional<PlanRecord> plan;

    /** For one question of a dossier. */
    Planner(Metric metric, Optional<Margin> margin, Optional<PlanRecord> plan) {
        this.metric = metric;
        this.margin = margin;
        this.plan = plan;
    }

    /** For an answer that is open; empty where there is nothing to aim at, or no spread to plan by. */
    Optional<Planned> of(Comparison comparison, Answer.Tested tested) {
        var pairing = comparison.pairing();
        return sd(pairing).flatMap(sd -> {
            var reach = CentreReach.of(pairing);
            var assumed = assumed(sd);
            var groups = groups(pairing);
            var aims = new ArrayList<>(detecting(groups, assumed));
            narrowing(tested.difference().value(), groups, assumed, reach).ifPresent(aims::add);
            return aims.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Planned(
                            pairing.ours()
                                    .sizes()
                                    .independent()
                                    .map(s -> s.of())
                                    .orElse(SampleUnit.UNITS),
                            kind(pairing),
                            pairing.ours().sizes().independent(),
                            pairing.theirs().sizes().independent(),
                            sd,
                            assumed,
                            power(),
                            aims,
                            reach));
        });
    }

    /** For two devices of which nothing is known but what the dossier states. */
    Optional<Planned> ofNothing(SampleUnit unit) {
        return declared().flatMap(value -> {
            var sd = new PlanningSd(value, PlanningSd.From.DECLARED, OptionalDouble.empty());
            var assumed = assumed(sd);
            var aims = detecting(ComparedGroups.EACH_OF_TWO, assumed);
            return aims.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Planned(
                            unit,
                            Groups.EACH_OF_TWO,
                            Optional.empty(),
                            Optional.empty(),
                            sd,
                            assumed,
                            power(),
                            aims,
                            Reach.SAME_HOSPITALS));
        });
    }

    private List<PlanAim> detecting(ComparedGroups groups, List<AssumedSd> assumed) {
        return differences().stream()
                .map(d -> new PlanAim(
                        PlanAim.Kind.DETECT,
                        d,
                        assumed.stream()
                                .map(sd ->
                                        Needed.of(new PowerPlan(d, sd.value(), Planned.ALPHA, groups).count(power())))
                                .toList(),
                        List.of()))
                .toList();
    }

    private Optional<PlanAim> narrowing(double observed, ComparedGroups groups, List<AssumedSd> assumed, Reach reach) {
        return margin.map(m -> m.value() - Math.abs(observed))
                .filter(room -> room != 0)
                .map(room -> new PlanAim(
                        room > 0 ? PlanAim.Kind.EXCLUDE_MARGIN : PlanAim.Kind.SHOW_BEYOND,
                        Math.abs(room),
                        assumed.stream()
                                .map(sd -> Needed.of(
                                        PrecisionPlan.count(groups, sd.value(), Math.abs(room), Answer.LEVEL)))
                                .toList(),
                        reach.kind() != Reach.Kind.ACROSS_HOSPITALS
                                ? List.of()
                                : assumed.stream()
                                        .map(sd -> Needed.of(new CentrePlan(reach.tau(), sd.value(), Answer.LEVEL)
                                                .centres(groups, reach.casesEach(), Math.abs(room))))
                                        .toList()));
    }

    private static List<AssumedSd> assumed(PlanningSd sd) {
        var assumed = new ArrayList<AssumedSd>();
        assumed.add(new AssumedSd(AssumedSd.Which.SMALLER, SMALLER * sd.value()));
        assumed.add(new AssumedSd(AssumedSd.Which.AT_HAND, sd.value()));
        sd.df()
                .ifPresent(df -> assumed.add(
                        new AssumedSd(AssumedSd.Which.UPPER, PrecisionPlan.upperSd(sd.value(), df, UPPER))));
        return assumed;
    }

    /** A single side's spread, as that of one result. */
    private record Spread(double sd, double df) {}

    /**
     * From three hospitals on it is that within them, the one between them being allowed for by itself. That of an estimate is
     * the one which its number of results would give a mean of that standard error. Runs of a single unit tell nothing of how
     * units differ.
     */
    private static Optional<Spread> spread(Summary summary) {
        if (summary instanceof Summary.Sampled s) {
            boolean oneUnit =
                    s.local().filter(m -> m.rule() == LocalMean.Rule.ONE_UNIT).isPresent();
            return oneUnit
                    ? Optional.empty()
                    : s.local()
                            .flatMap(LocalMean::spread)
                            .map(b -> new Spread(
                                    Math.sqrt(b.components().meanSquareWithin()),
                                    s.moments().n() - s.local().orElseThrow().centreCount()))
                            .or(() -> Optional.of(
                                    new Spread(s.moments().sd(), s.moments().n() - 1)));
        }
        return summary instanceof Summary.Estimated e
                ? Optional.of(new Spread(
                        e.estimate().se() * Math.sqrt(e.n()), e.estimate().df()))
                : Optional.empty();
    }

    private Optional<PlanningSd> sd(Pairing pairing) {
        var ours = spread(pairing.ours().summary());
        var theirs = pairing.theirs().isLocal() ? spread(pairing.theirs().summary()) : Optional.<Spread>empty();
        var found = ours.map(a -> theirs.map(b ->
                        new Spread(Math.sqrt((a.df * a.sd * a.sd + b.df * b.sd * b.sd) / (a.df + b.df)), a.df + b.df))
                .orElse(a));
        var df = found.map(s -> OptionalDouble.of(s.df)).orElse(OptionalDouble.empty());
        return declared()
                .map(value -> new PlanningSd(value, PlanningSd.From.DECLARED, df))
                .or(() -> found.filter(s -> s.sd > 0)
                        .map(s -> new PlanningSd(
                                s.sd, theirs.isPresent() ? PlanningSd.From.POOLED : PlanningSd.From.OURS, df)));
    }

    private Optional<Double> declared() {
        return plan.flatMap(PlanRecord::sd).map(sd -> sd.value().asDifferenceIn(metric.unit()));
    }

    /** What the dossier wants found, or else the margin. */
    private List<Double> differences() {
        return plan.flatMap(PlanRecord::detect)
                .map(OneOrMore::list)
                .map(list -> list.stream()
                        .map(d -> d.value().asDifferenceIn(metric.unit()))
                        .toList())
                .orElseGet(() -> margin.map(m -> List.of(m.value())).orElse(List.of()));
    }

    private double power() {
        return plan.flatMap(PlanRecord::power)
                .map(Located::value)
                .map((Printed p) -> p.in(Unit.ONE))
                .orElse(USUAL_POWER);
    }

    private static Groups kind(Pairing pairing) {
        return pairing.theirs().isLocal()
                ? Groups.EACH_OF_TWO
                : pairing.theirs().summary() instanceof Summary.Point
                        ? Groups.AGAINST_FIGURE
                        : Groups.AGAINST_PUBLISHED;
    }

    /** Of two readings of a published spread the wider one is planned by. */
    private static ComparedGroups groups(Pairing pairing) {
        if (pairing.theirs().isLocal()) {
            return ComparedGroups.EACH_OF_TWO;
        }
        return KnownSide.of(pairing.theirs().summary())
                .map(ComparedGroups::against)
                .orElse(ComparedGroups.FIXED_VALUE);
    }
}
