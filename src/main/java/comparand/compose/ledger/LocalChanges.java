package comparand.compose.ledger;

import comparand.compose.text.Words;
import comparand.document.result.RowLogResult.CountResult;
import comparand.document.result.RowLogResult.FileResult;
import comparand.document.result.RowLogResult.StudyResult;
import comparand.document.result.RunResult.InputResult;
import comparand.model.Comparand;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Local data: cases and units that came or went, raw files with other cells, studies of another period. */
final class LocalChanges {

    private final Side earlier;
    private final Side later;
    private final Words words;
    private final List<Change> changes = new ArrayList<>();

    LocalChanges(Side earlier, Side later) {
        this.earlier = earlier;
        this.later = later;
        this.words = later.words();
    }

    List<Change> all() {
        var counted = counts();
        var rows = rowsOf(earlier);
        var files = InputFiles.changed(earlier, later);
        rowsOf(later).forEach((file, is) -> {
            boolean otherRows = !is.equals(rows.get(file));
            boolean told = otherRows && counted.contains(study(file));
            if (files.contains(file) && !told) {
                cells(file, Optional.ofNullable(rows.get(file)), is);
            }
        });
        periods();
        return changes;
    }

    /** Cases of a device in a centre; returns the studies in which they are not as many as they were. */
    private Set<String> counts() {
        var studies = new HashSet<String>();
        var was = countsOf(earlier);
        var is = countsOf(later);
        var keys = new TreeSet<>(was.keySet());
        keys.addAll(is.keySet());
        for (var key : keys) {
            var before = was.get(key);
            var after = is.get(key);
            if (!members(before).equals(members(after))) {
                var either = after != null ? after : Objects.requireNonNull(before);
                studies.add(either.study());
                count(either, members(before), members(after));
            }
        }
        return studies;
    }

    private static Optional<Integer> members(@org.jspecify.annotations.Nullable CountResult count) {
        return count == null ? Optional.of(0) : count.members();
    }

    private static Map<String, CountResult> countsOf(Side side) {
        var counts = new LinkedHashMap<String, CountResult>();
        side.results().rowLog().counts().stream()
                .filter(c -> c.step().isEmpty())
                .forEach(c -> counts.put(String.join("\t", c.study(), c.centre(), c.device(), c.of()), c));
        return counts;
    }

    private void count(CountResult c, Optional<Integer> before, Optional<Integer> after) {
        var where = c.centre().isEmpty() ? c.study() : c.study() + ", " + c.centre();
        var files = InputFiles.changed(earlier, later).stream()
                .filter(f -> study(f).equals(c.study()) && !f.endsWith("/study.yaml"))
                .toList();
        var brief = before.isPresent() && after.isPresent()
                ? words.say(
                        after.get() > before.get() ? "ledger.brief.more" : "ledger.brief.fewer",
                        "n",
                        String.valueOf(Math.abs(after.get() - before.get())),
                        "of",
                        words.term("level", c.of()),
                        "device",
                        later.device(c.device()),
                        "where",
                        where)
                : words.say(
                        "ledger.brief.number",
                        "of",
                        words.term("level", c.of()),
                        "device",
                        later.device(c.device()),
                        "where",
                        where);
        changes.add(new Change(
                Group.LOCAL,
                words.say(
                        "ledger.count",
                        "of",
                        words.term("level", c.of()),
                        "device",
                        later.device(c.device()),
                        "where",
                        where),
                number(before),
                number(after),
                files.isEmpty() ? words.say("ledger.why-not-recorded") : String.join(", ", files),
                brief,
                Set.of(),
                Set.copyOf(files),
                concern -> concern.restsOnChanged(
                        v -> v.from().filter(c.study()::equals).isPresent()
                                && (v.device().equals(c.device()) || v.device().equals(Comparand.ALL_DEVICES))
                                && isOf(c.study(), c.centre(), v.id()))));
    }

    /** Whether a local result takes cases from a centre: it names no other alone. */
    private boolean isOf(String study, String centre, String value) {
        return later.results().rowLog().counts().stream()
                .filter(c -> c.study().equals(study))
                .map(CountResult::centre)
                .filter(other -> !other.isEmpty() && value.endsWith("/" + other))
                .allMatch(centre::equals);
    }

    private String number(Optional<Integer> members) {
        return members.map(String::valueOf).orElseGet(() -> words.say("ledger.few"));
    }

    /** Rows of each raw file, of all its sheets: how many, and how many of them take part. */
    private static Map<String, List<Integer>> rowsOf(Side side) {
        var inputs = side.results().run().inputs().stream()
                .map(InputResult::file)
                .filter(f -> f.startsWith("studies/") && !f.endsWith("/study.yaml"))
                .toList();
        var rows = new LinkedHashMap<String, List<Integer>>();
        for (var file : inputs) {
            var logged = side.results().rowLog().files().stream()
                    .filter(f -> isOf(f, file))
                    .toList();
            rows.put(
                    file,
                    List.of(
                            logged.stream().mapToInt(FileResult::rows).sum(),
                            logged.stream().mapToInt(FileResult::kept).sum()));
        }
        return rows;
    }

    private static boolean isOf(FileResult logged, String file) {
        var name = file.substring(file.lastIndexOf('/') + 1);
        var said = logged.file().substring(logged.file().lastIndexOf('/') + 1);
        return logged.study().equals(study(file)) && (said.equals(name) || said.startsWith(name + ", "));
    }

    private static String study(String file) {
        var parts = file.split("/", -1);
        return parts.length > 2 && parts[0].equals("studies") ? parts[1] : "";
    }

    private void cells(String file, Optional<List<Integer>> before, List<Integer> after) {
        changes.add(new Change(
                Group.LOCAL,
                file,
                before.map(this::rows).orElseGet(() -> words.say("ledger.nothing")),
                rows(after),
                words.say("ledger.why-not-recorded"),
                words.say("ledger.brief.cells", "file", file),
                Set.of(),
                Set.of(file),
                c -> c.restsOnChanged(
                        v -> v.files().filter(f -> f.contains(file)).isPresent())));
    }

    private String rows(List<Integer> rows) {
        return words.say("ledger.rows", "rows", String.valueOf(rows.get(0)), "kept", String.valueOf(rows.get(1)));
    }

    private void periods() {
        var was = earlier.results().rowLog().studies().stream()
                .filter(s -> s.period().isPresent())
                .collect(Collectors.toMap(StudyResult::study, s -> s.period().orElseThrow(), (a, b) -> a));
        later.results()
                .rowLog()
                .studies()
                .forEach(s -> s.period().ifPresent(is -> {
                    var before = was.getOrDefault(s.study(), words.say("ledger.nothing"));
                    if (!before.equals(is)) {
                        changes.add(new Change(
                                Group.LOCAL,
                                words.say("ledger.period", "study", s.study()),
                                before,
                                is,
                                "studies/" + s.study() + "/study.yaml",
                                words.say("ledger.period", "study", s.study()),
                                Set.of(),
                                Set.of("studies/" + s.study() + "/study.yaml"),
                                c -> false));
                    }
                }));
    }
}
