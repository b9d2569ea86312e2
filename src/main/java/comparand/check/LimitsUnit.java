package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.metric.Catalogue;
import comparand.metric.Condition;
import comparand.metric.Input;
import comparand.metric.Metric;
import comparand.model.library.Entries;
import comparand.model.library.LimitRecord;
import comparand.unit.PrintedRange;
import comparand.unit.Unit;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What it checks: limits of a study file on something that is neither a metric nor an input nor a condition, or in a unit
 * that does not measure it.
 *
 * <p>Why it matters: rows would be held or let through by a limit that means something else.
 *
 * <p>What to write instead: a quantity the catalogue knows, in a unit of it, such as {@code pressure-drop: {possible: 0 to
 * 600 mmHg, reason: ...}}.
 */
final class LimitsUnit implements Rule {

    private static final String WRONG_ROWS = "the rows it is to hold could not be told";

    @Override
    public String code() {
        return "limits-unit";
    }

    @Override
    public void check(Context context, Findings findings) {
        context.library()
                .studies()
                .values()
                .forEach(study -> study.files()
                        .forEach(file ->
                                file.limits().stream().forEach(limit -> limit(limit, context.catalogue(), findings))));
    }

    private static void limit(Entries.Entry<LimitRecord> limit, Catalogue catalogue, Findings findings) {
        var id = limit.key().value();
        var unit = unit(id, catalogue);
        if (unit.isEmpty()) {
            var known = new TreeSet<>(catalogue.inputs().keySet());
            known.addAll(catalogue.ids());
            findings.stop(
                    limit.key().span(),
                    "`%s` is no number known here".formatted(id),
                    WRONG_ROWS,
                    Suggest.instruction(id, known));
            return;
        }
        Stream.of(limit.value().possible(), limit.value().plausible())
                .flatMap(Optional::stream)
                .forEach(range -> range(id, range, unit.get(), findings));
    }

    private static void range(String id, Located<PrintedRange> range, Unit unit, Findings findings) {
        var low = range.value().low();
        var fit = UnitFit.of(low.unit(), unit);
        if (fit != UnitFit.FITS) {
            findings.stop(
                    range.span(), fit.problem(range.value(), "`" + id + "`"), WRONG_ROWS, fit.fix(low.number(), unit));
        }
    }

    private static Optional<Unit> unit(String id, Catalogue catalogue) {
        return catalogue
                .find(id)
                .map(Metric::unit)
                .or(() -> catalogue.input(id).map(Input::unit))
                .or(() -> catalogue.condition(id).flatMap(Condition::unit));
    }
}
