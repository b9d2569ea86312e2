package comparand.manual;

import comparand.metric.Aspect;
import comparand.metric.Catalogue;
import comparand.metric.ConditionUse;
import comparand.metric.Definition;
import comparand.metric.Derivation;
import comparand.metric.Effect;
import comparand.metric.Gathering;
import comparand.metric.Metric;
import comparand.metric.Variant;
import comparand.metric.WorkedAgain;
import comparand.metric.WorkedValue;
import comparand.unit.Printed;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** A page for every metric that the tool ships, and one that lists them. */
final class MetricPages {

    static final String FOLDER = "metrics/";
    static final String FIRST = FOLDER + "index.html";

    private final Catalogue catalogue;

    private MetricPages(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    static List<Page> of(Catalogue catalogue) {
        var these = new MetricPages(catalogue);
        var pages = new ArrayList<Page>();
        pages.add(these.list());
        catalogue.all().forEach(m -> pages.add(these.page(m)));
        return pages;
    }

    private Page list() {
        var out = new Html();
        out.p(
                "A metric says what a number means: its unit, its formula, what must be alike before two values of it are set against"
                        + " each other. A library may declare more of them in its folder `metrics/`.");
        out.table(
                "Metrics",
                List.of("Metric", "Written in records", "Unit", "Favourable"),
                catalogue.all().stream()
                        .map(m -> Html.cells(
                                Html.link(m.id() + ".html", m.name()),
                                Html.code(m.id()),
                                Html.text(m.unit().named()),
                                CardWords.lower(m.better())))
                        .toList());
        return new Page(
                FIRST, FIRST, "Metrics", "What each number means, and where that is said.", out.toString(), List.of());
    }

    private Page page(Metric m) {
        var out = new Html();
        out.facts(
                "In records", Html.code("metric: " + m.id()),
                "Letter", Html.text(m.symbol()),
                "Unit", Html.text(m.unit().named()),
                "Kind", CardWords.lower(m.nature()),
                "Favourable", CardWords.lower(m.better()),
                "Usual range", Html.text(CardWords.bounds(m.plausible()) + unit(m)),
                "Possible range", Html.text(CardWords.bounds(m.possible()) + unit(m)));
        if (!m.derivations().isEmpty()) {
            out.h2(m.derivations().size() == 1 ? "Formula" : "Formulas");
            m.derivations().forEach(d -> derivation(d, out));
        }
        if (!m.definition().isEmpty()) {
            out.h2("Definition");
            out.p("Sources differ in these respects; a value says under `definition:` which it follows.");
            m.definition().forEach(a -> aspect(a, out));
        }
        conditions(m, out);
        out.h2("Sources");
        out.items(m.citations().stream()
                .distinct()
                .map(c -> Html.text(c.toString()))
                .toList());
        if (!m.worked().isEmpty()) {
            worked(m, out);
        }
        if (!m.confusedWith().isEmpty()) {
            out.h2("Not to be confused with");
            out.items(m.confusedWith().stream().map(this::named).toList());
        }
        return new Page(
                FOLDER + m.id() + ".html",
                FIRST,
                Html.heading(m.name()),
                Html.sentence(m.meaning()),
                out.toString(),
                List.of(new Page.Term(m.name(), ""), new Page.Term(m.id(), "")));
    }

    private static String unit(Metric m) {
        return m.unit().isNumber() ? "" : " " + m.unit().spelling();
    }

    private String named(String id) {
        return catalogue
                .find(id)
                .map(m -> Html.link(id + ".html", m.name()))
                .orElseGet(() -> Html.code(id)
                        + catalogue
                                .input(id)
                                .map(i -> ", " + Html.text(i.meaning()))
                                .orElse(""));
    }

    private static void derivation(Derivation d, Html out) {
        out.raw("<p class=\"formula\">" + Html.text(d.formula()) + "</p>");
        if (!d.inputs().isEmpty()) {
            out.table(
                    "Letters of " + d.formula(),
                    List.of("Letter", "Meaning", "Unit", "In a mapping"),
                    d.inputs().stream()
                            .map(i -> Html.cells(
                                    Html.text(i.symbol()),
                                    Html.text(i.meaning()),
                                    Html.text(i.unit().named()),
                                    Html.code(i.id())))
                            .toList());
        }
        var notes = new ArrayList<String>();
        d.gives()
                .aspects()
                .forEach((aspect, words) ->
                        notes.add("Gives " + Html.code(aspect + ": " + String.join(" + ", words)) + "."));
        if (!(d.gathering() instanceof Gathering.EachRow)) {
            notes.add("Rows: " + Html.text(GatheringText.of(d.gathering())) + ".");
        }
        d.applies().forEach(a -> notes.add(Html.text(Html.sentence(a.toString()))));
        notes.add("Source: " + Html.text(d.citation().toString()) + ".");
        out.items(notes);
    }

    private static void aspect(Aspect aspect, Html out) {
        out.h3(Html.heading(aspect.name()), "aspect-" + aspect.id());
        out.p("`%s:` %s.".formatted(aspect.id(), CardWords.role(aspect.role())));
        aspect.fold(
                choice -> {
                    out.table(
                            "Variants of " + aspect.name(),
                            List.of("Variant", "Meaning"),
                            choice.variants().stream()
                                    .map(v -> variant(v, choice))
                                    .toList());
                    if (!choice.conversions().isEmpty()) {
                        out.items(choice.conversions().stream()
                                .map(c -> "%s becomes %s: %s"
                                        .formatted(Html.code(c.from()), Html.code(c.to()), Html.text(c.formula())))
                                .toList());
                    }
                    return true;
                },
                parts -> {
                    out.p("Any of %s%s."
                            .formatted(
                                    String.join(", ", parts.words()),
                                    parts.additive() ? "; the whole is the sum of its parts" : ""));
                    return true;
                });
    }

    private static List<String> variant(Variant v, Aspect.Choice choice) {
        return Html.cells(
                Html.code(v.id()),
                Html.text(v.meaning()) + (v.id().equals(choice.usual()) ? " (local results follow it)" : ""));
    }

    private void conditions(Metric m, Html out) {
        if (m.conditions().isEmpty()) {
            return;
        }
        out.h2("Conditions");
        out.table(
                "Conditions of " + m.name(),
                List.of("Condition", "What a difference does", "Counts as the same", "Direction"),
                m.conditions().stream().map(MetricPages::condition).toList());
        m.interpolatesOver()
                .ifPresent(
                        over -> out.p("Between two published values it may be read off along `%s`.".formatted(over)));
    }

    private static List<String> condition(ConditionUse use) {
        return Html.cells(
                Html.link(
                        "../" + ConditionPages.FOLDER + use.condition().id() + ".html",
                        use.condition().name()),
                CardWords.role(use.role()),
                Html.text(use.tolerance().words()),
                Html.text(direction(use)));
    }

    /** What more of a condition, or one of its words, does to the value. */
    static String direction(ConditionUse use) {
        var influence = use.influence();
        var said = new ArrayList<String>();
        if (influence.more() != Effect.NOT_PREDICTABLE) {
            said.add("more of it %s the value".formatted(CardWords.lower(influence.more())));
        }
        new TreeMap<>(influence.instead())
                .forEach((word, e) -> said.add("under %s it %s the value".formatted(word, CardWords.lower(e))));
        var text = String.join("; ", said);
        return text.isEmpty() || influence.because().isEmpty() ? text : text + ": " + influence.because();
    }

    private static void worked(Metric m, Html out) {
        out.h2("Worked values");
        out.p("Computed again when this page was made; the printed result must come out to its last digit.");
        out.table(
                "Worked values of " + m.name(),
                List.of("Printed result", "Computed", "From", "Where"),
                m.worked().stream().map(w -> worked(m, w)).toList());
    }

    private static List<String> worked(Metric m, WorkedValue w) {
        double computed = WorkedAgain.of(m, w);
        double printed = w.result().in(m.unit());
        if (Math.abs(computed - printed) > w.result().halfUnitIn(m.unit()) * (1 + 1e-9)) {
            throw new IllegalStateException("%s gives %s, not %s".formatted(m.id(), computed, w.result()));
        }
        var inputs = new ArrayList<String>();
        new TreeMap<>(w.inputs()).forEach((id, value) -> inputs.add(Html.code(id) + " " + Html.text(value)));
        if (!w.definition().equals(Definition.NONE)) {
            inputs.add("under " + Html.text(w.definition().toString()));
        }
        return Html.cells(
                Html.text(w.result().toString()),
                Html.text(shown(computed, w.result(), m)),
                String.join("<br>", inputs),
                Html.text(w.citation().toString()));
    }

    /** With two digits more than were printed, in the unit of the metric. */
    private static String shown(double computed, Printed result, Metric m) {
        int decimals = Math.max(0, (int) Math.ceil(-Math.log10(2 * result.halfUnitIn(m.unit())))) + 2;
        return Rounding.halfUp(computed, decimals).toPlainString() + unit(m);
    }
}
