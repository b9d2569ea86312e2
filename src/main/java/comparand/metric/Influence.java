package comparand.metric;

import static java.util.Objects.requireNonNull;

import java.util.Map;

/**
 * The expected direction in which a condition distorts a metric when it differs.
 *
 * @param more what a higher number of the condition does to the metric
 * @param instead what a value obtained under this word does compared with one obtained under any other
 * @param because the reason in one clause, such as "it lowers viscosity"; empty where no direction is claimed
 */
public record Influence(Effect more, Map<String, Effect> instead, String because) {

    public static final Influence UNKNOWN = new Influence(Effect.NOT_PREDICTABLE, Map.of(), "");

    public Influence {
        requireNonNull(more, "more");
        requireNonNull(because, "because");
        instead = Map.copyOf(instead);
    }

    public static Influence more(Effect effect, String because) {
        return new Influence(effect, Map.of(), because);
    }

    public static Influence instead(Map<String, Effect> effects, String because) {
        return new Influence(Effect.NOT_PREDICTABLE, effects, because);
    }
}
