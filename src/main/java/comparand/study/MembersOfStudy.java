package comparand.study;

import comparand.diag.Diagnostic;
import comparand.model.library.SampleUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** What only the rows of a whole study show: one case in two centres, or with two devices. */
final class MembersOfStudy {

    private record Place(DataFile file, int line) {}

    /** Where each of several things was met first, by its name. */
    private static final class Met {
        private final SortedMap<String, Place> places = new TreeMap<>();

        void add(String name, Place place) {
            places.merge(name, place, (old, next) -> old.file.equals(next.file) && next.line < old.line ? next : old);
        }
    }

    private final SortedMap<String, Met> centres = new TreeMap<>();
    private final SortedMap<String, Met> devices = new TreeMap<>();
    private final Map<String, String> names = new HashMap<>();

    void accept(DataFile file, RowFacts row) {
        var name = row.members().get(SampleUnit.CASES);
        if (name == null) {
            return;
        }
        var place = new Place(file, row.line());
        if (!row.centre().isEmpty()) {
            centres.computeIfAbsent(name, n -> new Met()).add(row.centre(), place);
        }
        var key = row.centre() + "/" + name;
        names.put(key, name);
        devices.computeIfAbsent(key, n -> new Met()).add(row.deviceId(), place);
    }

    List<Diagnostic> findings() {
        var findings = new ArrayList<Diagnostic>();
        finding(
                        centres,
                        "case-in-two-centres",
                        "the case `%s` occurs in %s",
                        "a patient who was moved counts twice; two patients may also have one code",
                        "nothing to mend if these are different patients; else drop the rows of one centre with a reason")
                .forEach(findings::add);
        finding(
                        devices,
                        "case-with-two-devices",
                        "the case `%s` has rows with %s",
                        "the case counts for each of them, though what one left behind the other met",
                        "check the device; drop the rows after a change with a reason")
                .forEach(findings::add);
        return findings;
    }

    private List<Diagnostic> finding(SortedMap<String, Met> all, String code, String message, String why, String fix) {
        var first = all.entrySet().stream()
                .filter(e -> e.getValue().places.size() > 1)
                .toList();
        if (first.isEmpty()) {
            return List.of();
        }
        var met = first.get(0).getValue();
        var place = met.places.get(met.places.lastKey());
        var name = names.getOrDefault(first.get(0).getKey(), first.get(0).getKey());
        var others = first.size() > 1 ? "; %d cases do".formatted(first.size()) : "";
        return place == null
                ? List.of()
                : List.of(Diagnostic.note(
                        code,
                        place.file.rows().row(place.line),
                        message.formatted(name, String.join(" and ", met.places.keySet())) + others,
                        why,
                        fix));
    }
}
