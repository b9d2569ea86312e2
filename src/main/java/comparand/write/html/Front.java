package comparand.write.html;

import comparand.document.Document;
import comparand.document.Edition;

/** What stands before and behind the sections: title and marks, the list of contents, cautions and imprint. */
final class Front {

    private static final String JOIN = " \u00b7 ";

    private Front() {}

    static void header(Edition edition, Html html) {
        html.open("header", "class", "front").line();
        marks(edition, html);
        html.element("h1", edition.title()).line();
        if (!edition.subtitle().isBlank()) {
            html.element("p", edition.subtitle(), "class", "subtitle").line();
        }
        imprint(edition, html);
        html.close().line();
    }

    static void contents(Document document, Anchors anchors, PageWords words, Html html) {
        html.open("nav", "aria-label", words.say("page.contents")).open("ol").line();
        for (var section : document.sections()) {
            html.open("li")
                    .element("a", section.heading(), "href", "#" + anchors.of(section))
                    .close()
                    .line();
        }
        html.close().close().line();
    }

    static void footer(Edition edition, Html html) {
        html.open("footer").line();
        marks(edition, html);
        for (var caution : edition.cautions()) {
            html.element("p", caution).line();
        }
        imprint(edition, html);
        html.close().line();
    }

    private static void marks(Edition edition, Html html) {
        if (!edition.marks().isEmpty()) {
            html.element("p", String.join(JOIN, edition.marks()), "class", "marks")
                    .line();
        }
    }

    private static void imprint(Edition edition, Html html) {
        var by = edition.preparedBy().isBlank() ? "" : edition.preparedBy() + JOIN;
        html.element("p", by + edition.imprint(JOIN), "class", "imprint").line();
    }
}
