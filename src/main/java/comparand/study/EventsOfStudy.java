package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.metric.Metric;
import comparand.model.Circumstance;
import comparand.model.Comparand;
import comparand.model.LocalPart;
import comparand.model.Origin;
import comparand.model.Sizes;
import comparand.model.Step;
import comparand.model.Summary;
import comparand.model.library.SampleUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** An event counted over the members of a study: per device, and over all devices. */
final class EventsOfStudy {

    private final Metric metric;
    private final List<Diagnostic> findings;
    private final Map<String, Counted> byDevice = new TreeMap<>();
    private final Map<DataFile, int[]> lacking = new LinkedHashMap<>();
    private final Map<DataFile, Located<String>> asked = new LinkedHashMap<>();

    private static final class Counted {
        private final Set<String> members = new TreeSet<>();
        private final Set<String> happened = new TreeSet<>();
        private final Set<String> centres = new TreeSet<>();
        private final Set<String> files = new LinkedHashSet<>();
        private int rows;
    }

    EventsOfStudy(Metric metric, List<Diagnostic> findings) {
        this.metric = metric;
        this.findings = findings;
    }

    void file(DataFile file, Located<String> wanted) {
        lacking.put(file, new int[2]);
        asked.put(file, wanted);
    }

    /** A row that takes part; a member with several rows had the event if any of them says so. */
    void accept(DataFile file, RowFacts row) {
        var counts = lacking.get(file);
        if (counts == null) {
            return;
        }
        counts[1]++;
        var event = row.events().get(metric.id());
        if (event == null) {
            counts[0]++;
            return;
        }
        for (var device : List.of(row.deviceId(), Comparand.ALL_DEVICES)) {
            var counted = byDevice.computeIfAbsent(device, d -> new Counted());
            var member = row.deviceId() + "/" + row.centre() + "/" + file.member(row);
            counted.members.add(member);
            counted.files.add(file.path());
            counted.rows++;
            if (!row.centre().isEmpty()) {
                counted.centres.add(row.centre());
            }
            if (event) {
                counted.happened.add(member);
            }
        }
    }

    List<Comparand> finish() {
        lacking.forEach((file, counts) -> {
            if (counts[0] > 0) {
                findings.add(Diagnostic.note(
                        "rows-without-value",
                        asked.getOrDefault(file, file.mapping().file()).span(),
                        "`%s` is not known for %d of %d rows of `%s`: a cell is empty or marked missing"
                                .formatted(metric.id(), counts[0], counts[1], file.name()),
                        "fewer results than rows take part",
                        "nothing to mend if it was never recorded"));
            }
        });
        var comparands = new ArrayList<Comparand>();
        byDevice.forEach((device, counted) -> comparands.add(comparand(device, counted)));
        return comparands;
    }

    private Comparand comparand(String device, Counted counted) {
        var file = lacking.keySet().iterator().next();
        var level = file.level();
        int happened = counted.happened.size();
        int of = counted.members.size();
        var files = String.join(", ", counted.files);
        var step = Step.of(
                Step.Kind.COUNTED,
                "",
                "file",
                files,
                "rows",
                String.valueOf(counted.rows),
                "events",
                String.valueOf(happened),
                "of",
                String.valueOf(of),
                "level",
                of == 1 ? level.singular() : level.plural());
        var sizes = new EnumMap<SampleUnit, Integer>(SampleUnit.class);
        sizes.put(level, of);
        if (!counted.centres.isEmpty()) {
            sizes.put(SampleUnit.CENTRES, counted.centres.size());
        }
        var name = device.equals(Comparand.ALL_DEVICES) ? "all-devices" : device;
        return new Comparand(
                String.join("/", file.study().id(), metric.id(), name),
                new Origin.Local(file.study(), files, "", LocalPart.WHOLE),
                device,
                metric,
                metric.standardDefinition(),
                new Summary.Events(happened, of),
                Sizes.of(sizes),
                conditions(),
                List.of(step));
    }

    /** What is fixed alike for every file. */
    private Map<String, Circumstance> conditions() {
        var conditions = new LinkedHashMap<String, Circumstance>();
        var catalogue = lacking.keySet().iterator().next().library().catalogue();
        for (var condition : catalogue.conditions().values()) {
            var stated = new LinkedHashSet<Circumstance>();
            for (var file : lacking.keySet()) {
                stated.add(file.fixed()
                        .get(condition.id())
                        .map(text -> Circumstance.of(condition, text.value()))
                        .orElseGet(Circumstance.NotReported::new));
            }
            if (stated.size() == 1) {
                conditions.put(condition.id(), stated.iterator().next());
            }
        }
        conditions.values().removeIf(c -> !c.isReported());
        return conditions;
    }
}
