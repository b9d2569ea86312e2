package comparand.compare;

import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Mark;
import comparand.model.Missing;
import comparand.model.Origin;
import comparand.model.Pairing.Purpose;
import comparand.model.Standing;
import comparand.model.Summary;
import comparand.model.Unknown;
import comparand.model.library.ConditionText;
import comparand.model.library.SourceRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the sources leave out, gathered into one letter for each source and device. */
final class Requests {

    private record To(String source, String device) {}

    private record Gap(Missing.What kind, List<String> what) {}

    private static final class Letter {
        private final SourceRecord source;
        private final Set<Metric> metrics = new LinkedHashSet<>();
        private final Map<Gap, Set<String>> gaps = new LinkedHashMap<>();

        private Letter(SourceRecord source) {
            this.source = source;
        }
    }

    private final Map<To, Letter> letters = new LinkedHashMap<>();

    private Requests() {}

    static List<Unknown.Asked> of(List<Comparison> comparisons) {
        var requests = new Requests();
        comparisons.stream()
                .filter(c -> c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED
                        || c.pairing().purpose() == Purpose.STATED_AGAINST_PRESENT_DEVICE)
                .forEach(requests::look);
        return requests.letters.entrySet().stream()
                .map(e -> new Unknown.Asked(
                        e.getValue().source,
                        e.getKey().device(),
                        List.copyOf(e.getValue().metrics),
                        e.getValue().gaps.entrySet().stream()
                                .map(g -> new Missing(
                                        g.getKey().kind(), g.getKey().what(), List.copyOf(g.getValue())))
                                .toList()))
                .toList();
    }

    private void look(Comparison c) {
        var pairing = c.pairing();
        boolean silent = pairing.standing() == Standing.NOT_REPORTED;
        if (silent) {
            conditions(pairing.theirs(), missing(pairing.verdicts(), false));
            if (!pairing.ours().isLocal()) {
                conditions(pairing.ours(), missing(pairing.verdicts(), true));
            }
        }
        if ((silent || c.answer() instanceof Answer.AgainstFigure) && lacksSpread(pairing.theirs())) {
            ask(pairing.theirs(), new Gap(Missing.What.SPREAD, List.of()));
        }
        if (c.answer() instanceof Answer.EitherReading either && !either.agree()) {
            ask(pairing.theirs(), new Gap(Missing.What.KIND_OF_SPREAD, List.of()));
        }
    }

    /** The conditions and parts of the definition that decide and that one side does not report. */
    static List<String> missing(List<ConditionVerdict> verdicts, boolean ours) {
        return verdicts.stream()
                .filter(v -> v.decidesAgainst() && v.mark() == Mark.NOT_REPORTED)
                .filter(v -> (ours ? v.ours() : v.theirs()).equals(ConditionText.NOT_REPORTED))
                .map(ConditionVerdict::name)
                .toList();
    }

    private void conditions(Comparand published, List<String> missing) {
        if (!missing.isEmpty()) {
            ask(published, new Gap(Missing.What.CONDITIONS, missing));
        }
    }

    private static boolean lacksSpread(Comparand published) {
        return published.summary() instanceof Summary.Point point
                && switch (point.kind()) {
                    case FIGURE, INCOMPLETE, MEDIAN, ABOUT, READ_FROM_FIGURE, INTERPOLATED -> true;
                    case NOMINAL, SINGLE -> false;
                };
    }

    private void ask(Comparand published, Gap gap) {
        published.origin().fold(origin -> add(origin, published, gap), local -> false);
    }

    private boolean add(Origin.Published origin, Comparand published, Gap gap) {
        var letter = letters.computeIfAbsent(
                new To(origin.source().id(), published.device()), to -> new Letter(origin.source()));
        letter.metrics.add(published.metric());
        var ids = new ArrayList<String>();
        origin.values().forEach(v -> ids.add(v.id().value()));
        return letter.gaps.computeIfAbsent(gap, g -> new LinkedHashSet<>()).addAll(ids);
    }
}
