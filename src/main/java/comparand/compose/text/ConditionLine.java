package comparand.compose.text;

import comparand.metric.Catalogue;
import comparand.metric.Effect;
import comparand.metric.Role;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Mark;
import comparand.model.ConditionVerdict.Subject;
import comparand.model.Pairing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the conditions of a pair have to say: in one line, as reasons, and as the direction each difference points to. */
public final class ConditionLine {

    private final Words words;
    private final Names names;
    private final VerdictText texts;

    public ConditionLine(Words words, Names names, Catalogue catalogue) {
        this.words = words;
        this.names = names;
        this.texts = new VerdictText(words, catalogue);
    }

    /** What was found of each condition, in the language of the document. */
    public List<ConditionVerdict> said(Pairing pairing) {
        return pairing.verdicts().stream().map(texts::said).toList();
    }

    /** {@code flow = · Hb ≠ (12.0 g/dL | 10 g/dL) · temp ?}: ours before the bar, theirs behind it. */
    public String line(Pairing pairing) {
        return String.join(
                " · ", said(pairing).stream().map(ConditionLine::item).toList());
    }

    private static String item(ConditionVerdict v) {
        var mark = v.shortName() + " " + v.mark().sign();
        return switch (v.mark()) {
            case SAME, NOT_APPLICABLE -> mark;
            case MADE_SAME -> v.of() == Subject.UNIT ? mark + " (" + v.theirs() + ")" : mark;
            case DIFFERS -> mark + " (" + v.ours() + " | " + v.theirs() + ")";
            case NOT_REPORTED -> mark;
        };
    }

    /** Why a pair is shown and not compared. */
    public String why(Pairing pairing) {
        var parts = new ArrayList<String>();
        var missing = new ArrayList<String>();
        for (var v : said(pairing)) {
            if (!v.decidesAgainst()) {
                continue;
            }
            if (v.mark() == Mark.NOT_REPORTED) {
                missing.add(v.name());
            } else if (v.of() == Subject.LABEL) {
                parts.add(words.say("why.label", "where", outside(v)));
            } else if (v.id().equals("quantity")) {
                parts.add(words.say("why.quantity", "ours", v.ours(), "theirs", v.theirs()));
            } else {
                parts.add(words.say("why.differs", "condition", v.name(), "ours", v.ours(), "theirs", v.theirs()));
            }
        }
        if (!missing.isEmpty()) {
            parts.add(words.say("why.not-reported", "conditions", String.join(", ", missing)));
        }
        return String.join("; ", parts);
    }

    private String outside(ConditionVerdict v) {
        return v.ours().equals(words.term("stated", "within")) ? v.theirs() : v.ours();
    }

    /** The expected direction of every difference that decides, one sentence each. */
    public List<String> distortions(Pairing pairing) {
        return said(pairing).stream()
                .filter(v -> v.decidesAgainst() && v.mark() == Mark.DIFFERS && v.of() == Subject.CONDITION)
                .map(v -> distortion(pairing, v))
                .toList();
    }

    private String distortion(Pairing pairing, ConditionVerdict v) {
        boolean devices = pairing.purpose() != Pairing.Purpose.LOCAL_AGAINST_PUBLISHED;
        boolean explained = !v.because().isBlank();
        var direction = v.effect() == Effect.RAISES && explained
                ? "higher"
                : v.effect() == Effect.LOWERS && explained ? "lower" : v.effect() == Effect.NONE ? "none" : "unknown";
        var key = devices
                ? "distortion.device." + direction
                : direction.equals("higher") || direction.equals("lower")
                        ? "distortion.number." + direction
                        : "distortion." + direction;
        return words.say(
                key,
                "condition",
                upperFirst(v.name()),
                "ours",
                v.ours(),
                "theirs",
                v.theirs(),
                "because",
                v.because(),
                "ourDevice",
                names.brief(pairing.ours().device()),
                "theirDevice",
                names.brief(pairing.theirs().device()));
    }

    /** What qualifies a comparison without forbidding it, one sentence each. */
    public List<String> qualifiers(Pairing pairing) {
        var said = new ArrayList<String>();
        var missing = new ArrayList<String>();
        for (var v : said(pairing)) {
            if (v.role() == Role.DECIDES || v.of() == Subject.UNIT) {
                continue;
            }
            if (v.mark() == Mark.DIFFERS) {
                said.add(words.say(
                        "qualifies.differs",
                        "condition",
                        upperFirst(v.name()),
                        "ours",
                        v.ours(),
                        "theirs",
                        v.theirs()));
            } else if (v.mark() == Mark.NOT_REPORTED) {
                missing.add(v.name());
            }
        }
        if (!missing.isEmpty()) {
            said.add(words.say("qualifies.not-reported", "conditions", String.join(", ", missing)));
        }
        return said;
    }

    /** What would have to be known or measured; empty for a pair that is compared. */
    public String toMakeComparable(Pairing pairing) {
        var parts = new ArrayList<String>();
        var missing = new ArrayList<String>();
        for (var v : said(pairing)) {
            if (!v.decidesAgainst()) {
                continue;
            }
            if (v.mark() == Mark.NOT_REPORTED) {
                missing.add(v.name());
            } else if (v.of() == Subject.LABEL) {
                parts.add(words.say("comparable.label"));
            } else if (v.id().equals("quantity")) {
                parts.add(words.say("comparable.quantity"));
            } else {
                parts.add(words.say(
                        v.of() == Subject.DEFINITION ? "comparable.definition" : "comparable.differs",
                        "condition",
                        v.name(),
                        "ours",
                        v.ours(),
                        "theirs",
                        v.theirs()));
            }
        }
        if (!missing.isEmpty()) {
            parts.add(words.say("comparable.not-reported", "conditions", String.join(", ", missing)));
        }
        return String.join("; ", parts);
    }

    public static String upperFirst(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
