package comparand.study;

import comparand.metric.Definition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The rows of one device at one step: what becomes one local comparand.
 *
 * @param steps what sets the group apart, by condition id, as printed
 */
record Group(
        String device,
        SortedMap<String, String> steps,
        Definition definition,
        SortedMap<String, List<Result>> byMember) {

    /** One row's result of one metric, with the row it came from. */
    record Result(double value, RowFacts row) {}

    static Group empty(String device, SortedMap<String, String> steps, Definition definition) {
        return new Group(device, steps, definition, new TreeMap<>());
    }

    void add(String member, Result result) {
        byMember.computeIfAbsent(member, m -> new ArrayList<>()).add(result);
    }

    /** One value per unit or case, the mean of its repeats; in the order of the members' names. */
    List<Double> eachMember() {
        return byMember.values().stream()
                .map(results ->
                        results.stream().mapToDouble(Result::value).sorted().sum() / results.size())
                .toList();
    }

    int rows() {
        return byMember.values().stream().mapToInt(List::size).sum();
    }

    boolean hasRepeats() {
        return !repeatedMembers().isEmpty();
    }

    /** The members with more than one row, by name. */
    List<String> repeatedMembers() {
        return byMember.entrySet().stream()
                .filter(e -> e.getValue().size() > 1)
                .map(Map.Entry::getKey)
                .toList();
    }

    List<RowFacts> allRows() {
        return byMember.values().stream().flatMap(List::stream).map(Result::row).toList();
    }

    /** Device, steps and definition: two rows with one key belong together. */
    static String key(String device, SortedMap<String, String> steps, Definition definition) {
        return device + "|" + steps + "|" + definition;
    }
}
