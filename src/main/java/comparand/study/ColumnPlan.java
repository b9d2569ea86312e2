package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.metric.Aspect;
import comparand.metric.Condition;
import comparand.metric.Definition;
import comparand.metric.Input;
import comparand.metric.Nature;
import comparand.model.Library;
import comparand.model.RowSource;
import comparand.model.library.ColumnRecord;
import comparand.model.library.ColumnRole;
import comparand.model.library.DataFileRecord;
import comparand.model.library.Entries;
import comparand.model.library.OneOrMore;
import comparand.model.library.SampleUnit;
import comparand.unit.DecimalSign;
import comparand.unit.PrintedNumber;
import comparand.unit.TradeSpelling;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How each column of one data file is read; built once, then applied to every row. */
final class ColumnPlan {

    /** Reads one cell into the row that is being put together. */
    private interface CellReader {
        void read(String cell, RowDraft row);
    }

    private record Column(String heading, int index, CellReader reader) {}

    /** A row on its way: filled cell by cell. */
    private static final class RowDraft {
        private final int line;
        private final CellFaults faults;
        private int cell;
        private boolean whole = true;
        private Optional<String> device = Optional.empty();
        private final Map<SampleUnit, String> members = new HashMap<>();
        private final Map<String, Measured> numbers = new HashMap<>();
        private final Map<String, String> words = new HashMap<>();
        private final Map<String, Boolean> events = new HashMap<>();
        private Definition definition = Definition.NONE;

        RowDraft(int line, CellFaults faults) {
            this.line = line;
            this.faults = faults;
        }

        void fault(String code, String column, String message, String fix) {
            whole = false;
            faults.add(code, column, line, cell, message, fix);
        }
    }

    private final Library library;
    private final DataFileRecord mapping;
    private final RowSource rows;
    private final List<Diagnostic> findings;
    private final List<Column> columns = new ArrayList<>();
    private final Set<String> missing = new HashSet<>();

    private ColumnPlan(Library library, DataFileRecord mapping, RowSource rows, List<Diagnostic> findings) {
        this.library = library;
        this.mapping = mapping;
        this.rows = rows;
        this.findings = findings;
        mapping.missing().ifPresent(m -> m.list().forEach(code -> missing.add(code.value())));
    }

    /** The plan for a file; empty when its mapping has a fault, which was added to the findings. */
    static Optional<ColumnPlan> of(Library library, DataFileRecord mapping, RowSource rows, List<Diagnostic> findings) {
        int before = findings.size();
        var plan = new ColumnPlan(library, mapping, rows, findings);
        plan.build();
        return findings.size() == before ? Optional.of(plan) : Optional.empty();
    }

    /** One row's facts; empty if a cell could not be read, which was added to the faults. */
    Optional<RowFacts> read(RowSource.Row row, CellFaults faults) {
        var draft = new RowDraft(row.line(), faults);
        if (row.cells().size() != rows.header().size()) {
            draft.fault(
                    "row-length",
                    "(all)",
                    "this row has %d cells under %d headings"
                            .formatted(row.cells().size(), rows.header().size()),
                    "check separators and quotes in this row");
            return Optional.empty();
        }
        for (var column : columns) {
            draft.cell = column.index;
            var cell = row.cells().get(column.index);
            if (!cell.isEmpty() && !missing.contains(cell)) {
                column.reader.read(cell, draft);
            }
        }
        if (draft.device.isEmpty() && draft.whole) {
            draft.cell = 0;
            draft.fault(
                    "device-missing",
                    "(device)",
                    "this row names no device",
                    "name the device, or list the row under `dropped:` with a reason");
        }
        return draft.whole
                ? Optional.of(new RowFacts(
                        row.line(),
                        draft.device.orElseThrow(),
                        draft.members,
                        draft.numbers,
                        draft.words,
                        draft.events,
                        draft.definition))
                : Optional.empty();
    }

    /** Whether some column gives the members of a level. */
    boolean holds(ColumnRole role) {
        return mapping.columns().stream()
                .anyMatch(c -> c.value()
                        .holds()
                        .map(Located::value)
                        .filter(role::equals)
                        .isPresent());
    }

    /** The aspects of the definition that vary from row to row. */
    List<String> definedByRow() {
        return mapping.columns().stream()
                .flatMap(c -> c.value().definition().map(Located::value).stream())
                .sorted()
                .toList();
    }

    /** The quantities that some column gives, by id, with the heading of the column. */
    Map<String, String> quantities() {
        var given = new HashMap<String, String>();
        mapping.columns().stream().forEach(c -> {
            c.value().input().ifPresent(i -> given.put(i.value(), c.key().value()));
            c.value().metric().ifPresent(i -> given.put(i.value(), c.key().value()));
            c.value().condition().ifPresent(i -> given.put(i.value(), c.key().value()));
        });
        return given;
    }

    private void build() {
        var headings = rows.header();
        for (var entry : mapping.columns().list()) {
            int index = headings.indexOf(entry.key().value());
            if (index < 0) {
                stop(
                        "column-missing",
                        entry.key(),
                        "`%s` has no column `%s`"
                                .formatted(rows.file(), entry.key().value()),
                        "what the column was to give would be missing from every row",
                        Suggest.instruction(entry.key().value(), headings));
            } else {
                reader(entry).ifPresent(r -> columns.add(new Column(entry.key().value(), index, r)));
            }
        }
        for (int i = 0; i < headings.size(); i++) {
            var heading = headings.get(i);
            if (!mapping.columns().has(heading)) {
                findings.add(Diagnostic.stop(
                        "column-unmapped",
                        rows.place(1, i),
                        "the column `%s` is not mapped".formatted(heading),
                        "a column overlooked is a quantity lost",
                        "add `%s: {holds: ignored}` or say what it holds, under `columns:` of this file"
                                .formatted(heading)));
            }
        }
        if (!holds(ColumnRole.DEVICE)) {
            stop(
                    "column-missing",
                    mapping.file(),
                    "no column of `%s` holds the device"
                            .formatted(mapping.file().value()),
                    "a result belongs to a device",
                    "add `{holds: device, codes: {...}}` to the column that names it");
        }
    }

    private Optional<CellReader> reader(Entries.Entry<ColumnRecord> entry) {
        var column = entry.value();
        var heading = entry.key().value();
        if (column.holds().isPresent()) {
            return Optional.of(member(column.holds().get().value(), heading, column));
        }
        if (column.input().isPresent()) {
            return input(column.input().get(), column, heading);
        }
        if (column.condition().isPresent()) {
            return condition(column.condition().get(), column, heading);
        }
        return column.metric().isPresent()
                ? metric(column.metric().get(), column, heading)
                : aspect(column.definition().orElseThrow(), column, heading);
    }

    private CellReader member(ColumnRole role, String heading, ColumnRecord column) {
        return switch (role) {
            case IGNORED, CENTRE -> (cell, row) -> {};
            case DEVICE ->
                (cell, row) -> {
                    var id = decoded(cell, column).orElse(cell);
                    if (library.device(id).isPresent()) {
                        row.device = Optional.of(id);
                    } else {
                        row.fault(
                                "device-unknown",
                                heading,
                                "`%s` stands for no device of the library".formatted(cell),
                                "add it to `codes:` of this column, or write devices/%s.yaml".formatted(id));
                    }
                };
            case UNIT -> (cell, row) -> row.members.put(SampleUnit.UNITS, cell);
            case RUN -> (cell, row) -> row.members.put(SampleUnit.RUNS, cell);
            case CASE -> (cell, row) -> row.members.put(SampleUnit.CASES, cell);
        };
    }

    private Optional<CellReader> input(Located<String> id, ColumnRecord column, String heading) {
        var inputs = library.catalogue().inputs();
        var known = Optional.ofNullable(inputs.get(id.value()));
        if (known.isEmpty()) {
            stop(
                    "input-unknown",
                    id,
                    "no formula asks for `%s`".formatted(id.value()),
                    "the column would be read and never used",
                    Suggest.instruction(id.value(), inputs.keySet()));
            return Optional.empty();
        }
        return number(id, column, heading, known.map(Input::unit));
    }

    private Optional<CellReader> condition(Located<String> id, ColumnRecord column, String heading) {
        var conditions = library.catalogue().conditions();
        var known = Optional.ofNullable(conditions.get(id.value()));
        if (known.isEmpty()) {
            stop(
                    "condition-unknown",
                    id,
                    "`%s` is not a condition known here".formatted(id.value()),
                    "nobody could say whether two values share it",
                    Suggest.instruction(id.value(), conditions.keySet()));
            return Optional.empty();
        }
        return known.get().isNumber()
                ? number(id, column, heading, known.flatMap(Condition::unit))
                : Optional.of((cell, row) ->
                        row.words.put(id.value(), decoded(cell, column).orElse(cell)));
    }

    private Optional<CellReader> metric(Located<String> id, ColumnRecord column, String heading) {
        var metric = library.catalogue().find(id.value());
        if (metric.isEmpty()) {
            stop(
                    "metric-unknown",
                    id,
                    "`%s` is not a metric known here".formatted(id.value()),
                    "its values could not be compared with anything",
                    Suggest.instruction(id.value(), library.catalogue().ids()));
            return Optional.empty();
        }
        if (metric.get().nature() != Nature.EVENT) {
            return number(id, column, heading, Optional.of(metric.get().unit()));
        }
        return Optional.of((cell, row) -> {
            var word = decoded(cell, column).orElse(cell);
            if (word.equals("yes") || word.equals("no")) {
                row.events.put(id.value(), word.equals("yes"));
            } else {
                row.fault(
                        "code-unknown",
                        heading,
                        "`%s` is neither yes nor no".formatted(cell),
                        "add its meaning to `codes:` of this column: `{%s: yes}` or `{%s: no}`".formatted(cell, cell));
            }
        });
    }

    private Optional<CellReader> aspect(Located<String> id, ColumnRecord column, String heading) {
        var words = new HashSet<String>();
        library.catalogue().all().stream()
                .flatMap(m -> m.definition().stream())
                .filter(a -> a.id().equals(id.value()))
                .map(Aspect::words)
                .forEach(words::addAll);
        if (words.isEmpty()) {
            stop(
                    "aspect-unknown",
                    id,
                    "no metric has an aspect `%s` in its definition".formatted(id.value()),
                    "the column would be read and never used",
                    "use `parts` or an aspect that `comparand catalogue METRIC` lists");
            return Optional.empty();
        }
        for (var code : column.codes().list()) {
            for (var word : code.value().list()) {
                if (!words.contains(word.value())) {
                    stop(
                            "variant-unknown",
                            word,
                            "`%s` is not a variant of `%s`".formatted(word.value(), id.value()),
                            "rows under it could not be matched with anything",
                            Suggest.instruction(word.value(), words));
                }
            }
        }
        return Optional.of((cell, row) -> {
            var meant = column.codes()
                    .get(cell)
                    .map(OneOrMore::list)
                    .map(l -> l.stream().map(Located::value).toList());
            if (meant.isPresent()) {
                row.definition = row.definition.with(id.value(), meant.get());
            } else if (words.contains(cell)) {
                row.definition = row.definition.with(id.value(), List.of(cell));
            } else {
                row.fault(
                        "code-unknown",
                        heading,
                        "`%s` is not a code of this column".formatted(cell),
                        "add its meaning to `codes:` of this column");
            }
        });
    }

    private Optional<CellReader> number(
            Located<String> id, ColumnRecord column, String heading, Optional<Unit> wanted) {
        if (column.unit().isEmpty()) {
            stop(
                    "unit-missing",
                    id,
                    "the column `%s` has no unit".formatted(heading),
                    "a pressure in kPa read as mmHg is wrong by a factor of 7.5",
                    "add `unit: %s`, or the unit the file uses; `unit: \"1\"` for a bare number"
                            .formatted(wanted.map(Unit::toString).orElse("1")));
            return Optional.empty();
        }
        var text = column.unit().get();
        var unit = TradeSpelling.read(text.value()).<Optional<Unit>>fold(Optional::of, fault -> {
            findings.add(Diagnostic.stop(
                    "value-unreadable",
                    text.span().part(fault.at(), fault.length()),
                    fault.problem(),
                    "numbers without a known unit cannot be used",
                    fault.fix()));
            return Optional.empty();
        });
        if (unit.isEmpty()) {
            return Optional.empty();
        }
        if (wanted.isPresent() && !unit.get().convertsTo(wanted.get())) {
            stop(
                    "unit-dimension",
                    text,
                    "`%s` is not a unit of `%s`, which is kept in %s".formatted(text.value(), id.value(), wanted.get()),
                    "numbers of another quantity would be computed with",
                    "write a unit of the same dimension as %s".formatted(wanted.get()));
            return Optional.empty();
        }
        DecimalSign sign = mapping.decimal().value();
        return Optional.of((cell, row) -> PrintedNumber.read(cell, sign)
                .fold(n -> row.numbers.put(id.value(), new Measured(n.toDouble(), unit.get(), n.decimals())), fault -> {
                    row.fault(
                            "number-unreadable",
                            heading,
                            fault.problem(),
                            "correct the cell, list its code under `missing:`, or declare the file's decimal sign under `decimal:`");
                    return null;
                }));
    }

    private static Optional<String> decoded(String cell, ColumnRecord column) {
        return column.codes().get(cell).map(meaning -> meaning.list().get(0).value());
    }

    private void stop(String code, Located<?> at, String message, String why, String fix) {
        findings.add(Diagnostic.stop(code, at.span(), message, why, fix));
    }
}
