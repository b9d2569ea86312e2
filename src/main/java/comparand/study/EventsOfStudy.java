package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.LocalMember;
import comparand.model.LocalScope;
import comparand.model.LocalSeries;
import comparand.model.Step;
import comparand.model.Summary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** An event counted over the members of a study: per device, and over all devices. */
final class EventsOfStudy {

    private final Metric metric;
    private final List<Diagnostic> findings;
    private final Map<String, Counted> byDevice = new TreeMap<>();
    private final Map<DataFile, Share> shares = new LinkedHashMap<>();
    private Optional<ConditionFrame> frame = Optional.empty();

    private static final class Share {
        private final Located<String> asked;
        private int rows;
        private int lacking;

        Share(Located<String> asked) {
            this.asked = asked;
        }
    }

    private static final class Counted {
        private final Map<String, MemberDraft> members = new TreeMap<>();
        private final Set<String> files = new LinkedHashSet<>();
        private int rows;
    }

    EventsOfStudy(Metric metric, List<Diagnostic> findings) {
        this.metric = metric;
        this.findings = findings;
    }

    void file(DataFile file, Located<String> wanted) {
        shares.put(file, new Share(wanted));
    }

    private ConditionFrame conditions() {
        if (frame.isEmpty()) {
            frame = Optional.of(new ConditionFrame(metric, List.copyOf(shares.keySet())));
        }
        return frame.get();
    }

    /** A row that takes part. */
    void accept(DataFile file, RowFacts row) {
        var share = shares.get(file);
        if (share == null) {
            return;
        }
        share.rows++;
        var event = row.events().get(metric.id());
        if (event == null) {
            share.lacking++;
            return;
        }
        var conditions = conditions();
        var numbers = new double[1 + conditions.numbers()];
        numbers[0] = event ? 1 : 0;
        conditions.read(file, row, file.given().of(row), numbers, 1);
        var member = file.member(row);
        for (var device : List.of(row.deviceId(), Comparand.ALL_DEVICES)) {
            var counted = byDevice.computeIfAbsent(device, d -> new Counted());
            counted.files.add(file.path());
            counted.rows++;
            counted.members
                    .computeIfAbsent(
                            row.deviceId() + "/" + member.centre() + "/" + member.id(),
                            k -> new MemberDraft(member, numbers.length, conditions.words()))
                    .add(Arrays.copyOf(numbers, numbers.length), conditions.words(file, row), false);
        }
    }

    List<Comparand> finish() {
        shares.forEach((file, share) -> {
            if (share.lacking > 0) {
                findings.add(Diagnostic.note(
                        "rows-without-value",
                        share.asked.span(),
                        "`%s` is not known for %d of %d rows of `%s`: a cell is empty or marked missing"
                                .formatted(metric.id(), share.lacking, share.rows, file.name()),
                        "fewer results than rows take part",
                        "nothing to mend if it was never recorded"));
            }
        });
        var comparands = new ArrayList<Comparand>();
        byDevice.forEach((device, counted) -> comparands.add(comparand(device, counted)));
        return comparands;
    }

    private Comparand comparand(String device, Counted counted) {
        var file = shares.keySet().iterator().next();
        var level = file.level();
        var members = counted.members.values().stream().map(this::member).toList();
        // a member with several rows had the event if any of them says so
        int happened = (int) members.stream().filter(m -> m.value() > 0).count();
        int of = members.size();
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
        var scope = LocalScope.whole(Set.of());
        return new LocalSeries(
                        file.study(),
                        files,
                        metric,
                        device,
                        metric.standardDefinition(),
                        scope,
                        "",
                        level,
                        conditions().varying(),
                        conditions().worded(),
                        conditions().fixed(),
                        members,
                        List.of())
                .with(new Summary.Events(happened, of), members, "", scope, List.of(step));
    }

    private LocalMember member(MemberDraft draft) {
        return draft.member(draft.mean(0), 1, conditions().numbers());
    }
}
