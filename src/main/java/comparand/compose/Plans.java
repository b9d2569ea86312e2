package comparand.compose;

import comparand.compose.results.UnknownResults;
import comparand.compose.text.Figures;
import comparand.compose.text.Run;
import comparand.compose.text.Words;
import comparand.document.result.UnknownResult;
import comparand.document.result.UnknownResult.AimResult;
import comparand.document.result.UnknownResult.NeededResult;
import comparand.document.result.UnknownResult.PlanResult;
import comparand.metric.Metric;
import comparand.model.Compared;
import comparand.unit.Rounding;
import java.util.List;

/** How much to measure next, as text for a terminal: every open answer with its numbers and what they rest on. */
public final class Plans {

    private static final int SPREAD_DIGITS = 2;
    private static final int WIDTH = 100;

    private final Run run;

    public Plans(Compared compared) {
        this.run = new Run(compared, Words.of("en"));
    }

    /** All plans of the dossier, and below them what is not known and cannot be planned by numbers. */
    public String text() {
        var unknowns = new UnknownResults(run).all();
        var planned = unknowns.stream().filter(u -> u.plan().isPresent()).toList();
        var others = unknowns.stream().filter(u -> u.plan().isEmpty()).toList();
        var out = new StringBuilder();
        out.append(
                "%s: what to measure next%n%n".formatted(run.dossier().title().value()));
        out.append(wrapped(ASSUMPTIONS, ""));
        if (planned.isEmpty()) {
            out.append("%nNo open answer has a margin, or a difference to be found, and a spread to plan by.%n"
                    .formatted());
        }
        for (var u : planned) {
            out.append(plan(u, u.plan().orElseThrow()));
        }
        if (!others.isEmpty()) {
            out.append("%nNot known, and not a matter of numbers%n".formatted());
            for (var u : others) {
                out.append("%n".formatted()).append(wrapped(u.device() + ": " + u.what() + ".", "  "));
                out.append(wrapped(String.join(" ", u.settles()) + " " + u.who() + ".", "    "));
            }
        }
        // a terminal breaks no lines at words, and what is copied from it should be found again
        return out.toString().replace('\u00a0', ' ').stripTrailing();
    }

    private static final String ASSUMPTIONS = """
            Each number is the size of a whole group in a measurement to come. To find a difference: two-sided t test at 5 %, \
            power from the noncentral t. To narrow an interval: half-width of the 95 % interval, met at the standard deviation \
            assumed with a probability of about a half. Groups of one size and one standard deviation; one result a unit or \
            case. A published mean keeps its own uncertainty (Welch). No power is given for what was done. Results added to \
            those already seen give the same width, but not the same safeguard against a chance finding.""";

    private String plan(UnknownResult u, PlanResult p) {
        var metric = run.library().catalogue().find(u.metrics().get(0)).orElseThrow();
        var out = new StringBuilder("%n".formatted());
        out.append(wrapped(u.device() + ": " + u.what(), ""));
        out.append(wrapped("SD: " + sd(p, metric), "  "));
        out.append("  have: %s%n".formatted(have(p)));
        for (var aim : p.aims()) {
            out.append("  %s%n".formatted(aim(p, aim, metric)));
            for (var n : aim.needed()) {
                out.append("    SD %-7s %-20s %s%s%n"
                        .formatted(
                                number(n.sd()),
                                which(n),
                                needed(n.kind(), n.n().map(String::valueOf).orElse(""), p.unit()),
                                hospitals(n, p)));
            }
        }
        out.append(wrapped("counted " + groups(p) + "; " + reach(p, metric), "  "));
        return out.toString();
    }

    private String sd(PlanResult p, Metric metric) {
        var from = switch (p.sdFrom()) {
            case "declared" -> "as the dossier states";
            case "pooled" -> "of both our groups together";
            default -> "of our own results";
        };
        var atHand = p.aims().get(0).needed().stream()
                .filter(n -> n.which().equals("at-hand"))
                .findFirst()
                .orElseThrow();
        return run.figures().withDifferenceUnit(number(atHand.sd()), metric) + " " + from + "; three quarters of it"
                + p.df().map(df -> ", and its upper 80 % limit on " + number(df) + " degrees of freedom")
                        .orElse("");
    }

    private static String which(NeededResult n) {
        return switch (n.which()) {
            case "smaller" -> "(three quarters)";
            case "upper" -> "(upper 80 % limit)";
            default -> "";
        };
    }

    private static String have(PlanResult p) {
        var theirs = p.theirs().map(n -> " and " + n + " on the other side").orElse("");
        return p.ours().map(n -> n + " " + p.unit()).orElse("none") + theirs;
    }

    private String aim(PlanResult p, AimResult aim, Metric metric) {
        return switch (aim.kind()) {
            case "detect" ->
                "to find a difference of %s with a power of %s %%"
                        .formatted(
                                run.figures().withDifferenceUnit(plain(aim.amount()), metric),
                                run.figures().percent(p.power()));
            case "exclude-margin" ->
                "to leave out the margin, if the difference stays: half-width "
                        + run.figures().withDifferenceUnit(number(aim.amount()), metric);
            default ->
                "to show more than the margin, if the difference stays: half-width "
                        + run.figures().withDifferenceUnit(number(aim.amount()), metric);
        };
    }

    private static String needed(String kind, String n, String unit) {
        return switch (kind) {
            case "number" -> n + " " + unit;
            case "more" -> "more than 1,000 " + unit;
            default -> "no number suffices";
        };
    }

    private static String hospitals(NeededResult n, PlanResult p) {
        return n.hospitalsKind()
                .map(kind -> "; "
                        + needed(kind, n.hospitals().map(String::valueOf).orElse(""), "hospitals")
                        + p.casesEach().map(c -> " of " + c + " cases").orElse(""))
                .orElse("");
    }

    private static String groups(PlanResult p) {
        return switch (p.groups()) {
            case "each-of-two" -> "in each of two groups";
            case "against-published" -> "in our own group, the published mean keeping its uncertainty";
            default -> "in our own group, the printed figure taken as exact but for its rounding";
        };
    }

    private String reach(PlanResult p, Metric metric) {
        return switch (p.reach()) {
            case "one-place" -> "results of one laboratory";
            case "same-hospitals" -> "holds within the same hospitals only";
            default ->
                "hospitals differ by an SD of "
                        + run.figures()
                                .withDifferenceUnit(p.tau().map(this::number).orElse(""), metric);
        };
    }

    private String number(double value) {
        return run.figures().number(value, Rounding.decimalsFor(value, SPREAD_DIGITS));
    }

    private String plain(double value) {
        return run.figures().number(value, Figures.asSet(value));
    }

    /** Lines of at most 100 signs, broken at blanks. */
    private static String wrapped(String text, String indent) {
        var lines = new StringBuilder();
        var line = new StringBuilder(indent);
        for (var word : List.of(text.split(" "))) {
            if (line.length() + word.length() >= WIDTH && !line.toString().isBlank()) {
                lines.append(line.toString().stripTrailing()).append(System.lineSeparator());
                line = new StringBuilder(indent);
            }
            line.append(word).append(' ');
        }
        return lines.append(line.toString().stripTrailing())
                .append(System.lineSeparator())
                .toString();
    }
}
