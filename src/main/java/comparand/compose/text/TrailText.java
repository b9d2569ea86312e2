package comparand.compose.text;

import comparand.metric.Catalogue;
import comparand.model.Comparand;
import comparand.model.Step;
import comparand.unit.Rounding;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The steps from print or raw data to a number, in words. */
public final class TrailText {

    /** Facts that are computed numbers, and printed to six digits: enough to repeat the step by hand. */
    private static final Set<String> COMPUTED = Set.of(
            "value",
            "uncertainty",
            "to",
            "sd",
            "mean",
            "factor",
            "result",
            "se",
            "slope",
            "df",
            "placing",
            "centre",
            "repeats",
            "readers",
            "off",
            "share");

    /** Parts of a reading's uncertainty beside placing the mark; told where there is one. */
    private static final List<String> PARTS = List.of("centre", "repeats", "readers");

    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])-?\\d+(?:\\.\\d+)?(?:E-?\\d+)?(?![\\w.]\\d)");

    private static final int DIGITS = 6;

    private final Words words;
    private final StepText texts;

    public TrailText(Words words) {
        this.words = words;
        this.texts = new StepText(words);
    }

    public List<String> of(Comparand comparand) {
        return comparand.trail().stream().map(this::of).toList();
    }

    /** The formula of a step in letters; one that a library declares stays as it is written there. */
    public String formula(Comparand comparand, Step step) {
        boolean declared = step.kind() == Step.Kind.COMPUTED
                && Catalogue.shipped().find(comparand.metric().id()).isEmpty();
        return declared ? step.formula() : texts.formula(step.formula());
    }

    public String of(Step step) {
        var places = texts.said(step).facts().entrySet().stream()
                .flatMap(e -> Stream.of(e.getKey(), text(e)))
                .toArray(String[]::new);
        if (step.kind() == Step.Kind.CENTRES) {
            var how = ConditionLine.upperFirst(
                    words.say("centres.mean." + step.facts().get("rule"), places));
            return words.say("step.CENTRES", with(places, "how", how));
        }
        var said = words.say("step." + step.kind().name(), places);
        if (step.facts().containsKey("translation")) {
            return words.say("step.translated", with(places, "said", said));
        }
        return PARTS.stream().anyMatch(p -> Double.parseDouble(step.facts().getOrDefault(p, "0")) > 0)
                ? words.say("step.read-parts", with(places, "said", said))
                : said;
    }

    private static String[] with(String[] places, String name, String text) {
        return Stream.concat(Stream.of(places), Stream.of(name, text)).toArray(String[]::new);
    }

    private String text(Map.Entry<String, String> fact) {
        return COMPUTED.contains(fact.getKey())
                ? NUMBER.matcher(fact.getValue()).replaceAll(m -> rounded(m.group()))
                : fact.getValue();
    }

    private String rounded(String number) {
        var rounded = Rounding.significant(Double.parseDouble(number), DIGITS).stripTrailingZeros();
        return rounded.toPlainString().replace('.', words.decimalSign()).replace("-", "\u2212");
    }
}
