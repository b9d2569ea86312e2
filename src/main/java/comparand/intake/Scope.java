package comparand.intake;

import comparand.document.form.FormList.Word;
import comparand.metric.Aspect;
import comparand.metric.Condition;
import comparand.metric.Metric;
import comparand.metric.Role;
import comparand.model.Library;
import comparand.unit.TradeSpelling;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a library has that a form offers: its devices, sources and metrics, and of the metrics the conditions and the
 * respects in which definitions differ.
 */
public final class Scope {

    private final Library library;
    private final List<Metric> metrics;

    private Scope(Library library, Collection<Metric> metrics) {
        this.library = library;
        this.metrics = metrics.stream().sorted(Comparator.comparing(Metric::id)).toList();
    }

    /** All metrics, shipped and declared. */
    public static Scope all(Library library) {
        return new Scope(library, library.catalogue().all());
    }

    /** The metrics that dossiers ask for and that sources give, and those named. */
    public static Scope used(Library library, Collection<String> named) {
        var asked = library.dossiers().values().stream()
                .flatMap(d -> d.questions().stream())
                .map(q -> q.metric().value());
        var given = library.values().map(v -> v.value().metric().value());
        var ids = Stream.of(asked, given, named.stream()).flatMap(s -> s).distinct();
        return new Scope(
                library,
                ids.flatMap(id -> library.catalogue().find(id).stream()).toList());
    }

    Library library() {
        return library;
    }

    List<Metric> metrics() {
        return metrics;
    }

    Optional<Metric> metric(String id) {
        return metrics.stream().filter(m -> m.id().equals(id)).findFirst();
    }

    List<Word> metricWords() {
        return metrics.stream()
                .map(m -> new Word(m.id(), m.name() + ": " + m.meaning()))
                .toList();
    }

    List<Word> deviceWords() {
        return library.devices().values().stream()
                .map(d -> new Word(
                        d.id(), "%s, %s".formatted(d.displayName(), d.maker().value())))
                .toList();
    }

    List<Word> sourceWords() {
        return library.sources().values().stream()
                .map(s -> new Word(s.id(), s.reference().title().value()))
                .toList();
    }

    /** All conditions, in the order in which they stand in records. */
    List<Condition> conditions() {
        return List.copyOf(library.catalogue().conditions().values());
    }

    /** Whether a condition decides, at least where it is known, about values of one of the metrics. */
    boolean concerns(Condition condition) {
        return metrics.stream()
                .flatMap(m -> m.condition(condition.id()).stream())
                .anyMatch(u -> u.role() != Role.QUALIFIES);
    }

    /** Respects in which definitions differ, by key, with all words of all metrics that have it. */
    Map<String, List<Aspect>> aspects() {
        var found = new LinkedHashMap<String, List<Aspect>>();
        metrics.stream()
                .flatMap(m -> m.definition().stream())
                .forEach(a -> found.merge(
                        a.id(),
                        List.of(a),
                        (x, y) -> Stream.concat(x.stream(), y.stream()).toList()));
        return found;
    }

    static List<Word> units() {
        return Stream.concat(Stream.of("%", "percentage points"), TradeSpelling.usual().stream())
                .map(u -> new Word(u, ""))
                .toList();
    }
}
