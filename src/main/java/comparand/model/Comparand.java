package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.metric.Definition;
import comparand.metric.Metric;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A number ready to be compared: one metric, in the metric's own unit, under stated conditions, with its origin and every
 * step that led to it.
 *
 * <p>Published values and local results both become comparands, and nothing else is ever compared.
 *
 * @param id unique in a run: the id of the published value, or study, metric, device and group of a local result
 * @param device the device's id, or {@link #ALL_DEVICES}
 * @param conditions by condition id, in the order in which the metric names them; all of the metric's conditions are there
 */
public record Comparand(
        String id,
        Origin origin,
        String device,
        Metric metric,
        Definition definition,
        Summary summary,
        Sizes sizes,
        Map<String, Circumstance> conditions,
        List<Step> trail) {

    /** In place of a device's id, for events counted over all devices together. */
    public static final String ALL_DEVICES = "*";

    public Comparand {
        requireNonNull(id, "id");
        requireNonNull(origin, "origin");
        requireNonNull(device, "device");
        requireNonNull(definition, "definition");
        requireNonNull(summary, "summary");
        requireNonNull(sizes, "sizes");
        var ordered = new LinkedHashMap<String, Circumstance>();
        for (var use : metric.conditions()) {
            var circumstance = conditions.get(use.condition().id());
            ordered.put(use.condition().id(), circumstance == null ? new Circumstance.NotReported() : circumstance);
        }
        conditions.forEach(ordered::putIfAbsent);
        conditions = Collections.unmodifiableMap(ordered);
        trail = List.copyOf(trail);
        if (trail.isEmpty()) {
            throw new IllegalArgumentException(
                    id + " has no trail: a number never travels without the steps that led to it");
        }
    }

    public Circumstance condition(String condition) {
        return conditions.getOrDefault(condition, new Circumstance.NotReported());
    }

    public boolean isLocal() {
        return origin.isLocal();
    }

    /** Whether it speaks for this part of the local results. */
    public boolean isLocal(LocalPart part) {
        return origin.fold(published -> false, local -> local.scope().part() == part);
    }

    /** Whether a step made it comparable by changing unit, definition or form. */
    public boolean isConverted() {
        return trail.stream().anyMatch(s -> s.kind().converts());
    }
}
