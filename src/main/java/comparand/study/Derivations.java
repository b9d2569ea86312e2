package comparand.study;

import comparand.metric.Catalogue;
import comparand.metric.Definition;
import comparand.metric.Derivation;
import comparand.metric.Input;
import comparand.metric.Metric;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds how a metric can be computed from what a file gives: an input is a column, a fixed condition, a nominal figure of
 * the device, or another metric that can be computed itself.
 */
final class Derivations {

    private final Catalogue catalogue;
    private final Set<String> given;
    private final Function<String, Optional<String>> fixedWord;
    private final Set<String> inRows;

    /**
     * The graph over what is given.
     *
     * @param given ids of all quantities that columns, fixed conditions and nominal figures give
     * @param fixedWord a condition in words that holds for every row
     * @param inRows ids of all that varies from row to row, conditions in words among it
     */
    Derivations(
            Catalogue catalogue, Set<String> given, Function<String, Optional<String>> fixedWord, Set<String> inRows) {
        this.fixedWord = fixedWord;
        this.inRows = Set.copyOf(inRows);
        this.catalogue = catalogue;
        this.given = Set.copyOf(given);
    }

    /** The first way all of whose inputs can be had; empty if there is none, see {@link #missing}. */
    Optional<Plan> plan(Metric metric, Definition wanted) {
        return plan(metric, wanted, new LinkedHashSet<>());
    }

    private Optional<Plan> plan(Metric metric, Definition wanted, Set<String> onTheWay) {
        if (!onTheWay.add(metric.id())) {
            return Optional.empty();
        }
        var found = metric.derivations().stream()
                .filter(way -> fits(way, wanted))
                .flatMap(way -> plan(metric, way, wanted, onTheWay).stream())
                .findFirst();
        onTheWay.remove(metric.id());
        return found;
    }

    private Optional<Plan> plan(Metric metric, Derivation way, Definition wanted, Set<String> onTheWay) {
        var inputs = new LinkedHashMap<Input, Optional<Plan>>();
        for (var input : way.inputs()) {
            if (given.contains(input.id())) {
                inputs.put(input, Optional.empty());
                continue;
            }
            var computed = catalogue.find(input.id()).flatMap(m -> plan(m, wanted, onTheWay));
            if (computed.isEmpty()) {
                return Optional.empty();
            }
            inputs.put(input, computed);
        }
        return Optional.of(new Plan(metric, way, wanted, inputs));
    }

    /** The inputs that nothing gives, of the way that lacks the fewest; followed down to what a column could give. */
    List<Input> missing(Metric metric, Definition wanted) {
        return missing(metric, wanted, new LinkedHashSet<>());
    }

    private List<Input> missing(Metric metric, Definition wanted, Set<String> onTheWay) {
        if (!onTheWay.add(metric.id())) {
            return List.of();
        }
        var fewest = metric.derivations().stream()
                .filter(way -> fits(way, wanted))
                .map(way -> missing(way, wanted, onTheWay))
                .min(Comparator.comparingInt(List::size))
                .orElse(List.of());
        onTheWay.remove(metric.id());
        return fewest;
    }

    private List<Input> missing(Derivation way, Definition wanted, Set<String> onTheWay) {
        var lacking = new ArrayList<Input>();
        for (var input : way.inputs()) {
            if (!given.contains(input.id())) {
                // what a careful reader records as a condition is named itself, not what it could be computed of
                var deeper = catalogue
                        .find(input.id())
                        .filter(m -> !m.derivations().isEmpty()
                                && catalogue.condition(input.id()).isEmpty())
                        .map(m -> missing(m, wanted, onTheWay))
                        .filter(below -> !below.isEmpty())
                        .orElse(List.of(input));
                lacking.addAll(deeper);
            }
        }
        return lacking.stream().distinct().toList();
    }

    private boolean fits(Derivation way, Definition wanted) {
        return mayApply(way)
                && way.gives().aspects().entrySet().stream()
                        .allMatch(e ->
                                wanted.get(e.getKey()).map(e.getValue()::equals).orElse(true));
    }

    /** Whether a formula may be used: under a fixed condition that allows it, or row by row where it varies. */
    private boolean mayApply(Derivation way) {
        return way.applies().stream().allMatch(a -> {
            var id = a.condition().id();
            return inRows.contains(id) || a.holds(fixedWord.apply(id));
        });
    }
}
