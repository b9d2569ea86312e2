package comparand.compose.manuscript;

import comparand.cite.Item;
import comparand.cite.References;
import comparand.cite.Style;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Prose;
import comparand.document.Inline;
import comparand.model.Comparand;
import comparand.model.Origin;
import comparand.model.library.SourceRecord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes paragraphs: within sentences, numbers that can be found again and references are marked by signs that no text
 * holds, and become pieces of their own when the paragraph is done.
 *
 * <p>Works are numbered in the order of the run's sources, which is the order in which the text cites them first: so the
 * numbers of the list of references are those by which every output of the run points to its sources.
 */
final class Writing {

    private static final char HELD = '\u0001';
    private static final char NAMED = '\u0002';
    private static final char CITED = '\u0003';
    private static final char END = '\u0004';
    private static final Pattern MARKED = Pattern.compile(HELD + "(?<name>[^" + NAMED + "]*)" + NAMED + "(?<held>[^"
            + END + "]*)" + END + "|" + CITED + "(?<cited>[^" + END + "]*)" + END);

    /** Bookmarks are as long as this at most; some room is kept for what tells two of one name apart. */
    private static final int LONGEST = 36;

    private final Run run;
    private final References references;
    private final Set<String> names = new HashSet<>();

    Writing(Run run, Style style) {
        this.run = run;
        this.references = References.of(
                style,
                run.words().language(),
                run.names().sources().stream().map(this::work).toList());
    }

    private Item work(SourceRecord source) {
        return Works.of(
                source,
                source.document()
                        .map(d -> say("ms.revision", "revision", d.revision().value())));
    }

    Run run() {
        return run;
    }

    References references() {
        return references;
    }

    String say(String key, String... places) {
        return run.words().say(key, places);
    }

    /** A number that can be found again: its name comes from what it is, and stays from run to run. */
    String held(String name, String text) {
        return HELD + unique(name) + NAMED + text + END;
    }

    String cite(List<String> sources) {
        return CITED + references.cite(sources) + END;
    }

    String cite(Comparand published) {
        return cite(published.origin().fold(p -> List.of(p.source().id()), (Origin.Local l) -> List.<String>of()));
    }

    /** Letters, digits and underscores, not too long, once in the text. */
    String unique(String name) {
        var plain = name.replaceAll("[^A-Za-z0-9]+", "_").toLowerCase(Locale.ROOT);
        var whole = plain.matches("[a-z].*") ? plain : "n_" + plain;
        var shortened = whole.length() <= LONGEST
                ? whole
                : whole.substring(0, LONGEST - 9) + "_" + Integer.toHexString(whole.hashCode());
        var own = shortened;
        for (int i = 2; !names.add(own); i++) {
            own = shortened + "_" + i;
        }
        return own;
    }

    /** A paragraph of sentences. */
    Prose prose(String name, List<String> sentences) {
        return prose(name, sentences, Paragraph.Style.BODY);
    }

    Prose prose(String name, List<String> sentences, Paragraph.Style style) {
        return new Prose(unique(name), pieces(String.join(" ", sentences)), style);
    }

    private List<Inline> pieces(String text) {
        var pieces = new ArrayList<Inline>();
        var marks = MARKED.matcher(text);
        int from = 0;
        while (marks.find()) {
            var cited = marks.group("cited");
            boolean raised = cited != null && references.style().isRaised();
            plain(pieces, text.substring(from, marks.start()), raised);
            pieces.add(
                    cited == null
                            ? new Inline.Held(marks.group("name"), marks.group("held"))
                            : new Inline.Cited(cited, raised));
            from = marks.end();
        }
        plain(pieces, text.substring(from), false);
        return pieces;
    }

    /** No space stands before a raised number. */
    private static void plain(List<Inline> pieces, String text, boolean beforeRaised) {
        var plain = beforeRaised ? text.stripTrailing() : text;
        if (!plain.isEmpty()) {
            pieces.add(new Inline.Plain(plain));
        }
    }

    /** What a record says, as a sentence. */
    static String sentence(String text) {
        return text.matches("(?s).*[.?!]") ? text : text + ".";
    }

    /** The list of references, one paragraph each. */
    List<Block> list() {
        return references.entries().stream()
                .map(e -> {
                    var pieces = new ArrayList<Inline>();
                    if (!e.label().isEmpty()) {
                        pieces.add(new Inline.Plain(e.label() + "\t"));
                    }
                    e.spans().forEach(s -> pieces.add(new Inline.Plain(s.text(), s.slanted())));
                    return (Block) new Prose(unique("ref " + e.id()), pieces, Paragraph.Style.REFERENCE);
                })
                .collect(Collectors.toList());
    }
}
