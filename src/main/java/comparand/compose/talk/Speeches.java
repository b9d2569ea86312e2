package comparand.compose.talk;

import comparand.compose.talk.Draft.Asked;
import comparand.compose.talk.Draft.Speech;
import comparand.compose.text.Run;
import comparand.document.talk.layout.Foot;
import comparand.document.talk.layout.Stage;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Mark;
import comparand.model.Origin;
import comparand.model.Pairing;
import comparand.model.Verdict;
import comparand.model.library.PlaceRecord;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What belongs in the notes of a slide about pairs: numbers as computed, sources with quotes, conditions in words. */
final class Speeches {

    private static final Stage STAGE = Stage.plain("Arial");

    /** Beside a link; masters of a house may be narrower. */
    private static final double STRIP = 640;

    private final Run run;
    private final SlideNumbers numbers;

    Speeches(Run run, SlideNumbers numbers) {
        this.run = run;
        this.numbers = numbers;
    }

    /** Notes of a slide that shows these pairs. */
    Speech of(List<String> say, List<Comparison> pairs, List<Asked> asked) {
        return new Speech(
                say,
                pairs.stream().map(this::numbers).toList(),
                sources(pairs.stream()
                        .flatMap(c -> Stream.of(c.pairing().ours(), c.pairing().theirs()))
                        .toList()),
                conditions(pairs),
                asked,
                dont(pairs));
    }

    /** Notes of a slide that shows none. */
    Speech plain(String say, List<Asked> asked) {
        return new Speech(List.of(say), List.of(), List.of(), List.of(), asked, List.of(say("talk.dont.ranking")));
    }

    private String numbers(Comparison c) {
        var ours = named(c.pairing().ours());
        var theirs = named(c.pairing().theirs());
        var metric = c.pairing().ours().metric();
        if (c.answer() instanceof Answer.Nominal n) {
            return say(
                    "talk.numbers.nominal",
                    "ours",
                    ours,
                    "theirs",
                    theirs,
                    "value",
                    numbers.withUnit(numbers.unrounded(n.difference()), metric));
        }
        return Firmness.tested(c)
                .map(t -> say(
                        "talk.numbers.pair",
                        "ours",
                        ours,
                        "theirs",
                        theirs,
                        "value",
                        numbers.withUnit(numbers.unrounded(t.difference().value()), metric),
                        "low",
                        numbers.unrounded(t.interval().low()),
                        "high",
                        numbers.unrounded(t.interval().high()),
                        "n",
                        n(c.pairing())))
                .orElseGet(() -> String.join(
                        "; ", value(c.pairing().ours()), value(c.pairing().theirs())));
    }

    private String value(Comparand c) {
        return say(
                "talk.numbers.value", "id", named(c), "shown", run.summaries().withUnit(c));
    }

    private String named(Comparand c) {
        return c.isLocal()
                ? run.names().device(c.device()) + group(c)
                : run.names().device(c.device()) + " (" + run.names().locator(c) + ")";
    }

    static String group(Comparand c) {
        var group = c.origin().fold(p -> "", Origin.Local::group);
        return group.isEmpty() ? "" : ", " + group;
    }

    /** {@code 6 units each}, {@code 17 cases against 25 cases}. */
    String n(Pairing pairing) {
        var ours = size(pairing.ours());
        var theirs = size(pairing.theirs());
        return theirs.isEmpty()
                ? ours.isEmpty() ? say("talk.n.neither") : say("talk.n.ours", "ours", ours)
                : ours.equals(theirs)
                        ? say("talk.n.each", "n", ours)
                        : say("talk.n.both", "ours", ours, "theirs", theirs);
    }

    private static String size(Comparand c) {
        return c.sizes().independent().map(Object::toString).orElse("");
    }

    List<String> sources(List<Comparand> comparands) {
        var lines = new LinkedHashSet<String>();
        comparands.forEach(c -> c.origin()
                .fold(
                        p -> {
                            p.values()
                                    .forEach(v -> lines.add(v.quote()
                                            .map(q -> say(
                                                    "talk.source.published",
                                                    "locator",
                                                    run.names().locator(p.source(), v),
                                                    "reference",
                                                    p.source().reference().text(),
                                                    "place",
                                                    place(v.place()),
                                                    "quote",
                                                    q.value()))
                                            .orElseGet(() -> say(
                                                    "talk.source.no-quote",
                                                    "locator",
                                                    run.names().locator(p.source(), v),
                                                    "reference",
                                                    p.source().reference().text(),
                                                    "place",
                                                    place(v.place())))));
                            return lines;
                        },
                        l -> {
                            lines.add(say(
                                    "talk.source.local", "locator", run.names().locator(c), "file", l.file()));
                            return lines;
                        }));
        return List.copyOf(lines);
    }

    private static String place(Optional<PlaceRecord> place) {
        return place.map(PlaceRecord::text)
                .map(comparand.compose.text.ConditionLine::upperFirst)
                .orElse("");
    }

    List<String> conditions(List<Comparison> pairs) {
        var lines = new LinkedHashSet<String>();
        for (var c : pairs) {
            var same = with(c, Mark.SAME, true);
            var made = with(c, Mark.MADE_SAME, true);
            var differ = with(c, Mark.DIFFERS, false);
            var missing = c.pairing().verdicts().stream()
                    .filter(v -> v.mark() == Mark.NOT_REPORTED)
                    .map(ConditionVerdict::name)
                    .toList();
            var alike = Stream.concat(same.stream(), made.stream()).toList();
            add(lines, "talk.conditions.same", alike);
            add(lines, "talk.conditions.differ", differ);
            add(lines, "talk.conditions.missing", missing);
        }
        return List.copyOf(lines);
    }

    private void add(Set<String> lines, String key, List<String> conditions) {
        if (!conditions.isEmpty()) {
            var joined = String.join(", ", conditions);
            lines.add(
                    key.endsWith("same")
                            ? say("talk.conditions.same", "conditions", joined)
                            : key.endsWith("differ")
                                    ? say("talk.conditions.differ", "conditions", joined)
                                    : say("talk.conditions.missing", "conditions", joined));
        }
    }

    private List<String> with(Comparison c, Mark mark, boolean oursOnly) {
        return c.pairing().verdicts().stream()
                .filter(v -> v.mark() == mark && !v.ours().isBlank())
                .map(v -> oursOnly
                        ? v.name() + " " + v.ours()
                        : v.name() + " " + say("talk.against", "ours", v.ours(), "theirs", v.theirs()))
                .toList();
    }

    /** Conditions that decide and are the same, for a rider. */
    String decidingSame(Pairing pairing) {
        return String.join(
                ", ",
                pairing.verdicts().stream()
                        .filter(v -> v.of() == ConditionVerdict.Subject.CONDITION
                                && v.role() != comparand.metric.Role.QUALIFIES
                                && (v.mark() == Mark.SAME || v.mark() == Mark.MADE_SAME))
                        .map(v -> v.name() + " " + v.ours())
                        .toList());
    }

    private List<String> dont(List<Comparison> pairs) {
        var lines = new LinkedHashSet<String>();
        pairs.forEach(c -> lines.add(Firmness.verdict(c)
                .filter(v -> c.pairing().standing().isCompared())
                .map(this::dont)
                .orElseGet(() -> say("talk.dont.shown"))));
        lines.add(say("talk.dont.ranking"));
        return List.copyOf(lines);
    }

    private String dont(Verdict verdict) {
        return switch (verdict) {
            case HIGHER_BEYOND_MARGIN, LOWER_BEYOND_MARGIN, HIGHER, LOWER -> say("talk.dont.BEYOND");
            case HIGHER_MARGIN_OPEN, LOWER_MARGIN_OPEN -> say("talk.dont.OPEN");
            case NONE_AS_LARGE_AS_MARGIN, SMALLER_THAN_MARGIN -> say("talk.dont.NONE");
            case NOT_SETTLED -> say("talk.dont.UNSETTLED");
        };
    }

    /** Places of values, each once, in the order given. */
    String locators(List<Comparand> comparands) {
        var places = new LinkedHashSet<String>();
        comparands.forEach(c -> places.add(run.names().locator(c)));
        return String.join("; ", places);
    }

    /**
     * Sizes, conditions and places of what a slide shows, as far as two lines hold: conditions go first, then our own places,
     * then sizes. The notes have them all.
     */
    String strip(List<Comparison> pairs) {
        var sizes = pairs.stream().map(c -> n(c.pairing())).distinct().limit(3).toList();
        var conditions =
                pairs.stream().map(c -> decidingSame(c.pairing())).filter(t -> !t.isEmpty()).findFirst().stream()
                        .toList();
        var values = pairs.stream()
                .flatMap(c -> Stream.of(c.pairing().ours(), c.pairing().theirs()))
                .toList();
        var all = List.of(say("talk.strip.sources", "locators", locators(values)));
        var published = values.stream().filter(v -> !v.isLocal()).toList();
        var theirs = published.isEmpty()
                ? List.<String>of()
                : List.of(say("talk.strip.sources", "locators", locators(published)));
        return Stream.of(
                        joined(sizes, conditions, all),
                        joined(sizes, List.of(), all),
                        joined(sizes, List.of(), theirs),
                        joined(List.of(), List.of(), theirs))
                .filter(t -> STAGE.lines().count(t, STRIP, Foot.SIZE, false) <= 2)
                .findFirst()
                .orElseGet(() -> joined(List.of(), List.of(), theirs));
    }

    private static String joined(List<String> sizes, List<String> conditions, List<String> sources) {
        return Stream.of(sizes, conditions, sources).flatMap(List::stream).collect(Collectors.joining(" · "));
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
