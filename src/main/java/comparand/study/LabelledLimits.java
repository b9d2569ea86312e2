package comparand.study;

import comparand.diag.Diagnostic;
import comparand.metric.Conditions;
import comparand.model.Library;
import comparand.model.RowSource;
import comparand.model.library.DeviceRecord;
import comparand.model.library.LabelRecord;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/** Rows in which a device was used outside of what its label allows. */
final class LabelledLimits {

    private LabelledLimits() {}

    static void check(Library library, RowSource file, List<RowFacts> rows, List<Diagnostic> findings) {
        for (var device : library.devices().values()) {
            for (var limit : device.label()) {
                check(device, limit, file, rows, findings);
            }
        }
    }

    private static void check(
            DeviceRecord device, LabelRecord limit, RowSource file, List<RowFacts> rows, List<Diagnostic> findings) {
        var range = limit.range().value();
        var outside = new TreeSet<Integer>();
        int of = 0;
        for (var row : rows) {
            var measured = row.numbers().get(limit.limits().value());
            if (row.device().equals(device.id())
                    && measured != null
                    && measured.unit().convertsTo(range.low().unit())) {
                of++;
                double value = measured.in(range.low().unit());
                if (value < range.low().number().toDouble()
                        || value > range.high().in(range.low().unit())) {
                    outside.add(row.line());
                }
            }
        }
        if (!outside.isEmpty()) {
            var name = Conditions.all().containsKey(limit.limits().value())
                    ? Conditions.all().get(limit.limits().value()).name()
                    : limit.limits().value();
            findings.add(Diagnostic.note(
                    "outside-label",
                    file.row(outside.first()),
                    "%s was used outside its label in %d of %d rows (lines %s): labelled %s %s"
                            .formatted(device.displayName(), outside.size(), of, lines(outside), name, range),
                    "what a device does outside its label is no ground for choosing it within the label",
                    "nothing to mend: these results are shown and marked, and not compared"));
        }
    }

    private static String lines(NavigableSet<Integer> lines) {
        return lines.size() > 8
                ? lines.first() + " to " + lines.last()
                : String.join(", ", lines.stream().map(String::valueOf).toList());
    }
}
