package comparand.compose.brief;

import comparand.compose.table.MainPoints;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.Origin;
import comparand.model.Pairing.Purpose;
import comparand.model.Standing;
import comparand.model.Verdict;
import comparand.model.library.SampleSize;
import comparand.model.library.StudyKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What can be said now: at most five points, the firmest first.
 *
 * <p>First what is more than the margin, measured before stated; then what is no difference as large as the margin; then what
 * has a clear direction. Within each, the further the interval keeps from the margin the firmer. What is not settled is not
 * said. Comparisons of one metric that are as firm make one point.
 */
final class Said {

    private static final int MOST = 5;

    private final Run run;
    private final MainPoints points;

    Said(Run run) {
        this.run = run;
        this.points = new MainPoints(run);
    }

    private enum Firmness {
        BEYOND,
        BEYOND_AS_STATED,
        WITHIN,
        DIRECTION,
        OPEN
    }

    private record Subject(Firmness firmness, Metric metric) {}

    List<Block> blocks() {
        var subjects = new LinkedHashMap<Subject, List<Comparison>>();
        run.compared().comparisons().stream()
                .filter(Said::isBetweenDevices)
                .filter(c -> c.pairing().standing().isCompared())
                .filter(c -> firmness(c) != Firmness.OPEN)
                .sorted(Comparator.comparing(Said::firmness).thenComparing(Said::clearance, Comparator.reverseOrder()))
                .forEach(c -> subjects.computeIfAbsent(
                                new Subject(firmness(c), c.pairing().ours().metric()), s -> new ArrayList<>())
                        .add(c));
        var blocks = new ArrayList<Block>();
        subjects.values().stream().limit(MOST).forEach(cs -> blocks.add(new Paragraph(point(cs), Style.POINT)));
        if (blocks.isEmpty()) {
            blocks.add(new Paragraph(run.words().say("committee.said-none"), Style.BODY));
        }
        return blocks;
    }

    static boolean isBetweenDevices(Comparison c) {
        var purpose = c.pairing().purpose();
        return purpose == Purpose.AGAINST_PRESENT_DEVICE || purpose == Purpose.STATED_AGAINST_PRESENT_DEVICE;
    }

    private static Firmness firmness(Comparison c) {
        if (c.answer() instanceof Answer.Nominal nominal) {
            return of(nominal.verdict()) == Firmness.BEYOND ? Firmness.BEYOND_AS_STATED : of(nominal.verdict());
        }
        return c.answer() instanceof Answer.Tested tested ? of(tested.verdict()) : Firmness.OPEN;
    }

    private static Firmness of(Verdict verdict) {
        return switch (verdict) {
            case HIGHER_BEYOND_MARGIN, LOWER_BEYOND_MARGIN -> Firmness.BEYOND;
            case NONE_AS_LARGE_AS_MARGIN, SMALLER_THAN_MARGIN -> Firmness.WITHIN;
            case HIGHER_MARGIN_OPEN, LOWER_MARGIN_OPEN, HIGHER, LOWER -> Firmness.DIRECTION;
            case NOT_SETTLED -> Firmness.OPEN;
        };
    }

    /** How far the interval keeps from the margin, in margins; of a direction alone, how far it keeps from zero. */
    private static double clearance(Comparison c) {
        if (c.margin().isEmpty()) {
            return Double.NEGATIVE_INFINITY;
        }
        double margin = c.margin().get().value();
        if (c.answer() instanceof Answer.Nominal nominal) {
            return Math.abs(nominal.difference()) / margin;
        }
        var interval = ((Answer.Tested) c.answer()).interval();
        double nearest = Math.min(Math.abs(interval.low()), Math.abs(interval.high()));
        double furthest = Math.max(Math.abs(interval.low()), Math.abs(interval.high()));
        return firmness(c) == Firmness.WITHIN ? 1 - furthest / margin : nearest / margin;
    }

    private String point(List<Comparison> comparisons) {
        var byStand = comparisons.stream()
                .collect(Collectors.groupingBy(this::stands, LinkedHashMap::new, Collectors.toList()));
        var parts = new ArrayList<String>();
        for (Map.Entry<String, List<Comparison>> entry : byStand.entrySet()) {
            entry.getValue()
                    .forEach(c ->
                            parts.add(c.answer() instanceof Answer.Nominal ? points.sentence(c) : points.point(c)));
            parts.add(entry.getKey());
        }
        return String.join(" ", parts);
    }

    /** {@code Bench, same conditions, 6 units against 6 units.} */
    private String stands(Comparison c) {
        var standing = run.words()
                .say(c.pairing().standing() == Standing.SAME ? "brief.standing-same" : "brief.standing-converted");
        var ours = c.pairing().ours();
        var counts = ours.sizes()
                .independent()
                .flatMap(a -> c.pairing().theirs().sizes().independent().map(b -> counts(a, b)));
        return ours.origin()
                .fold(
                        p -> run.words().say("committee.stands-stated"),
                        l -> counts.map(n -> run.words()
                                        .say("committee.stands", "kind", kind(l), "standing", standing, "counts", n))
                                .orElseGet(() -> run.words()
                                        .say("committee.stands-alone", "kind", kind(l), "standing", standing)));
    }

    private String counts(SampleSize ours, SampleSize theirs) {
        return ours.equals(theirs)
                ? run.words().say("brief.each", "n", run.terms().size(ours))
                : run.words()
                        .say(
                                "brief.against",
                                "ours",
                                run.terms().size(ours),
                                "theirs",
                                run.terms().size(theirs));
    }

    private String kind(Origin.Local local) {
        return run.words().say(local.study().kind().value() == StudyKind.BENCH ? "brief.bench" : "brief.cases");
    }
}
