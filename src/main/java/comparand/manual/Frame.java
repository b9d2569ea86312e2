package comparand.manual;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What stands around every page: title, the way here, the way on, and the parts of a long page. */
final class Frame {

    private static final Pattern PART = Pattern.compile("<h2 id=\"([^\"]*)\">(.*?)</h2>");

    /** Shorter pages are seen at once. */
    private static final int FEWEST_PARTS = 4;

    private final String version;
    private final List<Page> all;

    Frame(String version, List<Page> all) {
        this.version = version;
        this.all = List.copyOf(all);
    }

    String of(Page page) {
        int at = all.indexOf(page);
        var before = at > 0 ? Optional.of(all.get(at - 1)) : Optional.<Page>empty();
        var after = at + 1 < all.size() ? Optional.of(all.get(at + 1)) : Optional.<Page>empty();
        var out = new Html();
        out.raw("<!DOCTYPE html>");
        out.raw("<html lang=\"en\">");
        out.raw("<head>");
        out.raw("<meta charset=\"utf-8\">");
        out.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
        out.raw("<meta name=\"color-scheme\" content=\"light dark\">");
        out.raw("<title>%s - manual of Comparand</title>"
                .formatted(Html.text(title(page).replace("`", ""))));
        out.raw("<link rel=\"stylesheet\" href=\"%s\">".formatted(page.to("style/manual.css")));
        out.raw("</head>");
        out.raw("<body>");
        out.raw("<a class=\"skip\" href=\"#main\">To the text</a>");
        out.raw("<header><nav aria-label=\"Where you are\"><ol class=\"way\">");
        way(page).forEach(out::raw);
        out.raw("</ol></nav><nav class=\"tools\" aria-label=\"Manual\">");
        out.raw("<a href=\"%s\">Contents</a> <a href=\"%s\">Index</a>"
                .formatted(page.to(ContentsPages.CONTENTS), page.to(ContentsPages.INDEX)));
        out.raw("</nav></header>");
        out.raw("<main id=\"main\">");
        out.raw("<h1>" + Html.said(page.title()) + "</h1>");
        if (!page.lead().isEmpty()) {
            out.raw("<p class=\"lead\">" + Html.said(page.lead()) + "</p>");
        }
        parts(page, out);
        out.raw(page.body());
        out.raw("</main>");
        out.raw("<nav class=\"turn\" aria-label=\"Previous and next page\">");
        before.ifPresent(p -> out.raw(turn("prev", "Previous", page, p)));
        after.ifPresent(p -> out.raw(turn("next", "Next", page, p)));
        out.raw("</nav>");
        out.raw(
                "<footer><p>Manual of %s. Devices, makers, hospitals, papers and numbers in examples are invented.</p></footer>"
                        .formatted(Html.text(version)));
        out.raw("</body>");
        out.raw("</html>");
        return out.toString();
    }

    /** With the chapter: a condition may be called as a metric is. */
    private String title(Page page) {
        return all.stream()
                .filter(p -> p.path().equals(page.chapter()) && !p.equals(page))
                .map(p -> page.title() + " - " + p.title())
                .findFirst()
                .orElse(page.title());
    }

    private List<String> way(Page page) {
        var above = all.stream()
                .filter(p -> p.path().equals(page.chapter()) && !p.equals(page))
                .map(p -> "<li><a href=\"%s\">%s</a></li>".formatted(page.to(p.path()), Html.said(p.title())))
                .toList();
        var out = new ArrayList<String>();
        out.add("<li><a href=\"%s\">Comparand</a></li>".formatted(page.to(ContentsPages.CONTENTS)));
        out.addAll(above);
        return out;
    }

    private static String turn(String rel, String word, Page from, Page to) {
        return "<a rel=\"%s\" class=\"%1$s\" href=\"%s\"><span>%s</span> %s</a>"
                .formatted(rel, from.to(to.path()), word, Html.said(to.title()));
    }

    private static void parts(Page page, Html out) {
        var parts = PART.matcher(page.body()).results().toList();
        boolean isAllAlike = page.path().startsWith(Finding.FOLDER) && !page.isFirst();
        if (parts.size() >= FEWEST_PARTS && !isAllAlike) {
            out.raw("<nav class=\"parts\" aria-label=\"On this page\"><ul>");
            parts.forEach(m -> out.raw("<li><a href=\"#%s\">%s</a></li>".formatted(m.group(1), m.group(2))));
            out.raw("</ul></nav>");
        }
    }
}
