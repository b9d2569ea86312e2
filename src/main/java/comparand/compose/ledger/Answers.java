package comparand.compose.ledger;

import comparand.compose.text.Figures;
import comparand.compose.text.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Every answer of two runs that is not the same, with the changes it comes from. */
final class Answers {

    /** How an answer is not the same; in the order of the ledger. */
    enum Kind {
        ANOTHER,
        GONE,
        NEW,
        REASONS,
        NUMBERS,
        WORDS,
        ADJUSTED
    }

    /**
     * An answer that is not the same.
     *
     * @param family whether it comes from other comparisons of its family alone
     */
    record Moved(Kind kind, Concern concern, List<Change> causes, boolean family) {}

    private final Side earlier;
    private final Side later;
    private final List<Change> changes;
    private final Words words;
    private final Figures figures;

    Answers(Side earlier, Side later, List<Change> changes) {
        this.earlier = earlier;
        this.later = later;
        this.changes = changes;
        this.words = later.words();
        this.figures = new Figures(words);
    }

    List<Moved> moved() {
        var found = new LinkedHashMap<String, Moved>();
        for (var id : ids()) {
            var concern = new Concern(earlier, later, of(earlier, id), of(later, id));
            kind(concern).ifPresent(k -> found.put(id, new Moved(k, concern, causes(concern), false)));
        }
        return found.values().stream()
                .map(m -> m.kind == Kind.ADJUSTED ? byFamily(m, found) : m)
                .sorted(Comparator.comparing(Moved::kind))
                .toList();
    }

    /** How many answers are the same in every number. */
    int same() {
        return (int) later.answers().keySet().stream()
                        .filter(earlier.answers()::containsKey)
                        .count()
                - (int) moved().stream().filter(m -> !m.concern.comesOrGoes()).count();
    }

    /** In the order of the later run; those that are gone behind, in the order of the earlier. */
    private List<String> ids() {
        var ids = new ArrayList<>(later.answers().keySet());
        earlier.answers().keySet().stream()
                .filter(id -> !later.answers().containsKey(id))
                .forEach(ids::add);
        return ids;
    }

    private static Optional<Said> of(Side side, String id) {
        return Optional.ofNullable(side.answers().get(id));
    }

    private Optional<Kind> kind(Concern concern) {
        if (concern.before().isEmpty()) {
            return Optional.of(Kind.NEW);
        }
        if (concern.after().isEmpty()) {
            return Optional.of(Kind.GONE);
        }
        var before = concern.before().get();
        var after = concern.after().get();
        if (!before.verdict().equals(after.verdict())) {
            return Optional.of(Kind.ANOTHER);
        }
        if (!before.reasons().equals(after.reasons())) {
            return Optional.of(Kind.REASONS);
        }
        if (!before.facts().equals(after.facts())) {
            return Optional.of(Kind.NUMBERS);
        }
        if (!before.plain().equals(after.plain())) {
            return Optional.of(Kind.WORDS);
        }
        return before.adjustedP().map(figures::p).equals(after.adjustedP().map(figures::p))
                ? Optional.empty()
                : Optional.of(Kind.ADJUSTED);
    }

    /** What bears on it; the tool itself only where nothing else does. */
    private List<Change> causes(Concern concern) {
        var found = changes.stream()
                .filter(c -> c.group() != Group.TOOL && c.reach().test(concern))
                .toList();
        return found.isEmpty()
                ? changes.stream().filter(c -> c.group() == Group.TOOL).toList()
                : found;
    }

    /** P is adjusted over a family: what moved another member of it moved this one. */
    private static Moved byFamily(Moved own, Map<String, Moved> found) {
        var causes = new TreeSet<Change>(Change.ORDER);
        found.values().stream()
                .filter(m -> m.kind != Kind.ADJUSTED && isInFamily(m.concern) && pMoved(m.concern))
                .forEach(m -> causes.addAll(m.causes));
        return new Moved(own.kind, own.concern, causes.isEmpty() ? own.causes : List.copyOf(causes), !causes.isEmpty());
    }

    private static boolean isInFamily(Concern c) {
        return c.before()
                .flatMap(Said::adjustedP)
                .or(() -> c.after().flatMap(Said::adjustedP))
                .isPresent();
    }

    private static boolean pMoved(Concern c) {
        return !Objects.equals(c.before().flatMap(Said::p), c.after().flatMap(Said::p));
    }

    /** The causes in words. */
    String because(Moved moved, Map<Change, Integer> numbers) {
        if (moved.causes.isEmpty()) {
            return words.say("ledger.because.none");
        }
        var list = String.join(
                "; ",
                moved.causes.stream()
                        .map(c -> words.say(
                                "ledger.because.one", "number", String.valueOf(numbers.get(c)), "brief", c.brief()))
                        .toList());
        return moved.family ? words.say("ledger.because.family", "causes", list) : list;
    }

    /** What is printed in place of an answer that is not there. */
    String before(Moved moved) {
        return moved.concern.before().map(s -> text(s, moved.kind)).orElseGet(() -> words.say("ledger.not-before"));
    }

    String after(Moved moved) {
        return moved.concern
                .after()
                .map(s -> text(s, moved.kind))
                .orElseGet(() -> words.say(
                        moved.concern.before().filter(Said::shownOnly).isPresent()
                                ? "ledger.gone.shown"
                                : "ledger.gone.compared"));
    }

    private String text(Said said, Kind kind) {
        var adjusted = kind == Kind.ADJUSTED ? said.adjustedP() : Optional.<Double>empty();
        return adjusted.map(p -> words.say("ledger.adjusted", "answer", said.text(), "p", figures.p(p)))
                .orElse(said.text());
    }

    /** Names of the values of the later run that are set beside another. */
    Set<String> standings(Set<String> values) {
        var standings = new TreeSet<String>();
        later.answers().values().stream()
                .filter(s -> !s.standing().isEmpty() && s.values().stream().anyMatch(values::contains))
                .forEach(s -> standings.add(s.standing()));
        return standings;
    }
}
