package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.metric.Condition;
import comparand.metric.Input;
import comparand.metric.Metric;
import comparand.model.CellNumber;
import comparand.model.DataCell;
import comparand.model.Library;
import comparand.model.library.Entries;
import comparand.model.library.QuantityRecord;
import comparand.unit.DecimalSign;
import comparand.unit.PlainDecimal;
import comparand.unit.TradeSpelling;
import comparand.unit.Unit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the numbers of layouts in which a cell alone does not say what it is: one row per measured quantity, or a quantity
 * that is another input at each time point.
 */
final class QuantityCells {

    /** In place of an input, at a time point nobody needs. */
    private static final String IGNORED = "ignored";

    private final Library library;
    private final Optional<DecimalSign> decimal;
    private final List<Diagnostic> findings;
    private final Map<String, Optional<Unit>> units = new HashMap<>();
    private final Map<QuantityRecord, Set<String>> missing = new HashMap<>();

    QuantityCells(Library library, Optional<DecimalSign> decimal, List<Diagnostic> findings) {
        this.library = library;
        this.decimal = decimal;
        this.findings = findings;
    }

    /** The unit numbers of a quantity are kept in; empty, with a finding, if nothing goes by that id. */
    Optional<Unit> unitOf(Located<String> id) {
        var catalogue = library.catalogue();
        var unit = kept(id.value());
        if (unit.isEmpty()) {
            var known = new HashSet<>(catalogue.inputs().keySet());
            known.addAll(catalogue.conditions().keySet());
            known.addAll(catalogue.ids());
            findings.add(Diagnostic.stop(
                    "input-unknown",
                    id.span(),
                    "no formula asks for `%s`".formatted(id.value()),
                    "the numbers would be read and never used",
                    Suggest.instruction(id.value(), known)));
        }
        return unit;
    }

    private Optional<Unit> kept(String id) {
        var catalogue = library.catalogue();
        return catalogue
                .input(id)
                .map(Input::unit)
                .or(() -> catalogue.condition(id).flatMap(Condition::unit))
                .or(() -> catalogue.find(id).map(Metric::unit));
    }

    /** Whether every input of a mapping by time point is known; faults were added to the findings. */
    boolean areKnown(Entries<Located<String>> at) {
        return at.list().stream()
                .filter(e -> !e.value().value().equals(IGNORED))
                .map(e -> unitOf(e.value()).isPresent())
                .reduce(true, Boolean::logicalAnd);
    }

    /** Which input a number is at the row's time point; empty if it is ignored there or, with a fault, not mapped. */
    Optional<String> atTimePoint(Entries<Located<String>> at, String heading, RowDraft row) {
        var point = row.timePoint();
        if (point.isEmpty()) {
            row.fault(
                    "time-point-missing",
                    heading,
                    "nothing in this row says when it was taken",
                    "map a column with `{holds: time-point, codes: {...}}`");
            return Optional.empty();
        }
        var input = at.get(point.get());
        if (input.isEmpty()) {
            row.fault(
                    "time-point-unknown",
                    heading,
                    "`%s` is not a time point of `at:`".formatted(point.get()),
                    "add `%s: <input>` or `%s: ignored` to `at:` of this column".formatted(point.get(), point.get()));
        }
        return input.map(Located::value).filter(i -> !i.equals(IGNORED));
    }

    /** Reads the number of a row whose quantity is named by another of its cells. */
    void value(DataCell cell, String heading, RowDraft row) {
        var quantity = row.quantity();
        if (quantity.isEmpty() || quantity.get().holds().isPresent() || isMissing(quantity.get(), cell)) {
            return;
        }
        var measured = quantity.get();
        var id = measured.at().list().isEmpty()
                ? measured.input().or(measured::condition).or(measured::metric).map(Located::value)
                : atTimePoint(measured.at(), heading, row);
        var spelling = row.unitOfValue().or(() -> measured.unit().map(Located::value));
        if (id.isEmpty()) {
            return;
        }
        if (spelling.isEmpty()) {
            row.fault(
                    "unit-missing",
                    heading,
                    "nothing says the unit of this number",
                    "add `unit:` to the quantity, or map the column that holds the `unit-of-value`");
            return;
        }
        var unit = units.computeIfAbsent(spelling.get(), QuantityCells::read);
        var wanted = kept(id.get());
        if (unit.isEmpty() || wanted.filter(unit.get()::convertsTo).isEmpty()) {
            row.fault(
                    "unit-dimension",
                    heading,
                    "`%s` is not a unit of `%s`, which is kept in %s"
                            .formatted(
                                    spelling.get(),
                                    id.get(),
                                    wanted.map(Unit::toString).orElse("no unit")),
                    "correct the unit in the file, or give `unit:` at the quantity");
            return;
        }
        number(cell, heading, id.get(), unit.get(), row);
    }

    /** Reads a number in a known unit. */
    void number(DataCell cell, String heading, String id, Unit unit, RowDraft row) {
        var plain = cell instanceof DataCell.Text text
                ? decimal.flatMap(sign -> PlainDecimal.read(text.text(), sign))
                : Optional.<PlainDecimal>empty();
        if (plain.isPresent()) {
            row.number(id, new Measured(plain.get().value(), unit, plain.get().decimals()));
            return;
        }
        CellNumber.read(cell, decimal)
                .<Runnable>fold(
                        n -> () -> row.number(id, new Measured(n.toDouble(), unit, n.decimals())),
                        fault -> () -> row.fault("number-unreadable", heading, fault.problem(), fault.fix()))
                .run();
    }

    private boolean isMissing(QuantityRecord quantity, DataCell cell) {
        return missing.computeIfAbsent(quantity, q -> {
                    var codes = new HashSet<String>();
                    q.missing().ifPresent(m -> m.list().forEach(code -> codes.add(code.value())));
                    return codes;
                })
                .contains(cell.text());
    }

    private static Optional<Unit> read(String spelling) {
        return TradeSpelling.read(spelling).fold(Optional::of, fault -> Optional.empty());
    }
}
