package comparand.manual;

import comparand.manual.example.Example;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/** A page for every finding, and one that lists them. */
final class FindingPages {

    static final String FIRST = Finding.FOLDER + "index.html";

    /** A change longer than this shows nothing. */
    private static final int LONGEST_CHANGE = 400;

    private FindingPages() {}

    static List<Page> of(Collection<FindingShown> findings) {
        var pages = new ArrayList<Page>();
        pages.add(list(findings));
        findings.forEach(f -> pages.add(page(f)));
        return pages;
    }

    private static Page list(Collection<FindingShown> findings) {
        var groups = new LinkedHashMap<String, List<FindingShown>>();
        findings.forEach(f -> groups.computeIfAbsent(f.finding().group(), g -> new ArrayList<>())
                .add(f));
        var out = new Html();
        out.p(
                "A finding names a place in a file, what is wrong there, why it matters and what to type. Each has a name for good,"
                        + " by which it is listed here; `comparand explain NAME` prints its page at the terminal.");
        severities(out);
        groups.forEach((group, of) -> {
            out.h2(group);
            out.table(
                    group,
                    List.of("Finding", "Severity", "What it checks"),
                    of.stream()
                            .map(f -> Html.cells(
                                    "<a href=\"%s.html\"><code>%s</code></a>"
                                            .formatted(
                                                    f.finding().code(),
                                                    f.finding().code()),
                                    marks(f),
                                    Html.said(Html.sentence(f.finding().checks()))))
                            .toList());
        });
        return new Page(
                FIRST,
                FIRST,
                "Findings",
                "Everything the tool can find wrong or point out.",
                out.toString(),
                List.of(new Page.Term("STOP, HOLD, NOTE", "severity")));
    }

    private static void severities(Html out) {
        out.h2("Severity");
        var pairs = new ArrayList<String>();
        FindingShown.SEVERITIES.forEach((name, means) -> {
            pairs.add(name);
            pairs.add(Html.text(Html.sentence(means)));
        });
        out.facts(pairs.toArray(String[]::new));
    }

    private static String marks(FindingShown finding) {
        return finding.found().stream()
                .map(s -> "<span class=\"mark %s\">%s</span>".formatted(Html.anchor(s), s))
                .collect(Collectors.joining(" "));
    }

    private static Page page(FindingShown of) {
        var out = new Html();
        if (!of.found().isEmpty()) {
            out.raw("<p class=\"severity\">" + marks(of) + " "
                    + of.found().stream()
                            .map(s -> Html.text(Html.sentence(FindingShown.SEVERITIES.getOrDefault(s, ""))))
                            .collect(Collectors.joining(" "))
                    + "</p>");
        }
        out.h2("What it checks").p(Html.sentence(of.finding().checks()));
        if (!of.why().isEmpty()) {
            out.h2("Why it matters").p(Html.sentence(of.why()));
        }
        if (!of.instead().isEmpty()) {
            out.h2("What to do").p(Html.sentence(of.instead()));
        }
        if (of.shown().isEmpty()) {
            out.h2("No example").p(Html.sentence(of.finding().withoutExample()));
        } else {
            example(of.shown().get(0), out);
        }
        if (!of.more().isEmpty()) {
            out.h2("It also says");
            out.items(of.more().stream()
                    .map(s -> "<span class=\"mark %s\">%s</span> %s%s"
                            .formatted(
                                    Html.anchor(s.severity()),
                                    s.severity(),
                                    Html.said(s.message()),
                                    s.fix().isEmpty()
                                            ? ""
                                            : "<br><span class=\"fix\">To do: %s</span>"
                                                    .formatted(Html.said(Html.sentence(s.fix())))))
                    .toList());
        }
        return new Page(
                of.finding().path(),
                FIRST,
                "`" + of.finding().code() + "`",
                of.finding().group(),
                out.toString(),
                List.of(new Page.Term(of.finding().code(), "")));
    }

    private static void example(Example.Shown shown, Html out) {
        out.h2("Example");
        for (var change : shown.changes()) {
            if (change.before().length() + change.after().length() < LONGEST_CHANGE) {
                out.raw("<p class=\"change\">In %s</p>".formatted(Html.code(change.file())));
                out.raw("<pre class=\"change\" tabindex=\"0\"><code>%s%s</code></pre>"
                        .formatted(marked("del", "- ", change.before()), marked("ins", "+ ", change.after())));
            }
        }
        out.pre(
                "$ comparand " + shown.command() + "\n"
                        + shown.findings().get(0).block(),
                "said");
    }

    private static String marked(String element, String sign, String text) {
        return text.stripTrailing()
                .lines()
                .map(l -> "<%1$s>%2$s%3$s</%1$s>\n".formatted(element, sign, Html.text(l)))
                .collect(Collectors.joining());
    }
}
