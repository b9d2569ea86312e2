package comparand.manual;

import java.util.stream.Collectors;

/** The page of a finding as text for a terminal. */
final class FindingText {

    private static final int WIDTH = 100;

    private FindingText() {}

    static String of(FindingShown of) {
        var out = new StringBuilder(of.finding().code()).append('\n');
        for (var severity : of.found()) {
            out.append("  %s: %s%n".formatted(severity, FindingShown.SEVERITIES.get(severity)));
        }
        part(out, "What it checks", of.finding().checks());
        part(out, "Why it matters", of.why());
        part(out, "What to do", of.instead());
        if (of.shown().isEmpty()) {
            part(out, "No example", of.finding().withoutExample());
            return out.toString().stripTrailing();
        }
        var lead = of.shown().get(0);
        out.append("\nExample\n");
        for (var change : lead.changes()) {
            if (change.before().length() + change.after().length() < WIDTH * 2) {
                out.append("  in %s%n".formatted(change.file()));
                out.append(lines("    - ", change.before())).append(lines("    + ", change.after()));
            }
        }
        out.append("  $ comparand ").append(lead.command()).append('\n');
        out.append(lines("  ", lead.findings().get(0).block()));
        if (!of.more().isEmpty()) {
            out.append("\nIt also says\n");
            of.more()
                    .forEach(s -> out.append("  %s %s%n%s"
                            .formatted(
                                    s.severity(), s.message(), s.fix().isEmpty() ? "" : lines("    fix: ", s.fix()))));
        }
        return out.toString().stripTrailing();
    }

    private static void part(StringBuilder out, String heading, String text) {
        if (!text.isEmpty()) {
            out.append("\n%s%n".formatted(heading));
            out.append(wrapped(Html.sentence(text)));
        }
    }

    private static String lines(String before, String text) {
        return text.stripTrailing().lines().map(l -> before + l + "\n").collect(Collectors.joining());
    }

    private static String wrapped(String text) {
        var out = new StringBuilder();
        var line = new StringBuilder(" ");
        for (var word : text.split(" ", -1)) {
            if (line.length() + word.length() >= WIDTH) {
                out.append(line).append('\n');
                line = new StringBuilder(" ");
            }
            line.append(' ').append(word);
        }
        return out.append(line).append('\n').toString();
    }
}
