package comparand.normalise;

import comparand.metric.ConditionUse;
import comparand.metric.Role;
import comparand.model.Circumstance;
import comparand.model.Comparand;
import comparand.model.LocalPart;
import comparand.model.LocalSeries;
import comparand.model.Summary;
import comparand.model.Tolerances;
import comparand.model.library.StudyKind;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Local results made to meet the conditions of one published value, from what was measured and never beyond it: units or
 * cases chosen, each unit's own curve read off between two steps, or the line through the cases.
 */
final class LocalFooting {

    /** Fewer results than these are not set beside anything. */
    static final int FEWEST = 3;

    private final Tolerances tolerances;
    private final int smallestGroup;

    LocalFooting(Tolerances tolerances, int smallestGroup) {
        this.tolerances = tolerances;
        this.smallestGroup = smallestGroup;
    }

    /** Each once, in the order of the published values. */
    List<Comparand> of(List<LocalSeries> all, List<Comparand> published) {
        var found = new LinkedHashMap<String, Comparand>();
        for (var value : published) {
            if (value.summary() instanceof Summary.Words || value.summary() instanceof Summary.Events) {
                continue;
            }
            var series = all.stream()
                    .filter(s -> s.scope().part() == LocalPart.WHOLE
                            && s.metric().equals(value.metric())
                            && s.device().equals(value.device()))
                    .toList();
            made(series, value).forEach(c -> found.putIfAbsent(c.id(), c));
        }
        return List.copyOf(found.values());
    }

    private List<Comparand> made(List<LocalSeries> series, Comparand value) {
        var made = new ArrayList<Comparand>();
        var steps = along(value);
        if (steps.isPresent()) {
            made.addAll(ReadOff.of(series, steps.get(), fewest(series)));
            series.forEach(s -> Regression.of(s, steps.get()).ifPresent(made::add));
        }
        for (var s : series) {
            Selection.of(s, differing(s, value), fewest(series)).ifPresent(made::add);
        }
        return made;
    }

    /** The condition the metric runs along, if the value names an amount of it. */
    private Optional<Wanted> along(Comparand value) {
        return value.metric()
                .interpolatesOver()
                .flatMap(over -> value.metric().condition(over))
                .flatMap(use -> wanted(value, use));
    }

    /** An amount of a condition that local results are to meet. */
    record Wanted(ConditionUse use, double amount, String text) {

        Unit unit() {
            return use.condition().unit().orElse(Unit.ONE);
        }

        String id() {
            return use.condition().id();
        }

        /** The same condition of a local result, where it is a number. */
        Optional<Double> in(Comparand local) {
            return local.condition(id()).amount().map(Circumstance.Amount::value);
        }

        boolean isMetBy(double ours) {
            return use.tolerance().same(ours, amount, unit());
        }
    }

    private Optional<Wanted> wanted(Comparand value, ConditionUse use) {
        return value.condition(use.condition().id())
                .amount()
                .map(a -> new Wanted(tolerances.of(value.metric(), use), a.value(), a.text()));
    }

    /** What decides, varies here, and is not met by the results as a whole. */
    private List<Wanted> differing(LocalSeries series, Comparand value) {
        var whole = series.whole();
        return value.metric().conditions().stream()
                .filter(use -> use.role() != Role.QUALIFIES
                        && series.index(use.condition().id()).isPresent())
                .flatMap(use -> wanted(value, use).stream())
                .filter(w -> w.in(whole).filter(ours -> !w.isMetBy(ours)).isPresent())
                .toList();
    }

    private int fewest(List<LocalSeries> series) {
        boolean patients = series.stream().anyMatch(s -> s.study().kind().value() == StudyKind.CLINICAL);
        return patients ? Math.max(FEWEST, smallestGroup) : FEWEST;
    }
}
