package comparand.compose.page;

import static java.util.Objects.requireNonNull;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.Block;
import comparand.document.Block.Ladder;
import comparand.document.Block.Rung;
import comparand.metric.Metric;
import comparand.model.Comparand;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The way of every value from print or raw data to the number that is used, and the names by which links lead there. */
final class Ladders {

    private final Run run;
    private final Map<String, String> names = new HashMap<>();

    Ladders(Run run) {
        this.run = run;
        var taken = new HashSet<String>();
        run.comparands().forEach(c -> names.put(c.id(), free(c.id().replaceAll("[^A-Za-z0-9._-]+", "-"), taken)));
    }

    /** Ids that differ in other signs only get numbers. */
    private static String free(String wish, Set<String> taken) {
        var name = wish;
        for (int i = 2; !taken.add(name); i++) {
            name = wish + "-" + i;
        }
        return name;
    }

    /** The name of a value's ladder. */
    String name(Comparand comparand) {
        return requireNonNull(names.get(comparand.id()), comparand.id());
    }

    /** All of them, below the names of their metrics. */
    List<Block> blocks() {
        var byMetric = run.comparands().stream()
                .collect(Collectors.groupingBy(Comparand::metric, LinkedHashMap::new, Collectors.toList()));
        var blocks = new ArrayList<Block>();
        byMetric.forEach((metric, values) -> {
            blocks.add(new Block.Heading(ConditionLine.upperFirst(run.terms().metric(metric))));
            values.forEach(c -> blocks.add(ladder(c, metric)));
        });
        return blocks;
    }

    private Ladder ladder(Comparand c, Metric metric) {
        var rungs = new ArrayList<Rung>();
        c.trail()
                .forEach(step -> rungs.add(new Rung(
                        run.words()
                                .term(
                                        "step-kind",
                                        step.kind()
                                                .name()
                                                .toLowerCase(Locale.ROOT)
                                                .replace('_', ' ')),
                        run.trails().of(step),
                        step.formula().isEmpty() ? "" : run.trails().formula(c, step))));
        rungs.add(new Rung(run.words().say("page.static.conditions"), conditions(c), ""));
        rungs.add(new Rung(run.words().say("page.static.footing"), footing(c), ""));
        return new Ladder(
                name(c),
                run.words()
                        .say(
                                "page.static.ladder",
                                "id",
                                c.id(),
                                "device",
                                run.names().device(c.device()),
                                "metric",
                                run.terms().metric(metric),
                                "locator",
                                run.names().locator(c)),
                from(c),
                rungs);
    }

    /** The reference of a published value, the study and file of our own. */
    private String from(Comparand c) {
        return c.origin()
                .fold(p -> p.source().reference().text(), l -> l.study().title().value() + ", " + l.file());
    }

    private String conditions(Comparand c) {
        var said = new ArrayList<String>();
        c.metric()
                .definition()
                .forEach(a -> said.add(run.terms().named(a.name()) + ": "
                        + c.definition()
                                .get(a.id())
                                .map(a::text)
                                .map(run.terms()::variant)
                                .orElseGet(this::notReported)));
        c.conditions()
                .forEach((id, is) -> said.add(run.conditionName(id) + ": "
                        + (is.isReported()
                                ? run.terms()
                                        .circumstance(run.library().catalogue().condition(id), is.text())
                                : notReported())));
        return said.isEmpty() ? run.words().say("none") : String.join("; ", said);
    }

    private String notReported() {
        return run.words().say("not-reported");
    }

    private String footing(Comparand c) {
        return run.summaries().withUnit(c)
                + c.sizes().independent().map(n -> "; " + run.terms().size(n)).orElse("")
                + (SummaryText.isRead(c) ? " (" + run.words().say("page.static.read") + ")" : "");
    }
}
