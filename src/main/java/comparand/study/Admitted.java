package comparand.study;

import comparand.study.quality.Effect;
import java.util.List;
import java.util.Optional;

/**
 * Whether a row takes part, and in what.
 *
 * @param held why it is kept out of all results; empty if it is not
 * @param effects what was found does to it
 */
record Admitted(Optional<String> held, List<Effect> effects) {

    /** Nothing was found. */
    static final Admitted WHOLLY = new Admitted(Optional.empty(), List.of());

    Admitted {
        effects = List.copyOf(effects);
    }

    boolean isHeld() {
        return held.isPresent();
    }

    /** Whether a metric is kept from seeing the row. */
    boolean excludes(MetricOfStudy metric, DataFile file) {
        return !effects.isEmpty() && effects.stream().anyMatch(e -> excludes(e, metric, file));
    }

    /** Whether an effect keeps a metric of a file from a row. */
    static boolean excludes(Effect effect, MetricOfStudy metric, DataFile file) {
        return effect.fold(
                () -> false,
                () -> true,
                some -> metric.isAskedOf(file)
                        && some.metrics().contains(metric.id())
                        && !metric.follows(file, some.except()),
                needing -> metric.needs(file, needing.quantity()));
    }
}
