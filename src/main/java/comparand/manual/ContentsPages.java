package comparand.manual;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;

/** The first page, with all chapters, and the index of all names and words. */
final class ContentsPages {

    static final String CONTENTS = "index.html";
    static final String INDEX = "index-of-words.html";

    private ContentsPages() {}

    /** A word of the index with the page it leads to. */
    private record Entry(String word, String to, String title) {}

    static Page contents(List<Page> pages) {
        var out = new Html();
        out.p(
                "Comparand sets the results of a local device evaluation beside published values, says for each pair whether like is"
                        + " set beside like, and writes what a committee, a talk and a paper need. Start with a library of your own:");
        out.pre(
                "$ comparand start my-library\n$ comparand check my-library\n$ comparand build my-library/dossiers/example.yaml",
                "said");
        out.raw("<ul class=\"contents\">");
        pages.stream()
                .filter(Page::isFirst)
                .forEach(p -> out.raw("<li>%s<br>%s%s</li>"
                        .formatted(Html.link(p.path(), p.title()), Html.said(p.lead()), below(p, pages))));
        out.raw("<li>%s<br>Every code, key, metric, condition, unit and word, by the alphabet.</li>"
                .formatted(Html.link(INDEX, "Index")));
        out.raw("</ul>");
        return new Page(CONTENTS, CONTENTS, "Manual of Comparand", "", out.toString(), List.of());
    }

    /** A few pages under a chapter are named; of many it is said how many there are. */
    private static String below(Page first, List<Page> pages) {
        var under = pages.stream()
                .filter(p -> p.chapter().equals(first.path()) && !p.isFirst())
                .toList();
        if (under.isEmpty()) {
            return "";
        }
        if (under.size() > 20) {
            return " <span class=\"count\">%d pages.</span>".formatted(under.size());
        }
        var out = new StringBuilder("<ul>");
        under.forEach(
                p -> out.append("<li>").append(Html.link(p.path(), p.title())).append("</li>"));
        return out.append("</ul>").toString();
    }

    static Page index(List<Page> pages) {
        var entries = new ArrayList<Entry>();
        for (var page : pages) {
            for (var term : page.terms()) {
                entries.add(new Entry(
                        term.word(), page.path() + (term.anchor().isEmpty() ? "" : "#" + term.anchor()), page.title()));
            }
        }
        var byLetter = new TreeMap<String, List<Entry>>();
        entries.stream()
                .distinct()
                .sorted(Comparator.comparing(Entry::word, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(Entry::word)
                        .thenComparing(Entry::to))
                .forEach(e -> byLetter.computeIfAbsent(letter(e.word), l -> new ArrayList<>())
                        .add(e));
        var out = new Html();
        byLetter.forEach((letter, of) -> {
            out.h2(letter, "letter-" + Html.anchor(letter.equals("Signs") ? "signs" : letter));
            out.raw("<ul class=\"index\">");
            of.forEach(e -> out.raw("<li><a href=\"%s\">%s</a>%s</li>"
                    .formatted(
                            Html.text(e.to),
                            Html.said(e.word),
                            e.title.replace("`", "").equals(e.word.replace("`", ""))
                                    ? ""
                                    : " <span class=\"from\">%s</span>".formatted(Html.said(e.title)))));
            out.raw("</ul>");
        });
        return new Page(
                INDEX, INDEX, "Index", "Every code, key, metric, condition, unit and word.", out.toString(), List.of());
    }

    private static String letter(String word) {
        var first = word.replace("`", "").substring(0, 1).toUpperCase(Locale.ROOT);
        return first.matches("[A-Z]") ? first : "Signs";
    }
}
