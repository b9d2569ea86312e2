package comparand.compose.ledger;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Words;
import comparand.document.result.ComparandResult;
import comparand.document.result.SetAsideResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Published values that came, went or are not what they were, and those set aside or taken back. */
final class ValueChanges {

    private final Side earlier;
    private final Side later;
    private final Words words;

    ValueChanges(Side earlier, Side later) {
        this.earlier = earlier;
        this.later = later;
        this.words = later.words();
    }

    List<Change> all() {
        var changes = new ArrayList<Change>();
        later.values().values().stream().filter(ValueChanges::isRecorded).forEach(after -> {
            var before = earlier.values().get(after.id());
            if (before == null) {
                if (isSourceIn(earlier, after)) {
                    changes.add(change(
                            after,
                            words.say("ledger.nothing"),
                            later.shown(after),
                            words.say("change.read"),
                            words.say("ledger.brief.new", "value", after.id())));
                }
            } else if (!Side.facts(before).equals(Side.facts(after))
                    || !print(before).equals(print(after))) {
                changes.add(change(
                        after, earlier.shown(before), later.shown(after), why(before, after), brief(before, after)));
            }
        });
        earlier.values().values().stream()
                .filter(ValueChanges::isRecorded)
                .filter(v -> !later.values().containsKey(v.id()) && isSourceIn(later, v))
                .forEach(v -> changes.add(change(
                        v,
                        earlier.shown(v),
                        words.say("ledger.nothing"),
                        words.say("ledger.why-not-recorded"),
                        words.say("ledger.brief.gone", "value", v.id()))));
        changes.addAll(aside());
        return changes;
    }

    /** Values read off between two others are no records. */
    private static boolean isRecorded(ComparandResult c) {
        return c.side().equals("published") && !c.locator().contains("~");
    }

    /** The values of a source that came or went are told with it. */
    private static boolean isSourceIn(Side side, ComparandResult c) {
        return c.from().filter(side.sources()::containsKey).isPresent();
    }

    private static List<Object> print(ComparandResult c) {
        return List.of(
                c.printed(), c.locator().replaceFirst("^\\d+:", "").replaceFirst(",.*", ""), c.was(), c.letter());
    }

    private String brief(ComparandResult before, ComparandResult after) {
        if (!before.letter().equals(after.letter())) {
            return words.say("ledger.brief.letter", "value", after.id());
        }
        return before.was().equals(after.was())
                ? words.say("ledger.brief.changed", "value", after.id())
                : words.say("ledger.brief.corrected", "value", after.id());
    }

    private Change change(ComparandResult value, String before, String after, String why, String brief) {
        return new Change(
                Group.VALUE,
                later.named(value),
                before,
                after,
                why,
                brief,
                Set.of(value.id()),
                Set.copyOf(value.files().orElse(List.of())),
                c -> c.restsOn(value.id()));
    }

    private String why(ComparandResult before, ComparandResult after) {
        var reasons = new ArrayList<String>();
        after.was()
                .filter(w -> !before.was().equals(after.was()))
                .ifPresent(w -> reasons.add(
                        words.say("ledger.was", "reason", ConditionLine.upperFirst(w.reason()), "until", w.until())));
        after.letter()
                .filter(l -> !before.letter().equals(after.letter()))
                .ifPresent(l -> reasons.add(words.say("step.LETTER", "by", l.by(), "on", l.on(), "says", l.says())));
        if (!before.conditions().equals(after.conditions())) {
            reasons.add(conditions(before, after));
        }
        if (!before.definition().equals(after.definition())) {
            reasons.add(words.say("ledger.other-definition"));
        }
        if (reasons.isEmpty()) {
            reasons.add(words.say("ledger.why-not-recorded"));
        }
        return String.join("; ", reasons);
    }

    private String conditions(ComparandResult before, ComparandResult after) {
        var was = conditions(before);
        var is = conditions(after);
        var differ = new ArrayList<String>();
        is.forEach((id, text) -> {
            var old = was.getOrDefault(id, words.say("not-reported"));
            if (!Objects.equals(old, text)) {
                differ.add(words.say("ledger.condition", "condition", name(id), "before", old, "after", text));
            }
        });
        return String.join("; ", differ);
    }

    private static Map<String, String> conditions(ComparandResult c) {
        var conditions = new LinkedHashMap<String, String>();
        c.conditions().forEach(r -> conditions.put(r.condition(), r.is()));
        return conditions;
    }

    private String name(String condition) {
        return later.questions().values().stream()
                .flatMap(q -> q.tolerances().stream())
                .filter(t -> t.condition().equals(condition))
                .map(t -> t.name())
                .findFirst()
                .orElse(condition);
    }

    private List<Change> aside() {
        var was = aside(earlier);
        var is = aside(later);
        var changes = new ArrayList<Change>();
        is.forEach((id, a) -> {
            var old = was.get(id);
            var before = old == null ? part(earlier, id) : old.words();
            if (!before.equals(a.words())) {
                changes.add(aside(id, before, a.words()));
            }
        });
        was.forEach((id, a) -> {
            if (!is.containsKey(id)) {
                changes.add(aside(id, a.words(), part(later, id)));
            }
        });
        return changes;
    }

    private static Map<String, SetAsideResult> aside(Side side) {
        var aside = new LinkedHashMap<String, SetAsideResult>();
        side.results().setAside().forEach(a -> aside.put(a.value(), a));
        return aside;
    }

    private String part(Side side, String value) {
        return words.say(side.value(value).isPresent() ? "ledger.takes-part" : "ledger.nothing");
    }

    private Change aside(String value, String before, String after) {
        return new Change(
                Group.ASIDE,
                later.value(value)
                        .map(later::named)
                        .or(() -> earlier.value(value).map(earlier::named))
                        .orElse(value),
                before,
                after,
                words.say("ledger.set-aside"),
                words.say(
                        after.equals(words.say("ledger.takes-part")) ? "ledger.brief.back" : "ledger.brief.aside",
                        "value",
                        value),
                Set.of(value),
                Set.of(),
                c -> c.comesOrGoes() && c.restsOn(value));
    }
}
