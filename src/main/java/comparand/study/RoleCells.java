package comparand.study;

import comparand.diag.Located;
import comparand.model.DataCell;
import comparand.model.Library;
import comparand.model.library.ColumnRecord;
import comparand.model.library.ColumnRole;
import comparand.model.library.OneOrMore;
import comparand.model.library.SampleUnit;
import comparand.unit.TradeSpelling;
import comparand.unit.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the cells of columns that say whose a row is, not what was measured. */
final class RoleCells {

    private static final Set<String> CHANNELS = Set.of("upstream", "downstream");
    private static final Unit MICROMETRE = Unit.of("µm");
    private static final Unit MINUTE = Unit.of("min");
    private static final Unit COUNT = Unit.of("{count}");

    private final Library library;
    private final String heading;
    private final ColumnRecord column;
    private final QuantityCells quantities;
    private final Map<String, String> names = new HashMap<>();

    RoleCells(Library library, String heading, ColumnRecord column, QuantityCells quantities) {
        this.library = library;
        this.heading = heading;
        this.column = column;
        this.quantities = quantities;
    }

    CellReaders.CellReader of(ColumnRole role) {
        return switch (role) {
            case DEVICE -> this::device;
            case UNIT -> (cell, row) -> row.member(SampleUnit.UNITS, name(cell));
            case RUN -> (cell, row) -> row.member(SampleUnit.RUNS, name(cell));
            case CASE -> (cell, row) -> row.member(SampleUnit.CASES, name(cell));
            case DATE -> this::date;
            case CENTRE -> (cell, row) -> row.centre(name(cell));
            case SAMPLE -> (cell, row) -> row.sample(name(cell));
            case TIME_POINT -> (cell, row) -> row.timePoint(name(cell));
            case CHANNEL -> this::channel;
            case VALUE -> (cell, row) -> quantities.value(cell, heading, row);
            case UNIT_OF_VALUE -> (cell, row) -> row.unitOfValue(cell.text());
            case BIN_FROM -> (cell, row) -> bin("bubble-bin-from", cell, row);
            case BIN_TO -> (cell, row) -> bin("bubble-bin-to", cell, row);
            case BIN_COUNT ->
                (cell, row) -> row.channel()
                        .ifPresent(c -> quantities.number(cell, heading, "bubble-bin-count-" + c, COUNT, row));
            case ELAPSED -> this::elapsed;
            case REMARK -> (cell, row) -> row.remark(heading);
            case IGNORED -> (cell, row) -> {};
        };
    }

    private void channel(DataCell cell, RowDraft row) {
        var word = name(cell);
        if (CHANNELS.contains(word)) {
            row.channel(word);
        } else {
            row.fault(
                    "code-unknown",
                    heading,
                    "`%s` is neither upstream nor downstream".formatted(cell.text()),
                    "add its meaning to `codes:` of this column");
        }
    }

    private void bin(String edge, DataCell cell, RowDraft row) {
        number(cell, row, edge, MICROMETRE, "the edge of a size class has no unit of length");
    }

    private void elapsed(DataCell cell, RowDraft row) {
        number(cell, row, "elapsed-time", MINUTE, "the time since the start has no unit of time");
    }

    private void number(DataCell cell, RowDraft row, String id, Unit like, String lacking) {
        var unit = column.unit()
                .flatMap(u -> TradeSpelling.read(u.value()).<Optional<Unit>>fold(Optional::of, f -> Optional.empty()));
        if (unit.filter(like::convertsTo).isPresent()) {
            quantities.number(cell, heading, id, unit.get(), row);
        } else {
            row.fault("unit-missing", heading, lacking, "add `unit: %s` to this column".formatted(like));
        }
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
        // one text for all rows of a name: whoever counts rows by it compares no letters
        var known = names.putIfAbsent(name, name);
        return known == null ? name : known;
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
