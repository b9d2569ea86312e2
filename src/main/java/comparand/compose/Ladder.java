package comparand.compose;

import comparand.compose.text.AnswerText;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.compose.text.Words;
import comparand.model.Comparand;
import comparand.model.Compared;
import comparand.model.Comparison;
import comparand.model.SetAside;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/** The ladder from print to table for one value, as text for a terminal: rung by rung, then what it was set beside. */
public final class Ladder {

    private final Run run;

    public Ladder(Compared compared) {
        this.run = new Run(compared, Words.of("en"));
    }

    /** The ids of all values that can be traced. */
    public List<String> ids() {
        return run.comparands().stream().map(Comparand::id).toList();
    }

    /** The ladder of a value; empty if there is none of that id. */
    public Optional<String> of(String id) {
        return run.comparands().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .map(this::text);
    }

    private String text(Comparand c) {
        var out = new StringBuilder();
        out.append("%s: %s, %s%n"
                .formatted(c.id(), run.names().device(c.device()), c.metric().name()));
        c.origin()
                .fold(
                        p -> out.append("  source %d: %s%n"
                                .formatted(
                                        run.names().number(p.source().id()),
                                        p.source().reference().text())),
                        l -> out.append(
                                "  study: %s, %s%n".formatted(l.study().title().value(), l.file())));
        out.append("  locator %s%n%n".formatted(run.names().locator(c)));
        int rung = 0;
        for (var step : c.trail()) {
            out.append("  %d. %s%n".formatted(++rung, run.trails().of(step)));
            if (!step.formula().isEmpty()) {
                out.append("     by %s%n".formatted(step.formula()));
            }
        }
        out.append("%n  On our footing: %s%s%n".formatted(run.summaries().withUnit(c), n(c)));
        c.metric()
                .definition()
                .forEach(a -> out.append("  %s: %s%n"
                        .formatted(
                                a.name(),
                                c.definition()
                                        .get(a.id())
                                        .map(a::text)
                                        .orElseGet(() -> run.words().say("not-reported")))));
        c.conditions().forEach((id, is) -> out.append("  %s: %s%n".formatted(name(id), is.text())));
        run.compared().matched().evidence().setAside().stream()
                .filter(a -> a.comparand().id().equals(c.id()))
                .forEach(a -> out.append("%n  %s%n".formatted(aside(a))));
        if (run.compared().matched().unpaired().contains(c)) {
            out.append("%n  Set beside nothing: %s%n".formatted(run.unpaired(c)));
        }
        run.compared().comparisons().stream()
                .filter(x -> x.pairing().ours().id().equals(c.id())
                        || x.pairing().theirs().id().equals(c.id()))
                .forEach(x ->
                        out.append("%n  %s%n".formatted(beside(c, x).indent(2).strip())));
        // a terminal breaks no lines at words, and what is copied from it should be found again
        return out.toString().replace('\u00a0', ' ').stripTrailing();
    }

    private String n(Comparand c) {
        return c.sizes().independent().map(s -> "; " + s).orElse("");
    }

    private String name(String condition) {
        return run.library().catalogue().condition(condition).map(k -> k.name()).orElse(condition);
    }

    private String aside(SetAside a) {
        return "Takes no part. " + run.words().say("aside." + a.reason().name(), "detail", a.detail());
    }

    private String beside(Comparand c, Comparison x) {
        var other = x.pairing().ours().id().equals(c.id())
                ? x.pairing().theirs()
                : x.pairing().ours();
        var lines = new StringJoiner(System.lineSeparator());
        lines.add("Set beside %s: %s".formatted(other.id(), run.summaries().withUnit(other)));
        lines.add(run.words().say("standing." + x.pairing().standing().name()));
        lines.add(run.conditions().line(x.pairing()));
        AnswerText.tested(x.answer())
                .ifPresent(t -> lines.add("Difference, ours minus theirs: "
                        + run.figures().difference(x.pairing().ours().metric(), t)));
        lines.add(ConditionLine.upperFirst(run.answers().of(x)) + ".");
        run.remarks().notes(x).forEach(lines::add);
        return lines.toString();
    }
}
