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
import comparand.model.library.SampleUnit;
import comparand.model.library.Separator;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
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
            String heading, int index, boolean read, Set<String> missing, Turn turn, CellReaders.CellReader reader) {}

    /** When a cell is read: whose a row is before what it tells, and that before the numbers it tells of. */
    private enum Turn {
        WHOSE,
        TELLING,
        MEASURED
    }

    /** Roles whose rows are parts of a result. */
    private static final Set<ColumnRole> TOGETHER = EnumSet.of(ColumnRole.VALUE, ColumnRole.BIN_COUNT);

    /** Roles that say what the number in another cell of the row is. */
    private static final Set<ColumnRole> TELLING =
            EnumSet.of(ColumnRole.TIME_POINT, ColumnRole.UNIT_OF_VALUE, ColumnRole.CHANNEL);

    private final Library library;
    private final boolean deviceElsewhere;
    private final DataFileRecord mapping;
    private final RowSource rows;
    private final List<Diagnostic> findings;
    private final List<Column> columns = new ArrayList<>();
    private final Set<String> missing = new HashSet<>();

    private ColumnPlan(
            Library library,
            DataFileRecord mapping,
            RowSource rows,
            boolean deviceElsewhere,
            List<Diagnostic> findings) {
        this.library = library;
        this.deviceElsewhere = deviceElsewhere;
        this.mapping = mapping;
        this.rows = rows;
        this.findings = findings;
        mapping.missing().ifPresent(m -> m.list().forEach(code -> missing.add(code.value())));
    }

    /**
     * The plan for a file; empty when its mapping has a fault, which was added to the findings.
     *
     * @param deviceElsewhere whether another file of the study says which device a case or unit had
     */
    static Optional<ColumnPlan> of(
            Library library,
            DataFileRecord mapping,
            RowSource rows,
            boolean deviceElsewhere,
            List<Diagnostic> findings) {
        int before = findings.size();
        var plan = new ColumnPlan(library, mapping, rows, deviceElsewhere, findings);
        plan.build();
        return findings.size() == before ? Optional.of(plan) : Optional.empty();
    }

    /**
     * One row, read so far as it says whose it is, and the rest of its cells with {@link #measured}; faults in cells were
     * added to the faults.
     */
    RowDraft whose(RowSource.Row row, CellFaults faults, String centre) {
        var draft = new RowDraft(row.line(), faults, centre);
        if (row.cells().size() != rows.header().size()) {
            draft.fault(
                    "row-length",
                    "(all)",
                    "this row has %d cells under %d headings"
                            .formatted(row.cells().size(), rows.header().size()),
                    "check separators and quotes in this row");
            return draft;
        }
        cells(row, draft, Turn.WHOSE);
        return draft;
    }

    /** The cells of a row that say what was measured. */
    void measured(RowSource.Row row, RowDraft draft) {
        if (row.cells().size() == rows.header().size()) {
            cells(row, draft, Turn.TELLING);
            cells(row, draft, Turn.MEASURED);
        }
    }

    private void cells(RowSource.Row row, RowDraft draft, Turn turn) {
        for (var column : columns) {
            if (column.turn != turn) {
                continue;
            }
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
    }

    /** Whose a row is on a level, if its cell can be read; for rows that are left out. */
    Optional<String> member(RowSource.Row row, SampleUnit level, String centre) {
        var draft = whose(row, new CellFaults(rows), centre);
        return draft.member(level).map(m -> draft.centre() + "/" + m);
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

    private void build() {
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
                                entry.key().value(),
                                index,
                                isRead(entry.value()),
                                missing(entry.value()),
                                turn(entry.value()),
                                r)));
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
        if (!holds(ColumnRole.DEVICE) && mapping.describes().isEmpty() && !deviceElsewhere) {
            stop(
                    "column-missing",
                    mapping.file(),
                    "no column of `%s` holds the device"
                            .formatted(mapping.file().value()),
                    "a result belongs to a device",
                    "add `{holds: device, codes: {...}}` to the column that names it");
        }
    }

    /** Whether several rows of the file make one result. */
    boolean putsTogether() {
        return mapping.columns().stream()
                .anyMatch(c -> !c.value().at().list().isEmpty()
                        || !c.value().measures().list().isEmpty()
                        || c.value()
                                .holds()
                                .map(Located::value)
                                .filter(TOGETHER::contains)
                                .isPresent());
    }

    private Turn turn(ColumnRecord column) {
        if (!putsTogether()) {
            return Turn.WHOSE;
        }
        var role = column.holds().map(Located::value);
        if (role.filter(TELLING::contains).isPresent()
                || !column.measures().list().isEmpty()) {
            return Turn.TELLING;
        }
        return role.filter(TOGETHER::contains).isPresent()
                        || !column.at().list().isEmpty()
                ? Turn.MEASURED
                : Turn.WHOSE;
    }

    private static boolean isRead(ColumnRecord column) {
        return column.holds().filter(r -> r.value() == ColumnRole.IGNORED).isEmpty();
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
