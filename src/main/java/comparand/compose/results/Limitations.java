package comparand.compose.results;

import comparand.compose.text.Run;
import comparand.document.result.LimitationResult;
import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Mark;
import comparand.model.ConditionVerdict.Subject;
import comparand.model.Origin;
import comparand.model.Pairing.Purpose;
import comparand.model.Step;
import comparand.model.library.Funding;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** What limits the comparisons with published values and between devices, by how many pairs each affects. */
final class Limitations {

    private final Map<String, LimitationResult> all = new LinkedHashMap<>();

    Limitations(Run run) {
        var published = run.compared().comparisons().stream()
                .filter(c -> c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED)
                .toList();
        for (var c : published) {
            run.conditions().said(c.pairing()).stream()
                    .filter(ConditionVerdict::decidesAgainst)
                    .forEach(v -> verdict(v, published.size()));
        }
        var compared = published.stream()
                .filter(c -> c.pairing().standing().isCompared())
                .toList();
        count("figure", compared, c -> c.answer() instanceof Answer.AgainstFigure);
        count("either-spread", compared, c -> c.answer() instanceof Answer.EitherReading);
        count("limit", compared, c -> c.answer() instanceof Answer.AgainstLimit);
        count("estimated", compared, c -> has(c, Step.Kind.QUARTILES));
        count("digitised", compared, c -> has(c, Step.Kind.READ_FROM_FIGURE));
        count("paid-for", compared, Limitations::isPaidFor);
        count("read-once", compared, Limitations::isReadOnce);
        var between = run.compared().comparisons().stream()
                .filter(c -> c.pairing().purpose() == Purpose.AGAINST_PRESENT_DEVICE
                        && c.pairing().standing().isCompared())
                .toList();
        count("hospitals", between, c -> run.remarks().centres().of(c.pairing()).isPresent());
        count("many", between, c -> run.familySize() > 1 && c.adjustedP().isPresent());
        count("blood", between, c -> has(c.pairing().ours().trail(), Step.Kind.CAUTIONED));
    }

    /** Most pairs first; of as many, in the order in which the comparisons meet them. */
    List<LimitationResult> all() {
        return all.values().stream()
                .sorted(Comparator.comparingInt(LimitationResult::pairs).reversed())
                .toList();
    }

    private void verdict(ConditionVerdict v, int of) {
        var kind = v.of() == Subject.LABEL
                ? "label"
                : v.id().equals("quantity") ? "quantity" : v.mark() == Mark.DIFFERS ? "differs" : "not-reported";
        var because = v.mark() == Mark.DIFFERS && v.of() == Subject.CONDITION ? v.because() : "";
        all.merge(
                kind + " " + v.id(),
                new LimitationResult(kind, v.id(), v.name(), 1, of, because),
                (a, b) -> new LimitationResult(a.kind(), a.about(), a.name(), a.pairs() + b.pairs(), of, a.because()));
    }

    private void count(String kind, List<Comparison> among, Predicate<Comparison> which) {
        int pairs = (int) among.stream().filter(which).count();
        if (pairs > 0) {
            all.put(kind, new LimitationResult(kind, "", "", pairs, among.size(), ""));
        }
    }

    private static boolean has(Comparison c, Step.Kind kind) {
        return has(c.pairing().theirs().trail(), kind);
    }

    private static boolean has(List<Step> trail, Step.Kind kind) {
        return trail.stream().anyMatch(s -> s.kind() == kind);
    }

    private static boolean isPaidFor(Comparison c) {
        return c.pairing()
                .theirs()
                .origin()
                .fold(
                        p -> List.of(Funding.MAKER, Funding.MIXED)
                                .contains(p.source().funding().value()),
                        l -> false);
    }

    private static boolean isReadOnce(Comparison c) {
        return c.pairing()
                .theirs()
                .origin()
                .fold(p -> p.values().stream().anyMatch(v -> v.read().size() < 2), (Origin.Local l) -> false);
    }
}
