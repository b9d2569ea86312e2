package comparand.normalise;

import comparand.metric.ConditionUse;
import comparand.model.Circumstance;
import comparand.model.Comparand;
import comparand.model.LocalPart;
import comparand.model.Origin;
import comparand.model.Step;
import comparand.model.Summary;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Published values read off, on a straight line, between two neighbours of one source at the step of a local result. Only
 * between them, never beyond; only where all other conditions and the definition are the same; only where no published
 * value lies at that step already.
 */
final class Interpolation {

    private Interpolation() {}

    static List<Comparand> between(List<Comparand> published, List<Comparand> local) {
        var found = new ArrayList<Comparand>();
        published.stream()
                .filter(c -> c.metric().interpolatesOver().isPresent() && at(c).isPresent() && isPlain(c.summary()))
                .collect(Collectors.groupingBy(Interpolation::curve, TreeMap::new, Collectors.toList()))
                .values()
                .forEach(curve -> local.stream()
                        .filter(l -> l.metric().equals(curve.get(0).metric())
                                && l.device().equals(curve.get(0).device())
                                && isAtStep(l))
                        .map(l -> between(curve, l))
                        .forEach(c -> c.filter(fresh -> found.stream().noneMatch(f -> f.id().equals(fresh.id())))
                                .ifPresent(found::add)));
        return found;
    }

    /** Set, and not merely how it came out on the mean: cases are matched from our side instead. */
    private static boolean isAtStep(Comparand local) {
        return local.origin()
                .fold(
                        published -> false,
                        ours -> ours.scope().part() == LocalPart.WHOLE
                                && ours.scope()
                                        .steps()
                                        .contains(local.metric()
                                                .interpolatesOver()
                                                .orElseThrow()));
    }

    private static boolean isPlain(Summary summary) {
        return summary instanceof Summary.Sampled
                || (summary instanceof Summary.Point point && point.kind() != Summary.PointKind.ABOUT);
    }

    /** What must be the same for two values to lie on one curve. */
    private static String curve(Comparand c) {
        var over = c.metric().interpolatesOver().orElseThrow();
        var others = new TreeMap<>(c.conditions());
        others.remove(over);
        return String.join(
                "|",
                published(c).source().id(),
                c.device(),
                c.metric().id(),
                c.definition().toString(),
                others.toString());
    }

    private static Optional<Comparand> between(List<Comparand> curve, Comparand local) {
        var use = local.metric()
                .condition(local.metric().interpolatesOver().orElseThrow())
                .orElseThrow();
        var wanted = at(local);
        if (wanted.isEmpty() || curve.stream().anyMatch(c -> sameStep(use, wanted.get(), at(c).orElseThrow()))) {
            return Optional.empty();
        }
        var below = curve.stream()
                .filter(c -> at(c).orElseThrow() < wanted.get())
                .max(Comparator.comparing(c -> at(c).orElseThrow()));
        var above = curve.stream()
                .filter(c -> at(c).orElseThrow() > wanted.get())
                .min(Comparator.comparing(c -> at(c).orElseThrow()));
        return below.flatMap(b -> above.map(a -> readOff(b, a, local, use)));
    }

    private static boolean sameStep(ConditionUse use, double ours, double theirs) {
        return use.tolerance().same(ours, theirs, use.condition().unit().orElse(Unit.ONE));
    }

    private static Comparand readOff(Comparand below, Comparand above, Comparand local, ConditionUse use) {
        double x = at(local).orElseThrow();
        double share = (x - at(below).orElseThrow())
                / (at(above).orElseThrow() - at(below).orElseThrow());
        double low = below.summary().centre().orElseThrow();
        double high = above.summary().centre().orElseThrow();
        double value = low + share * (high - low);
        double halfWidth = (1 - share) * halfWidth(below) + share * halfWidth(above);
        var step = local.condition(use.condition().id());
        Map<String, Circumstance> conditions = new LinkedHashMap<>(below.conditions());
        conditions.put(use.condition().id(), step);
        var trail = new ArrayList<Step>(below.trail());
        trail.addAll(above.trail());
        trail.add(Step.of(
                Step.Kind.INTERPOLATED,
                "y = y₁ + (y₂ - y₁)(x - x₁)/(x₂ - x₁)",
                "between",
                below.id() + " and " + above.id(),
                "over",
                use.condition().name(),
                "at",
                step.text(),
                "value",
                String.valueOf(value)));
        var values = new ArrayList<>(published(below).values());
        values.addAll(published(above).values());
        return new Comparand(
                below.id() + "~" + above.id() + "@" + step.text(),
                new Origin.Published(published(below).source(), values),
                below.device(),
                below.metric(),
                below.definition(),
                new Summary.Point(value, halfWidth, Summary.PointKind.INTERPOLATED),
                below.sizes(),
                conditions,
                trail);
    }

    private static double halfWidth(Comparand c) {
        return c.summary() instanceof Summary.Point point
                ? point.halfWidth()
                : c.summary() instanceof Summary.Sampled s ? s.halfWidth() : 0;
    }

    private static Optional<Double> at(Comparand c) {
        return c.condition(c.metric().interpolatesOver().orElseThrow()).amount().map(Circumstance.Amount::value);
    }

    private static Origin.Published published(Comparand c) {
        return c.origin().fold(p -> p, l -> {
            throw new IllegalArgumentException(c.id() + " is not published");
        });
    }
}
