package comparand.compose.results;

import comparand.compose.text.Kebab;
import comparand.compose.text.Run;
import comparand.compose.text.UnknownText;
import comparand.document.result.UnknownResult;
import comparand.document.result.UnknownResult.AimResult;
import comparand.document.result.UnknownResult.NeededResult;
import comparand.document.result.UnknownResult.PlanResult;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Needed;
import comparand.model.PlanAim;
import comparand.model.Planned;
import comparand.model.Unknown;
import comparand.model.library.SampleSize;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is not known as data, with its words. */
public final class UnknownResults {

    private final Run run;
    private final UnknownText text;

    public UnknownResults(Run run) {
        this.run = run;
        this.text = new UnknownText(run);
    }

    public List<UnknownResult> all() {
        return run.compared().unknowns().stream().map(this::of).toList();
    }

    private UnknownResult of(Unknown unknown) {
        var said = text.of(unknown);
        var about = about(unknown);
        return new UnknownResult(
                unknown.id(),
                unknown.id().substring(0, unknown.id().indexOf(':')),
                said.what(),
                said.device(),
                said.matters(),
                said.settles(),
                said.who(),
                about.metrics.stream().map(Metric::id).toList(),
                about.values,
                about.plan.map(p -> plan(p, said.settles())));
    }

    private record About(List<Metric> metrics, List<String> values, Optional<Planned> plan) {}

    private static About about(Unknown unknown) {
        return unknown.fold(new Unknown.Cases<>() {
            @Override
            public About open(Unknown.Open u) {
                return new About(metric(u.comparison()), values(u.comparison()).toList(), u.planned());
            }

            @Override
            public About declared(Unknown.Declared u) {
                return new About(List.of(), List.of(), Optional.empty());
            }

            @Override
            public About unmeasured(Unknown.Unmeasured u) {
                return new About(
                        List.of(u.metric()),
                        u.have().map(Comparand::id).stream().toList(),
                        u.planned());
            }

            @Override
            public About asked(Unknown.Asked u) {
                var values = new LinkedHashSet<String>();
                u.missing().forEach(m -> values.addAll(m.values()));
                return new About(u.metrics(), List.copyOf(values), Optional.empty());
            }

            @Override
            public About unlike(Unknown.Unlike u) {
                var values = u.pairs().stream().flatMap(UnknownResults::values).distinct();
                return new About(metric(u.first()), values.toList(), Optional.empty());
            }

            @Override
            public About unpublished(Unknown.Unpublished u) {
                return new About(u.metrics(), List.of(), Optional.empty());
            }

            @Override
            public About paidFor(Unknown.PaidFor u) {
                return new About(u.metrics(), List.of(), Optional.empty());
            }
        });
    }

    private static List<Metric> metric(Comparison c) {
        return List.of(c.pairing().ours().metric());
    }

    private static Stream<String> values(Comparison c) {
        return Stream.of(c.pairing().ours().id(), c.pairing().theirs().id());
    }

    private static PlanResult plan(Planned p, List<String> sentences) {
        boolean across = p.reach().kind() == Planned.Reach.Kind.ACROSS_HOSPITALS;
        var aims = new ArrayList<AimResult>();
        for (int i = 0; i < p.aims().size(); i++) {
            var aim = p.aims().get(i);
            aims.add(new AimResult(Kebab.of(aim.kind()), aim.amount(), sentences.get(i), needed(p, aim)));
        }
        return new PlanResult(
                p.unit().plural(),
                Kebab.of(p.groups()),
                p.ours().map(SampleSize::count),
                p.theirs().map(SampleSize::count),
                Kebab.of(p.sd().from()),
                ResultSets.present(p.sd().df()),
                p.power(),
                Planned.ALPHA,
                Kebab.of(p.reach().kind()),
                across ? Optional.of(p.reach().tau()) : Optional.empty(),
                across ? Optional.of(p.reach().casesEach()) : Optional.empty(),
                aims);
    }

    private static List<NeededResult> needed(Planned plan, PlanAim aim) {
        var all = new ArrayList<NeededResult>();
        for (int i = 0; i < plan.assumed().size(); i++) {
            var assumed = plan.assumed().get(i);
            var n = aim.results().get(i);
            var hospitals = aim.hospitals().isEmpty()
                    ? Optional.<Needed>empty()
                    : Optional.of(aim.hospitals().get(i));
            all.add(new NeededResult(
                    Kebab.of(assumed.which()),
                    assumed.value(),
                    Kebab.of(n.kind()),
                    number(n),
                    hospitals.map(h -> Kebab.of(h.kind())),
                    hospitals.flatMap(UnknownResults::number)));
        }
        return all;
    }

    private static Optional<Integer> number(Needed n) {
        return n.kind() == Needed.Kind.NONE ? Optional.empty() : Optional.of(n.n());
    }
}
