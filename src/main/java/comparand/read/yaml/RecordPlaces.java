package comparand.read.yaml;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.record.Entry;
import comparand.document.record.Field;
import comparand.flow.Outcome;
import java.util.ArrayList;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A record as a tree of texts, and the path of keys that stands at each place of its file: what a finding on the record is
 * about, for who did not write the file.
 *
 * @param record the whole record
 * @param paths for every key and value in the file, the keys that lead to it, joined by slashes; an item of a list is
 *     named by its {@code id}, or by its place
 */
public record RecordPlaces(Entry.Fields record, Map<Span, String> paths) {

    public RecordPlaces {
        paths = Map.copyOf(paths);
    }

    /** The tree of a file, or the faults that keep it from being read. */
    public static Outcome<RecordPlaces> of(String file, byte[] bytes) {
        var findings = new ArrayList<Diagnostic>();
        var root = YamlTree.read(file, bytes, findings);
        if (root.isEmpty()) {
            return Outcome.stopped(findings);
        }
        var paths = new TreeMap<Span, String>();
        walk(root.get(), "", paths);
        return Outcome.of(new RecordPlaces((Entry.Fields) entry(root.get()), paths), findings);
    }

    /** The path that stands at a place, or nearest before it on the same line. */
    public Optional<String> at(Span span) {
        return paths.keySet().stream()
                .filter(s -> s.line() == span.line() && s.column() <= span.column())
                .max(Span::compareTo)
                .map(paths::get);
    }

    private static void walk(Node node, String path, Map<Span, String> paths) {
        if (node instanceof Node.Mapping mapping) {
            for (var entry : mapping.entries()) {
                var here = path.isEmpty()
                        ? entry.key().text()
                        : path + "/" + entry.key().text();
                paths.put(entry.key().span(), here);
                walk(entry.value(), here, paths);
            }
        } else if (node instanceof Node.Sequence sequence) {
            for (int i = 0; i < sequence.items().size(); i++) {
                walk(sequence.items().get(i), path + "/" + name(sequence.items().get(i), i), paths);
            }
        } else {
            paths.put(node.span(), path);
        }
    }

    private static String name(Node item, int at) {
        return item instanceof Node.Mapping mapping
                ? mapping.entry(Entry.Fields.ID)
                        .map(e -> e.value() instanceof Node.Scalar s ? s.text() : String.valueOf(at))
                        .orElse(String.valueOf(at))
                : String.valueOf(at);
    }

    private static Entry entry(Node node) {
        if (node instanceof Node.Mapping mapping) {
            return new Entry.Fields(mapping.entries().stream()
                    .map(e -> new Field(e.key().text(), entry(e.value())))
                    .toList());
        }
        if (node instanceof Node.Sequence sequence) {
            return new Entry.Items(
                    sequence.items().stream().map(RecordPlaces::entry).toList());
        }
        return Entry.words(((Node.Scalar) node).text());
    }
}
