package comparand.study.quality;

import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Checks that time runs forwards within a case, run or unit: a sample of a higher number is not earlier than the one
 * before it, and none is before the start. It matters because a clock that passed midnight, or a sample under the wrong
 * case, shows here. The row is kept and pointed out. What to do: look at clock and case of the sample.
 */
final class MinutesBackwards implements QualityRule {

    private record Moment(int line, int number, double minute) {}

    private static final Unit MINUTE = Unit.of("min");

    private final Map<String, List<Moment>> moments = new TreeMap<>();

    @Override
    public String code() {
        return "minutes-backwards";
    }

    @Override
    public String why() {
        return "a clock that passed midnight, or a sample under the wrong case, shows here";
    }

    @Override
    public String fix() {
        return "check the time and the case of the sample; after midnight count on";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        var minute = row.written("elapsed-time").map(w -> w.in(MINUTE));
        var number = row.sample().filter(s -> s.matches("\\d{1,9}")).map(Integer::parseInt);
        if (minute.isPresent() && minute.get() < 0) {
            return Optional.of(
                    QualityFinding.remark("minute %s is before the start".formatted(Amounts.plain(minute.get(), 6))));
        }
        if (minute.isPresent() && number.isPresent()) {
            row.member()
                    .ifPresent(m -> moments.computeIfAbsent(m, k -> new ArrayList<>())
                            .add(new Moment(row.line(), number.get(), minute.get())));
        }
        return Optional.empty();
    }

    @Override
    public SortedMap<Integer, String> together() {
        var found = new TreeMap<Integer, String>();
        for (var ofMember : moments.values()) {
            var inOrder = ofMember.stream()
                    .sorted(Comparator.comparingInt(Moment::number).thenComparingInt(Moment::line))
                    .toList();
            for (int i = 1; i < inOrder.size(); i++) {
                var before = inOrder.get(i - 1);
                var moment = inOrder.get(i);
                if (moment.minute < before.minute) {
                    found.put(
                            moment.line,
                            "sample %d of minute %s is earlier than sample %d of minute %s"
                                    .formatted(
                                            moment.number,
                                            Amounts.plain(moment.minute, 6),
                                            before.number,
                                            Amounts.plain(before.minute, 6)));
                }
            }
        }
        return found;
    }
}
