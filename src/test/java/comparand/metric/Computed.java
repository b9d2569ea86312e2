package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.unit.Printed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Computes metrics of the catalogue from quantities written as a person writes them, through the formulas of their inputs
 * where an input is not given. One row, or several rows of one member. Written for the tests, apart from the engine that
 * computes studies.
 */
final class Computed {

    private final Catalogue catalogue;
    private final Map<String, List<Printed>> given = new LinkedHashMap<>();
    private final Map<String, String> words = new HashMap<>();
    private final Map<String, List<String>> variants = new TreeMap<>();

    private Computed(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** From {@code id=quantity}, rows separated by {@code ;}. */
    static Computed from(String... quantities) {
        var computed = new Computed(Catalogue.shipped());
        for (var q : quantities) {
            computed.with(q);
        }
        return computed;
    }

    Computed with(String quantity) {
        int sign = quantity.indexOf('=');
        var rows = new ArrayList<Printed>();
        for (var row : quantity.substring(sign + 1).split(";", -1)) {
            rows.add(Printed.of(row.strip()));
        }
        given.put(quantity.substring(0, sign), rows);
        return this;
    }

    Computed under(String aspect, String word) {
        variants.put(aspect, List.of(word));
        return this;
    }

    /** A condition in words, for formulas that hold only under some. */
    Computed where(Condition condition, String word) {
        words.put(condition.id(), word);
        return this;
    }

    static Metric metric(String id) {
        return Catalogue.shipped().find(id).orElseThrow();
    }

    /** The metric in its unit. */
    double value(String id) {
        var value = tried(id);
        assertThat(value).as(id + " can be computed").isPresent();
        return value.orElseThrow();
    }

    /** Empty if no way has all its inputs and may be used. */
    Optional<Double> tried(String id) {
        var metric = catalogue.find(id).orElseThrow();
        var definition = new TreeMap<>(metric.standardDefinition().aspects());
        definition.putAll(variants);
        return result(metric, new Definition(definition));
    }

    private Optional<Double> result(Metric metric, Definition wanted) {
        for (var way : metric.derivations()) {
            if (fits(way, wanted)) {
                var rows = rows(way, wanted);
                if (rows.isPresent()) {
                    return Optional.of(WorkedAgain.gathered(way, rows.get(), wanted));
                }
            }
        }
        return Optional.empty();
    }

    /** The ways that may be used, with their inputs row by row. */
    private Optional<List<Map<String, Double>>> rows(Derivation way, Definition wanted) {
        int n = given.values().stream().mapToInt(List::size).max().orElse(1);
        var rows = new ArrayList<Map<String, Double>>();
        for (int row = 0; row < n; row++) {
            var numbers = new HashMap<String, Double>();
            for (var input : way.inputs()) {
                var number = input(input, row, wanted, new HashSet<>());
                if (number.isEmpty()) {
                    return Optional.empty();
                }
                numbers.put(input.id(), number.get());
            }
            rows.add(numbers);
        }
        return Optional.of(rows);
    }

    private Optional<Double> input(Input input, int row, Definition wanted, Set<String> onTheWay) {
        var column = given.get(input.id());
        if (column != null) {
            return Optional.of(column.get(column.size() == 1 ? 0 : row).in(input.unit()));
        }
        if (!onTheWay.add(input.id())) {
            return Optional.empty();
        }
        var found = catalogue
                .find(input.id())
                .flatMap(metric -> metric.derivations().stream()
                        .filter(way -> fits(way, wanted))
                        .flatMap(way -> one(way, row, wanted, onTheWay).stream())
                        .map(v -> metric.unit().convert(v, input.unit()))
                        .findFirst());
        onTheWay.remove(input.id());
        return found;
    }

    private Optional<Double> one(Derivation way, int row, Definition wanted, Set<String> onTheWay) {
        if (way.isFound()) {
            return Optional.empty();
        }
        var numbers = new HashMap<String, Double>();
        for (var input : way.inputs()) {
            var number = input(input, row, wanted, onTheWay);
            if (number.isEmpty()) {
                return Optional.empty();
            }
            numbers.put(input.id(), number.get());
        }
        return Optional.of(way.computation().of(new Inputs(numbers, wanted)));
    }

    private boolean fits(Derivation way, Definition wanted) {
        return way.gives().aspects().entrySet().stream()
                        .allMatch(e ->
                                wanted.get(e.getKey()).map(e.getValue()::equals).orElse(true))
                && way.applies().stream()
                        .allMatch(a -> a.holds(
                                Optional.ofNullable(words.get(a.condition().id()))));
    }
}
