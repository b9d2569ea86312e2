package comparand.compose.talk;

import comparand.compose.talk.Draft.Asked;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.talk.Part;
import comparand.document.talk.layout.Legibility;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The answer first: the firmest finding as one number with all that belongs to it; and what to take home. */
final class AnswerSlide {

    static final String ANSWER = "answer";
    static final String TAKE_HOME = "take-home";

    /** A unit longer than this is said in the rider and not beside the number. */
    private static final int SHORT_UNIT = 10;

    private final Run run;
    private final SlideNumbers numbers;
    private final Titles titles;
    private final Speeches speeches;
    private final List<Asked> usual;

    AnswerSlide(Run run, SlideNumbers numbers, Titles titles, Speeches speeches, List<Asked> usual) {
        this.run = run;
        this.numbers = numbers;
        this.titles = titles;
        this.speeches = speeches;
        this.usual = usual;
    }

    Draft answer() {
        var headline = Firmness.headline(run.compared().comparisons());
        return headline.map(this::answer).orElseGet(this::none);
    }

    private Draft answer(Comparison c) {
        var tested = Firmness.tested(c).orElseThrow();
        var metric = c.pairing().ours().metric();
        var number = numbers.signed(c, tested);
        var shown = metric.differenceUnit().length() <= SHORT_UNIT ? numbers.withUnit(number, metric) : number;
        var asked = new FloorQuestions(run).of(metric);
        return new Draft(
                ANSWER,
                titles.firmest(c),
                List.of(new Part.Headline(shown, rider(c, tested, shown))),
                speeches.strip(List.of(c)),
                speeches.of(List.of(say("talk.say.answer")), List.of(c), asked),
                false,
                List.of());
    }

    private String rider(Comparison c, Answer.Tested tested, String number) {
        var pairing = c.pairing();
        var metric = pairing.ours().metric();
        var group = titles.step(c);
        var places = new String[] {
            "metric", ConditionLine.upperFirst(run.terms().metric(metric)),
            "device", run.names().device(pairing.ours().device()),
            "present", run.names().device(pairing.theirs().device()),
            "at", group.isEmpty() ? "" : " " + say("talk.at", "step", group),
            "interval", numbers.withUnit(numbers.interval(c, tested), metric),
            "answer", run.answers().verdict(tested, c),
            "n", speeches.n(pairing),
            "conditions", speeches.decidingSame(pairing)
        };
        var shorter = new String[] {
            "metric", ConditionLine.upperFirst(run.terms().metric(metric)),
            "device", run.names().device(pairing.ours().device()),
            "present", run.names().device(pairing.theirs().device()),
            "at", group.isEmpty() ? "" : " " + say("talk.at", "step", group),
            "interval", numbers.withUnit(numbers.interval(c, tested), metric),
            "answer", run.answers().verdict(tested, c),
            "n", speeches.n(pairing)
        };
        var shortest = new String[] {
            "metric", ConditionLine.upperFirst(run.terms().metric(metric)),
            "device", run.names().brief(pairing.ours().device()),
            "interval", numbers.withUnit(numbers.interval(c, tested), metric),
            "answer", run.answers().verdict(tested, c),
            "n", speeches.n(pairing)
        };
        int room = Legibility.BODY_WORDS - Legibility.words(number);
        var full = say("talk.rider", places);
        var brief = say("talk.rider.short", shorter);
        return Legibility.words(full) <= room
                ? full
                : Legibility.words(brief) <= room ? brief : say("talk.rider.shortest", shortest);
    }

    private Draft none() {
        return new Draft(
                ANSWER,
                say("talk.title.answer.none"),
                List.of(new Part.Points(takeHome().isEmpty() ? List.of(say("talk.take.none")) : takeHome())),
                "",
                speeches.plain(say("talk.say.answer.none"), usual),
                false,
                List.of());
    }

    Draft takeHomeSlide() {
        var pairs = chosen();
        var sentences = takeHome();
        return new Draft(
                TAKE_HOME,
                say("talk.title.take-home"),
                List.of(new Part.Points(sentences.isEmpty() ? List.of(say("talk.take.none")) : sentences)),
                pairs.isEmpty() ? "" : speeches.strip(pairs),
                speeches.of(List.of(say("talk.say.take-home")), pairs, new FloorQuestions(run).trails(pairs)),
                false,
                pairs.stream()
                        .map(c -> c.pairing().theirs())
                        .filter(t -> !t.isLocal())
                        .toList());
    }

    /** The firmest finding, the firmest difference that is ruled out, and the first answer that is open; one a metric. */
    private List<Comparison> chosen() {
        var eachMetric = run.questions().values().stream()
                .map(m -> Firmness.ofDevices(run.comparisons(m)).stream().findFirst())
                .flatMap(Optional::stream)
                .filter(c -> Firmness.tested(c).isPresent())
                .toList();
        var firmest = eachMetric.stream().sorted(Firmness.FIRMEST).toList();
        var chosen = new ArrayList<Comparison>();
        firmest.stream().findFirst().ifPresent(chosen::add);
        run.questions().values().stream()
                .flatMap(m -> Firmness.ofDevices(run.comparisons(m)).stream())
                .filter(c -> Firmness.verdict(c)
                        .filter(v -> v == Verdict.NONE_AS_LARGE_AS_MARGIN || v == Verdict.SMALLER_THAN_MARGIN)
                        .isPresent())
                .filter(c -> Firmness.tested(c).isPresent())
                .filter(c -> !metrics(chosen).contains(c.pairing().ours().metric()))
                .min(Firmness.FIRMEST)
                .ifPresent(chosen::add);
        eachMetric.stream()
                .filter(c -> Firmness.verdict(c)
                        .filter(v -> v == Verdict.NOT_SETTLED)
                        .isPresent())
                .filter(c -> !metrics(chosen).contains(c.pairing().ours().metric()))
                .findFirst()
                .ifPresent(chosen::add);
        firmest.stream()
                .filter(c -> !metrics(chosen).contains(c.pairing().ours().metric()))
                .limit(3)
                .forEach(chosen::add);
        return List.copyOf(chosen.subList(0, Math.min(3, chosen.size())));
    }

    private static List<Metric> metrics(List<Comparison> pairs) {
        return pairs.stream().map(c -> c.pairing().ours().metric()).toList();
    }

    /** All three as full as the slide allows, and as many as it allows at all. */
    private List<String> takeHome() {
        var pairs = chosen();
        for (int fullness = 0; fullness < 3; fullness++) {
            int level = fullness;
            var sentences = pairs.stream().map(c -> sentence(c, level)).toList();
            if (Legibility.words(String.join(" ", sentences)) <= Legibility.BODY_WORDS) {
                return sentences;
            }
        }
        var kept = new ArrayList<>(pairs.stream().map(c -> sentence(c, 2)).toList());
        while (kept.size() > 1 && Legibility.words(String.join(" ", kept)) > Legibility.BODY_WORDS) {
            kept.remove(kept.size() - 1);
        }
        return kept;
    }

    private String sentence(Comparison c, int fullness) {
        var tested = Firmness.tested(c).orElseThrow();
        var metric = run.terms().metric(c.pairing().ours().metric());
        var device = run.names().brief(c.pairing().ours().device());
        var answer = run.answers().verdict(tested, c);
        var step = titles.step(c);
        return fullness == 0
                ? say(
                        "talk.take",
                        "device",
                        run.names().device(c.pairing().ours().device()),
                        "metric",
                        metric,
                        "at",
                        step.isEmpty() ? "" : " " + say("talk.at", "step", step),
                        "answer",
                        answer)
                : fullness == 1
                        ? say("talk.take.brief", "device", device, "metric", metric, "answer", answer)
                        : say("talk.take.verdict", "metric", ConditionLine.upperFirst(metric), "answer", answer);
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
