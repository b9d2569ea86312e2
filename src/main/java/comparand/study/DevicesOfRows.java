package comparand.study;

import comparand.diag.Diagnostic;
import comparand.model.library.Describes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Joins the rows of a file to what describes them, and says once which of them no device can be told for. */
final class DevicesOfRows {

    private final DataFile file;
    private final Described described;
    private final Lines nameless = new Lines();
    private final Lines undescribed = new Lines();

    DevicesOfRows(DataFile file, Described described) {
        this.file = file;
        this.described = described;
    }

    /** The joined row; empty if its device is not known. */
    Optional<RowFacts> known(RowFacts row) {
        var joined = described.join(row);
        if (joined.device().isPresent()) {
            return Optional.of(joined);
        }
        boolean looked = List.of(Describes.CASES, Describes.UNITS).stream()
                .anyMatch(level ->
                        described.has(level) && Described.key(level, row).isPresent());
        if (looked) {
            undescribed.add(row.line());
        } else {
            nameless.add(row.line());
        }
        return Optional.empty();
    }

    List<Diagnostic> findings() {
        var findings = new ArrayList<Diagnostic>();
        if (nameless.count() > 0) {
            findings.add(Diagnostic.stop(
                    "device-missing",
                    file.rows().row(nameless.first()),
                    "this row names no device%s".formatted(more(nameless)),
                    "a result belongs to a device",
                    "name the device, or list the row under `dropped:` with a reason"));
        }
        if (undescribed.count() > 0) {
            findings.add(Diagnostic.stop(
                    "member-not-described",
                    file.rows().row(undescribed.first()),
                    "the case or unit of this row has no device in the file that describes it%s"
                            .formatted(more(undescribed)),
                    "a result belongs to a device",
                    "add its row there, correct its name, or list the row under `dropped:` with a reason"));
        }
        return findings;
    }

    private static String more(Lines lines) {
        return lines.count() > 1 ? "; %d rows are such, %s".formatted(lines.count(), lines) : "";
    }
}
