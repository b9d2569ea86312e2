package comparand.compose.text;

import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.SourcesTogether;
import comparand.model.SourcesTogether.Place;
import comparand.model.SourcesTogether.Several;
import comparand.model.SourcesTogether.Two;
import comparand.model.SourcesTogether.Without;
import comparand.model.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What several sources say together, in sentences without a full stop: the answer first, then what it depends on. */
public final class TogetherText {

    private final Words words;
    private final Figures figures;
    private final Names names;
    private final AnswerText answers;

    public TogetherText(Words words, Figures figures, Names names, AnswerText answers) {
        this.words = words;
        this.figures = figures;
        this.names = names;
        this.answers = answers;
    }

    public List<String> of(SourcesTogether together) {
        return together.fold(this::two, this::several);
    }

    private List<String> two(Two two) {
        var interval = two.apart().interval(Answer.LEVEL);
        var metric = two.ours().metric();
        int decimals = figures.ofDifference(metric, interval);
        return List.of(
                words.say("together.two"),
                words.say(
                        "together.apart",
                        "first",
                        locator(two.each().get(0)),
                        "second",
                        locator(two.each().get(1)),
                        "difference",
                        figures.withUnit(figures.signed(two.apart().value(), decimals), metric),
                        "interval",
                        figures.range(interval, decimals)),
                words.say(
                        "together.adjusted",
                        "p",
                        two.adjustedP().stream()
                                .map(figures::p)
                                .collect(Collectors.joining(words.say("number-list-sign") + " "))));
    }

    private List<String> several(Several several) {
        var said = new ArrayList<String>();
        said.add(words.say(
                "together.place." + several.place().name(),
                "k",
                String.valueOf(several.each().size()),
                "expected",
                expected(several)));
        if (several.pool().rough()) {
            said.add(words.say(
                    "together.rough", "k", String.valueOf(several.each().size())));
        }
        said.add(words.say(
                "together.mean",
                "difference",
                difference(several),
                "verdict",
                answers.verdict(several.againstMean(), several.each().get(0))));
        if (several.place() == Place.INSIDE && isClear(several.againstMean().verdict())) {
            said.add(words.say("together.among"));
        }
        dependence(several).forEach(said::add);
        return said;
    }

    /** Which single source, or which kind of value, the answer hangs on. */
    private List<String> dependence(Several several) {
        var said = new ArrayList<String>();
        var single = several.without().stream().filter(w -> w.label().isEmpty()).toList();
        var decisive = single.stream().filter(w -> w.changes(several.place())).toList();
        if (!single.isEmpty()) {
            said.add(
                    decisive.isEmpty()
                            ? words.say("together.firm")
                            : words.say(
                                    "together.depends",
                                    "sources",
                                    decisive.stream()
                                            .map(w -> leftOut(several, w))
                                            .collect(Collectors.joining(", "))));
        }
        several.without().stream()
                .filter(w -> w.label().isPresent())
                .map(w -> words.say(
                        "together.without." + outcome(several, w),
                        "sources",
                        leftOut(several, w),
                        "how",
                        words.say("together.label." + w.label().orElseThrow().name())))
                .forEach(said::add);
        return said;
    }

    private static String outcome(Several several, Without without) {
        return without.place().isEmpty() ? "few" : without.changes(several.place()) ? "other" : "same";
    }

    private String leftOut(Several several, Without without) {
        return several.each().stream()
                .filter(c -> without.left().contains(c.pairing().theirs().id()))
                .map(this::locator)
                .collect(Collectors.joining(", "));
    }

    private static boolean isClear(Verdict verdict) {
        return verdict != Verdict.NOT_SETTLED && verdict != Verdict.NONE_AS_LARGE_AS_MARGIN;
    }

    public String locator(Comparison comparison) {
        return names.locator(comparison.pairing().theirs());
    }

    public String expected(Several several) {
        return figures.range(several.expected(), decimals(several));
    }

    /** Mean of sources with its interval. */
    public String mean(Several several) {
        var mean = several.pool().mean();
        return figures.number(mean.mean(), decimals(several)) + " ("
                + figures.range(mean.interval(Answer.LEVEL), decimals(several)) + ")";
    }

    public String difference(Several several) {
        return figures.difference(several.ours().metric(), several.againstMean());
    }

    public int decimals(Several several) {
        return figures.ofDifference(
                several.ours().metric(), several.pool().mean().interval(Answer.LEVEL));
    }
}
