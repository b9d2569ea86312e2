package comparand.compose.text;

import comparand.metric.Conditions;
import comparand.metric.GasVolume;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.ConditionVerdict;
import comparand.model.Margin;
import comparand.model.MarginRange;
import comparand.model.Pairing;
import comparand.model.Step;
import comparand.model.Verdict;
import comparand.stat.Fragility;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What belongs to an answer and stands beside it: where it would flip, rounding, the number of comparisons. */
public final class Remarks {

    private final Words words;
    private final Terms terms;
    private final Figures figures;
    private final ConditionLine conditions;
    private final CentreText centres;
    private final TrailText trails;
    private final int family;

    /** Without a margin, an interval wider than this share of the other value is a wide one. */
    private static final double WIDE = 0.25;

    /**
     * Remarks of one run.
     *
     * @param family how many comparisons the adjusted p values allow for
     */
    public Remarks(
            Words words, Figures figures, ConditionLine conditions, CentreText centres, TrailText trails, int family) {
        this.centres = centres;
        this.trails = trails;
        this.words = words;
        this.terms = new Terms(words);
        this.figures = figures;
        this.conditions = conditions;
        this.family = family;
    }

    /** What belongs to an answer and does not fit its cell: where it flips, rounding, the number of comparisons. */
    public List<String> of(Comparison comparison) {
        var remarks = new ArrayList<String>();
        var metric = comparison.pairing().ours().metric();
        // of two readings of a spread, neither speaks for the other
        if (!(comparison.answer() instanceof Answer.EitherReading)) {
            AnswerText.tested(comparison.answer())
                    .flatMap(t -> flipsAt(t, comparison.margin()).map(f -> flip(f, t, metric)))
                    .ifPresent(remarks::add);
        }
        remarks.addAll(ofFigures(comparison, comparison.answer()));
        precision(comparison).ifPresent(remarks::add);
        volumeBasis(comparison.pairing()).ifPresent(remarks::add);
        if (comparison.pairing().standing().isCompared()) {
            remarks.addAll(ifCompared(comparison.pairing()));
        }
        if (adjustmentMatters(comparison)) {
            remarks.add(words.say(
                    "answer.adjusted.unclear",
                    "m",
                    String.valueOf(family),
                    "p",
                    figures.p(comparison.adjustedP().getAsDouble())));
        }
        return remarks;
    }

    /** What an answer to a figure without spread, or of two nominal figures, hides of itself. */
    public List<String> ofFigures(Comparison comparison, Answer answer) {
        var metric = comparison.pairing().ours().metric();
        if (answer instanceof Answer.Nominal nominal && nominal.rounding() > 0) {
            int decimals = figures.of(comparison.pairing().ours(), nominal.difference());
            return List.of(words.say(
                    "answer.nominal.rounding",
                    "low",
                    figures.number(nominal.difference() - nominal.rounding(), decimals),
                    "high",
                    figures.number(nominal.difference() + nominal.rounding(), decimals),
                    "unit",
                    terms.differenceUnit(metric)));
        }
        return answer instanceof Answer.AgainstFigure figure
                ? fragility(figure, metric).stream().toList()
                : List.of();
    }

    /** What must be known of our number and of the hospitals behind it, where a pair is compared. */
    public List<String> ifCompared(Pairing pairing) {
        return Stream.concat(cautions(pairing).stream(), centres.of(pairing).stream())
                .toList();
    }

    /** An answer that is open because the interval is wide tells nothing of the devices. */
    private Optional<String> precision(Comparison comparison) {
        if (!(comparison.answer() instanceof Answer.Tested t) || t.verdict() != Verdict.NOT_SETTLED) {
            return Optional.empty();
        }
        double narrowEnough = comparison.margin().map(Margin::value).orElseGet(() -> wide(comparison.pairing()));
        return t.interval().halfWidth() > narrowEnough ? Optional.of(words.say("answer.imprecise")) : Optional.empty();
    }

    /** The half-width from which, without a margin, an interval is a wide one; infinite where that cannot be said. */
    public static double wide(Pairing pairing) {
        return WIDE * Math.abs(pairing.theirs().summary().centre().orElse(Double.POSITIVE_INFINITY));
    }

    /** A figure without spread hides its own uncertainty: how much of it would undo the answer. */
    private Optional<String> fragility(Answer.AgainstFigure a, Metric metric) {
        double hidden = Fragility.seOfFigure(a.taken().difference(), Answer.LEVEL);
        return hidden > 0
                ? Optional.of(words.say(
                        "answer.fragile",
                        "se",
                        figures.withUnit(figures.number(hidden, figures.ofSpread(metric, hidden)), metric)))
                : Optional.empty();
    }

    /** What a reader must know of our number, such as that it shows the blood and not the device. */
    private List<String> cautions(Pairing pairing) {
        return pairing.ours().trail().stream()
                .filter(s -> s.kind() == Step.Kind.CAUTIONED)
                .map(trails::of)
                .map(ConditionLine::upperFirst)
                .toList();
    }

    /** Where the reference state of a gas volume is not reported: what either would mean. */
    public Optional<String> volumeBasis(Pairing pairing) {
        boolean open = !pairing.theirs().isLocal()
                && pairing.verdicts().stream()
                        .anyMatch(v -> v.id().equals(Conditions.GAS_VOLUME_BASIS.id())
                                && v.mark() == ConditionVerdict.Mark.NOT_REPORTED
                                && !pairing.theirs().condition(v.id()).isReported());
        var ours = pairing.ours().summary().centre();
        var theirs = pairing.theirs().summary().centre();
        if (!open || ours.isEmpty() || theirs.isEmpty()) {
            return Optional.empty();
        }
        var metric = pairing.ours().metric();
        double warm = theirs.getAsDouble() * GasVolume.fromBtpsToStpd(GasVolume.USUAL_PRESSURE);
        int decimals = figures.of(pairing.ours(), ours.getAsDouble());
        return Optional.of(words.say(
                "remark.volume-basis",
                "stpd",
                figures.withUnit(
                        figures.number(theirs.getAsDouble(), figures.of(pairing.theirs(), theirs.getAsDouble())),
                        metric),
                "ours",
                apart(ours.getAsDouble() - theirs.getAsDouble(), decimals, metric),
                "btps",
                figures.withUnit(figures.number(warm, figures.of(pairing.theirs(), warm)), metric),
                "oursThen",
                apart(ours.getAsDouble() - warm, decimals, metric)));
    }

    private String apart(double difference, int decimals, Metric metric) {
        return words.say(
                difference < 0 ? "remark.lower" : "remark.higher",
                "amount",
                figures.withUnit(figures.number(Math.abs(difference), decimals), metric));
    }

    /** The interval leaves out zero, and allowing for the number of comparisons it would not. */
    private static boolean adjustmentMatters(Comparison comparison) {
        return comparison.adjustedP().isPresent()
                && comparison.adjustedP().getAsDouble() >= 0.05
                && comparison.answer() instanceof Answer.Tested t
                && !t.interval().contains(0);
    }

    /** The margin at which a firm answer would change. */
    public static Optional<Double> flipsAt(Answer.Tested tested, Optional<Margin> margin) {
        return holds(tested, margin).flatMap(range -> switch (tested.verdict()) {
            case HIGHER_BEYOND_MARGIN, LOWER_BEYOND_MARGIN -> Optional.of(range.below());
            case NONE_AS_LARGE_AS_MARGIN, SMALLER_THAN_MARGIN -> Optional.of(range.above());
            case HIGHER_MARGIN_OPEN, LOWER_MARGIN_OPEN, NOT_SETTLED, HIGHER, LOWER -> Optional.empty();
        });
    }

    /** The margins for which the answer is the one it is; empty where no margin was set. */
    public static Optional<MarginRange> holds(Answer.Tested tested, Optional<Margin> margin) {
        return margin.map(m -> MarginRange.of(tested.verdict(), tested.interval()));
    }

    private String flip(double at, Answer.Tested tested, Metric metric) {
        boolean below =
                tested.verdict() == Verdict.HIGHER_BEYOND_MARGIN || tested.verdict() == Verdict.LOWER_BEYOND_MARGIN;
        return words.say(
                        "answer.flips",
                        "side",
                        words.say(below ? "answer.flips.below" : "answer.flips.above"),
                        "at",
                        figures.number(at, figures.ofDifference(metric, tested.interval())),
                        "unit",
                        terms.differenceUnit(metric))
                .replaceAll("[ \u00a0]+$", "");
    }

    public CentreText centres() {
        return centres;
    }

    /** What a reader would ask next: expected directions, what is not held against the pair, and the remarks. */
    public List<String> notes(Comparison c) {
        var texts = new ArrayList<>(conditions.distortions(c.pairing()));
        if (c.pairing().standing().isCompared()) {
            texts.addAll(conditions.qualifiers(c.pairing()));
            centres.means(c.pairing()).forEach(m -> texts.add(m + "."));
        }
        of(c).forEach(r -> texts.add(r + "."));
        return texts;
    }
}
