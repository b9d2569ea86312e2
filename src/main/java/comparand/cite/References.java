package comparand.cite;

import static java.util.Objects.requireNonNull;

import de.undercouch.citeproc.CSL;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The references of one text: what stands in it where works are cited, and the list of them at its end. Nothing is fetched;
 * the same works in the same order give the same text.
 */
public final class References {

    private static final Pattern NUMBERS = Pattern.compile("\\d++(?:,\\d++)++");
    private static final String RANGE = "\u2013";

    private final Style style;
    private final CSL processor;
    private final Set<String> works = new LinkedHashSet<>();
    private final Set<String> cited = new LinkedHashSet<>();

    private References(Style style, CSL processor, List<Item> items) {
        this.style = style;
        this.processor = processor;
        items.forEach(i -> works.add(i.id()));
        processor.setOutputFormat("html");
        processor.setConvertLinks(false);
        processor.registerCitationItems(works);
    }

    /**
     * References to some works.
     *
     * @param language BCP 47, English unless it is German
     * @param items in the order in which the text cites them first: this is the order of their numbers
     * @throws IllegalArgumentException if two works have one id
     */
    public static References of(Style style, String language, List<Item> items) {
        try {
            return new References(
                    style,
                    new CSL(
                            new Works(style, items),
                            References::locale,
                            null,
                            resource(style.file()),
                            language.startsWith("de") ? "de-DE" : "en-US"),
                    items);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String locale(String language) {
        return resource("locales-" + language + ".xml");
    }

    private static String resource(String name) {
        try (var in = References.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("there is no " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * What stands in the text where works are cited, as the style writes several of them: {@code (1,3-5)}.
     *
     * @throws IllegalArgumentException if there is no such work, or none is named
     */
    public String cite(List<String> ids) {
        if (ids.isEmpty() || !works.containsAll(ids)) {
            throw new IllegalArgumentException("these cannot be cited: " + ids);
        }
        cited.addAll(ids);
        var made = processor.makeCitation(ids);
        var text = Spans.text(Spans.of(made.get(made.size() - 1).getText()));
        return style.isNumbered() ? collapsed(text) : text;
    }

    /** Three numbers or more that follow each other become a range; the processor leaves that part of the styles out. */
    private static String collapsed(String citation) {
        return NUMBERS.matcher(citation)
                .replaceAll(m -> ranges(
                        Stream.of(m.group().split(",")).map(Integer::valueOf).toList()));
    }

    private static String ranges(List<Integer> numbers) {
        var out = new StringBuilder();
        for (int from = 0, to; from < numbers.size(); from = to) {
            to = from + 1;
            while (to < numbers.size() && numbers.get(to) == numbers.get(to - 1) + 1) {
                to++;
            }
            int first = numbers.get(from);
            int last = numbers.get(to - 1);
            out.append(out.isEmpty() ? "" : ",").append(first);
            if (last > first) {
                out.append(last - first > 1 ? RANGE : ",").append(last);
            }
        }
        return out.toString();
    }

    /** The list of references, in the style's order. */
    public List<Entry> entries() {
        var ids = new HashMap<String, String>();
        for (var id : works) {
            // the processor does not say which entry is whose
            var alone = processor.makeBibliography(w -> id.equals(w.getId())).getEntries()[0];
            if (ids.put(alone, id) != null) {
                throw new IllegalArgumentException("two works have one reference: " + id);
            }
        }
        return Stream.of(processor.makeBibliography().getEntries())
                .map(markup -> entry(requireNonNull(ids.get(markup), markup), markup))
                .toList();
    }

    private static Entry entry(String id, String markup) {
        return new Entry(id, Spans.margin(markup), trimmed(Spans.of(Spans.beside(markup))));
    }

    private static List<Entry.Span> trimmed(List<Entry.Span> spans) {
        var trimmed = new ArrayList<>(spans);
        int last = trimmed.size() - 1;
        trimmed.set(
                last,
                new Entry.Span(
                        trimmed.get(last).text().stripTrailing(),
                        trimmed.get(last).slanted()));
        if (trimmed.get(last).text().isEmpty()) {
            trimmed.remove(last);
        }
        return trimmed;
    }

    /** The works that the text has cited so far, in the order of their first citation. */
    public List<String> cited() {
        return List.copyOf(cited);
    }

    public Style style() {
        return style;
    }
}
