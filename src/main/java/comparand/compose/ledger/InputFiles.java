package comparand.compose.ledger;

import comparand.document.result.LedgerResult.FileEntry;
import comparand.document.result.RunResult.InputResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Files that are not the same bytes in two runs. */
final class InputFiles {

    private InputFiles() {}

    /** By name, in the order of names. */
    static Set<String> changed(Side earlier, Side later) {
        var was = prints(earlier);
        var is = prints(later);
        var all = new TreeSet<>(was.keySet());
        all.addAll(is.keySet());
        all.removeIf(f -> Objects.equals(was.get(f), is.get(f)));
        return all;
    }

    static List<FileEntry> entries(Side earlier, Side later, Map<Change, Integer> numbers) {
        var was = prints(earlier);
        var is = prints(later);
        var entries = new ArrayList<FileEntry>();
        for (var file : changed(earlier, later)) {
            entries.add(new FileEntry(
                    file,
                    Optional.ofNullable(was.get(file)),
                    Optional.ofNullable(is.get(file)),
                    numbers.entrySet().stream()
                            .filter(e -> e.getKey().files().contains(file))
                            .map(Map.Entry::getValue)
                            .sorted()
                            .toList()));
        }
        return entries;
    }

    private static Map<String, String> prints(Side side) {
        var prints = new TreeMap<String, String>();
        for (InputResult input : side.results().run().inputs()) {
            prints.put(input.file(), input.sha256());
        }
        return prints;
    }
}
