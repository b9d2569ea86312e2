package comparand.compare;

import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Matched;
import comparand.model.Pairing.Purpose;
import comparand.model.Summary;
import comparand.model.Unknown;
import comparand.model.library.Funding;
import comparand.model.library.SourceKind;
import comparand.model.library.SourceRecord;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** For which metrics of a device nothing is published, or nothing that a maker has not paid for. */
final class SourceGaps {

    private final Matched matched;
    private final List<Comparison> comparisons;
    private final List<Metric> metrics;

    /**
     * Gaps of one dossier.
     *
     * @param metrics of its questions; what is stated by design is nobody's measurement and is left out
     */
    SourceGaps(Matched matched, List<Comparison> comparisons, List<Metric> metrics) {
        this.matched = matched;
        this.comparisons = comparisons;
        this.metrics = metrics.stream().filter(m -> m.nature() != Nature.STATED).toList();
    }

    List<Unknown> of(String device) {
        var gaps = new ArrayList<Unknown>();
        var silent =
                metrics.stream().filter(m -> published(m, device).isEmpty()).toList();
        if (!silent.isEmpty()) {
            gaps.add(new Unknown.Unpublished(device, silent));
        }
        paidFor(device, true).ifPresent(gaps::add);
        paidFor(device, false).ifPresent(gaps::add);
        return gaps;
    }

    private Optional<Unknown> paidFor(String device, boolean makersOwn) {
        var found = new ArrayList<Metric>();
        var sources = new LinkedHashSet<SourceRecord>();
        for (var metric : metrics) {
            var all = sources(metric, device);
            if (!all.isEmpty()
                    && all.stream().allMatch(SourceGaps::isPaidFor)
                    && all.stream().allMatch(SourceGaps::isOfMaker) == makersOwn) {
                found.add(metric);
                sources.addAll(all);
            }
        }
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(new Unknown.PaidFor(device, makersOwn, List.copyOf(sources), found));
    }

    private Set<SourceRecord> sources(Metric metric, String device) {
        var sources = new LinkedHashSet<SourceRecord>();
        Stream.concat(published(metric, device).stream(), besides(metric, device))
                .forEach(c -> c.origin().fold(p -> sources.add(p.source()), l -> false));
        return sources;
    }

    private List<Comparand> published(Metric metric, String device) {
        return matched.evidence().published().stream()
                .filter(c -> c.metric().equals(metric) && c.device().equals(device))
                .filter(c -> !(c.summary() instanceof Summary.Words))
                .toList();
    }

    /** What goes by a similar name and was shown beside it. */
    private Stream<Comparand> besides(Metric metric, String device) {
        return comparisons.stream()
                .map(Comparison::pairing)
                .filter(p -> p.purpose() == Purpose.LOCAL_AGAINST_PUBLISHED
                        && p.ours().metric().equals(metric)
                        && p.ours().device().equals(device))
                .map(p -> p.theirs());
    }

    private static boolean isPaidFor(SourceRecord source) {
        var funding = source.funding().value();
        return funding == Funding.MAKER || funding == Funding.MIXED;
    }

    private static boolean isOfMaker(SourceRecord source) {
        var kind = source.kind().value();
        return kind == SourceKind.INSTRUCTIONS_FOR_USE || kind == SourceKind.FLYER;
    }
}
