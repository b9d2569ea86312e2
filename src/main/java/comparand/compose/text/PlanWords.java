package comparand.compose.text;

import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.AssumedSd;
import comparand.model.Margin;
import comparand.model.Needed;
import comparand.model.PlanAim;
import comparand.model.Planned;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The numbers of a plan in words: what is to be achieved, what it takes, and on which assumptions. */
public final class PlanWords {

    private static final int SPREAD_DIGITS = 2;

    private final Words words;
    private final Terms terms;
    private final Figures figures;
    private final Metric metric;
    private final Planned plan;

    public PlanWords(Words words, Figures figures, Metric metric, Planned plan) {
        this.words = words;
        this.terms = new Terms(words);
        this.figures = figures;
        this.metric = metric;
        this.plan = plan;
    }

    /** One sentence for an aim. */
    public String aim(PlanAim aim, Optional<Margin> margin, Optional<Answer.Tested> tested) {
        return words.say(
                "settle." + aim.kind().name(),
                "amount",
                amount(aim),
                "power",
                figures.percent(plan.power()),
                "margin",
                margin.map(m -> terms.quantity(m.text()).replace(' ', '\u00a0')).orElse(""),
                "observed",
                tested.map(this::observed).orElse(""),
                "numbers",
                numbers(aim.results(), terms.level(plan.unit())),
                "where",
                where());
    }

    /** What the numbers rest on and how far they reach, one sentence each. */
    public List<String> assumptions() {
        var said = new ArrayList<String>();
        boolean upper = plan.assumed().stream().anyMatch(a -> a.which() == AssumedSd.Which.UPPER);
        said.add(words.say(
                "settle.sd." + plan.sd().from().name(),
                "sd",
                sd(plan.sd().value(), true),
                "others",
                words.say(upper ? "needed.others" : "needed.other")));
        switch (plan.reach().kind()) {
            case ONE_PLACE -> {}
            case SAME_HOSPITALS -> said.add(words.say("settle.same-hospitals"));
            case ACROSS_HOSPITALS -> hospitals().ifPresent(said::add);
        }
        return said;
    }

    private Optional<String> hospitals() {
        return plan.aims().stream()
                .filter(a -> !a.hospitals().isEmpty())
                .findFirst()
                .map(a -> words.say(
                        "settle.hospitals",
                        "tau",
                        sd(plan.reach().tau(), true),
                        "cases",
                        String.valueOf(plan.reach().casesEach()),
                        "numbers",
                        numbers(a.hospitals(), words.say("needed.hospitals")),
                        "amount",
                        amount(a),
                        "where",
                        where()));
    }

    /** {@code 5 mg/100 L}: a difference as it was set, a half-width to two digits. */
    public String amount(PlanAim aim) {
        int decimals = aim.kind() == PlanAim.Kind.DETECT
                ? Figures.asSet(aim.amount())
                : Rounding.decimalsFor(aim.amount(), SPREAD_DIGITS);
        return figures.withDifferenceUnit(figures.number(aim.amount(), decimals), metric);
    }

    private String observed(Answer.Tested tested) {
        return figures.withDifferenceUnit(
                figures.signed(tested.difference().value(), figures.ofDifference(metric, tested.interval())), metric);
    }

    public String sd(double value, boolean unit) {
        var number = figures.number(value, Rounding.decimalsFor(value, SPREAD_DIGITS));
        return unit ? figures.withDifferenceUnit(number, metric) : number;
    }

    public String where() {
        return words.say(
                "needed.where." + plan.groups().name(),
                "theirs",
                plan.theirs().map(terms::size).orElse(""));
    }

    /** {@code about 9 units (6 with SD 1.8, 14 with SD 3.1)}. */
    private String numbers(List<Needed> needed, String units) {
        if (needed.stream().allMatch(n -> n.kind() == Needed.Kind.NONE)) {
            return words.say("needed.never", "units", units);
        }
        var others = new ArrayList<String>();
        String atHand = "";
        for (int i = 0; i < needed.size(); i++) {
            var assumed = plan.assumed().get(i);
            if (assumed.which() == AssumedSd.Which.AT_HAND) {
                atHand = words.say("needed." + needed.get(i).kind().name(), "n", number(needed.get(i)), "units", units);
            } else {
                others.add(words.say("needed.with", "n", brief(needed.get(i)), "sd", sd(assumed.value(), false)));
            }
        }
        return words.say("needed.all", "n", atHand, "others", String.join(words.say("number-list-sign") + " ", others));
    }

    /** {@code 9}, {@code more than 1,000} or {@code no number}. */
    public String brief(Needed needed) {
        return words.say("needed.brief." + needed.kind().name(), "n", number(needed));
    }

    private String number(Needed needed) {
        return needed.n() >= 1000
                ? needed.n() / 1000 + words.say("thousands-sign") + "%03d".formatted(needed.n() % 1000)
                : String.valueOf(needed.n());
    }
}
