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
    private final List<Diagnostic> all;
    private final SortedMap<String, String> held;

    private Findings(String code, List<Diagnostic> all, SortedMap<String, String> held) {
        this.code = code;
        this.all = all;
        this.held = held;
    }

    static Findings start() {
        return new Findings("none", new ArrayList<>(), new TreeMap<>());
    }

    Findings of(Rule rule) {
        return new Findings(rule.code(), all, held);
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

    /** Each once: two metrics of one file may be wronged by one word. */
    List<Diagnostic> all() {
        return all.stream().distinct().toList();
    }

    SortedMap<String, String> held() {
        return held;
    }
}
