package comparand.check;

import comparand.model.Library.PublishedValue;
import comparand.model.library.CohortRecord;
import comparand.model.library.SourceRecord;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What it checks: two sources on one device whose patients were treated in one hospital at the same time, where neither says
 * that it reports the same study, nor why its patients are others.
 *
 * <p>Why it matters: the same patients would be counted twice.
 *
 * <p>What to write instead: {@code same-study-as:} in the lesser report, or {@code independent:} with a reason in its cohort.
 */
final class CohortsOverlap implements Rule {

    @Override
    public String code() {
        return "cohorts-overlap";
    }

    @Override
    public void check(Context library, Findings findings) {
        var sources = library.library().sources().values().stream()
                .filter(CohortsOverlap::takesPart)
                .toList();
        for (int i = 0; i < sources.size(); i++) {
            for (int k = i + 1; k < sources.size(); k++) {
                pair(sources.get(i), sources.get(k), findings);
            }
        }
    }

    /** What is set aside anyway is counted nowhere. */
    private static boolean takesPart(SourceRecord source) {
        return source.cohort().filter(c -> c.independent().isEmpty()).isPresent()
                && source.sameStudyAs().isEmpty()
                && switch (source.status().state().value()) {
                    case CURRENT, CORRECTED, CONCERN -> true;
                    case RETRACTED, SUPERSEDED, PREPRINT -> false;
                };
    }

    private static void pair(SourceRecord one, SourceRecord other, Findings findings) {
        var shared = new TreeSet<>(centres(one));
        shared.retainAll(centres(other));
        var devices = new TreeSet<>(devices(one));
        devices.retainAll(devices(other));
        if (shared.isEmpty() || devices.isEmpty() || !isAtOnce(cohort(one), cohort(other))) {
            return;
        }
        if (isWithin(cohort(one), cohort(other)) && !isWithin(cohort(other), cohort(one))) {
            hold(one, other, devices, findings);
        } else {
            hold(other, one, devices, findings);
        }
    }

    private static void hold(SourceRecord lesser, SourceRecord greater, Set<String> devices, Findings findings) {
        var message = "the patients of `%s` (%s) may be among those of `%s` (%s)"
                .formatted(lesser.id(), said(cohort(lesser)), greater.id(), said(cohort(greater)));
        for (var value : values(lesser, devices)) {
            findings.hold(
                    value,
                    cohort(lesser).centres().get(0).span(),
                    message,
                    "the same patients would be counted twice",
                    "write `same-study-as: %s` in `%s`; or `independent:` with the reason under its `cohort:`"
                            .formatted(greater.id(), lesser.id()));
        }
    }

    private static List<PublishedValue> values(SourceRecord source, Set<String> devices) {
        var values = new ArrayList<PublishedValue>();
        source.values().stream()
                .filter(v -> devices.contains(v.device().value()))
                .forEach(v -> values.add(new PublishedValue(source, v)));
        return values;
    }

    private static CohortRecord cohort(SourceRecord source) {
        return source.cohort().orElseThrow();
    }

    private static Set<String> centres(SourceRecord source) {
        return cohort(source).centres().stream().map(c -> c.value().strip()).collect(Collectors.toSet());
    }

    private static Set<String> devices(SourceRecord source) {
        return source.values().stream().map(v -> v.device().value()).collect(Collectors.toSet());
    }

    private static LocalDate first(CohortRecord c) {
        return c.from().value().earliest();
    }

    private static LocalDate last(CohortRecord c) {
        return c.to().value().latest();
    }

    private static boolean isAtOnce(CohortRecord one, CohortRecord other) {
        return !first(one).isAfter(last(other)) && !first(other).isAfter(last(one));
    }

    /** Whether the time of one lies within that of the other; of two of the same time, the one in fewer hospitals. */
    private static boolean isWithin(CohortRecord one, CohortRecord other) {
        boolean inside = !first(one).isBefore(first(other)) && !last(one).isAfter(last(other));
        boolean same = ChronoUnit.DAYS.between(first(one), first(other)) == 0
                && ChronoUnit.DAYS.between(last(one), last(other)) == 0;
        return inside && (!same || one.centres().size() <= other.centres().size());
    }

    private static String said(CohortRecord c) {
        return c.centres().stream().map(n -> n.value()).collect(Collectors.joining(", ")) + ", "
                + c.from().value() + " to " + c.to().value();
    }
}
