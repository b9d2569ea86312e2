package comparand.study;

import comparand.metric.Aspect;
import comparand.metric.Definition;
import comparand.metric.Metric;
import java.util.HashMap;
import java.util.Optional;

/** Local results once more, by the definition of a published value: its constants, its formula. */
final class Recomputation {

    private Recomputation() {}

    /**
     * The definition to compute by; empty if it is the file's own, or if the file's formula does not depend on what
     * differs: then the difference cannot be made good from raw data.
     *
     * @param own what the file's results follow
     * @param published what a published value states of its definition
     */
    static Optional<Definition> definition(Metric metric, DataFile file, Definition own, Definition published) {
        if (file.given().isInRows(metric.id())) {
            return Optional.empty();
        }
        var again = own;
        for (var aspect : metric.definition()) {
            var theirs = published.get(aspect.id());
            boolean differs = aspect instanceof Aspect.Choice
                    && theirs.isPresent()
                    && own.get(aspect.id()).isPresent()
                    && !theirs.equals(own.get(aspect.id()));
            if (differs) {
                again = again.with(aspect.id(), theirs.get());
            }
        }
        if (again.equals(own)) {
            return Optional.empty();
        }
        var wanted = again;
        return file.given()
                .plan(metric.id(), wanted)
                .filter(plan -> wanted.aspects().entrySet().stream()
                        .filter(a ->
                                !own.get(a.getKey()).map(a.getValue()::equals).orElse(true))
                        .allMatch(a -> dependsOn(plan, a.getKey())))
                .map(Plan::followed);
    }

    /** Whether a formula on the way fixes the variant, or asks for it. */
    private static boolean dependsOn(Plan plan, String aspect) {
        return plan.way().gives().get(aspect).isPresent()
                || asksFor(plan, aspect)
                || plan.inputs().values().stream()
                        .anyMatch(p -> p.filter(q -> dependsOn(q, aspect)).isPresent());
    }

    /** A formula that asks for a variant refuses to be computed without it. */
    private static boolean asksFor(Plan plan, String aspect) {
        var numbers = new HashMap<String, Double>();
        plan.inputs().keySet().forEach(i -> numbers.put(i.id(), 1.0));
        var aspects = new HashMap<>(plan.wanted().aspects());
        aspects.remove(aspect);
        try {
            plan.withWanted(Definition.of(aspects)).apply(numbers);
            return false;
        } catch (IllegalArgumentException e) {
            return true;
        }
    }
}
