package comparand.compose.ledger;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Words;
import comparand.document.result.SourceResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Sources that came or went, and those that do not stand where they stood. */
final class SourceChanges {

    private final Side earlier;
    private final Side later;
    private final Words words;

    SourceChanges(Side earlier, Side later) {
        this.earlier = earlier;
        this.later = later;
        this.words = later.words();
    }

    List<Change> all() {
        var changes = new ArrayList<Change>();
        for (var after : later.sources().values()) {
            var before = earlier.sources().get(after.id());
            if (before == null) {
                changes.add(
                        change(after, words.say("ledger.nothing"), recorded(after), c -> c.restsOnSource(after.id())));
            } else if (!state(before).equals(state(after))) {
                // an answer that stays rests on its values, whatever is said of the source
                changes.add(change(
                        after, state(before), state(after), c -> c.comesOrGoes() && c.restsOnSource(after.id())));
            }
        }
        earlier.sources().values().stream()
                .filter(s -> !later.sources().containsKey(s.id()))
                .forEach(s ->
                        changes.add(change(s, recorded(s), words.say("ledger.nothing"), c -> c.restsOnSource(s.id()))));
        return changes;
    }

    private Change change(SourceResult source, String before, String after, Predicate<Concern> reach) {
        return new Change(
                Group.SOURCE,
                source.id(),
                before,
                after,
                why(source),
                words.say("ledger.brief.source", "source", source.id(), "state", after),
                Set.of(),
                Set.of("sources/" + source.id() + ".yaml"),
                reach);
    }

    private String state(SourceResult source) {
        var state = words.term("source-state", source.state().replace('-', ' '));
        return source.by()
                        .map(by -> words.say("ledger.state-by", "state", state, "by", by))
                        .orElse(state)
                + source.sameStudyAs()
                        .map(s -> "; " + words.say("aside.SAME_STUDY", "detail", s))
                        .orElse("");
    }

    private String recorded(SourceResult source) {
        return words.say("ledger.source-values", "n", String.valueOf(source.values()), "state", state(source));
    }

    private String why(SourceResult source) {
        var published = source.since()
                .map(d -> words.say("ledger.published-on", "day", d) + ". ")
                .orElse("");
        return source.notice().map(ConditionLine::upperFirst).orElseGet(() -> words.say("ledger.why-not-recorded"))
                + ". " + published + words.say("ledger.checked", "day", source.checked());
    }

    /** How many were looked up again and stand where they stood; empty for none. */
    List<String> lookedUp() {
        long n = later.sources().values().stream()
                .filter(s -> {
                    var before = earlier.sources().get(s.id());
                    return before != null
                            && !before.checked().equals(s.checked())
                            && state(before).equals(state(s));
                })
                .count();
        return n == 0 ? List.of() : List.of(words.say("ledger.looked-up", "n", String.valueOf(n)));
    }
}
