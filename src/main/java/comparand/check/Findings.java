package comparand.check;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.model.Library.PublishedValue;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Collects the findings of one rule under its code. */
final class Findings {

    private final String code;
    private final List<Diagnostic> all = new ArrayList<>();
    private final SortedMap<String, String> held = new TreeMap<>();

    Findings(Rule rule) {
        code = rule.code();
    }

    void stop(Span span, String message, String why, String fix) {
        all.add(Diagnostic.stop(code, span, message, why, fix));
    }

    /** Keeps a value out of comparisons; the first finding that holds it is the reason printed. */
    void hold(PublishedValue value, Span span, String message, String why, String fix) {
        all.add(Diagnostic.hold(code, span, message, why, fix));
        held.putIfAbsent(value.id(), message);
    }

    void note(Span span, String message, String why, String fix) {
        all.add(Diagnostic.note(code, span, message, why, fix));
    }

    /** What all rules found, in the order of the rules. */
    static Found together(List<Findings> findings) {
        var held = new TreeMap<String, String>();
        findings.forEach(f -> f.held.forEach(held::putIfAbsent));
        // each once: two metrics of one file may be wronged by one word
        return new Found(
                findings.stream().flatMap(f -> f.all.stream()).distinct().toList(), held);
    }

    /**
     * What the rules found.
     *
     * @param held the values kept out of comparisons, by id, with the reason
     */
    record Found(List<Diagnostic> all, SortedMap<String, String> held) {}
}
