package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Span;
import comparand.metric.Bounds;
import comparand.metric.Metric;
import comparand.model.library.LimitRecord;
import comparand.unit.PrintedRange;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Results of single rows against what their metric can be: the same limits that published values are held to. */
final class Plausibility {

    private final DataFile file;
    private final Metric metric;

    Plausibility(DataFile file, Metric metric) {
        this.file = file;
        this.metric = metric;
    }

    /** Why a group cannot be compared: some of its rows give what cannot be. */
    Optional<Diagnostic> impossible(Group group) {
        var possible = bounds(LimitRecord::possible, metric.possible());
        var outside = outside(group, possible);
        return outside.isEmpty()
                ? Optional.empty()
                : Optional.of(Diagnostic.hold(
                        "value-impossible",
                        place(outside),
                        "%s, outside of what is possible, %s to %s"
                                .formatted(what(outside), plain(possible.low()), plain(possible.high())),
                        "one slip of a digit or unit moves the mean of its group",
                        "correct the file, or list the row under `dropped:` with a reason"));
    }

    /** What is possible, and worth a second look. */
    Optional<Diagnostic> unusual(List<Group> groups) {
        var outside = new ArrayList<Group.Result>();
        groups.forEach(g -> outside.addAll(outside(g, bounds(LimitRecord::plausible, metric.plausible()))));
        return outside.isEmpty()
                ? Optional.empty()
                : Optional.of(Diagnostic.note(
                        "value-implausible",
                        place(outside),
                        "%s, which is unusual".formatted(what(outside)),
                        "an unusual result may be a slip of a digit or unit",
                        "look at the row once more; nothing to mend if this was measured"));
    }

    /** The file's own limits for this metric, in its unit, or the catalogue's. */
    private Bounds bounds(Function<LimitRecord, Optional<Located<PrintedRange>>> which, Bounds usual) {
        return file.mapping()
                .limits()
                .get(metric.id())
                .flatMap(which)
                .map(Located::value)
                .map(r -> new Bounds(r.low().in(metric.unit()), r.high().in(metric.unit())))
                .orElse(usual);
    }

    private static List<Group.Result> outside(Group group, Bounds bounds) {
        return group.byMember().values().stream()
                .flatMap(List::stream)
                .filter(r -> !bounds.contain(r.value()))
                .toList();
    }

    private Span place(List<Group.Result> outside) {
        return file.rows().row(outside.get(0).row().line());
    }

    private String what(List<Group.Result> outside) {
        var value = Rounding.significant(outside.get(0).value(), 3).toPlainString();
        var more = outside.size() == 1 ? "" : " (and so in %d rows)".formatted(outside.size());
        return "`%s` of this row is %s %s%s".formatted(metric.id(), value, metric.unit(), more);
    }

    private String plain(double bound) {
        return Rounding.significant(bound, 6).stripTrailingZeros().toPlainString();
    }
}
