package comparand.study;

import comparand.diag.Located;
import comparand.model.DataCell;
import comparand.model.Library;
import comparand.model.library.ColumnRecord;
import comparand.model.library.ColumnRole;
import comparand.model.library.OneOrMore;
import comparand.model.library.SampleUnit;
import java.util.List;
import java.util.Optional;

/** Reads the cells of columns that say whose a row is, not what was measured. */
final class RoleCells {

    private final Library library;
    private final String heading;
    private final ColumnRecord column;

    RoleCells(Library library, String heading, ColumnRecord column) {
        this.library = library;
        this.heading = heading;
        this.column = column;
    }

    CellReaders.CellReader of(ColumnRole role) {
        return switch (role) {
            case DEVICE -> this::device;
            case UNIT -> (cell, row) -> row.member(SampleUnit.UNITS, name(cell));
            case RUN -> (cell, row) -> row.member(SampleUnit.RUNS, name(cell));
            case CASE -> (cell, row) -> row.member(SampleUnit.CASES, name(cell));
            case DATE -> this::date;
            case IGNORED,
                    REMARK,
                    CENTRE,
                    SAMPLE,
                    TIME_POINT,
                    VALUE,
                    UNIT_OF_VALUE,
                    CHANNEL,
                    BIN_FROM,
                    BIN_TO,
                    BIN_COUNT -> (cell, row) -> {};
        };
    }

    private void device(DataCell cell, RowDraft row) {
        var id = CellReaders.decoded(cell, column).orElse(name(cell));
        if (library.device(id).isPresent()) {
            row.device(id);
        } else {
            row.fault(
                    "device-unknown",
                    heading,
                    "`%s` stands for no device of the library".formatted(cell.text()),
                    "add it to `codes:` of this column, or write devices/%s.yaml".formatted(id));
        }
    }

    /** The name of a unit, run or case, in the spelling that stands for all that are declared to be the same. */
    private String name(DataCell cell) {
        var name = CellReaders.decoded(cell, column).orElse(cell.text());
        for (var difference : column.ignoring().map(OneOrMore::list).orElse(List.of())) {
            name = difference.value().without(name);
        }
        return name;
    }

    private void date(DataCell cell, RowDraft row) {
        Optional<String> fault = cell.fold(
                text -> column.dateOrder()
                        .map(Located::value)
                        .map(order -> order.read(text.text()).isPresent()
                                ? Optional.<String>empty()
                                : Optional.of("`%s` is no date in the declared order".formatted(text.text())))
                        .orElse(Optional.of(
                                "`%s` is a date written as text, in an order nobody declared".formatted(text.text()))),
                number -> Optional.of("`%s` is a number, not a date".formatted(number.text())),
                when -> Optional.empty(),
                error -> Optional.empty(),
                blank -> Optional.empty());
        fault.ifPresent(problem -> row.fault(
                "date-unreadable",
                heading,
                problem,
                "correct the cell, or declare `date-order: day-month-year` (or year-month-day, month-day-year) for the"
                        + " column"));
    }
}
