package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.model.DataCell;
import comparand.model.Library;
import comparand.model.RowSource;
import comparand.model.library.ColumnRecord;
import comparand.model.library.ColumnRole;
import comparand.model.library.DataFileRecord;
import comparand.model.library.Separator;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** How each column of one data file is read; built once, then applied to every row. */
final class ColumnPlan {

    /**
     * One column.
     *
     * @param read whether anybody looks at its cells
     * @param missing what stands in it where a value is missing
     */
    private record Column(
            String heading, int index, boolean read, Set<String> missing, CellReaders.CellReader reader) {}

    /** Roles whose rows are parts of a result. */
    private static final Set<ColumnRole> TOGETHER = EnumSet.range(ColumnRole.VALUE, ColumnRole.BIN_COUNT);

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
            draft.at(column.index);
            var cell = row.cells().get(column.index);
            if (!column.read || cell.isBlank() || column.missing.contains(cell.text())) {
                continue;
            }
            if (cell instanceof DataCell.Fault) {
                draft.fault(
                        "cell-error",
                        column.heading,
                        "`%s` stands where a formula failed".formatted(cell.text()),
                        "mend the formula, or list its sign under `missing:`");
            } else {
                column.reader.read(cell, draft);
            }
        }
        return draft.facts();
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
        if (needsPuttingTogether()) {
            stop(
                    "layout-not-computed",
                    mapping.describes().<Located<?>>map(d -> d).orElse(mapping.file()),
                    "the rows of `%s` have to be put together before anything can be computed from them"
                            .formatted(mapping.name()),
                    "a result belongs to a device and needs its inputs in one row",
                    "give one row per sample, case or unit, with one column per input");
            return;
        }
        var headings = rows.header();
        if (headings.stream().noneMatch(mapping.columns()::has)) {
            stop(
                    "columns-not-found",
                    mapping.split(),
                    "the line of headings of `%s` holds none of the mapped headings".formatted(rows.file()),
                    "split at another sign, or without its line of headings, a file means something else",
                    likelySeparator()
                            .map(s -> "did you mean `separator: %s`?".formatted(s))
                            .orElse("put the line of headings first, or correct the headings under `columns:`"));
            return;
        }
        var readers = new CellReaders(library, mapping.decimal().map(Located::value), findings);
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
                readers.of(entry)
                        .ifPresent(r -> columns.add(new Column(
                                entry.key().value(), index, isRead(entry.value()), missing(entry.value()), r)));
            }
        }
        for (int i = 0; i < headings.size(); i++) {
            var heading = headings.get(i);
            if (!mapping.columns().has(heading)) {
                findings.add(Diagnostic.stop(
                        "column-unmapped",
                        rows.heading(i),
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

    private boolean needsPuttingTogether() {
        return mapping.describes().isPresent()
                || mapping.columns().stream()
                        .anyMatch(c -> !c.value().at().list().isEmpty()
                                || !c.value().measures().list().isEmpty()
                                || c.value()
                                        .holds()
                                        .map(Located::value)
                                        .filter(TOGETHER::contains)
                                        .isPresent());
    }

    private static boolean isRead(ColumnRecord column) {
        return column.holds()
                .filter(r -> r.value() == ColumnRole.IGNORED || r.value() == ColumnRole.REMARK)
                .isEmpty();
    }

    private Set<String> missing(ColumnRecord column) {
        var all = new HashSet<>(missing);
        column.missing().ifPresent(m -> m.list().forEach(code -> all.add(code.value())));
        return all;
    }

    private void stop(String code, Located<?> at, String message, String why, String fix) {
        findings.add(Diagnostic.stop(code, at.span(), message, why, fix));
    }

    /** The separator at which the first line would fall into mapped headings. */
    private Optional<String> likelySeparator() {
        if (mapping.separator().isEmpty()) {
            return Optional.empty();
        }
        var line = String.join(String.valueOf(mapping.separator().get().value().sign()), rows.header());
        return Stream.of(Separator.values())
                .filter(s -> Stream.of(line.split(Pattern.quote(String.valueOf(s.sign())), -1))
                        .map(String::strip)
                        .anyMatch(mapping.columns()::has))
                .findFirst()
                .map(s -> s.name().toLowerCase(Locale.ROOT));
    }
}
