package comparand.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What was written, for a person: each file by its path, what lies in a folder below as one line, and what stayed as it was. */
final class Written {

    private Written() {}

    static List<String> lines(Built built) {
        var lines = new LinkedHashMap<Path, Integer>();
        for (var file : built.written()) {
            var below = Optional.ofNullable(file.getParent()).filter(p -> !p.equals(built.folder()));
            lines.merge(below.orElse(file), 1, Integer::sum);
        }
        return Stream.concat(
                        lines.entrySet().stream()
                                .map(e -> "wrote " + e.getKey()
                                        + (built.written().contains(e.getKey())
                                                ? ""
                                                : " (" + e.getValue() + " files)")),
                        unchanged(built))
                .toList();
    }

    private static Stream<String> unchanged(Built built) {
        return built.unchanged() == 0
                ? Stream.empty()
                : Stream.of("unchanged in %s: %s".formatted(built.folder(), files(built.unchanged())));
    }

    private static String files(int n) {
        return n == 1 ? "1 file" : n + " files";
    }
}
