package comparand.compose.brief;

import comparand.compose.table.SharedTables;
import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.ChangesResult.RecordChangeResult;
import comparand.document.result.CostsResult.CaseCostResult;
import comparand.document.result.CostsResult.CostLineResult;
import comparand.document.result.ResultSet;
import comparand.document.result.RowLogResult.LabelUseResult;
import comparand.document.result.SourceResult;
import comparand.model.Comparand;
import comparand.model.library.Price;
import comparand.model.library.SourceRecord;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What documents state, use outside the label, costs, changes and sources, as short as two pages ask for. */
final class Facts {

    private static final int MOST_PROPERTIES = 12;
    private static final int MOST_CHANGES = 4;

    private final Run run;
    private final Cells cells;
    private final ResultSet results;

    Facts(Run run, Cells cells, ResultSet results) {
        this.run = run;
        this.cells = cells;
        this.results = results;
    }

    /** The rows of the table of characteristics, each with its place behind it; the documents stand in the headings. */
    List<Block> characteristics() {
        var whole = new SharedTables(run, results).characteristics();
        var columns = new ArrayList<Column>(List.of(cells.name("col.property", 32)));
        run.dossier().devices().forEach(d -> columns.add(new Column(heading(d.value()), 40, Align.LEFT, false)));
        var rows = new ArrayList<List<Cell>>();
        var stated = whole.rows().stream().map(r -> r.get(1).shown()).toList();
        whole.rows().stream()
                .filter(r -> isNews(r, stated))
                .limit(MOST_PROPERTIES)
                .forEach(r -> {
                    var row = new ArrayList<Cell>(List.of(r.get(1)));
                    for (int c = 2; c + 1 < r.size(); c += 2) {
                        boolean placed =
                                !r.get(c + 1).shown().equals(run.words().say("not-applicable"));
                        row.add(
                                placed
                                        ? Cell.words(r.get(c).shown() + " ("
                                                + r.get(c + 1).shown() + ")")
                                        : r.get(c));
                    }
                    rows.add(row);
                });
        if (rows.isEmpty()) {
            rows.add(cells.nothing(columns.size()));
        }
        return List.of(new Table("BriefCharacteristics", "", columns, rows, List.of()));
    }

    /** A limit of use in a number that a property says again in words stands there only. */
    private boolean isNews(List<Cell> row, List<String> properties) {
        var name = row.get(1).shown().replaceFirst(" .*", "");
        return !row.get(0).shown().equals(run.words().term("block", "label"))
                || properties.stream().noneMatch(p -> p.startsWith("labelled ") && p.endsWith(" " + name));
    }

    private String heading(String device) {
        var source = run.library()
                .device(device)
                .flatMap(d -> run.library().source(d.instructions().value()))
                .orElseThrow();
        return run.words()
                .say(
                        "brief.instructions",
                        "device",
                        run.names().device(device),
                        "number",
                        String.valueOf(run.names().number(source.id())),
                        "revision",
                        source.document()
                                .map(d -> run.terms().revision(d))
                                .orElseGet(() -> run.words().say("not-reported")));
    }

    /** Devices that were used outside their label, then how often the others were not. */
    String outsideLabel() {
        var ofCases = results.rowLog().outsideLabel().stream()
                .filter(l -> l.level().equals("cases") || l.level().equals("patients"))
                .sorted(Comparator.comparing(l -> l.outside() == 0))
                .map(this::outside)
                .toList();
        return ofCases.isEmpty() ? run.words().say("committee.no-cases") : String.join("; ", ofCases) + ".";
    }

    private String outside(LabelUseResult l) {
        return run.words()
                .say(
                        l.outside() == 0 ? "brief.outside-none" : "brief.outside",
                        "device",
                        run.names().device(l.device()),
                        "outside",
                        String.valueOf(l.outside()),
                        "of",
                        String.valueOf(l.of()),
                        "condition",
                        run.terms().named(l.condition()),
                        "limit",
                        run.terms().quantity(l.limit()));
    }

    /** One line a device: the cost, or that it is not supplied, and what it is made of. */
    String costs() {
        if (results.costs().lines().isEmpty()) {
            return run.words().say("committee.costs-none");
        }
        var lines = new ArrayList<String>();
        results.costs().perCase().forEach(c -> lines.add(cost(c)));
        var ofAll = of(Comparand.ALL_DEVICES);
        if (!ofAll.isEmpty()) {
            lines.add(
                    run.words().say("committee.cost", "device", run.words().say("all-devices"), "cost", items(ofAll)));
        }
        return String.join("\n", lines);
    }

    private List<CostLineResult> of(String device) {
        return results.costs().lines().stream()
                .filter(l -> l.device().equals(device))
                .toList();
    }

    private String cost(CaseCostResult c) {
        var cost = c.cost().map(this::money).orElseGet(() -> run.words().say("costs.not-supplied"));
        var own = of(c.device());
        return run.words()
                .say(
                        "committee.cost",
                        "device",
                        run.names().device(c.device()),
                        "cost",
                        own.isEmpty() ? cost : cost + ": " + items(own));
    }

    /** Items told by the same on the same day stand together, and what is not included last. */
    private String items(List<CostLineResult> lines) {
        var told = new LinkedHashMap<String, List<String>>();
        lines.forEach(l -> told.computeIfAbsent(l.givenBy() + ", " + l.on(), k -> new ArrayList<>())
                .add(l.item() + " " + l.priceText()));
        var without =
                lines.stream().flatMap(l -> l.notIncluded().stream()).distinct().collect(Collectors.joining(", "));
        var items = told.entrySet().stream()
                .map(e -> String.join(", ", e.getValue()) + " (" + e.getKey() + ")")
                .collect(Collectors.joining("; "));
        return without.isEmpty() ? items : items + "; " + run.words().say("brief.cost-without", "without", without);
    }

    private String money(double amount) {
        int decimals = run.dossier().costs().stream()
                .flatMap(c -> c.price().value().price().stream())
                .map(Price::amount)
                .mapToInt(a -> a.decimals())
                .max()
                .orElse(0);
        return run.figures().number(amount, decimals) + "\u00a0"
                + results.costs().currency().orElse("");
    }

    String changes() {
        var since = results.changes().since();
        if (since.isEmpty()) {
            return run.words().say("committee.no-since");
        }
        var lines = new ArrayList<String>();
        lines.add(run.words()
                .say(
                        results.changes().changes().isEmpty() ? "committee.nothing-changed" : "brief.changed",
                        "since",
                        since.get()));
        results.changes().changes().stream()
                .limit(MOST_CHANGES)
                .map(this::change)
                .forEach(lines::add);
        if (results.changes().changes().size() > MOST_CHANGES) {
            lines.add(run.words().say("committee.more-changes"));
        }
        return lines.get(0) + " " + String.join("\n", lines.subList(1, lines.size()));
    }

    private String change(RecordChangeResult c) {
        return run.words()
                .say(
                        c.compared() == 0 ? "committee.change" : "committee.change-compared",
                        "on",
                        c.on(),
                        "what",
                        c.what(),
                        "before",
                        c.before(),
                        "after",
                        c.after(),
                        "cause",
                        c.cause(),
                        "n",
                        String.valueOf(c.compared()));
    }

    /** Numbers as locators use them. */
    String sources() {
        var listed = results.sources().stream().map(this::source).collect(Collectors.joining("; ")) + ".";
        return results.screening()
                .map(s -> s.flow())
                .map(f -> run.words()
                        .say(
                                "committee.screening",
                                "sources",
                                listed,
                                "found",
                                String.valueOf(f.identified()),
                                "assessed",
                                String.valueOf(f.assessed()),
                                "reports",
                                String.valueOf(f.reports()),
                                "studies",
                                String.valueOf(f.studies())))
                .orElse(listed);
    }

    /** Values that take no part, with reasons; none where all do. */
    Optional<String> setAside() {
        return results.setAside().isEmpty()
                ? Optional.empty()
                : Optional.of(results.setAside().stream()
                                .map(a -> run.words()
                                        .say(
                                                "brief.aside",
                                                "value",
                                                a.value(),
                                                "locator",
                                                a.locator(),
                                                "why",
                                                a.words()))
                                .collect(Collectors.joining("; "))
                        + ".");
    }

    private String source(SourceResult s) {
        var record = run.library().source(s.id());
        return run.words()
                .say(
                        s.state().equals("current") ? "brief.source" : "brief.source-state",
                        "number",
                        String.valueOf(s.number()),
                        "first",
                        record.flatMap(Facts::first).orElse(s.id()),
                        "year",
                        record.flatMap(r -> r.reference().issued())
                                .map(d -> String.valueOf(d.value().earliest().getYear()))
                                .orElseGet(() -> run.words().say("not-reported")),
                        "kind",
                        run.words().term("source-kind", s.kind().replace('-', ' ')),
                        "funding",
                        run.words().term("funding", s.funding()),
                        "state",
                        run.words().term("source-state", s.state()));
    }

    private static Optional<String> first(SourceRecord source) {
        var authors = source.reference().author();
        return authors.stream().findFirst().map(a -> a.text() + (authors.size() > 1 ? " et al." : ""));
    }
}
