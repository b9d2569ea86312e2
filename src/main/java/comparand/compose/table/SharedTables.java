package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.FindingResult;
import comparand.document.result.QuestionResult;
import comparand.document.result.QuestionResult.ToleranceResult;
import comparand.document.result.ResultSet;
import comparand.document.result.SetAsideResult;
import comparand.document.result.SourceResult;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.library.DeviceRecord;
import comparand.model.library.SourceRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;

/** Tables that stand in every document alike: sources, what was set aside, tolerances, findings, characteristics. */
public final class SharedTables {

    private final Run run;
    private final ResultSet results;
    private final Cells cells;

    public SharedTables(Run run, ResultSet results) {
        this.run = run;
        this.results = results;
        this.cells = new Cells(run);
    }

    public Table sources() {
        var columns = List.of(
                cells.number("col.number", 5),
                cells.text("col.reference", 60),
                cells.text("col.kind", 18),
                cells.text("col.revision", 16),
                cells.text("col.funding", 13),
                cells.text("col.reported", 12),
                cells.text("col.missing", 34),
                cells.text("col.status", 12),
                cells.text("col.checked", 12));
        return new Table(
                "Sources",
                "",
                columns,
                results.sources().stream().map(this::source).toList(),
                List.of());
    }

    private List<Cell> source(SourceResult s) {
        return List.of(
                run.figures().cell(s.number(), 0, "", ""),
                Cell.words(s.reference()),
                cells.term("source-kind", s.kind().replace('-', ' ')),
                s.revision().map(Cell::words).orElseGet(cells::none),
                cells.term("funding", s.funding()),
                s.conditionsDeciding() == 0
                        ? cells.none()
                        : Cell.words(run.words()
                                .say(
                                        "n-of",
                                        "n",
                                        String.valueOf(s.conditionsReported()),
                                        "of",
                                        String.valueOf(s.conditionsDeciding()))),
                s.missing().isEmpty() ? cells.word("none") : Cell.words(String.join(", ", s.missing())),
                cells.term("source-state", s.state()),
                new Cell.Day(LocalDate.parse(s.checked())));
    }

    public Table setAside() {
        var columns = List.of(
                cells.name("col.id", 8),
                cells.text("col.locator", 12),
                cells.text("col.device", 16),
                cells.text("col.metric", 30),
                cells.text("col.printed", 22),
                cells.text("col.reason", 60));
        var rows = results.setAside().stream().map(this::aside).toList();
        return new Table("SetAside", "", columns, rows.isEmpty() ? List.of(nothing(columns.size())) : rows, List.of());
    }

    private List<Cell> aside(SetAsideResult a) {
        return List.of(
                Cell.verbatim(a.value()),
                Cell.words(a.locator()),
                Cell.words(run.names().device(a.device())),
                Cell.words(metricName(a.metric())),
                Cell.words(a.printed()),
                Cell.words(a.words()));
    }

    Table tolerances() {
        var columns = List.of(
                cells.name("col.metric", 30),
                cells.text("col.condition", 34),
                cells.text("col.role", 11),
                cells.text("col.tolerance", 24),
                cells.text("col.set-by", 70));
        var rows = new ArrayList<List<Cell>>();
        for (QuestionResult question : results.questions()) {
            question.tolerances()
                    .forEach(t -> rows.add(List.of(
                            Cell.words(question.name()),
                            Cell.words(t.name()),
                            cells.word("role." + t.role()),
                            Cell.words(t.tolerance()),
                            Cell.words(t.from()))));
        }
        return new Table("Tolerances", "", columns, rows, List.of());
    }

    /** The same in one row a metric, for a page. */
    public Table tolerancesByMetric() {
        var columns = List.of(
                cells.name("col.metric", 26),
                cells.text("col.decides", 80),
                cells.text("col.qualifies", 46),
                cells.text("col.own", 46));
        var rows = new ArrayList<List<Cell>>();
        for (QuestionResult question : results.questions()) {
            rows.add(List.of(
                    Cell.words(question.name()),
                    joined(question, t -> t.role().equals("decides"), t -> t.name() + " " + t.tolerance()),
                    joined(question, t -> t.role().equals("qualifies"), t -> t.name() + " " + t.tolerance()),
                    joined(
                            question,
                            t -> !t.from().equals(run.words().say("set-by.catalogue")),
                            t -> t.name() + ": " + t.from())));
        }
        return new Table("Tolerances", "", columns, rows, List.of());
    }

    private Cell joined(
            QuestionResult question, Predicate<ToleranceResult> which, Function<ToleranceResult, String> text) {
        var parts = question.tolerances().stream().filter(which).map(text).toList();
        return parts.isEmpty() ? cells.word("none") : Cell.words(String.join("; ", parts));
    }

    public Table findings() {
        var columns = List.of(
                cells.text("col.severity", 11),
                cells.name("col.code", 22),
                cells.text("col.where", 34),
                cells.text("col.message", 60),
                cells.text("col.why", 44),
                cells.text("col.fix", 44));
        var rows = results.findings().stream().map(this::finding).toList();
        return new Table("Findings", "", columns, rows.isEmpty() ? List.of(nothing(columns.size())) : rows, List.of());
    }

    private List<Cell> finding(FindingResult f) {
        return List.of(
                cells.term("severity", f.severity()),
                Cell.words(f.code()),
                Cell.words(f.file() + f.cell().map(c -> ", " + c).orElse(":" + f.line() + ":" + f.column())),
                Cell.words(ConditionLine.upperFirst(f.message())),
                Cell.words(ConditionLine.upperFirst(f.why())),
                Cell.words(ConditionLine.upperFirst(f.fix())));
    }

    private List<Cell> nothing(int columns) {
        var row = new ArrayList<Cell>();
        row.add(cells.word("none"));
        while (row.size() < columns) {
            row.add(cells.none());
        }
        return row;
    }

    /** What documents state of each device, property by property; two columns a device, the words and their place. */
    public Table characteristics() {
        var columns = new ArrayList<>(List.of(cells.text("col.block", 12), cells.name("col.property", 28)));
        var devices = run.dossier().devices().stream()
                .map(d -> run.library().device(d.value()).orElseThrow())
                .toList();
        for (var device : devices) {
            columns.add(new Column(device.displayName(), 30, Align.LEFT, false));
            columns.add(new Column(device.briefName() + ": " + run.words().say("col.place"), 10, Align.LEFT, false));
        }
        var rows = new ArrayList<List<Cell>>();
        properties(devices).forEach((property, byDevice) -> rows.add(row(property, byDevice, devices)));
        return new Table("Characteristics", "", columns, rows, List.of());
    }

    private record Property(String block, String name) {}

    private record Stated(String text, String locator) {}

    private Map<Property, Map<String, Stated>> properties(List<DeviceRecord> devices) {
        var all = new LinkedHashMap<Property, Map<String, Stated>>();
        for (var device : devices) {
            var result = results.devices().stream()
                    .filter(d -> d.id().equals(device.id()))
                    .findFirst()
                    .orElseThrow();
            result.label().forEach(s -> put(all, new Property("label", s.name()), device, s.is(), s.locator()));
            stated(device).forEach(s -> put(all, s.property, device, s.stated.text, s.stated.locator));
            result.characteristics()
                    .forEach(s -> put(all, new Property(s.block(), s.name()), device, s.is(), s.locator()));
        }
        return all;
    }

    private static void put(
            Map<Property, Map<String, Stated>> all, Property property, DeviceRecord device, String is, String locator) {
        all.computeIfAbsent(property, p -> new LinkedHashMap<>()).put(device.id(), new Stated(is, locator));
    }

    private record StatedProperty(Property property, Stated stated) {}

    /** Nominal figures recorded from the instructions for use in force, as printed. */
    private List<StatedProperty> stated(DeviceRecord device) {
        SourceRecord source =
                run.library().source(device.instructions().value()).orElseThrow();
        return source.values().stream()
                .filter(v -> v.device().value().equals(device.id()))
                .filter(v -> isNominal(
                        run.library().catalogue().find(v.metric().value()).orElseThrow(), device))
                .map(v -> new StatedProperty(
                        new Property("technical", metricName(v.metric().value())),
                        new Stated(v.printed().value(), run.names().locator(source, v))))
                .toList();
    }

    /** Limits of use stand among the properties already. */
    private static boolean isNominal(Metric metric, DeviceRecord device) {
        return metric.nature() == Nature.STATED
                && metric.limits().flatMap(device::limit).isEmpty();
    }

    private List<Cell> row(Property property, Map<String, Stated> byDevice, List<DeviceRecord> devices) {
        var row = new ArrayList<Cell>(List.of(cells.term("block", property.block), Cell.words(property.name)));
        for (var device : devices) {
            var stated = byDevice.get(device.id());
            row.add(stated == null ? cells.notReported() : Cell.words(stated.text));
            row.add(stated == null ? cells.none() : Cell.words(stated.locator));
        }
        return row;
    }

    private String metricName(String id) {
        return run.library().catalogue().find(id).map(run.terms()::metric).orElse(id);
    }
}
