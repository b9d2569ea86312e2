package comparand.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/** What was written, for a person: each file by its path, and what lies in a folder below as one line. */
final class Written {

    private Written() {}

    static List<String> lines(Path folder, List<Path> files) {
        var lines = new LinkedHashMap<Path, Integer>();
        for (var file : files) {
            var below = Optional.ofNullable(file.getParent()).filter(p -> !p.equals(folder));
            lines.merge(below.orElse(file), 1, Integer::sum);
        }
        return lines.entrySet().stream()
                .map(e -> "wrote " + e.getKey() + (files.contains(e.getKey()) ? "" : " (" + e.getValue() + " files)"))
                .toList();
    }
}
