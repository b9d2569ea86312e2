package comparand.write.html;

import comparand.digest.Sha;
import comparand.document.Edition;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** The head of the page: what it is, how it looks, and a content policy under which it can load and send nothing. */
final class Head {

    private Head() {}

    static void write(Edition edition, String style, String script, Html html) {
        html.open("head").line().empty("meta", "charset", "utf-8").line();
        html.empty("meta", "http-equiv", "Content-Security-Policy", "content", policy(style, script))
                .line();
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .line();
        html.empty("meta", "name", "color-scheme", "content", "light dark").line();
        html.empty("meta", "name", "referrer", "content", "no-referrer").line();
        html.empty("meta", "name", "generator", "content", edition.tool()).line();
        if (!edition.subtitle().isBlank()) {
            html.empty("meta", "name", "description", "content", edition.subtitle())
                    .line();
        }
        html.element("title", edition.title()).line();
        // an icon of its own, empty, or else browsers ask a server for one
        html.empty("link", "rel", "icon", "href", "data:,").line();
        html.open("style").made(style).close().line().close().line();
    }

    /** Content Security Policy Level 3: nothing but this style and this script, and fonts and pictures within the file. */
    private static String policy(String style, String script) {
        return String.join(
                "; ",
                "default-src 'none'",
                "script-src '" + hash(script) + "'",
                "style-src '" + hash(style) + "'",
                "font-src data:",
                "img-src data:",
                "base-uri 'none'",
                "form-action 'none'");
    }

    private static String hash(String text) {
        var digest = Sha.digest().digest(text.getBytes(StandardCharsets.UTF_8));
        return "sha256-" + Base64.getEncoder().encodeToString(digest);
    }
}
