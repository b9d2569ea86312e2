package comparand.diag;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
        // a cell of a workbook has no line of text to show
        (span.isCell() ? Optional.<List<String>>empty() : lines.apply(span.file()))
                .filter(text -> span.line() <= text.size())
                .map(text -> text.get(span.line() - 1))
                .filter(line -> !line.isBlank())
                .ifPresent(line -> excerpt(span, line, out));
        out.append("  why: %s%n  fix: %s%n".formatted(finding.why(), finding.fix()));
    }

    /** Long lines are cut around the caret, so that the offending words stay in sight. */
    private static void excerpt(Span span, String line, StringBuilder out) {
        int[] points = PlainText.signs(line).codePoints().toArray();
        int column = Math.min(span.column() - 1, points.length);
        int from = points.length <= LONGEST_EXCERPT ? 0 : Math.max(0, column - BEFORE_CARET);
        int to = Math.min(points.length, from + LONGEST_EXCERPT);
        var before = from > 0 ? "…" : "";
        var shown = before + new String(points, from, to - from) + (to < points.length ? "…" : "");
        int caret = before.length() + width(points, from, column);
        int wide = Math.max(1, width(points, column, Math.min(to, column + span.length())));
        var number = Integer.toString(span.line());
        var margin = " ".repeat(number.length());
        out.append("  %s | %s%n".formatted(number, shown));
        out.append("  %s | %s%s%n".formatted(margin, " ".repeat(caret), "^".repeat(wide)));
    }

    private static int width(int[] points, int from, int to) {
        int columns = 0;
        for (int i = from; i < to; i++) {
            columns += width(points[i]);
        }
        return columns;
    }

    /** The columns a sign takes on a terminal: none if it combines with the one before, two if it is wide. */
    private static int width(int point) {
        int type = Character.getType(point);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        boolean pictograph = point >= 0x1F300 && point <= 0x1FAFF;
        boolean fullWidth = point >= 0xFF01 && point <= 0xFF60;
        return pictograph || fullWidth || WIDE.contains(Character.UnicodeScript.of(point)) ? 2 : 1;
    }

    private static final Set<Character.UnicodeScript> WIDE = Set.of(
            Character.UnicodeScript.HAN,
            Character.UnicodeScript.HIRAGANA,
            Character.UnicodeScript.KATAKANA,
            Character.UnicodeScript.HANGUL);
}
