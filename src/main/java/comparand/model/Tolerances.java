package comparand.model;

import comparand.diag.Located;
import comparand.metric.Catalogue;
import comparand.metric.ConditionUse;
import comparand.metric.Metric;
import comparand.metric.Tolerance;
import comparand.model.library.DossierRecord;
import comparand.model.library.ScenarioRecord;
import comparand.model.library.ToleranceRecord;
import comparand.unit.DecimalSign;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The tolerances of a run: those of its scenario, else the dossier's own, the catalogue's elsewhere. */
public final class Tolerances {

    private final Catalogue catalogue;
    private final DossierRecord dossier;
    private final Optional<ScenarioRecord> scenario;

    Tolerances(Catalogue catalogue, DossierRecord dossier, Optional<ScenarioRecord> scenario) {
        this.catalogue = catalogue;
        this.dossier = dossier;
        this.scenario = scenario;
    }

    /** The metric's use of a condition, with the tolerance that holds in this dossier. */
    public ConditionUse of(Metric metric, ConditionUse use) {
        return override(metric, use).map(r -> use.withTolerance(read(r))).orElse(use);
    }

    /** An override for one metric goes before one for all. */
    public Optional<ToleranceRecord> override(Metric metric, ConditionUse use) {
        return scenario.flatMap(s -> fitting(s.tolerances(), metric, use))
                .or(() -> fitting(dossier.tolerances(), metric, use));
    }

    private static Optional<ToleranceRecord> fitting(List<ToleranceRecord> all, Metric metric, ConditionUse use) {
        List<ToleranceRecord> fitting = all.stream()
                .filter(t -> t.condition().value().equals(use.condition().id()))
                .filter(t ->
                        t.metric().map(Located::value).map(metric.id()::equals).orElse(true))
                .toList();
        return fitting.stream().max(Comparator.comparing(t -> t.metric().isPresent()));
    }

    private Tolerance read(ToleranceRecord record) {
        var condition = catalogue.condition(record.condition().value()).orElseThrow();
        var sign = dossier.decimal().map(Located::value).orElse(DecimalSign.POINT);
        return Tolerance.read(record.within().value(), sign, condition).orThrow();
    }
}
