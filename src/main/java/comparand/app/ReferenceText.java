package comparand.app;

import comparand.cite.Entry;
import comparand.cite.References;
import comparand.cite.Style;
import comparand.compose.manuscript.Works;
import comparand.model.library.SourceRecord;
import comparand.reference.Kept;
import comparand.reference.Recorded;
import comparand.reference.Reference;
import comparand.reference.format.ReferenceFormat;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A form in which references are written.
 *
 * @param format empty for text in the Vancouver style
 */
record ReferenceText(Optional<ReferenceFormat> format) {

    private static final String VANCOUVER = "vancouver";
    private static final String INVENTED = "Invented data: this work does not exist";

    /** Where each format has room for a remark. */
    private static final Map<ReferenceFormat, String> REMARK = Map.of(
            ReferenceFormat.RIS, "N1",
            ReferenceFormat.NBIB, "GN",
            ReferenceFormat.BIBTEX, "annote",
            ReferenceFormat.CSL_JSON, "annote");

    /** From a word of the command line. */
    static final class Named implements ITypeConverter<ReferenceText> {
        @Override
        public ReferenceText convert(String word) {
            var format = ReferenceFormat.named(word);
            if (format.isEmpty() && !word.equals(VANCOUVER)) {
                throw new TypeConversionException("`%s` is no format of references; choose from %s, %s"
                        .formatted(
                                word,
                                Stream.of(ReferenceFormat.values())
                                        .map(ReferenceFormat::word)
                                        .collect(Collectors.joining(", ")),
                                VANCOUVER));
            }
            return new ReferenceText(format);
        }
    }

    /** The text of a file; the same sources give the same bytes. */
    String of(SortedMap<String, SourceRecord> sources, boolean isInvented) {
        return format.map(f -> f.write(references(sources, f, isInvented)))
                .orElseGet(() -> vancouver(sources, isInvented));
    }

    private static SortedMap<String, Reference> references(
            SortedMap<String, SourceRecord> sources, ReferenceFormat format, boolean isInvented) {
        var references = new TreeMap<String, Reference>();
        sources.forEach((id, source) -> {
            var reference = Recorded.reference(source);
            references.put(id, isInvented ? marked(reference, format) : reference);
        });
        return references;
    }

    private static Reference marked(Reference reference, ReferenceFormat format) {
        var remark = new Kept(format.word(), REMARK.getOrDefault(format, "N1"), java.util.List.of(INVENTED));
        return new Reference(
                reference.type(),
                reference.title(),
                reference.authors(),
                reference.editors(),
                reference.issued(),
                reference.fields(),
                reference.notice(),
                Stream.concat(
                                reference.kept().stream()
                                        .filter(k -> !k.texts().equals(remark.texts())
                                                || !k.tag().equals(remark.tag())),
                                Stream.of(remark))
                        .toList());
    }

    private static String vancouver(SortedMap<String, SourceRecord> sources, boolean isInvented) {
        if (sources.isEmpty()) {
            return "";
        }
        var references = References.of(
                Style.NUMERIC,
                "en",
                sources.values().stream()
                        .map(s -> Works.of(
                                s,
                                s.document().map(d -> "Revision " + d.revision().value())))
                        .toList());
        return references.entries().stream()
                .map(e -> line(e, Recorded.reference(java.util.Objects.requireNonNull(sources.get(e.id())))))
                .collect(
                        Collectors.joining("\n", isInvented ? "Invented data: these works do not exist.\n" : "", "\n"));
    }

    /** A withdrawn work never stands in a list without that word. */
    private static String line(Entry entry, Reference reference) {
        return (entry.label() + " " + entry.text()).strip()
                + reference
                        .notice()
                        .map(n -> " [" + n.word() + n.since().map(d -> " " + d).orElse("")
                                + (n.text().isEmpty() ? "" : ": " + n.text()) + "]")
                        .orElse("");
    }
}
