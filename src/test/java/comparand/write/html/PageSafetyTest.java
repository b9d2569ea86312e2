package comparand.write.html;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a page may do: nothing but show itself and run its own script. Content Security Policy Level 3 (W3C). */
class PageSafetyTest {

    private static final String HTML = DemoPage.html(DemoPage.page());
    private static final Document READ = Jsoup.parse(HTML);

    /** SHA-256 over the bytes between the tags, base64, as CSP 3 section 6.7.3.4 works it out for an inline block. */
    private static String hash(String between) throws NoSuchAlgorithmException {
        var digest = MessageDigest.getInstance("SHA-256").digest(between.getBytes(StandardCharsets.UTF_8));
        return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    }

    private static String between(String open, String close) {
        int from = HTML.indexOf(open) + open.length();
        assertThat(HTML.indexOf(open, from)).as("one of " + open).isNegative();
        return HTML.substring(from, HTML.indexOf(close, from));
    }

    @Test
    @DisplayName(
            "the policy allows this style and this script by their hashes, fonts and pictures within the file, and nothing else")
    void policy() throws NoSuchAlgorithmException {
        var policy = requireNonNull(READ.selectFirst("meta[http-equiv=Content-Security-Policy]"))
                .attr("content");

        assertThat(policy.split("; "))
                .containsExactly(
                        "default-src 'none'",
                        "script-src " + hash(between("<script>", "</script>")),
                        "style-src " + hash(between("<style>", "</style>")),
                        "font-src data:",
                        "img-src data:",
                        "base-uri 'none'",
                        "form-action 'none'");
        assertThat(READ.select("style")).hasSize(1);
        assertThat(READ.select("script")).hasSize(2);
        // a policy in a meta element holds for what follows it
        assertThat(HTML.indexOf("Content-Security-Policy")).isLessThan(HTML.indexOf("<style>"));
    }

    @Test
    @DisplayName("no element has a style or a handler of its own, for the policy would not let them work")
    void nothingInline() {
        assertThat(READ.getAllElements())
                .allSatisfy(e -> assertThat(e.attributes().asList())
                        .noneMatch(a -> a.getKey().equals("style")
                                || a.getKey().toLowerCase(Locale.ROOT).startsWith("on")));
    }

    @Test
    @DisplayName("no attribute and no rule of the style sheet leads out of the file")
    void nothingFromElsewhere() {
        for (var element : READ.getAllElements()) {
            for (var attribute : List.of("src", "href", "xlink:href", "action", "data", "srcset", "poster", "ping")) {
                if (element.hasAttr(attribute)) {
                    assertThat(element.attr(attribute)).matches("#.+|data:,");
                }
            }
        }
        var style = between("<style>", "</style>");
        var url = Pattern.compile("url\\((.{0,5})").matcher(style);
        int fonts = 0;
        while (url.find()) {
            assertThat(url.group(1)).isEqualTo("data:");
            fonts++;
        }
        assertThat(fonts).isEqualTo(2);
        assertThat(style).doesNotContain("@import", "http:", "https:", "image-set(");
        assertThat(READ.select("iframe, object, embed, img, form, base, audio, video, use"))
                .isEmpty();
    }

    @Test
    @DisplayName("ids are unique, and every link and reference within the page finds its place")
    void ids() {
        var ids = READ.select("[id]").eachAttr("id");
        assertThat(ids).doesNotHaveDuplicates().noneMatch(id -> id.contains(" "));
        var links = READ.select("a[href]").eachAttr("href");
        assertThat(links).hasSizeGreaterThan(10).allSatisfy(l -> assertThat(ids).contains(l.substring(1)));
        READ.select("[aria-labelledby]")
                .eachAttr("aria-labelledby")
                .forEach(names -> assertThat(ids).contains(names.split(" ")));
    }

    @Test
    @DisplayName("the same page gives the same bytes")
    void sameBytes() {
        assertThat(DemoPage.html(DemoPage.page())).isEqualTo(HTML);
    }

    @Test
    @DisplayName("a script that the program lacks stops it")
    void scriptMissing() {
        assertThatThrownBy(() -> Scripts.joined(List.of("none.js")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("scripts/none.js");
    }
}
