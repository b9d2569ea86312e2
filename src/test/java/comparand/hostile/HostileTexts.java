package comparand.hostile;

import comparand.document.record.Entry;
import comparand.document.record.Field;
import comparand.read.yaml.RecordPlaces;
import comparand.support.LibraryCopy;
import comparand.write.yaml.RecordYaml;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A copy of a library in which something stands behind every text that its authors are free to word. */
final class HostileTexts {

    /** Keys of records whose texts are free: sentences, names, quotes. */
    static final Set<String> FREE = Set.of(
            "allocation",
            "asks",
            "because",
            "centre",
            "centres",
            "claim",
            "container-title",
            "decision",
            "eligibility",
            "equation",
            "family",
            "figure",
            "given",
            "given-by",
            "how",
            "item",
            "literal",
            "maker",
            "matters",
            "means",
            "name",
            "not-included",
            "notice",
            "page",
            "period",
            "place",
            "prepared-by",
            "printed",
            "publisher",
            "question",
            "quote",
            "reason",
            "reference",
            "remark",
            "revision",
            "row",
            "says",
            "set-by",
            "settles",
            "short-name",
            "suppose",
            "table",
            "title",
            "translation",
            "type",
            "volume",
            "what",
            "where",
            "who",
            "words",
            "work");

    /** Those that stand on slides, where there is no room for more than a few signs. */
    private static final Set<String> SHORT = Set.of("title", "question", "asks", "name", "short-name");

    private static final String MARKUP = "<s>\"'&";

    private final Set<String> keys;
    private final String before;
    private final String behind;
    private int changed;

    HostileTexts(Set<String> keys, String before, String behind) {
        this.keys = keys;
        this.before = before;
        this.behind = behind;
    }

    /** The copy, with the texts changed. */
    Path library(Path from, Path to) throws IOException {
        LibraryCopy.of(from, to);
        try (var files = Files.walk(to)) {
            for (var file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                int before = changed;
                var record = RecordPlaces.of("x.yaml", Files.readAllBytes(file))
                        .fold((p, said) -> p.record(), said -> new Entry.Fields(List.of()));
                var text = RecordYaml.text((Entry.Fields) changed(record, ""), List.of());
                if (changed > before) {
                    Files.writeString(file, text);
                }
            }
        }
        return to;
    }

    /** How many texts were changed. */
    int count() {
        return changed;
    }

    private static String sameLength(String text) {
        return "=" + text.substring(0, Math.max(1, text.length() - 1 - MARKUP.length())) + MARKUP;
    }

    private Entry changed(Entry entry, String key) {
        return entry.fold(
                words -> {
                    if (!keys.contains(key) || words.text().isBlank()) {
                        return words;
                    }
                    changed++;
                    return Entry.words(SHORT.contains(key) ? sameLength(words.text()) : before + words.text() + behind);
                },
                items -> new Entry.Items(
                        items.list().stream().map(i -> changed(i, key)).toList()),
                fields -> {
                    var all = new ArrayList<Field>();
                    fields.list().forEach(f -> all.add(new Field(f.key(), changed(f.value(), f.key()))));
                    if (key.equals("reference") && fields.get("URL").isEmpty()) {
                        changed++;
                        all.add(Field.of("URL", "javascript:alert(1)//" + behind));
                    }
                    return new Entry.Fields(all);
                });
    }
}
