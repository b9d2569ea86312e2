package comparand.study;

import comparand.diag.Diagnostic;
import comparand.model.library.Describes;
import comparand.model.library.SampleUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What files with one row per case, unit or device say, to be joined to the rows of the study's other files. */
final class Described {

    private final Map<Describes, Map<String, RowFacts>> facts = new HashMap<>();
    private final Map<Describes, Map<String, String>> leftOut = new HashMap<>();
    private final Map<Describes, Map<String, String>> held = new HashMap<>();
    private final Map<Describes, Set<String>> kept = new HashMap<>();
    private final Set<String> quantities = new HashSet<>();
    private final List<Diagnostic> findings = new ArrayList<>();

    /** Whether some file describes a level. */
    boolean has(Describes level) {
        return facts.containsKey(level);
    }

    /** A file that describes a level gives these quantities to all rows that are joined to it. */
    void file(Describes level, Set<String> given) {
        facts.computeIfAbsent(level, l -> new HashMap<>());
        quantities.addAll(given);
    }

    Set<String> quantities() {
        return quantities;
    }

    /** A row of a file that describes a level. */
    void add(Describes level, DataFile file, RowFacts row) {
        var key = key(level, row);
        if (key.isEmpty()) {
            findings.add(Diagnostic.stop(
                    "member-missing",
                    file.rows().row(row.line()),
                    "this row does not say which %s it describes".formatted(word(level)),
                    "what it says could be joined to nothing",
                    "name the %s, or list the row under `dropped:` with a reason".formatted(word(level))));
            return;
        }
        kept.computeIfAbsent(level, l -> new HashSet<>()).add(key.get());
        var all = facts.computeIfAbsent(level, l -> new HashMap<>());
        var before = all.get(key.get());
        if (before != null) {
            contradiction(before, row)
                    .ifPresent(what -> findings.add(Diagnostic.stop(
                            "member-described-twice",
                            file.rows().row(row.line()),
                            "`%s` is described twice, and `%s` differs".formatted(name(key.get()), what),
                            "which of the two holds cannot be told",
                            "correct one of them, or list a row under `dropped:` with a reason")));
        }
        all.put(key.get(), before == null ? row : before.with(row));
    }

    private static Optional<String> contradiction(RowFacts before, RowFacts row) {
        if (before.device().isPresent()
                && row.device().isPresent()
                && !before.device().equals(row.device())) {
            return Optional.of("device");
        }
        return row.numbers().entrySet().stream()
                .filter(e -> {
                    var own = before.numbers().get(e.getKey());
                    return own != null
                            && own.in(e.getValue().unit()) != e.getValue().value();
                })
                .map(Map.Entry::getKey)
                .sorted()
                .findFirst();
    }

    /** A member whose row was left out: the rows of other files about it go too, unless another row of it is kept. */
    void leaveOut(Describes level, String key, String reason) {
        leftOut.computeIfAbsent(level, l -> new HashMap<>()).putIfAbsent(key, reason);
    }

    /** A member whose description says what cannot be: the rows of other files about it are held too. */
    void hold(Describes level, RowFacts row, String reason) {
        key(level, row)
                .ifPresent(
                        k -> held.computeIfAbsent(level, l -> new HashMap<>()).putIfAbsent(k, reason));
    }

    /** Why a row is held although nothing in it says so: what describes its case, unit or device is held. */
    Optional<String> whyHeld(RowFacts joined) {
        return held.isEmpty() ? Optional.empty() : reasonHeld(joined);
    }

    private Optional<String> reasonHeld(RowFacts joined) {
        return Stream.of(Describes.values())
                .flatMap(level -> key(level, joined)
                        .map(k -> held.getOrDefault(level, Map.of()).get(k))
                        .map(reason -> "its %s is held: %s".formatted(word(level), reason))
                        .stream())
                .findFirst();
    }

    /** Why a row goes although nothing in it says so: its case or unit was left out. */
    Optional<String> whyLeftOut(RowFacts row) {
        if (leftOut.isEmpty()) {
            return Optional.empty();
        }
        for (var level : List.of(Describes.CASES, Describes.UNITS)) {
            var key = key(level, row);
            var reason = key.map(k -> leftOut.getOrDefault(level, Map.of()).get(k));
            if (reason.isPresent() && !kept.getOrDefault(level, Set.of()).contains(key.get())) {
                return Optional.of("its %s was left out: %s".formatted(word(level), reason.get()));
            }
        }
        return Optional.empty();
    }

    /** A row with what is said of its case, its unit and its device. */
    RowFacts join(RowFacts row) {
        if (facts.isEmpty()) {
            return row;
        }
        var joined = row;
        for (var level : Describes.values()) {
            var found = Optional.ofNullable(facts.get(level))
                    .flatMap(all -> key(level, row).map(all::get));
            // a row that describes its own case is joined to itself, which adds nothing
            if (found.isPresent()) {
                joined = joined.with(found.get());
            }
        }
        return joined;
    }

    /** Whether a row and the file that describes its case or unit name different devices. */
    Optional<String> otherDevice(RowFacts row) {
        return facts.isEmpty() || row.device().isEmpty() ? Optional.empty() : deviceOfDescription(row);
    }

    private Optional<String> deviceOfDescription(RowFacts row) {
        return List.of(Describes.CASES, Describes.UNITS).stream()
                .flatMap(level -> Optional.ofNullable(facts.get(level))
                        .flatMap(all -> key(level, row).map(all::get))
                        .flatMap(RowFacts::device)
                        .stream())
                .filter(d -> !row.device().equals(Optional.of(d)))
                .findFirst();
    }

    List<Diagnostic> findings() {
        return findings;
    }

    static Optional<String> key(Describes level, RowFacts row) {
        return level == Describes.DEVICES
                ? row.device()
                : Optional.ofNullable(row.members().get(unit(level))).map(m -> row.centre() + "/" + m);
    }

    static SampleUnit unit(Describes level) {
        return switch (level) {
            case CASES -> SampleUnit.CASES;
            case UNITS, DEVICES -> SampleUnit.UNITS;
        };
    }

    private static String word(Describes level) {
        return switch (level) {
            case CASES -> "case";
            case UNITS -> "unit";
            case DEVICES -> "device";
        };
    }

    private static String name(String key) {
        return key.startsWith("/") ? key.substring(1) : key;
    }
}
