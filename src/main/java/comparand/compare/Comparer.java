package comparand.compare;

import comparand.diag.Located;
import comparand.flow.Outcome;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Compared;
import comparand.model.Comparison;
import comparand.model.Margin;
import comparand.model.Matched;
import comparand.model.Pairing;
import comparand.model.library.QuestionRecord;
import comparand.stat.Holm;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The stage that answers each pair against the margin its dossier set beforehand. */
public final class Comparer {

    private final Matched matched;
    private final Map<String, Optional<Margin>> margins = new HashMap<>();

    private Comparer(Matched matched) {
        this.matched = matched;
        var checked = matched.evidence().checked();
        for (var question : checked.dossier().questions()) {
            var metric = checked.library()
                    .catalogue()
                    .find(question.metric().value())
                    .orElseThrow();
            margins.put(metric.id(), margin(metric, question));
        }
    }

    public static Outcome<Compared> compare(Matched matched) {
        var comparisons = new Comparer(matched).comparisons();
        return Outcome.of(new Compared(matched, comparisons, Pooling.of(comparisons), List.of(), List.of(), List.of()));
    }

    private List<Comparison> comparisons() {
        var answers = matched.pairings().stream()
                .map(p -> Answers.ifCompared(p, margin(p)))
                .toList();
        var adjusted = adjusted(answers);
        var comparisons = new ArrayList<Comparison>();
        for (int i = 0; i < answers.size(); i++) {
            var pairing = matched.pairings().get(i);
            comparisons.add(new Comparison(
                    pairing, margin(pairing), answers.get(i), adjusted.getOrDefault(i, OptionalDouble.empty())));
        }
        return comparisons;
    }

    private Optional<Margin> margin(Pairing pairing) {
        return margins.getOrDefault(pairing.ours().metric().id(), Optional.empty());
    }

    /** Holm's adjustment over the family of tests. */
    private Map<Integer, OptionalDouble> adjusted(List<Answer> answers) {
        var primary = matched.evidence().checked().dossier().primary().map(Located::value);
        var family = new ArrayList<Integer>();
        var p = new ArrayList<Double>();
        for (int i = 0; i < answers.size(); i++) {
            var pairing = matched.pairings().get(i);
            if (pairing.standing().isCompared()
                    && pairing.isOfFamily(primary)
                    && answers.get(i) instanceof Answer.Tested tested) {
                family.add(i);
                p.add(tested.difference().p());
            }
        }
        var holm = Holm.adjust(p);
        var adjusted = new HashMap<Integer, OptionalDouble>();
        for (int k = 0; k < family.size(); k++) {
            adjusted.put(family.get(k), OptionalDouble.of(holm.get(k)));
        }
        return adjusted;
    }

    static Optional<Margin> margin(Metric metric, QuestionRecord question) {
        var reason = question.reason().map(Located::value).orElse("");
        return question.margin()
                .flatMap(m -> m.value().amount())
                .map(amount -> new Margin(amount.asDifferenceIn(metric.unit()), amount.toString(), reason));
    }
}
