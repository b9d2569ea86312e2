package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.metric.Aspect;
import comparand.metric.Input;
import comparand.metric.Nature;
import comparand.model.DataCell;
import comparand.model.Library;
import comparand.model.library.ColumnRecord;
import comparand.model.library.Entries;
import comparand.model.library.OneOrMore;
import comparand.unit.DecimalSign;
import comparand.unit.TradeSpelling;
import comparand.unit.Unit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** Turns the mapping of a column into the reader of its cells. */
final class CellReaders {

    /** Reads one cell that is neither empty nor marked missing into the row that is being put together. */
    interface CellReader {
        void read(DataCell cell, RowDraft row);
    }

    private final Library library;
    private final List<Diagnostic> findings;
    private final QuantityCells quantities;

    CellReaders(Library library, Optional<DecimalSign> decimal, List<Diagnostic> findings) {
        this.library = library;
        this.findings = findings;
        this.quantities = new QuantityCells(library, decimal, findings);
    }

    /** The reader of a column; empty when its mapping has a fault, which was added to the findings. */
    Optional<CellReader> of(Entries.Entry<ColumnRecord> entry) {
        var column = entry.value();
        var heading = entry.key().value();
        if (column.holds().isPresent()) {
            return Optional.of(new RoleCells(library, heading, column, quantities)
                    .of(column.holds().get().value()));
        }
        if (column.input().isPresent()) {
            return input(column.input().get(), column, heading);
        }
        if (column.condition().isPresent()) {
            return condition(column.condition().get(), column, heading);
        }
        if (column.metric().isPresent()) {
            return metric(column.metric().get(), column, heading);
        }
        if (!column.at().list().isEmpty()) {
            return atTimePoints(column, heading);
        }
        if (!column.measures().list().isEmpty()) {
            return measures(column, heading);
        }
        return column.definition().flatMap(id -> aspect(id, column, heading));
    }

    /** A number that is another input at each time point; its unit holds for all of them. */
    private Optional<CellReader> atTimePoints(ColumnRecord column, String heading) {
        if (!quantities.areKnown(column.at())) {
            return Optional.empty();
        }
        var first = column.at().list().stream()
                .map(Entries.Entry::value)
                .filter(i -> library.catalogue().input(i.value()).isPresent())
                .findFirst();
        return first.flatMap(input -> unit(
                        input,
                        column,
                        heading,
                        library.catalogue().input(input.value()).map(Input::unit)))
                .map(unit -> (cell, row) -> quantities
                        .atTimePoint(column.at(), heading, row)
                        .ifPresent(id -> quantities.number(cell, heading, id, unit, row)));
    }

    /** The word that says what the number of the row is. */
    private Optional<CellReader> measures(ColumnRecord column, String heading) {
        boolean known = column.measures().list().stream()
                .map(e -> e.value().holds().isPresent()
                        || (quantities.areKnown(e.value().at())
                                && e.value()
                                        .input()
                                        .or(() -> e.value().condition())
                                        .or(() -> e.value().metric())
                                        .map(id -> quantities.unitOf(id).isPresent())
                                        .orElse(true)))
                .reduce(true, Boolean::logicalAnd);
        return known
                ? Optional.of((cell, row) -> column.measures()
                        .get(cell.text())
                        .ifPresentOrElse(
                                row::quantity,
                                () -> row.fault(
                                        "code-unknown",
                                        heading,
                                        "`%s` is no quantity of `measures:`".formatted(cell.text()),
                                        "add it to `measures:` of this column; `{holds: ignored}` if nobody needs it")))
                : Optional.empty();
    }

    private Optional<CellReader> input(Located<String> id, ColumnRecord column, String heading) {
        var inputs = library.catalogue().inputs();
        var known = library.catalogue().input(id.value());
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
        var condition = known.get();
        return condition.isNumber()
                ? number(id, column, heading, condition.unit())
                : Optional.of((cell, row) -> {
                    var word = decoded(cell, column).orElse(cell.text());
                    if (condition.words().isEmpty() || condition.words().contains(word)) {
                        row.word(id.value(), word);
                    } else {
                        row.fault(
                                "code-unknown",
                                heading,
                                "`%s` is not a word for `%s`".formatted(word, id.value()),
                                "add its meaning to `codes:` of this column; %s"
                                        .formatted("it knows " + String.join(", ", condition.words())));
                    }
                });
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
            var word = decoded(cell, column).orElse(cell.text());
            if (word.equals("yes") || word.equals("no")) {
                row.event(id.value(), word.equals("yes"));
            } else {
                row.fault(
                        "code-unknown",
                        heading,
                        "`%s` is neither yes nor no".formatted(cell.text()),
                        "add its meaning to `codes:` of this column: `{%1$s: yes}` or `{%1$s: no}`"
                                .formatted(cell.text()));
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
                    .get(cell.text())
                    .map(OneOrMore::list)
                    .map(l -> l.stream().map(Located::value).toList());
            if (meant.isPresent()) {
                row.aspect(id.value(), meant.get());
            } else if (words.contains(cell.text())) {
                row.aspect(id.value(), List.of(cell.text()));
            } else {
                row.fault(
                        "code-unknown",
                        heading,
                        "`%s` is not a code of this column".formatted(cell.text()),
                        "add its meaning to `codes:` of this column");
            }
        });
    }

    private Optional<CellReader> number(
            Located<String> id, ColumnRecord column, String heading, Optional<Unit> wanted) {
        // the very text that rules and formulas look it up by, so that no letters are compared in every row
        var name = id.value().intern();
        return unit(id, column, heading, wanted)
                .map(unit -> (cell, row) -> quantities.number(cell, heading, name, unit, row));
    }

    /** The unit a column declares; empty, with a finding, if there is none or it is one of another quantity. */
    private Optional<Unit> unit(Located<String> id, ColumnRecord column, String heading, Optional<Unit> wanted) {
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
        return unit;
    }

    static Optional<String> decoded(DataCell cell, ColumnRecord column) {
        return column.codes()
                .get(cell.text())
                .map(meaning -> meaning.list().get(0).value());
    }

    private void stop(String code, Located<?> at, String message, String why, String fix) {
        findings.add(Diagnostic.stop(code, at.span(), message, why, fix));
    }
}
