package comparand.study;

import comparand.metric.Condition;
import comparand.metric.Definition;
import comparand.metric.Metric;
import comparand.model.Circumstance;
import comparand.model.VaryingCondition;
import comparand.model.library.ConditionText;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The conditions of one metric's local results: which are fixed for all of its files, and which vary from row to row or
 * from file to file.
 */
final class ConditionFrame {

    /** Decimals of a condition that was computed from others. */
    private static final int COMPUTED = 2;

    private final List<Condition> numbers = new ArrayList<>();
    private final List<Condition> words = new ArrayList<>();
    private final Map<String, Circumstance> fixed = new LinkedHashMap<>();
    private final Map<String, Unit> units = new HashMap<>();
    private final Map<String, Integer> decimals = new HashMap<>();
    private final Map<String, Met> met = new HashMap<>();
    private final Map<DataFile, Map<String, Plan>> computed = new HashMap<>();

    /** How a condition was written in the row before: nearly always as in this. */
    private record Met(Unit unit, int places) {}

    ConditionFrame(Metric metric, List<DataFile> files) {
        var catalogue = files.get(0).library().catalogue();
        for (var condition : catalogue.conditions().values()) {
            frame(condition, metric, files);
        }
    }

    private void frame(Condition condition, Metric metric, List<DataFile> files) {
        var id = condition.id();
        var stated = new TreeMap<String, Circumstance>();
        boolean varies = false;
        for (var file : files) {
            var here = file.fixed()
                    .get(id)
                    .map(text -> Circumstance.of(condition, text.value()))
                    .filter(Circumstance::isReported);
            here.ifPresent(c -> stated.put(c.text(), c));
            varies |= file.given().isInRows(id) || (here.isEmpty() && files.size() > 1);
            if (condition.isNumber()
                    && !file.given().has(id)
                    && metric.condition(id).isPresent()) {
                file.given()
                        .plan(id, Definition.NONE)
                        .ifPresent(p -> computed.computeIfAbsent(file, f -> new HashMap<>())
                                .put(id, p));
            }
        }
        boolean known = !stated.isEmpty()
                || files.stream()
                        .anyMatch(f -> f.given().isInRows(id)
                                || computed.getOrDefault(f, Map.of()).containsKey(id));
        if (!known) {
            return;
        }
        if (!varies && stated.size() == 1 && computed.values().stream().noneMatch(c -> c.containsKey(id))) {
            fixed.put(id, stated.firstEntry().getValue());
        } else if (condition.isNumber()) {
            numbers.add(condition);
        } else {
            words.add(condition);
        }
    }

    int numbers() {
        return numbers.size();
    }

    /** Where a condition stands among the numbers; -1 if it is not among them. */
    int index(String condition) {
        return numbers.stream().map(Condition::id).toList().indexOf(condition);
    }

    int words() {
        return words.size();
    }

    /** A row's conditions in numbers, each in its condition's unit; not a number where it has none. */
    void read(DataFile file, RowFacts row, Plan.Given given, double[] into, int from) {
        for (int i = 0; i < numbers.size(); i++) {
            into[from + i] = number(numbers.get(i), file, row, given);
        }
    }

    private double number(Condition condition, DataFile file, RowFacts row, Plan.Given given) {
        var id = condition.id();
        var unit = condition.unit().orElse(Unit.ONE);
        var measured = row.numbers().get(id);
        if (measured != null) {
            printed(id, measured.unit(), measured.decimals());
            return measured.in(unit);
        }
        var stated = file.fixed().get(id).flatMap(c -> c.value().asNumber());
        if (stated.isPresent()) {
            printed(id, stated.get().unit(), stated.get().number().decimals());
            return stated.get().in(unit);
        }
        return Optional.ofNullable(computed.getOrDefault(file, Map.of()).get(id))
                .flatMap(plan -> plan.value(given).map(v -> plan.metric().unit().convert(v, unit)))
                .orElse(Double.NaN);
    }

    /** Printed in the unit met first, with the most decimals met, as many as they are in that unit. */
    private void printed(String id, Unit unit, int places) {
        var before = met.put(id, new Met(unit, places));
        if (before != null && before.unit.equals(unit) && before.places == places) {
            return;
        }
        var first = units.computeIfAbsent(id, i -> unit);
        int shift =
                first.equals(unit) ? 0 : (int) Math.round(Math.log10(unit.convert(1, first) - unit.convert(0, first)));
        decimals.merge(id, Math.max(0, places - shift), Math::max);
    }

    /** A row's conditions in words; empty where it has none. */
    List<String> words(DataFile file, RowFacts row) {
        if (words.isEmpty()) {
            return List.of();
        }
        var said = new ArrayList<String>(words.size());
        for (var condition : words) {
            var word = row.words().get(condition.id());
            said.add(word == null ? fixed(file, condition) : word);
        }
        return said;
    }

    private static String fixed(DataFile file, Condition condition) {
        return file.fixed()
                .get(condition.id())
                .map(t -> t.value())
                .filter(ConditionText::isReported)
                .map(ConditionText::text)
                .orElse("");
    }

    /** After the last row, when the decimals of the files are known. */
    List<VaryingCondition> varying() {
        return numbers.stream()
                .map(c -> new VaryingCondition(
                        c,
                        units.getOrDefault(c.id(), c.unit().orElse(Unit.ONE)),
                        decimals.getOrDefault(c.id(), COMPUTED)))
                .toList();
    }

    List<Condition> worded() {
        return words;
    }

    Map<String, Circumstance> fixed() {
        return fixed;
    }
}
