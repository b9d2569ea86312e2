package comparand.manual;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;

/** What the words of the documents mean: standings, marks, answers, steps. The words come from where the documents take them. */
final class WordPages {

    static final String PATH = "words.html";

    private static final String WORDS = "/comparand/compose/text/words-en.properties";

    private WordPages() {}

    static Page page() {
        var words = words();
        var out = new Html();
        var terms = new ArrayList<Page.Term>();
        for (var section : Resources.yaml("words.yaml")) {
            out.h2(section.path("section").asText());
            out.p(section.path("lead").asText());
            out.raw("<dl class=\"words\">");
            for (var entry : section.path("words")) {
                var key = entry.path("key").asText();
                var text = words.getProperty(key);
                if (text == null || entry.size() != 2) {
                    throw new IllegalStateException("the documents have no words " + key);
                }
                var id = Html.anchor(key);
                out.raw("<div id=\"%s\"><dt>%s</dt><dd>%s</dd></div>"
                        .formatted(
                                id,
                                shown(text),
                                Html.said(Html.sentence(entry.path("means").asText()))));
                if (text.length() < 60) {
                    terms.add(new Page.Term(text.replaceAll("\\{[^}]*}", "…"), id));
                }
            }
            out.raw("</dl>");
        }
        return new Page(
                PATH,
                PATH,
                "The words of an answer",
                "What each sentence of the documents means, and what it does not.",
                out.toString(),
                terms);
    }

    /** What the run puts in stands as a word in italics. */
    private static String shown(String text) {
        return Html.text(text).replaceAll("\\{([A-Za-z]+)}", "<i>$1</i>");
    }

    /** Every text of the documents by its key. */
    static Properties words() {
        var words = new Properties();
        try {
            words.load(new StringReader(new String(Resources.bytes(WORDS), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words;
    }

    /** The keys that are explained. */
    static List<String> keys() {
        var keys = new ArrayList<String>();
        Resources.yaml("words.yaml")
                .forEach(
                        s -> s.path("words").forEach(w -> keys.add(w.path("key").asText())));
        return keys;
    }
}
