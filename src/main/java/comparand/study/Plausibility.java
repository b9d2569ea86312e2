package comparand.study;

import comparand.diag.Diagnostic;
import comparand.metric.Bounds;
import comparand.metric.Metric;
import comparand.unit.Rounding;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Results of single rows against what their metric can be: the same limits that published values are held to. */
final class Plausibility {

    private final DataFile file;
    private final Metric metric;
    private final Bounds possible;
    private final Bounds plausible;
    private final Map<GroupDraft, Outside> impossible = new HashMap<>();
    private final Map<GroupDraft, Outside> unusual = new HashMap<>();

    /** Rows of a group outside of some limits: the first, and how many. */
    private record Outside(int line, double value, int count) {
        Outside and(int otherLine, double otherValue) {
            return otherLine < line
                    ? new Outside(otherLine, otherValue, count + 1)
                    : new Outside(line, value, count + 1);
        }

        Outside and(Outside other) {
            return line <= other.line
                    ? new Outside(line, value, count + other.count)
                    : new Outside(other.line, other.value, count + other.count);
        }
    }

    Plausibility(DataFile file, Metric metric) {
        this.file = file;
        this.metric = metric;
        var own = new FileLimits(file.mapping());
        this.possible = own.possible(metric.id(), metric.unit()).orElse(metric.possible());
        this.plausible = own.plausible(metric.id(), metric.unit()).orElse(metric.plausible());
    }

    /** A row's result. */
    void look(GroupDraft group, double value, int line) {
        if (!possible.contain(value)) {
            add(impossible, group, value, line);
        } else if (!plausible.contain(value)) {
            add(unusual, group, value, line);
        }
    }

    private static void add(Map<GroupDraft, Outside> to, GroupDraft group, double value, int line) {
        to.merge(group, new Outside(line, value, 1), (old, one) -> old.and(one.line, one.value));
    }

    /** Why a group cannot be compared: some of its rows give what cannot be. */
    Optional<Diagnostic> impossible(GroupDraft group) {
        return Optional.ofNullable(impossible.get(group))
                .map(outside -> Diagnostic.hold(
                        "value-impossible",
                        file.rows().row(outside.line),
                        "%s, outside of what is possible, %s to %s"
                                .formatted(what(outside), plain(possible.low()), plain(possible.high())),
                        "one slip of a digit or unit moves the mean of its group",
                        "correct the file, or list the row under `dropped:` with a reason"));
    }

    /** What is possible, and worth a second look. */
    Optional<Diagnostic> unusual(List<GroupDraft> groups) {
        return groups.stream()
                .flatMap(g -> Optional.ofNullable(unusual.get(g)).stream())
                .reduce(Outside::and)
                .map(outside -> Diagnostic.note(
                        "value-implausible",
                        file.rows().row(outside.line),
                        "%s, which is unusual".formatted(what(outside)),
                        "an unusual result may be a slip of a digit or unit",
                        "look at the row once more; nothing to mend if this was measured"));
    }

    private String what(Outside outside) {
        var value = Rounding.significant(outside.value, 3).toPlainString();
        var more = outside.count == 1 ? "" : " (and so in %d rows)".formatted(outside.count);
        return "`%s` of this row is %s %s%s".formatted(metric.id(), value, metric.unit(), more);
    }

    private static String plain(double bound) {
        return Rounding.significant(bound, 6).stripTrailingZeros().toPlainString();
    }
}
