package comparand.write.html;

import comparand.document.exploration.Page;
import comparand.write.figure.Faces;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Sets a page as one HTML file. The same page gives the same bytes, on any day and machine. */
public final class HtmlWriter {

    /** File name ending, without the dot. */
    public static final String EXTENSION = "html";

    public void write(Page page, OutputStream out) throws IOException {
        var document = page.document();
        var edition = document.edition();
        var words = new PageWords(page.exploration().words());
        var anchors = new Anchors(document);
        var faces = Faces.of(document.look().fonts());
        var script = Scripts.joined();
        var html = new Html();
        html.made("<!DOCTYPE html>\n").open("html", "lang", edition.language()).line();
        Head.write(edition, Style.of(document), script, html);
        html.open("body").line();
        html.element("a", words.say("page.skip"), "class", "skip", "href", "#content")
                .line();
        Front.header(edition, html);
        html.open("div", "class", "sheet").line();
        Front.contents(document, anchors, words, html);
        html.open("main", "id", "content", "tabindex", "-1").line();
        html.element("div", "", "id", "exploring", "role", "status", "hidden", "")
                .line();
        html.element("div", "", "id", "controls", "hidden", "").line();
        html.element("p", "", "id", "said", "aria-live", "polite", "class", "aside")
                .line();
        var chapters = new Chapters(anchors, words, faces, html);
        document.sections().forEach(chapters::write);
        html.close().line().close().line();
        Front.footer(edition, html);
        html.open("script", "type", "application/json", "id", "exploration")
                .made(ExplorationJson.of(page.exploration()))
                .close()
                .line();
        html.open("script").made(script).close().line();
        html.close().line().close().line();
        out.write(html.whole().getBytes(StandardCharsets.UTF_8));
    }
}
