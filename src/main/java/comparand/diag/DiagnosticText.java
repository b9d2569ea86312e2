package comparand.diag;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Findings as text for people: one block each, with the source line and a caret under the offending words, and a
 * count at the end.
 */
public final class DiagnosticText {

    private static final int LONGEST_EXCERPT = 160;
    private static final int BEFORE_CARET = 60;

    private DiagnosticText() {}

    /**
     * All findings, sorted, and their count.
     *
     * @param findings in any order; they are listed by severity, then by place
     * @param lines the lines of a file by its name, empty for a file that cannot be shown as text
     */
    public static String render(List<Diagnostic> findings, Function<String, Optional<List<String>>> lines) {
        var out = new StringBuilder();
        for (var finding : findings.stream().sorted(Diagnostic.ORDER).toList()) {
            block(finding, lines, out);
            out.append('\n');
        }
        return out.append(count(findings)).append('\n').toString();
    }

    /** One line: how many findings of each severity, and what that means for the run. */
    public static String count(List<Diagnostic> findings) {
        if (findings.isEmpty()) {
            return "No findings.";
        }
        var parts = new ArrayList<String>();
        for (var severity : Severity.values()) {
            long n = findings.stream().filter(f -> f.severity() == severity).count();
            if (n > 0) {
                parts.add(n + " " + severity);
            }
        }
        boolean stopped = findings.stream().anyMatch(Diagnostic::stops);
        return "%d finding%s: %s.%s"
                .formatted(
                        findings.size(),
                        findings.size() == 1 ? "" : "s",
                        String.join(", ", parts),
                        stopped ? " Nothing was written." : "");
    }

    private static void block(Diagnostic finding, Function<String, Optional<List<String>>> lines, StringBuilder out) {
        var span = finding.span();
        out.append("%s %s  %s%n  %s.%n".formatted(finding.severity(), finding.code(), span, finding.message()));
        lines.apply(span.file())
                .filter(text -> span.line() <= text.size())
                .map(text -> text.get(span.line() - 1))
                .filter(line -> !line.isBlank())
                .ifPresent(line -> excerpt(span, line, out));
        out.append("  why: %s%n  fix: %s%n".formatted(finding.why(), finding.fix()));
    }

    /** Long lines are cut around the caret, so that the offending words stay in sight. */
    private static void excerpt(Span span, String line, StringBuilder out) {
        int[] points = line.codePoints()
                .map(c -> c == '\t' ? ' ' : Character.isISOControl(c) ? '·' : c)
                .toArray();
        int from = points.length <= LONGEST_EXCERPT
                ? 0
                : Math.max(0, Math.min(span.column() - 1, points.length) - BEFORE_CARET);
        int to = Math.min(points.length, from + LONGEST_EXCERPT);
        var shown = (from > 0 ? "…" : "") + new String(points, from, to - from) + (to < points.length ? "…" : "");
        int caret = span.column() - 1 - from + (from > 0 ? 1 : 0);
        int width = Math.max(1, Math.min(span.length(), shown.codePointCount(0, shown.length()) - caret));
        var number = Integer.toString(span.line());
        var margin = " ".repeat(number.length());
        out.append("  %s | %s%n".formatted(number, shown));
        out.append("  %s | %s%s%n".formatted(margin, " ".repeat(Math.max(0, caret)), "^".repeat(width)));
    }
}
