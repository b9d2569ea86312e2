package comparand.diag;

import static java.util.Objects.requireNonNull;

import java.util.Comparator;
import java.util.regex.Pattern;

/**
 * One thing the author of a file should know.
 *
 * @param severity what it does to the run
 * @param code names the check for good, as in {@code unit-missing}; words, so that it explains itself
 * @param span the narrowest stretch that shows the fault: the unit, not the whole record
 * @param message one sentence that stands on its own, without a full stop, naming the offending text
 * @param why what would go wrong if nobody mended it
 * @param fix what to do next, most often the line to type
 */
public record Diagnostic(Severity severity, String code, Span span, String message, String why, String fix) {

    private static final Pattern CODE = Pattern.compile("[a-z]++(?:-[a-z0-9]++)*+");

    /** By severity, then by file, line and column, then by code: the order in which findings are listed. */
    public static final Comparator<Diagnostic> ORDER = Comparator.comparing(Diagnostic::severity)
            .thenComparing(Diagnostic::span)
            .thenComparing(Diagnostic::code)
            .thenComparing(Diagnostic::message);

    public Diagnostic {
        requireNonNull(severity, "severity");
        requireNonNull(span, "span");
        if (!CODE.matcher(code).matches()) {
            throw new IllegalArgumentException("a code is words joined by hyphens, got: " + code);
        }
        if (message.isBlank() || message.endsWith(".")) {
            throw new IllegalArgumentException("a message is one sentence without a full stop: " + message);
        }
        if (why.isBlank() || fix.isBlank()) {
            throw new IllegalArgumentException(code + " must say why it matters and what to do");
        }
        message = PlainText.line(message);
        why = PlainText.line(why);
        fix = PlainText.toType(fix);
    }

    public static Diagnostic stop(String code, Span span, String message, String why, String fix) {
        return new Diagnostic(Severity.STOP, code, span, message, why, fix);
    }

    public static Diagnostic hold(String code, Span span, String message, String why, String fix) {
        return new Diagnostic(Severity.HOLD, code, span, message, why, fix);
    }

    public static Diagnostic note(String code, Span span, String message, String why, String fix) {
        return new Diagnostic(Severity.NOTE, code, span, message, why, fix);
    }

    public boolean stops() {
        return severity == Severity.STOP;
    }
}
