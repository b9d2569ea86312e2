package comparand.intake;

import comparand.document.record.Entry;
import comparand.document.record.Field;
import comparand.metric.Metric;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A value as a sentence, so that whoever entered it can hold it against the source by ear. */
final class ValueSentence {

    private static final String NOT_REPORTED = "not reported";

    private ValueSentence() {}

    /**
     * For example: "ardley-2023 reports for mirrowen-12 a pressure drop of 51.9 mmHg (mean), sd 3.1 mmHg, 5 units, at blood flow
     * 1.0 L/min, haemoglobin 10 g/dL; not reported: inlet saturation."
     */
    static String of(String source, Optional<Metric> metric, Entry.Fields value) {
        var out = new StringBuilder(source)
                .append(" reports for ")
                .append(value.text("device").orElse("an unnamed device"))
                .append(": ")
                .append(metric.map(Metric::name).or(() -> value.text("metric")).orElse("an unnamed metric"))
                .append(' ')
                .append(figure(value));
        Paths.text(value, "spread/kind").ifPresent(k -> out.append(", ").append(spread(k, value)));
        value.text("n")
                .filter(n -> !n.equals(NOT_REPORTED))
                .ifPresent(n -> out.append(", ").append(n));
        var unknown = new ArrayList<String>();
        value.text("n").filter(NOT_REPORTED::equals).ifPresent(n -> unknown.add("how many it rests on"));
        var known = new ArrayList<String>();
        split(value, "definition", known, unknown);
        if (!known.isEmpty()) {
            out.append("; defined by ").append(String.join(", ", known));
        }
        known.clear();
        split(value, "conditions", known, unknown);
        if (!known.isEmpty()) {
            out.append("; at ").append(String.join(", ", known));
        }
        if (!unknown.isEmpty()) {
            out.append("; not reported: ").append(String.join(", ", unknown));
        }
        var place = place(value);
        return out.append(place.isEmpty() ? "; no place given" : " (" + place + ")")
                .append('.')
                .toString();
    }

    private static String figure(Entry.Fields value) {
        return FigurePiece.KINDS.stream()
                .filter(k -> value.get(k.word()).isPresent())
                .findFirst()
                .map(k -> k.word().equals(FigurePiece.READ_FROM_FIGURE)
                        ? "read from a figure"
                        : value.text(k.word()).orElse("") + " (" + k.word().replace('-', ' ') + ")")
                .orElse("without a figure");
    }

    private static String spread(String kind, Entry.Fields value) {
        if (kind.equals(NOT_REPORTED)) {
            return "no spread";
        }
        var of = Paths.at(value, "spread/of").map(e -> words(e, " to ")).orElse("");
        return kind.equals("not stated") ? "± " + of + " without saying of which kind" : kind + " " + of;
    }

    private static void split(Entry.Fields value, String key, List<String> known, List<String> unknown) {
        value.get(key).ifPresent(e -> {
            if (e instanceof Entry.Fields fields) {
                for (var field : fields.list()) {
                    var text = words(field.value(), " + ");
                    var name = field.key().replace('-', ' ');
                    if (text.equals(NOT_REPORTED)) {
                        unknown.add(name);
                    } else {
                        known.add(name + " " + text);
                    }
                }
            }
        });
    }

    private static String place(Entry.Fields value) {
        return value.get("place")
                .map(e -> e instanceof Entry.Fields f
                        ? f.list().stream().map(ValueSentence::pair).collect(Collectors.joining(", "))
                        : "")
                .orElse("");
    }

    private static String pair(Field field) {
        return field.key() + " " + words(field.value(), " + ");
    }

    private static String words(Entry entry, String join) {
        return entry.fold(
                Entry.Words::text,
                items -> items.list().stream().map(e -> words(e, join)).collect(Collectors.joining(join)),
                fields -> "");
    }
}
