package comparand.study;

import comparand.diag.Diagnostic;
import comparand.model.library.DataFileRecord;
import comparand.model.library.DropRecord;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The lines of a raw file that its mapping leaves out, with reasons. */
final class DroppedLines {

    private final DataFileRecord mapping;
    private final Map<Integer, String> reasons = new HashMap<>();
    private final Set<Integer> met = new HashSet<>();

    DroppedLines(DataFileRecord mapping) {
        this.mapping = mapping;
        mapping.dropped().forEach(d -> reasons.put(line(d), d.reason().value()));
    }

    /** A line is a whole number; anything else is a line that no file has. */
    private static int line(DropRecord dropped) {
        var number = dropped.line().value();
        return number.decimals() == 0 && number.toDouble() < Integer.MAX_VALUE
                ? number.value().intValue()
                : -1;
    }

    /** Why the row on this line is left out; empty if it is not. */
    Optional<String> drop(int line) {
        var reason = Optional.ofNullable(reasons.get(line));
        reason.ifPresent(r -> met.add(line));
        return reason;
    }

    /** After the last row: lines that were to be dropped and are not there. */
    List<Diagnostic> findings() {
        return mapping.dropped().stream()
                .filter(d -> !met.contains(line(d)))
                .map(d -> Diagnostic.stop(
                        "dropped-line-missing",
                        d.line().span(),
                        "`%s` has no row on line %s"
                                .formatted(mapping.file().value(), d.line().value()),
                        "the row that was to be left out is counted",
                        "write the line of the file on which the row begins; the headings are line 1"))
                .toList();
    }
}
