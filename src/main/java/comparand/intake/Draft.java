package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.record.Entry;
import comparand.document.record.Field;
import comparand.unit.DecimalSign;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A record while it is made from answers: what is put into it comes in the order of the pieces, and every text in it knows
 * the answer it came from, so that a finding on the record is told at that answer.
 */
final class Draft {

    /** Keys of a path are joined by it. */
    static final String STEP = "/";

    private final Answers answers;
    private final DecimalSign sign;
    private final Map<String, Object> root = new LinkedHashMap<>();
    private final SortedMap<String, Span> places = new TreeMap<>();
    private final List<Diagnostic> findings = new ArrayList<>();
    private final List<Echo> echoes = new ArrayList<>();

    /**
     * A record that is empty as yet.
     *
     * @param sign how numbers are written in the file it will stand in
     */
    Draft(Answers answers, DecimalSign sign) {
        this.answers = answers;
        this.sign = sign;
    }

    Answers answers() {
        return answers;
    }

    DecimalSign sign() {
        return sign;
    }

    /** The answer as it will stand in the record. */
    Optional<String> text(Slot slot) {
        return answers.text(slot);
    }

    /** An answer as a record writes it: a number with the decimal sign of the file, anything else as it was answered. */
    Optional<String> written(Slot slot) {
        return slot.kind() == Slot.Kind.NUMBER ? number(slot) : text(slot);
    }

    /** A number as the file writes it; what was changed is echoed, what cannot be read is a finding. */
    Optional<String> number(Slot slot) {
        return answers.get(slot).flatMap(a -> {
            var read = NumberText.read(a.text(), sign);
            if (read.isEmpty()) {
                findings.add(NumberText.refused(a));
            } else if (!read.get().equals(a.text())) {
                echoes.add(new Echo(a.at(), a.text(), read.get()));
            }
            return read;
        });
    }

    /** Puts a text at a path of keys. */
    void put(String path, String text, Slot from) {
        put(path, Entry.words(text), answers.at(from));
    }

    @SuppressWarnings("unchecked")
    void put(String path, Entry entry, Span from) {
        var keys = path.split(STEP, -1);
        var map = root;
        for (int i = 0; i + 1 < keys.length; i++) {
            map = (Map<String, Object>) map.computeIfAbsent(keys[i], k -> new LinkedHashMap<String, Object>());
        }
        map.put(keys[keys.length - 1], entry);
        places.put(path, from);
    }

    void refuse(Diagnostic finding) {
        findings.add(finding);
    }

    void echo(Slot slot, String readAs) {
        answers.get(slot).ifPresent(a -> echoes.add(new Echo(a.at(), a.text(), readAs)));
    }

    Entry.Fields record() {
        return fields(root);
    }

    @SuppressWarnings("unchecked")
    private static Entry.Fields fields(Map<String, Object> map) {
        return new Entry.Fields(map.entrySet().stream()
                .map(e -> new Field(
                        e.getKey(),
                        e.getValue() instanceof Entry entry ? entry : fields((Map<String, Object>) e.getValue())))
                .toList());
    }

    /** Where each path was answered. */
    SortedMap<String, Span> places() {
        return Collections.unmodifiableSortedMap(places);
    }

    List<Diagnostic> findings() {
        return List.copyOf(findings);
    }

    List<Echo> echoes() {
        return List.copyOf(echoes);
    }
}
