package comparand.normalise;

import comparand.model.Comparand;
import comparand.model.LocalMember;
import comparand.model.LocalPart;
import comparand.model.LocalScope;
import comparand.model.LocalSeries;
import comparand.model.Step;
import comparand.normalise.LocalFooting.Wanted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Each unit's own results read off, on the straight line between its two neighbouring steps, at the step of a published
 * value; then the mean over the units. Never beyond the steps that were measured.
 */
final class ReadOff {

    private ReadOff() {}

    /** One comparand for each definition under which units were tested at a step below and one above. */
    static List<Comparand> of(List<LocalSeries> all, Wanted wanted, int fewest) {
        var curves = new LinkedHashMap<String, List<LocalSeries>>();
        all.stream()
                .filter(s -> s.scope().steps().contains(wanted.id()))
                .forEach(s -> curves.computeIfAbsent(s.study().id() + s.definition(), k -> new ArrayList<>())
                        .add(s));
        return curves.values().stream()
                .flatMap(curve -> curve(curve, wanted, fewest).stream())
                .toList();
    }

    private static Optional<Comparand> curve(List<LocalSeries> curve, Wanted wanted, int fewest) {
        if (curve.stream()
                .anyMatch(s -> wanted.in(s.whole()).filter(wanted::isMetBy).isPresent())) {
            return Optional.empty();
        }
        var below = neighbour(curve, wanted, true);
        var above = neighbour(curve, wanted, false);
        return below.flatMap(b -> above.flatMap(a -> between(b, a, wanted, fewest)));
    }

    private static Optional<LocalSeries> neighbour(List<LocalSeries> curve, Wanted wanted, boolean below) {
        Comparator<LocalSeries> byStep =
                Comparator.comparing(s -> wanted.in(s.whole()).orElse(Double.NaN));
        var side = curve.stream()
                .filter(s -> wanted.in(s.whole())
                        .filter(x -> below ? x < wanted.amount() : x > wanted.amount())
                        .isPresent());
        return below ? side.max(byStep) : side.min(byStep);
    }

    private static Optional<Comparand> between(LocalSeries below, LocalSeries above, Wanted wanted, int fewest) {
        var x = below.index(wanted.id());
        var xAbove = above.index(wanted.id());
        if (x.isEmpty() || xAbove.isEmpty()) {
            return Optional.empty();
        }
        var members = new ArrayList<LocalMember>();
        for (var low : below.members()) {
            above.members().stream()
                    .filter(high -> high.id().equals(low.id()) && high.centre().equals(low.centre()))
                    .findFirst()
                    .flatMap(high -> read(low, x.get(), high, xAbove.get(), wanted.amount()))
                    .ifPresent(members::add);
        }
        if (members.size() < fewest) {
            return Optional.empty();
        }
        var step = Step.of(
                Step.Kind.READ_OFF,
                "y = y₁ + (y₂ - y₁)(x - x₁)/(x₂ - x₁)",
                "over",
                wanted.use().condition().name(),
                "at",
                wanted.text(),
                "between",
                below.label() + " and " + above.label(),
                "n",
                String.valueOf(members.size()),
                "level",
                below.level().plural());
        return Optional.of(below.of(
                members,
                wanted.text() + ", read off",
                new LocalScope(LocalPart.MATCHED, "", below.scope().steps()),
                List.of(step)));
    }

    private static Optional<LocalMember> read(LocalMember low, int x, LocalMember high, int xHigh, double wanted) {
        var from = low.amount(x);
        var to = high.amount(xHigh);
        if (from.isEmpty() || to.isEmpty() || !(from.getAsDouble() < wanted && wanted < to.getAsDouble())) {
            return Optional.empty();
        }
        double share = (wanted - from.getAsDouble()) / (to.getAsDouble() - from.getAsDouble());
        return Optional.of(low.withValue(low.value() + share * (high.value() - low.value()))
                .at(x, wanted));
    }
}
