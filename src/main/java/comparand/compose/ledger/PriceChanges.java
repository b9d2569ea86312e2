package comparand.compose.ledger;

import comparand.compose.text.Words;
import comparand.document.result.CostsResult.CostLineResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Prices that came, went or are not what they were. No answer rests on one. */
final class PriceChanges {

    private final Side earlier;
    private final Side later;
    private final Words words;

    PriceChanges(Side earlier, Side later) {
        this.earlier = earlier;
        this.later = later;
        this.words = later.words();
    }

    List<Change> all() {
        var was = earlier.results().costs().lines();
        var is = later.results().costs().lines();
        if (was.equals(is)) {
            return List.of();
        }
        if (was.isEmpty() || is.isEmpty()) {
            return List.of(change(words.say("sheet.costs"), items(was), items(is), days(is.isEmpty() ? was : is)));
        }
        var changes = new ArrayList<Change>();
        for (var line : is) {
            var before = was.stream().filter(l -> isSame(l, line)).findFirst();
            if (!before.equals(java.util.Optional.of(line))) {
                changes.add(change(
                        name(line),
                        before.map(CostLineResult::priceText).orElseGet(() -> words.say("ledger.nothing")),
                        line.priceText(),
                        line.givenBy() + ", " + line.on()));
            }
        }
        was.stream()
                .filter(l -> is.stream().noneMatch(n -> isSame(l, n)))
                .forEach(l -> changes.add(change(
                        name(l), l.priceText(), words.say("ledger.nothing"), words.say("ledger.why-not-recorded"))));
        return changes;
    }

    /** Between which days prices were given. */
    private String days(List<CostLineResult> lines) {
        var days = lines.stream().map(CostLineResult::on).sorted().toList();
        return words.say("ledger.given", "first", days.get(0), "last", days.get(days.size() - 1));
    }

    private static boolean isSame(CostLineResult one, CostLineResult other) {
        return one.item().equals(other.item()) && one.device().equals(other.device());
    }

    private String name(CostLineResult line) {
        return later.device(line.device()) + ", " + line.item();
    }

    private String items(List<CostLineResult> lines) {
        return lines.isEmpty()
                ? words.say("ledger.nothing")
                : words.say(
                        "ledger.prices",
                        "n",
                        String.valueOf(lines.size()),
                        "without",
                        String.valueOf(
                                lines.stream().filter(l -> l.price().isEmpty()).count()));
    }

    private static Change change(String what, String before, String after, String why) {
        return new Change(Group.PRICE, what, before, after, why, what, Set.of(), Set.of(), c -> false);
    }
}
