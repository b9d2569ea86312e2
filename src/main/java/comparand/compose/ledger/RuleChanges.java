package comparand.compose.ledger;

import comparand.compose.text.Words;
import comparand.document.result.DeviceResult;
import comparand.document.result.QuestionResult;
import comparand.document.result.QuestionResult.ToleranceResult;
import comparand.document.result.RunResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Margins, tolerances and levels that are not what they were, and those that a dossier set and left alone. */
final class RuleChanges {

    private final Side earlier;
    private final Side later;
    private final Words words;
    private final List<Change> changes = new ArrayList<>();

    RuleChanges(Side earlier, Side later) {
        this.earlier = earlier;
        this.later = later;
        this.words = later.words();
    }

    List<Change> all() {
        level(words.say("ledger.level"), RunResult::level);
        level(words.say("ledger.tolerance-share"), RunResult::toleranceShare);
        for (var after : later.questions().values()) {
            var before = earlier.questions().get(after.metric());
            if (before != null) {
                margin(before, after);
                after.tolerances().forEach(t -> tolerance(before, after, t));
            }
        }
        later.results().devices().forEach(this::label);
        return changes;
    }

    private void label(DeviceResult after) {
        earlier.results().devices().stream()
                .filter(d -> d.id().equals(after.id()))
                .findFirst()
                .ifPresent(before -> add(
                        words.say("ledger.label", "device", after.name()),
                        limits(before),
                        limits(after),
                        "devices/" + after.id() + ".yaml",
                        c -> c.values().stream()
                                .flatMap(v -> later.value(v).stream())
                                .anyMatch(v -> v.device().equals(after.id()))));
    }

    private String limits(DeviceResult device) {
        return device.label().isEmpty()
                ? words.say("ledger.nothing")
                : device.label().stream().map(l -> l.name() + " " + l.is()).collect(Collectors.joining("; "));
    }

    private void level(String what, Function<RunResult, Double> of) {
        add(
                what,
                String.valueOf(of.apply(earlier.results().run())),
                String.valueOf(of.apply(later.results().run())),
                words.say("ledger.why-not-recorded"),
                c -> true);
    }

    private void margin(QuestionResult before, QuestionResult after) {
        add(
                words.say("ledger.margin", "metric", after.name()),
                before.marginText(),
                after.marginText(),
                after.reason().orElseGet(() -> words.say("ledger.why-not-recorded")),
                c -> c.metric().equals(after.metric()));
    }

    private void tolerance(QuestionResult before, QuestionResult after, ToleranceResult is) {
        before.tolerances().stream()
                .filter(t -> t.condition().equals(is.condition()))
                .findFirst()
                .ifPresent(was -> add(
                        words.say("ledger.tolerance", "condition", is.name(), "metric", after.name()),
                        said(was),
                        said(is),
                        is.from(),
                        c -> c.metric().equals(after.metric()) && isJudged(c, is.condition())));
    }

    /** Whether what was found for the condition is not the same in both runs. */
    private boolean isJudged(Concern c, String condition) {
        return c.comesOrGoes()
                || !verdict(earlier, c, condition).equals(verdict(later, c, condition))
                // a local result may have been chosen by the tolerance
                || c.restsOnChanged(v -> true);
    }

    private static List<String> verdict(Side side, Concern c, String condition) {
        return side.results().pairs().stream()
                .filter(p -> p.id().equals(c.either().id()))
                .flatMap(p -> p.conditions().stream())
                .filter(v -> v.id().equals(condition))
                .map(v -> v.verdict() + " " + v.role())
                .toList();
    }

    private String said(ToleranceResult t) {
        return words.say("ledger.as-role", "tolerance", t.tolerance(), "role", words.term("role", t.role()));
    }

    private void add(String what, String before, String after, String why, Predicate<Concern> reach) {
        if (!before.equals(after)) {
            changes.add(new Change(Group.RULE, what, before, after, why, what, Set.of(), Set.of(), reach));
        }
    }

    /** What is said where no rule changed: how many there are, and those that the dossier set itself. */
    String leftAlone() {
        var own = new ArrayList<String>();
        int tolerances = 0;
        int margins = 0;
        for (var question : later.questions().values()) {
            tolerances += question.tolerances().size();
            margins += question.margin().isPresent() ? 1 : 0;
            question.tolerances().stream()
                    .filter(t -> !t.from().equals(words.say("set-by.catalogue")))
                    .map(t -> words.say(
                            "ledger.own-tolerance",
                            "condition",
                            t.name(),
                            "metric",
                            question.name(),
                            "tolerance",
                            t.tolerance()))
                    .forEach(own::add);
        }
        var count = words.say(
                "ledger.alone.RULE", "margins", String.valueOf(margins), "tolerances", String.valueOf(tolerances));
        return own.isEmpty() ? count : count + words.say("ledger.alone.own", "own", String.join("; ", own));
    }
}
