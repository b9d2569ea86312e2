package comparand.study;

import comparand.metric.Definition;
import comparand.model.library.SampleUnit;
import java.util.Map;

/**
 * What one row says, after its mapping.
 *
 * @param members the id of the row's device unit, run or case, by level
 * @param numbers by input, condition or metric id
 * @param words conditions in words, by condition id
 * @param events yes or no, by metric id
 */
record RowFacts(
        int line,
        String device,
        Map<SampleUnit, String> members,
        Map<String, Measured> numbers,
        Map<String, String> words,
        Map<String, Boolean> events,
        Definition definition) {

    RowFacts {
        members = Map.copyOf(members);
        numbers = Map.copyOf(numbers);
        words = Map.copyOf(words);
        events = Map.copyOf(events);
    }
}
