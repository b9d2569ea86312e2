package comparand.study;

import comparand.metric.Definition;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * The rows of one device at one step while they are read: what becomes one local series.
 *
 * @param steps what sets the group apart, by condition id, as printed
 */
record GroupDraft(
        String device,
        SortedMap<String, String> steps,
        Definition definition,
        Map<String, MemberDraft> members,
        Map<String, DataFile> files) {

    static GroupDraft empty(String device, SortedMap<String, String> steps, Definition definition) {
        return new GroupDraft(device, steps, definition, new HashMap<>(), new LinkedHashMap<>());
    }

    MemberDraft member(String id, String centre, int numbers, int words) {
        return members.computeIfAbsent(centre + "/" + id, k -> new MemberDraft(id, centre, numbers, words));
    }

    /** By centre, then by id. */
    List<MemberDraft> sorted() {
        return members.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .toList();
    }

    /** The members with more than one row, by name. */
    List<String> repeated() {
        return sorted().stream().filter(m -> m.rows() > 1).map(MemberDraft::id).toList();
    }

    int rows() {
        return members.values().stream().mapToInt(MemberDraft::rows).sum();
    }

    /** Device, steps and definition: two rows with one key belong together. */
    static String key(String device, SortedMap<String, String> steps, Definition definition) {
        return device + "|" + steps + "|" + definition;
    }
}
