package comparand.study;

import static java.util.Objects.requireNonNull;

import comparand.metric.Definition;
import comparand.model.library.SampleUnit;
import comparand.unit.Rounding;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What one row says, after its mapping; or several rows that were put together.
 *
 * @param line the first line
 * @param rows how many rows of the file it was put together from
 * @param device empty where another file of the study says it
 * @param centre empty if nobody names one
 * @param members the id of the row's device unit, run or case, by level
 * @param numbers by input, condition or metric id
 * @param words conditions in words, by condition id
 * @param events yes or no, by metric id
 * @param sample the number or name of the sample within its member
 * @param remarks the headings of columns for remarks in which something stands
 */
record RowFacts(
        int line,
        int rows,
        Optional<String> device,
        String centre,
        Map<SampleUnit, String> members,
        Map<String, Measured> numbers,
        Map<String, String> words,
        Map<String, Boolean> events,
        Optional<String> sample,
        Set<String> remarks,
        Definition definition) {

    RowFacts {
        requireNonNull(device, "device");
        requireNonNull(centre, "centre");
        // not copied: there may be millions of rows, and each hands over maps that nobody else keeps
        members = Collections.unmodifiableMap(members);
        numbers = Collections.unmodifiableMap(numbers);
        words = Collections.unmodifiableMap(words);
        events = Collections.unmodifiableMap(events);
        requireNonNull(sample, "sample");
        remarks = Collections.unmodifiableSet(remarks);
    }

    /** The device; known once rows were joined. */
    String deviceId() {
        return device.orElseThrow(() -> new IllegalStateException("line " + line + " was not joined to its device"));
    }

    /** The step of a condition as written, by which groups are told apart. */
    String step(String condition) {
        var measured = numbers.get(condition);
        return measured == null
                ? words.getOrDefault(condition, "not recorded")
                : Rounding.halfUp(measured.value(), measured.decimals()) + " " + measured.unit();
    }

    /** The number or word of a condition: rows with equal ones are of one step. */
    Object stated(String condition) {
        var measured = numbers.get(condition);
        return measured == null ? words.getOrDefault(condition, "") : measured;
    }

    /** The same with what another file says of its case, unit or device; its own facts go first. */
    RowFacts with(RowFacts described) {
        var joined = new TreeMap<>(described.definition.aspects());
        joined.putAll(definition.aspects());
        return new RowFacts(
                line,
                rows,
                device.or(described::device),
                centre.isEmpty() ? described.centre : centre,
                over(members, described.members),
                over(numbers, described.numbers),
                over(words, described.words),
                over(events, described.events),
                sample,
                remarks,
                new Definition(joined));
    }

    private static <K, V> Map<K, V> over(Map<K, V> own, Map<K, V> other) {
        if (other.isEmpty()) {
            return own;
        }
        var all = new HashMap<>(other);
        all.putAll(own);
        return all;
    }
}
