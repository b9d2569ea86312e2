package comparand.compare;

import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Comparand;
import comparand.model.Compared;
import comparand.model.Comparison;
import comparand.model.LocalPart;
import comparand.model.Margin;
import comparand.model.Matched;
import comparand.model.Pairing;
import comparand.model.Pairing.Purpose;
import comparand.model.Standing;
import comparand.model.Summary;
import comparand.model.Unknown;
import comparand.model.library.QuestionRecord;
import comparand.model.library.SampleUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Everything that is open after the comparisons, ranked by whether it could change the decision. */
public final class Unknowns {

    private final Matched matched;
    private final List<Comparison> comparisons;
    private final Map<Metric, QuestionRecord> questions = new LinkedHashMap<>();

    private Unknowns(Compared compared) {
        this.matched = compared.matched();
        this.comparisons = compared.comparisons();
        var checked = matched.evidence().checked();
        for (var question : checked.dossier().questions()) {
            var metric = checked.library().catalogue().find(question.metric().value());
            questions.put(metric.orElseThrow(), question);
        }
    }

    /** The same comparisons with what is not known after them. */
    public static Compared in(Compared compared) {
        return compared.withUnknowns(new Unknowns(compared).ranked());
    }

    private List<Unknown> ranked() {
        var all = new ArrayList<Unknown>();
        var dossier = matched.evidence().checked().dossier();
        var open = comparisons.stream()
                .filter(c -> OpenAnswers.of(c.answer()).isPresent())
                .toList();
        open.stream().filter(c -> !OpenAnswers.isPartOfAnother(c, open)).forEach(c -> open(c).ifPresent(all::add));
        questions.forEach((metric, question) ->
                dossier.devices().forEach(d -> unmeasured(metric, d.value()).ifPresent(all::add)));
        for (int i = 0; i < dossier.unknowns().size(); i++) {
            all.add(new Unknown.Declared(dossier.unknowns().get(i), i + 1));
        }
        all.addAll(Requests.of(comparisons));
        all.addAll(unlike());
        var gaps = new SourceGaps(matched, comparisons, List.copyOf(questions.keySet()));
        dossier.devices().forEach(d -> all.addAll(gaps.of(d.value())));
        // the sort is stable: within a rank the order of questions, devices and values stays
        all.sort(Comparator.comparingInt(this::rank));
        return all;
    }

    private Optional<Unknown> open(Comparison c) {
        return OpenAnswers.of(c.answer())
                .map(t ->
                        new Unknown.Open(c, planner(c.pairing().ours().metric()).of(c, t)));
    }

    private Planner planner(Metric metric) {
        return new Planner(
                metric,
                margin(metric),
                Optional.ofNullable(questions.get(metric)).flatMap(QuestionRecord::plan));
    }

    /** A device without any result of ours, or with too few to compare. */
    private Optional<Unknown> unmeasured(Metric metric, String device) {
        var local = matched.evidence().local().stream()
                .filter(c -> c.metric().equals(metric) && c.device().equals(device) && !c.isLocal(LocalPart.CENTRE))
                .toList();
        if (metric.nature() == Nature.STATED || !local.stream().allMatch(Unknowns::isTooFew)) {
            return Optional.empty();
        }
        var most = local.stream().max(Comparator.comparingInt(Unknowns::count));
        var unit = most.flatMap(c -> c.sizes().independent()).map(s -> s.of()).orElse(SampleUnit.UNITS);
        return Optional.of(new Unknown.Unmeasured(
                metric,
                margin(metric),
                device,
                most,
                metric.nature() == Nature.EVENT
                        ? Optional.empty()
                        : planner(metric).ofNothing(unit)));
    }

    private static boolean isTooFew(Comparand local) {
        return local.summary() instanceof Summary.Sampled s
                ? Answers.isTooFew(s)
                : local.summary() instanceof Summary.Point p && p.kind() == Summary.PointKind.SINGLE;
    }

    private static int count(Comparand local) {
        return local.sizes().independent().map(s -> s.count()).orElse(0);
    }

    private Optional<Margin> margin(Metric metric) {
        return Optional.ofNullable(questions.get(metric)).flatMap(q -> Comparer.margin(metric, q));
    }

    private record Sides(Metric metric, String device, String other) {}

    /** Pairs that differ, or to which our own side is silent, gathered by what they would compare. */
    private List<Unknown> unlike() {
        var groups = new LinkedHashMap<Sides, List<Comparison>>();
        var apart = comparisons.stream().filter(c -> isUnlike(c.pairing())).toList();
        apart.stream()
                .filter(c -> !OpenAnswers.isPartOfAnother(c, apart))
                .forEach(c -> groups.computeIfAbsent(sides(c.pairing()), s -> new ArrayList<>())
                        .add(c));
        return groups.values().stream().<Unknown>map(Unknown.Unlike::new).toList();
    }

    private static boolean isUnlike(Pairing p) {
        boolean ourSilence = p.standing() == Standing.NOT_REPORTED
                && p.ours().isLocal()
                && (p.theirs().isLocal()
                        || !Requests.missing(p.verdicts(), true).isEmpty());
        return p.standing() == Standing.CONDITIONS_DIFFER || p.standing() == Standing.DIFFERENT_QUANTITY || ourSilence;
    }

    private static Sides sides(Pairing p) {
        return new Sides(
                p.ours().metric(),
                p.ours().device(),
                p.theirs().device()
                        + p.theirs().origin().fold(s -> " " + s.source().id(), l -> ""));
    }

    /** The lower, the sooner it could change the decision. */
    private int rank(Unknown unknown) {
        return unknown.fold(new Unknown.Cases<>() {
            @Override
            public Integer open(Unknown.Open u) {
                return (u.comparison().margin().isPresent() ? 0 : 20)
                        + purpose(u.comparison().pairing().purpose());
            }

            @Override
            public Integer unmeasured(Unknown.Unmeasured u) {
                return u.margin().isPresent() ? 5 : 25;
            }

            @Override
            public Integer declared(Unknown.Declared u) {
                return 10;
            }

            @Override
            public Integer asked(Unknown.Asked u) {
                return u.metrics().stream().anyMatch(m -> margin(m).isPresent()) ? 30 : 31;
            }

            @Override
            public Integer unlike(Unknown.Unlike u) {
                return (u.first().margin().isPresent() ? 40 : 45)
                        + purpose(u.first().pairing().purpose());
            }

            @Override
            public Integer unpublished(Unknown.Unpublished u) {
                return 51;
            }

            @Override
            public Integer paidFor(Unknown.PaidFor u) {
                return 50;
            }
        });
    }

    private static int purpose(Purpose purpose) {
        return switch (purpose) {
            case AGAINST_PRESENT_DEVICE, STATED_AGAINST_PRESENT_DEVICE -> 0;
            case WITHIN_CENTRE -> 1;
            case LOCAL_AGAINST_PUBLISHED -> 2;
        };
    }
}
