package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.metric.Condition;
import comparand.metric.Conditions;
import comparand.model.Library;
import comparand.model.RowLog.LabelUse;
import comparand.model.library.DeviceRecord;
import comparand.model.library.LabelRecord;
import comparand.model.library.StudyRecord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Counts, while rows are read, the units or cases in which a device was used outside of what its label allows. */
final class LabelledLimits {

    private static final int LISTED = 8;

    private final Library library;
    private final StudyRecord study;
    private final Map<String, List<Limit>> ofDevice = new LinkedHashMap<>();

    private record Limit(DeviceRecord device, LabelRecord label, Use use) {}

    private static final class Use {
        private final Set<Member> known = new HashSet<>();
        private final Set<Member> outside = new HashSet<>();
        private final Map<DataFile, NavigableSet<Integer>> lines = new LinkedHashMap<>();
        private int rows;
        private int rowsOutside;
    }

    LabelledLimits(Library library, StudyRecord study) {
        this.library = library;
        this.study = study;
        library.devices()
                .values()
                .forEach(d -> ofDevice.put(
                        d.id(),
                        d.label().stream().map(l -> new Limit(d, l, new Use())).toList()));
    }

    void accept(DataFile file, RowFacts row) {
        for (var limit : ofDevice.getOrDefault(row.device().orElse(""), List.of())) {
            var amount = amount(file, row, limit.label);
            if (amount.isPresent()) {
                look(file, row, limit.label, amount.get(), limit.use);
            }
        }
    }

    /** In the unit of the label. */
    private static Optional<Double> amount(DataFile file, RowFacts row, LabelRecord label) {
        var id = label.limits().value();
        var unit = label.range().value().low().unit();
        var largest = id.equals(Conditions.BLOOD_FLOW.id())
                ? Optional.ofNullable(row.numbers().get(Conditions.LARGEST_BLOOD_FLOW.id()))
                : Optional.<Measured>empty();
        var measured = largest.orElse(row.numbers().get(id));
        if (measured != null) {
            return measured.unit().convertsTo(unit) ? Optional.of(measured.in(unit)) : Optional.empty();
        }
        return file.fixed()
                .get(id)
                .flatMap(c -> c.value().asNumber())
                .filter(q -> q.unit().convertsTo(unit))
                .map(q -> q.in(unit));
    }

    private void look(DataFile file, RowFacts row, LabelRecord label, double value, Use use) {
        var range = label.range().value();
        var member = file.member(row);
        use.known.add(member);
        use.rows++;
        if (value < range.low().number().toDouble()
                || value > range.high().in(range.low().unit())) {
            use.outside.add(member);
            use.rowsOutside++;
            use.lines.computeIfAbsent(file, f -> new TreeSet<>()).add(row.line());
        }
    }

    private Stream<Limit> limits() {
        return ofDevice.values().stream().flatMap(List::stream);
    }

    /** Each limit that was known for some member. */
    List<LabelUse> uses() {
        var all = new ArrayList<LabelUse>();
        limits().forEach(limit -> {
            var use = limit.use;
            if (!use.known.isEmpty()) {
                all.add(new LabelUse(
                        study.id(),
                        study.unitOfAnalysis().value().plural(),
                        limit.device.id(),
                        name(limit.label),
                        limit.label.range().value().toString(),
                        use.outside.size(),
                        use.known.size()));
            }
        });
        return all;
    }

    List<Diagnostic> findings() {
        var findings = new ArrayList<Diagnostic>();
        limits().forEach(limit -> limit.use.lines.entrySet().stream()
                .findFirst()
                .ifPresent(first -> findings.add(finding(limit, limit.use, first.getKey(), first.getValue()))));
        return findings;
    }

    private Diagnostic finding(Limit limit, Use use, DataFile file, NavigableSet<Integer> lines) {
        var level = study.unitOfAnalysis().value();
        Span place = file.rows().row(lines.first());
        return Diagnostic.note(
                "outside-label",
                place,
                "%s was used outside its label in %d/%d %s (%d of %d rows%s): labelled %s %s"
                        .formatted(
                                limit.device.displayName(),
                                use.outside.size(),
                                use.known.size(),
                                level.plural(),
                                use.rowsOutside,
                                use.rows,
                                use.lines.size() == 1 ? ", lines " + listed(lines) : "",
                                name(limit.label),
                                limit.label.range().value()),
                "what a device does outside its label is no ground for choosing it within the label",
                "nothing to mend: results outside the label are shown and marked, and not compared");
    }

    private String name(LabelRecord label) {
        return library.catalogue()
                .condition(label.limits().value())
                .map(Condition::name)
                .orElse(label.limits().value());
    }

    private static String listed(NavigableSet<Integer> lines) {
        return lines.size() > LISTED
                ? lines.first() + " to " + lines.last()
                : String.join(", ", lines.stream().map(String::valueOf).toList());
    }
}
