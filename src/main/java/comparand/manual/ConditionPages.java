package comparand.manual;

import comparand.metric.Catalogue;
import comparand.metric.Condition;
import comparand.metric.ConditionUse;
import comparand.metric.Metric;
import java.util.ArrayList;
import java.util.List;

/** A page for every condition, with the metrics it matters for, and one that lists them. */
final class ConditionPages {

    static final String FOLDER = "conditions/";
    static final String FIRST = FOLDER + "index.html";

    private ConditionPages() {}

    /** A metric and how it depends on a condition. */
    private record Use(Metric metric, ConditionUse use) {}

    static List<Page> of(Catalogue catalogue) {
        var pages = new ArrayList<Page>();
        pages.add(list(catalogue));
        catalogue.conditions().values().forEach(c -> pages.add(page(c, catalogue)));
        return pages;
    }

    private static Page list(Catalogue catalogue) {
        var out = new Html();
        out.p(
                "A condition is a circumstance under which a value was obtained. One that decides must be alike, within its tolerance,"
                        + " before two values are compared; one that qualifies is only named where it differs. What a source does not say is"
                        + " written `not reported`, and never counts as a match.");
        out.table(
                "Conditions",
                List.of("Condition", "Written in records", "Number in, or words", "Metrics"),
                catalogue.conditions().values().stream()
                        .map(c -> Html.cells(
                                Html.link(c.id() + ".html", c.name()),
                                Html.code(c.id()),
                                Html.text(kind(c)),
                                Integer.toString(uses(c, catalogue).size())))
                        .toList());
        return new Page(
                FIRST,
                FIRST,
                "Conditions",
                "What must be alike before like is set beside like.",
                out.toString(),
                List.of());
    }

    private static String kind(Condition c) {
        return c.unit()
                .map(u -> u.named())
                .orElse(c.words().isEmpty() ? "words of your own" : String.join(", ", c.words()));
    }

    private static List<Use> uses(Condition condition, Catalogue catalogue) {
        return catalogue.all().stream()
                .flatMap(m -> m.condition(condition.id()).stream().map(u -> new Use(m, u)))
                .toList();
    }

    private static Page page(Condition c, Catalogue catalogue) {
        var out = new Html();
        var words = c.words().stream().map(Html::code).toList();
        out.facts(
                "In records", Html.code(c.id() + ": " + example(c)),
                "In the condition line", Html.text(c.shortName()),
                "Kept in", c.unit().map(u -> Html.text(u.named())).orElse(""),
                "Words", String.join(", ", words));
        var uses = uses(c, catalogue);
        if (uses.isEmpty()) {
            out.p("No metric of the tool depends on it; a metric of a library may.");
        } else {
            out.h2("Metrics it matters for");
            out.table(
                    "Metrics that depend on " + c.name(),
                    List.of("Metric", "What a difference does", "Counts as the same", "Direction"),
                    uses.stream()
                            .map(u -> Html.cells(
                                    Html.link("../" + MetricPages.FOLDER + u.metric.id() + ".html", u.metric.name()),
                                    CardWords.role(u.use.role()),
                                    Html.text(u.use.tolerance().words()),
                                    Html.text(MetricPages.direction(u.use))))
                            .toList());
        }
        return new Page(
                FOLDER + c.id() + ".html",
                FIRST,
                Html.heading(c.name()),
                "",
                out.toString(),
                List.of(new Page.Term(c.name(), ""), new Page.Term(c.id(), "")));
    }

    private static String example(Condition c) {
        return c.unit()
                .map(u -> "1 " + u.named())
                .orElse(c.words().isEmpty() ? "a few words" : c.words().get(0));
    }
}
