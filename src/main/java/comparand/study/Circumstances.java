package comparand.study;

import comparand.diag.Located;
import comparand.metric.Condition;
import comparand.model.Circumstance;
import comparand.model.library.ConditionText;
import comparand.model.library.Entries;
import comparand.unit.Rounding;
import comparand.unit.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** The conditions of a local group: what was fixed, what its step was, and the mean of what varied from row to row. */
final class Circumstances {

    private Circumstances() {}

    /**
     * By condition id. A condition that varied in words within the group is not one condition, and is left out.
     *
     * @param known every condition of the library
     * @param fixed conditions that hold for every row
     */
    static Map<String, Circumstance> of(
            Group group, Map<String, Condition> known, Entries<Located<ConditionText>> fixed) {
        var found = new LinkedHashMap<String, Circumstance>();
        fixed.stream().forEach(e -> {
            var condition = known.get(e.key().value());
            if (condition != null) {
                found.put(condition.id(), Circumstance.of(condition, e.value().value()));
            }
        });
        var rows = group.allRows();
        for (var condition : known.values()) {
            if (condition.isNumber()) {
                varying(condition, rows, found);
            } else {
                var words = new TreeSet<String>();
                rows.forEach(r -> words.add(r.words().getOrDefault(condition.id(), "")));
                words.remove("");
                if (words.size() == 1) {
                    found.put(condition.id(), new Circumstance.Word(words.first()));
                }
            }
        }
        return found;
    }

    private static void varying(Condition condition, List<RowFacts> rows, Map<String, Circumstance> found) {
        var unit = condition.unit().orElse(Unit.ONE);
        var measured = rows.stream()
                .map(r -> r.numbers().get(condition.id()))
                .filter(m -> m != null)
                .toList();
        if (measured.isEmpty()) {
            return;
        }
        double mean = measured.stream().mapToDouble(m -> m.in(unit)).sorted().sum() / measured.size();
        var first = measured.get(0);
        int decimals = measured.stream().mapToInt(Measured::decimals).max().orElse(0);
        var text = Rounding.halfUp(unit.convert(mean, first.unit()), decimals).toPlainString();
        found.put(condition.id(), new Circumstance.Amount(mean, withUnit(text, first.unit())));
    }

    private static String withUnit(String number, Unit unit) {
        return unit.spelling().isEmpty() ? number : number + " " + unit.spelling();
    }
}
