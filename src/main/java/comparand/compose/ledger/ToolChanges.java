package comparand.compose.ledger;

import comparand.compose.text.Words;
import comparand.document.result.QuestionResult;
import comparand.document.result.RunResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;

/** Whether another version of the tool ran, and what readers ask otherwise. */
final class ToolChanges {

    private final Side earlier;
    private final Side later;
    private final Words words;
    private final List<Change> changes = new ArrayList<>();

    ToolChanges(Side earlier, Side later) {
        this.earlier = earlier;
        this.later = later;
        this.words = later.words();
    }

    List<Change> all() {
        run(Group.TOOL, words.say("ledger.tool"), RunResult::tool, c -> true);
        run(Group.QUESTION, words.say("about.question"), RunResult::question, c -> false);
        run(Group.QUESTION, words.say("about.decision"), RunResult::decision, c -> false);
        run(
                Group.QUESTION,
                words.say("about.present"),
                r -> later.device(earlier.device(r.presentDevice())),
                c -> true);
        var metrics = new TreeSet<String>(earlier.questions().keySet());
        metrics.addAll(later.questions().keySet());
        metrics.forEach(this::question);
        return changes;
    }

    private void run(Group group, String what, Function<RunResult, String> of, Predicate<Concern> reach) {
        add(
                group,
                what,
                of.apply(earlier.results().run()),
                of.apply(later.results().run()),
                reach);
    }

    private void question(String metric) {
        var before = earlier.questions().get(metric);
        var after = later.questions().get(metric);
        Predicate<Concern> its = c -> c.metric().equals(metric);
        if (before == null || after == null) {
            add(
                    Group.QUESTION,
                    words.say(
                            "ledger.question",
                            "metric",
                            before == null ? later.metric(metric) : earlier.metric(metric)),
                    before == null ? words.say("ledger.nothing") : before.asks(),
                    after == null ? words.say("ledger.nothing") : after.asks(),
                    c -> c.comesOrGoes() && its.test(c));
            return;
        }
        add(
                Group.QUESTION,
                words.say("ledger.question", "metric", later.metric(metric)),
                before.asks(),
                after.asks(),
                c -> false);
        add(
                Group.QUESTION,
                words.say("ledger.better", "metric", later.metric(metric)),
                words.say("better." + before.better().toUpperCase(Locale.ROOT)),
                words.say("better." + after.better().toUpperCase(Locale.ROOT)),
                c -> false);
        add(
                Group.QUESTION,
                words.say("ledger.definition", "metric", later.metric(metric)),
                definition(before),
                definition(after),
                its);
    }

    private String definition(QuestionResult question) {
        return question.definition().isEmpty()
                ? words.say("ledger.nothing")
                : String.join("; ", question.definition().values());
    }

    private void add(Group group, String what, String before, String after, Predicate<Concern> reach) {
        if (!before.equals(after)) {
            changes.add(new Change(
                    group, what, before, after, words.say("ledger.why-not-recorded"), what, Set.of(), Set.of(), reach));
        }
    }
}
