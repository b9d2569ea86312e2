package comparand.study;

import comparand.metric.Definition;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/** The rows of one device at one step while they are read: what becomes one local series. */
final class GroupDraft {

    private final String device;
    private final SortedMap<String, String> steps;
    private final Definition definition;
    private final Map<Member, MemberDraft> members = new HashMap<>();
    private final Map<String, DataFile> files = new LinkedHashMap<>();

    /**
     * Without a row.
     *
     * @param steps what sets the group apart, by condition id, as printed
     */
    GroupDraft(String device, SortedMap<String, String> steps, Definition definition) {
        this.device = device;
        this.steps = steps;
        this.definition = definition;
    }

    String device() {
        return device;
    }

    SortedMap<String, String> steps() {
        return steps;
    }

    /** Groups at one place differ by their definition. */
    Place place() {
        return new Place(device, steps);
    }

    /** A device at a step. */
    record Place(String device, SortedMap<String, String> steps) {}

    Definition definition() {
        return definition;
    }

    /** The files whose rows are in it, by path, in the order of the study. */
    Map<String, DataFile> files() {
        return files;
    }

    /** Any of its files, for what all of them share: the study and its unit of analysis. */
    DataFile anyFile() {
        return files.values().iterator().next();
    }

    MemberDraft member(Member member, int numbers, int words) {
        var draft = members.get(member);
        if (draft == null) {
            draft = new MemberDraft(member, numbers, words);
            members.put(member, draft);
        }
        return draft;
    }

    /** Whether all rows so far are of one member: then they are all there is to tell a spread from. */
    boolean hasOnlyOne() {
        return members.size() == 1;
    }

    /** With a second member, the single rows of the first are needed no more. */
    void keepRunsOfOne() {
        if (members.size() == 2) {
            members.values().forEach(MemberDraft::forgetPoints);
        }
    }

    /** By centre, then by id. */
    List<MemberDraft> sorted() {
        return members.entrySet().stream()
                .sorted(Map.Entry.comparingByKey(Member.ORDER))
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
