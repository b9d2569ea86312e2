package comparand.compose.results;

import comparand.compose.text.Kebab;
import comparand.compose.text.Run;
import comparand.document.result.ComparabilityResult;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Comparand;
import comparand.model.Pairing;
import comparand.model.Pairing.Purpose;
import comparand.model.Standing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What of each metric and device may be compared with something published: the best standing that any source reaches, and how
 * many of the sources reach it.
 */
final class ComparabilityResults {

    /** From the best on. */
    private static final List<Standing> ORDER = List.of(
            Standing.SAME,
            Standing.SAME_AFTER_CONVERSION,
            Standing.CONDITIONS_DIFFER,
            Standing.DIFFERENT_QUANTITY,
            Standing.NOT_REPORTED);

    private final Run run;

    ComparabilityResults(Run run) {
        this.run = run;
    }

    List<ComparabilityResult> all() {
        var all = new ArrayList<ComparabilityResult>();
        run.questions()
                .values()
                .forEach(metric -> run.dossier().devices().forEach(d -> all.add(of(metric, d.value()))));
        return all;
    }

    private ComparabilityResult of(Metric metric, String device) {
        var sources = sources(metric, device);
        var best = sources.values().stream().reduce(ComparabilityResults::better);
        return new ComparabilityResult(
                metric.id(),
                device,
                best.map(Kebab::of).orElse("no-data"),
                best.map(b -> run.words().say("map." + b.name()))
                        .orElseGet(() -> run.words().say("map.no-data")),
                (int) sources.values().stream()
                        .filter(s -> best.filter(s::equals).isPresent())
                        .count(),
                sources.size());
    }

    /** The best standing of each source. */
    private Map<String, Standing> sources(Metric metric, String device) {
        var best = new LinkedHashMap<String, Standing>();
        for (var pairing : pairings(metric, device)) {
            boolean ofPresent = isStated(pairing) && pairing.theirs().device().equals(device);
            var published = isStated(pairing) && !ofPresent ? pairing.ours() : pairing.theirs();
            var standing = ofPresent ? ofPresent(published) : pairing.standing();
            published
                    .origin()
                    .fold(p -> best.merge(p.source().id(), standing, ComparabilityResults::better), l -> standing);
        }
        return best;
    }

    /** The stated figure of the present device is the footing of the others. */
    private static Standing ofPresent(Comparand published) {
        return published.isConverted() ? Standing.SAME_AFTER_CONVERSION : Standing.SAME;
    }

    private static boolean isStated(Pairing pairing) {
        return pairing.purpose() == Purpose.STATED_AGAINST_PRESENT_DEVICE;
    }

    private List<Pairing> pairings(Metric metric, String device) {
        boolean stated = metric.nature() == Nature.STATED;
        return run.comparisons(metric).stream()
                .map(c -> c.pairing())
                .filter(p -> stated
                        ? isStated(p)
                                && (p.ours().device().equals(device)
                                        || p.theirs().device().equals(device))
                        : p.purpose() == Purpose.LOCAL_AGAINST_PUBLISHED
                                && p.ours().device().equals(device))
                .toList();
    }

    private static Standing better(Standing a, Standing b) {
        return ORDER.indexOf(a) <= ORDER.indexOf(b) ? a : b;
    }
}
