package comparand.reference;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.model.library.SourceState;
import java.time.LocalDate;
import java.util.Optional;

/** What a file says of the standing of a source that the library has, against what its record says. */
final class Standing {

    private Standing() {}

    /** Whether the record says as much, or graver. */
    static boolean isRecorded(Known known, Notice notice) {
        var state = known.source().status().state().value();
        return switch (notice.state()) {
            case RETRACTED -> state == SourceState.RETRACTED;
            case CONCERN -> state == SourceState.RETRACTED || state == SourceState.CONCERN;
            default -> state == SourceState.RETRACTED || state == SourceState.CORRECTED;
        };
    }

    /** The finding in the record of the source, with the line to type; empty if the record says it already. */
    static Optional<Diagnostic> finding(Known known, Notice notice, Found found, LocalDate today) {
        if (isRecorded(known, notice)) {
            return Optional.empty();
        }
        var at = known.source().status().state().span();
        var message = "`%s` is %s by %s, and its record says `%s`"
                .formatted(
                        known.id(),
                        notice.state() == SourceState.CONCERN ? "under an expression of concern" : notice.word(),
                        found.at(),
                        known.source().status().state().value().name().toLowerCase(java.util.Locale.ROOT));
        var fix = "in sources/%s.yaml write `%s`".formatted(known.id(), line(known, notice, today));
        return Optional.of(
                notice.state() == SourceState.RETRACTED
                        ? Diagnostic.stop(
                                "retraction-not-recorded",
                                at,
                                message,
                                "retracted results must not feed a comparison",
                                fix)
                        : Diagnostic.note(
                                "notice-not-recorded",
                                at,
                                message,
                                "values that were read before the notice may no longer stand",
                                fix));
    }

    private static String line(Known known, Notice notice, LocalDate today) {
        var by = known.source().status().by().map(Located::value);
        return "status: {state: %s, checked: %s%s%s%s}"
                .formatted(
                        notice.word(),
                        today,
                        notice.since().map(d -> ", since: " + d).orElse(""),
                        notice.text().isEmpty()
                                ? ""
                                : ", notice: \""
                                        + notice.text().replace("\\", "\\\\").replace("\"", "\\\"") + "\"",
                        by.map(b -> ", by: " + b).orElse(""));
    }
}
